package output

import (
	"fmt"
	"io"
	"strings"

	"github.com/charmbracelet/lipgloss"
	"github.com/mattn/go-runewidth"

	"abut/internal/engine"
)

// WriteRules writes the list of rules by topic as text, or all that is known
// of them as json.
func WriteRules(w io.Writer, format string, rules []engine.Rule) error {
	switch format {
	case "json":
		return writeIndented(w, map[string]any{"rules": append([]engine.Rule{}, rules...), "caution": Caution})
	case "text":
		return writeRuleList(w, rules)
	}
	return fmt.Errorf("format %q is not known; use text or json", format)
}

// WriteRule writes what is known of one rule, as text or json.
func WriteRule(w io.Writer, format string, rule engine.Rule) error {
	switch format {
	case "json":
		return writeIndented(w, map[string]any{"rule": rule, "caution": Caution})
	case "text":
		return writeRulePage(w, rule)
	}
	return fmt.Errorf("format %q is not known; use text or json", format)
}

func writeRuleList(w io.Writer, rules []engine.Rule) error {
	t := newText(w)
	width := 0
	for _, r := range rules {
		width = max(width, runewidth.StringWidth(r.ID))
	}
	for i, r := range rules {
		if i == 0 || r.Topic != rules[i-1].Topic {
			if i > 0 {
				t.line("")
			}
			t.line(t.bold(r.Topic))
		}
		id := "  " + runewidth.FillRight(r.ID, width) + "  "
		label := t.paint(r.Severity, fmt.Sprintf("%-8s", r.Severity))
		t.paragraph(id+label, lipgloss.Width(id+label), plain(r.Title))
	}
	t.line("")
	t.paragraph("", 0, fmt.Sprintf("%s. `abut rules ID` tells why it happens and what to do.", counted(len(rules), "rule")))
	_, err := io.WriteString(w, t.b.String())
	return err
}

func writeRulePage(w io.Writer, r engine.Rule) error {
	t := newText(w)
	t.paragraph("", 0, r.Title)
	t.line(fmt.Sprintf("%s, %s, %s", r.ID, r.Topic, t.paint(r.Severity, r.Severity)))
	for _, text := range strings.Split(r.Description, "\n\n") {
		t.line("")
		t.paragraph("", 0, text)
	}
	source := r.Source
	if words := strings.ReplaceAll(r.Basis, "-", " "); words != "" && words != r.Source {
		source += " (" + words + ")"
	}
	for _, part := range []struct{ title, text string }{
		{"Why it happens", r.Reason}, {"What to do", r.Remedy}, {"Source", source}, {"Example", r.Example},
	} {
		if part.text != "" {
			t.line("")
			t.line(t.bold(part.title))
			t.paragraph("", 2, part.text)
		}
	}
	t.line("")
	t.paragraph("", 0, Caution)
	_, err := io.WriteString(w, t.b.String())
	return err
}
