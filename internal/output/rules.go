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
		return writeIndented(w, map[string]any{"rules": append([]engine.Rule{}, rules...), "caution": ruleCaution})
	case "text":
		return writeRuleList(w, rules)
	}
	return fmt.Errorf("format %q is not known; use text or json", format)
}

// WriteRule writes what is known of one rule, as text or json.
func WriteRule(w io.Writer, format string, rule engine.Rule) error {
	switch format {
	case "json":
		return writeIndented(w, map[string]any{"rule": rule, "caution": ruleCaution})
	case "text":
		return writeRulePage(w, rule)
	}
	return fmt.Errorf("format %q is not known; use text or json", format)
}

func writeRuleList(w io.Writer, rules []engine.Rule) error {
	t := newText(w)
	for i, topic := range byTopic(rules) {
		if i > 0 {
			t.line("")
		}
		t.line(t.bold(topic[0].Topic))
		t.ruleLines(topic)
	}
	t.line("")
	t.paragraph("", 0, fmt.Sprintf("%s. `abut rules ID` tells why it happens and what to do.", counted(len(rules), "rule")))
	t.paragraph("", 0, "Severities are the usual ones; a finding may have its own. "+severityLegend())
	return t.b.Flush()
}

// byTopic parts the rules, which come in order of topic.
func byTopic(rules []engine.Rule) [][]engine.Rule {
	var topics [][]engine.Rule
	for i, r := range rules {
		if i == 0 || r.Topic != rules[i-1].Topic {
			topics = append(topics, nil)
		}
		last := len(topics) - 1
		topics[last] = append(topics[last], r)
	}
	return topics
}

// ruleLines is as wide as the names of its own topic, which leaves more of the
// line to the titles.
func (t *textReport) ruleLines(rules []engine.Rule) {
	width := 0
	for _, r := range rules {
		width = max(width, runewidth.StringWidth(r.ID))
	}
	for _, r := range rules {
		id := "  " + runewidth.FillRight(r.ID, width) + "  "
		label := t.paint(r.Severity, fmt.Sprintf("%-9s", r.Severity))
		t.paragraph(id+label, lipgloss.Width(id+label), r.Title)
	}
}

// severities are what each severity asks of the reader, worst first.
func severities() []struct{ name, called, means string } {
	return []struct{ name, called, means string }{
		{"error", "an error", "it fails as scheduled, or breaks a stated limit"},
		{"warning", "a warning", "a question to ask"},
		{"note", "a note", "worth knowing, and never fails a check"},
	}
}

func severityLegend() string {
	var told []string
	for _, s := range severities() {
		told = append(told, s.name+": "+s.means)
	}
	return strings.Join(told, "; ") + "."
}

// usually names the severity of a rule, with what it asks of the reader.
func (t *textReport) usually(r engine.Rule) {
	for _, s := range severities() {
		if s.name == r.Severity {
			t.paragraph("Usually "+t.paint(s.name, s.called)+": ", 0, s.means)
		}
	}
}

// writeRulePage begins with a row that fires, since the rest is easier to read
// with a case in mind.
func writeRulePage(w io.Writer, r engine.Rule) error {
	t := newText(w)
	t.line(t.bold(plain(r.Title)))
	t.paragraph("", 0, "Rule "+r.ID)
	t.usually(r)
	t.section("Example", r.Example)
	for _, text := range lesson(r.Description) {
		t.line("")
		t.paragraph("", 0, text)
	}
	t.section("Why it happens", r.Reason)
	t.section("What to do", r.Remedy)
	t.section("Source", sourceOf(r))
	t.line("")
	t.paragraph("", 0, ruleCaution)
	return t.b.Flush()
}

func (t *textReport) section(title, text string) {
	if text == "" {
		return
	}
	t.line("")
	t.line(t.bold(title))
	t.paragraph("", 2, text)
}

// lesson parts a description into paragraphs; when the rule does not apply is
// looked for by itself and has one of its own.
func lesson(description string) []string {
	var parts []string
	for _, text := range strings.Split(description, "\n\n") {
		text = strings.Join(strings.Fields(text), " ")
		parts = append(parts, strings.Split(strings.ReplaceAll(text, ". "+exception, ".\n"+exception), "\n")...)
	}
	return parts
}

// exception begins the sentence on when a rule does not apply.
const exception = "It does not apply "

// sourceOf adds how well the source is known, where its own words do not say
// so and it was not read.
func sourceOf(r engine.Rule) string {
	basis := strings.ReplaceAll(r.Basis, "-", " ")
	if basis == "" || r.Basis == "source-read" || strings.Contains(r.Source, basis) {
		return r.Source
	}
	return r.Source + " (" + basis + ")"
}
