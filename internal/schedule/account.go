package schedule

import (
	"cmp"
	"fmt"
	"strconv"

	"abut/internal/workbook"
)

// account says what each sheet and column was taken for, and lists every cell
// that was not understood.
func (r *reader) account(b *workbook.Book, all []*table) {
	rd := &r.sched.Reading
	for i := range b.Sheets {
		s := sheetRead(&b.Sheets[i], onSheet(all, &b.Sheets[i]))
		if head, ok := r.waiverSheets[s.Name]; ok {
			s.As, s.Why = "waivers", fmt.Sprintf("accepted findings, with headings in row %d", head)
		}
		if len(r.cardRows[s.Name]) > 0 && s.As == "notes" {
			s.As, s.Why = kindProducts, "product data by labels, from row "+strconv.Itoa(r.cardRows[s.Name][0])
		}
		if r.listSheets[s.Name] {
			s.As, s.Why = "findings", "it lists what was found before, in a marked copy, and was not read"
		}
		if n := len(rd.Sheets); n > 0 && i > 0 && b.Sheets[i-1].Name == s.Name { // another part of the same sheet
			if s.As == kindSchedule {
				rd.Sheets[n-1] = s
			}
			continue
		}
		rd.Sheets = append(rd.Sheets, s)
	}
	for _, t := range all {
		rd.Tables = append(rd.Tables, Table{ID: t.id, Kind: t.kind, Sheet: t.sheet.Name, Head: t.head, First: t.first, Last: t.last, Columns: t.cols})
		if t.kind == kindSchedule {
			r.tally(t)
		}
	}
	for i := range b.Sheets {
		if s := &b.Sheets[i]; !s.FeedsDropDowns() {
			r.missed(s, onSheet(all, s))
		}
	}
	for i := range r.sched.Lines {
		r.sched.Lines[i].columns = nil // nobody asks what stands under a column from here on
	}
	for i := range r.sched.Products {
		r.sched.Products[i].home = nil // it holds all cells of the workbook
	}
}

func sheetRead(s *workbook.Sheet, tables []*table) SheetRead {
	out := SheetRead{Name: s.Name, State: s.State, As: "notes", Why: "no table of materials on it; its texts were read as notes"}
	switch s.Kind {
	case workbook.Chartsheet:
		return SheetRead{Name: s.Name, State: s.State, As: string(s.Kind), Why: "holds no cells"}
	case workbook.OtherSheet:
		return SheetRead{Name: s.Name, State: s.State, As: string(s.Kind), Why: "a macro or dialog sheet, which is not read"}
	}
	if len(s.Rows) == 0 {
		return SheetRead{Name: s.Name, State: s.State, As: "empty", Why: "holds nothing"}
	}
	if s.FeedsDropDowns() {
		return SheetRead{Name: s.Name, State: s.State, As: "words", Why: "its words feed drop-downs, and it was not read as part of the project"}
	}
	for _, t := range tables {
		if t.kind != kindOther && (out.As == "notes" || t.kind == kindSchedule) {
			out.As = t.kind
			out.Why = fmt.Sprintf("heading in row %d with %d known columns", t.head[0], known(t.cols))
		}
	}
	return out
}

func known(cols []Column) int {
	n := 0
	for _, c := range cols {
		if c.Slot != "" {
			n++
		}
	}
	return n
}

// tally counts the non-empty cells of a schedule and which of them were
// understood: blanks, known materials, dates and figures, and words in columns
// of free text.
func (r *reader) tally(t *table) {
	byRow := map[int][]*Line{}
	for i := range r.sched.Lines {
		if l := &r.sched.Lines[i]; l.Table == t.id {
			byRow[l.Row] = append(byRow[l.Row], l)
		}
	}
	for row := t.first; row <= t.last; row++ {
		lines := byRow[row]
		if len(lines) == 0 {
			if words := r.rowText(t, row); words != "" {
				r.sched.Reading.Skipped = append(r.sched.Reading.Skipped, Unread{Text: words, Why: "heads the rows below it", At: At{Sheet: t.sheet.Name, Row: row}})
			}
			continue
		}
		for i, col := range t.nums {
			c, ok := t.sheet.At(row, col)
			if !ok || c.Merged || c.Value == "" && notShown(c) == "" {
				continue
			}
			r.sched.Reading.Cells++
			why := notShown(c)
			if why == "" && !r.standsAside(t, row, col) {
				why = r.notUnderstood(readBy(lines, t.cols[i]), t.cols[i], c)
			}
			if why != "" {
				r.unread(cmp.Or(c.Value, c.Masked, "a formula"), why, t.at(row, col))
				continue
			}
			r.sched.Reading.Known++
		}
	}
}

// meets are the columns of what a row's material meets.
var meets = map[string]bool{"touches": true, "with": true, "left": true, "right": true, "top": true, "bottom": true, "front": true, "behind": true}

// notUnderstood says why a cell was not understood, "" if it was.
func (r *reader) notUnderstood(l *Line, col Column, c workbook.Cell) string {
	fig, isFigure := figureOf[col.Slot]
	switch {
	case col.Slot == "":
		return "the column is not known"
	case r.words.isBlank(c.Value) || r.words.isNone(c.Value) || r.words.isDitto(c.Value):
		return ""
	case isDateSlot(col.Slot):
		if d := l.Dates[col.Slot]; d.State == "unknown" && d.From == "" {
			return "not read as a date"
		}
	case isFigure:
		if f := l.Figures[fig.key]; f.Problem != "" {
			return f.Problem
		}
	case meets[col.Slot]:
		if !r.saysNone(c.Value) {
			return r.noMaterial(l, col.Slot, c)
		}
	case col.Slot == "material" || col.Slot == "tag" || col.Slot == "substrate" || col.Slot == "primer" || col.Slot == "sealant":
		return r.noMaterial(l, col.Slot, c)
	}
	return ""
}

func (r *reader) noMaterial(l *Line, slot string, c workbook.Cell) string {
	if _, ok := r.refersTo(c.Value); ok {
		return ""
	}
	ref := c.Ref()
	for i := range l.Items {
		if it := &l.Items[i]; it.At.Cell == ref && !it.Unknown {
			return ""
		}
	}
	for i := range l.Signals {
		if l.Signals[i].At.Cell == ref {
			return ""
		}
	}
	return "no known material in it"
}
