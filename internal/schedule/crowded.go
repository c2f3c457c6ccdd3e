package schedule

import (
	"fmt"

	"abut/internal/workbook"
)

// crowded refuses a workbook in which a row names more materials than may be:
// each of a row is held against each, so that one cell could keep a run busy
// without end.
func (r *reader) crowded() error {
	most := r.set.Materials
	for _, l := range r.sched.Lines {
		if most > 0 && len(l.Items) > most {
			return &workbook.FileError{
				Path: r.sched.File, Sheet: l.Sheet, Cell: l.Items[most].At.Cell,
				Problem: fmt.Sprintf("its row names more than %d materials", most),
				Do:      "give them rows of their own, or raise limits: materials in the settings",
			}
		}
	}
	return nil
}
