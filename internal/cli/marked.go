package cli

import (
	"fmt"
	"io"
	"os"
	"slices"

	"abut/internal/output"
	"abut/internal/output/marked"
)

// isMarked says whether an output is a marked copy of the workbook.
func isMarked(out string) bool { return output.FormatOf(out) == "marked" }

// copies holds the marked copies that are asked for against the workbooks that
// are checked: a copy is of one.
func (o checkOptions) copies(files []string) error {
	for _, out := range o.Outputs {
		if !isMarked(out) {
			continue
		}
		if len(files) == 0 {
			return nil // that there is none is told where it is looked for
		}
		if len(files) > 1 {
			return fmt.Errorf("-o %s: a marked copy is made of one workbook, and %d are named; check them one by one", out, len(files))
		}
		if err := marked.Fits(files[0], out); err != nil {
			return err
		}
	}
	return nil
}

// noCopy refuses marked copies where there is no one workbook to mark.
func (o checkOptions) noCopy() error {
	if i := slices.IndexFunc(o.Outputs, isMarked); i >= 0 {
		return fmt.Errorf("-o %s: a comparison gives no marked copy; use .xlsx for its review log", o.Outputs[i])
	}
	return nil
}

// uncopied is what is told with a workbook that could not be read where a marked
// copy of it is asked for.
func (o checkOptions) uncopied(run output.Run) string {
	if i := slices.IndexFunc(o.Outputs, isMarked); i >= 0 && len(run.Reading) == 0 {
		return fmt.Sprintf("; %s, its marked copy, is not written", o.Outputs[i])
	}
	return ""
}

// writeMarked writes a marked copy, unless the workbook could not be read.
func writeMarked(out string, g guard, run output.Run) error {
	if len(run.Reading) == 0 {
		return nil
	}
	data, err := os.ReadFile(run.Files[0])
	if err != nil {
		return fmt.Errorf("%s: %w", run.Files[0], err)
	}
	return writeFile(out, g.filed(1, func(w io.Writer) error { return marked.Write(w, data, run) }))
}
