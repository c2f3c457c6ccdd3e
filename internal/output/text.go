package output

import (
	"bufio"
	"fmt"
	"io"
	"path"
	"slices"
	"strconv"
	"strings"

	"github.com/charmbracelet/lipgloss"
	"github.com/mattn/go-runewidth"

	"abut/internal/engine"
)

const columns = 80

// textReport writes for people. Color shows only where the writer is a
// terminal and NO_COLOR is not set; the renderer knows.
type textReport struct {
	b     *bufio.Writer // which keeps the first error for the end
	color *lipgloss.Renderer
	told  map[string]bool // reasons that were given in full
}

func newText(w io.Writer) *textReport {
	return &textReport{b: bufio.NewWriter(w), color: lipgloss.NewRenderer(w), told: map[string]bool{}}
}

func writeText(w io.Writer, run Run) error {
	t := newText(w)
	for i, f := range run.Findings {
		newSheet := i == 0 || f.File != run.Findings[i-1].File || f.Sheet != run.Findings[i-1].Sheet
		if newSheet && i > 0 {
			t.line("")
		}
		if newSheet {
			t.title(sheetTitle(f))
		}
		if newSheet || f.Row != run.Findings[i-1].Row {
			t.line("")
			t.title(rowTitle(f))
		}
		t.finding(f)
	}
	t.summary(run)
	return t.b.Flush()
}

func sheetTitle(f engine.Finding) string {
	if f.Sheet == "" {
		return plain(f.File)
	}
	return plain(f.File) + ", sheet " + plain(f.Sheet)
}

func rowTitle(f engine.Finding) string {
	if f.Row == 0 {
		return "no row in particular"
	}
	return strings.TrimSpace(fmt.Sprintf("%s %d  %s", rowWord(f.File), f.Row, plain(f.Mark)))
}

// rowWord is what a row of a file is called.
func rowWord(file string) string {
	if ext := path.Ext(file); ext == ".yaml" || ext == ".yml" {
		return "line"
	}
	return "row"
}

// finding writes the sentence first, then what to do; the reason and the
// source only where this report has not given them before.
func (t *textReport) finding(f engine.Finding) {
	label := f.Severity
	if f.Waived != nil {
		label = "waived"
	}
	t.paragraph("  "+t.paint(label, fmt.Sprintf("%-8s", label)), 10, f.Message)
	if f.Waived != nil {
		t.paragraph("", 10, waiver(*f.Waived)+" [rule "+f.Rule+"]")
		return
	}
	t.paragraph("", 10, "Do: "+f.Remedy)
	for _, row := range with(f) {
		t.paragraph("", 10, "With: "+row)
	}
	key := f.Rule + "\x00" + f.Reason + "\x00" + f.Source
	if !t.told[key] {
		t.told[key] = true
		t.paragraph("", 10, "Why: "+f.Reason)
		t.paragraph("", 10, "Source: "+f.Source)
	}
	t.paragraph("", 10, strings.TrimSpace(where(0, f.Cells)+" [rule "+f.Rule+"]"))
}

// shown is how many rows that take part are told in full where there are more.
const shown = 5

// with lists the rows that take part: the first in full, the others by number.
func with(f engine.Finding) []string {
	var rows []string
	for _, r := range f.Related[:min(len(f.Related), shown)] {
		rows = append(rows, related(f, r))
	}
	if len(f.Related) == shown+1 {
		return append(rows, related(f, f.Related[shown]))
	}
	if len(f.Related) > shown {
		var more []string
		for _, r := range f.Related[shown:] {
			more = append(more, strconv.Itoa(r.Row))
		}
		rows = append(rows, "the like in rows "+strings.Join(slices.Compact(more), ", "))
	}
	return rows
}

// related names another row, with its sheet where that is another one.
func related(f engine.Finding, r engine.Related) string {
	place := where(r.Row, r.Cells)
	if r.Sheet != f.Sheet {
		place = strings.Trim("sheet "+r.Sheet+", "+place, ", ")
	}
	return place + ": " + r.What
}

func waiver(w engine.Waived) string {
	text := "Waived by " + w.By
	if w.Until != "" {
		text += " until " + w.Until
	}
	if w.Reference != "" {
		text += " (" + w.Reference + ")"
	}
	text += ": " + w.Reason
	if w.At != "" {
		text += " [" + w.At + "]"
	}
	return text
}

func (t *textReport) summary(run Run) {
	s := run.Summary()
	if len(run.Findings) > 0 {
		t.line("")
	}
	t.paragraph("", 0, fmt.Sprintf("Checked %s: %s", counted(len(s.Files), "file"), strings.Join(s.Files, ", ")))
	counts := fmt.Sprintf("Found %s", s.bySeverity())
	if s.Waived > 0 {
		counts += fmt.Sprintf("; %d waived", s.Waived)
	}
	if topics := s.byTopic(); topics != "" {
		counts += " (" + topics + ")"
	}
	t.paragraph("", 0, counts+".")
	for _, text := range []string{s.notUnderstood(), s.Aside(), s.Otherwise()} {
		if text != "" {
			t.paragraph("", 0, text)
		}
	}
	for _, p := range s.Problems {
		t.paragraph(t.paint("error", "Not done: "), 2, p.Line())
	}
	if s.Findings > 0 {
		t.paragraph("", 0, "`abut rules ID` tells more of a rule.")
	}
	t.line("")
	t.paragraph("", 0, s.Caution)
}

// paragraph wraps a text at 80 columns after a first word of its own; indent
// is the width of that and of the lines that follow.
func (t *textReport) paragraph(first string, indent int, text string) {
	lines := Wrap(plain(text), columns-max(indent, lipgloss.Width(first)))
	for i, line := range lines {
		if i == 0 && first != "" {
			t.line(first + line)
			continue
		}
		t.line(strings.Repeat(" ", indent) + line)
	}
}

func (t *textReport) line(text string) {
	t.b.WriteString(strings.TrimRight(text, " "))
	t.b.WriteByte('\n')
}

func (t *textReport) title(text string) {
	lines := []string{text}
	if runewidth.StringWidth(text) > columns {
		lines = Wrap(text, columns)
	}
	for _, line := range lines {
		t.line(t.bold(line))
	}
}

func (t *textReport) bold(text string) string {
	return t.color.NewStyle().Bold(true).Render(text)
}

func (t *textReport) paint(severity, text string) string {
	colors := map[string]lipgloss.Color{"error": "1", "warning": "3", "note": "6"}
	return t.color.NewStyle().Foreground(colors[severity]).Render(text)
}

// Wrap breaks a text between words. A word wider than a line stands alone, so
// that it can be copied whole; one of wide characters, as of scripts that are
// written without spaces, is broken anywhere but within a character.
func Wrap(text string, width int) []string {
	var lines []string
	line := ""
	for word := range strings.FieldsSeq(text) {
		if line != "" && runewidth.StringWidth(line)+1+runewidth.StringWidth(word) > width {
			lines = append(lines, line)
			line = ""
		}
		if line != "" {
			line += " "
		}
		for runewidth.StringWidth(word) > width && strings.ContainsFunc(word, isWide) {
			head := runewidth.Truncate(word, width, "")
			if head == "" {
				break
			}
			lines, word = append(lines, head), word[len(head):]
		}
		line += word
	}
	return append(lines, line)
}

func isWide(r rune) bool { return runewidth.RuneWidth(r) > 1 }
