package output

import (
	"fmt"
	"io"
	"path"
	"strings"

	"github.com/xuri/excelize/v2"

	"abut/internal/compare"
)

// logHeadings are the columns of a review log; the last two are the reviewer's.
func logHeadings() []string {
	return []string{
		"Specified", "Offered", "Lines", "What got worse", "What it breaks", "What is better",
		"Proposed action", "Reviewer's action", "Reviewer, date",
	}
}

// logActions are the words that a reviewer chooses from.
func logActions() []string {
	return []string{"no exceptions taken", "make corrections noted", "revise and resubmit", "rejected"}
}

const logNote = "The proposed action is a proposal, made from the findings alone. The reviewer confirms or changes it."

// LogFormatOf gives the format of a review log by the file's ending: xlsx or
// markdown; "" if it is neither.
func LogFormatOf(file string) string {
	return map[string]string{".xlsx": "xlsx", ".md": "markdown"}[strings.ToLower(path.Ext(file))]
}

// WriteLog writes the review log: one row a substitution.
func WriteLog(w io.Writer, format string, entries []compare.Entry) error {
	var err error
	switch format {
	case "xlsx":
		err = writeLogBook(w, entries)
	case "markdown":
		err = writeLogMarkdown(w, entries)
	default:
		err = fmt.Errorf("format %q is not known; use xlsx or markdown", format)
	}
	if err != nil {
		return fmt.Errorf("write the review log: %w", err)
	}
	return nil
}

func logCells(e compare.Entry, clean func(string) string, between string) []string {
	join := func(list []string) string {
		out := make([]string, len(list))
		for i, text := range list {
			out[i] = clean(text)
		}
		return strings.Join(out, between)
	}
	return []string{
		clean(e.Specified), clean(e.Offered), join(e.Lines), join(e.Worse), join(e.Breaks), join(e.Better), e.Action, "", "",
	}
}

func writeLogMarkdown(w io.Writer, entries []compare.Entry) error {
	var b strings.Builder
	fmt.Fprintf(&b, "# Review log: %s\n\n", counted(len(entries), "substitution"))
	fmt.Fprintf(&b, "| %s |\n|%s\n", strings.Join(logHeadings(), " | "), strings.Repeat(" --- |", len(logHeadings())))
	for _, e := range entries {
		fmt.Fprintf(&b, "| %s |\n", strings.Join(logCells(e, markdown, "<br>"), " | "))
	}
	fmt.Fprintf(&b, "\n%s\n\n---\n\n%s\n", logNote, Caution)
	_, err := io.WriteString(w, b.String())
	return err
}

// writeLogBook writes every text as a text, so that none is taken for a formula.
func writeLogBook(w io.Writer, entries []compare.Entry) error {
	const sheet = "Review log"
	f := excelize.NewFile()
	defer f.Close()
	if err := f.SetSheetName("Sheet1", sheet); err != nil {
		return err
	}
	rows := [][]string{logHeadings()}
	for _, e := range entries {
		rows = append(rows, logCells(e, plain, "\n"))
	}
	for i, row := range append(rows, []string{}, []string{logNote}, []string{Caution}) {
		for j, text := range row {
			cell, err := excelize.CoordinatesToCellName(j+1, i+1)
			if err != nil {
				return err
			}
			if err := f.SetCellStr(sheet, cell, text); err != nil {
				return err
			}
		}
	}
	if err := dressLog(f, sheet, len(rows)); err != nil {
		return err
	}
	_, err := f.WriteTo(w)
	return err
}

// dressLog sets widths, wrapping, a fixed heading, and the words to choose from.
func dressLog(f *excelize.File, sheet string, rows int) error {
	head, err := f.NewStyle(&excelize.Style{Font: &excelize.Font{Bold: true}, Alignment: &excelize.Alignment{WrapText: true, Vertical: "top"}})
	if err != nil {
		return err
	}
	body, err := f.NewStyle(&excelize.Style{Alignment: &excelize.Alignment{WrapText: true, Vertical: "top"}})
	if err != nil {
		return err
	}
	last, err := excelize.ColumnNumberToName(len(logHeadings()))
	if err != nil {
		return err
	}
	choice := excelize.NewDataValidation(true)
	choice.Sqref = fmt.Sprintf("H2:H%d", max(2, rows))
	steps := []error{
		f.SetColWidth(sheet, "A", "C", 28), f.SetColWidth(sheet, "D", "F", 48), f.SetColWidth(sheet, "G", last, 22),
		f.SetCellStyle(sheet, "A1", last+"1", head),
		f.SetCellStyle(sheet, "A2", fmt.Sprintf("%s%d", last, max(2, rows)), body),
		f.SetPanes(sheet, &excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"}),
		choice.SetDropList(logActions()), f.AddDataValidation(sheet, choice),
	}
	for _, err := range steps {
		if err != nil {
			return err
		}
	}
	return nil
}
