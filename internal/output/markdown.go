package output

import (
	"fmt"
	"io"
	"slices"
	"sort"
	"strings"

	"abut/internal/engine"
)

// markdownLimit is what fits a comment on a change: the usual hosts take some
// 65,500 characters.
const markdownLimit = 65000

// problemLimit is how many problems a comment tells in full.
const problemLimit = 50

// writeMarkdown makes a table of each sheet, then each reason once. What is too
// long for a comment loses findings, waived and mild ones first, and says how
// many.
func writeMarkdown(w io.Writer, run Run) error {
	text := markdownOf(run, len(run.Findings))
	if len(text) > markdownLimit {
		over := func(n int) bool { return len(markdownOf(run, n)) > markdownLimit }
		text = markdownOf(run, max(0, sort.Search(len(run.Findings), over)-1))
	}
	_, err := io.WriteString(w, text)
	return err
}

// markdownOf tells the n weightiest findings, in their order.
func markdownOf(run Run, n int) string {
	var b strings.Builder
	s := run.Summary()
	fmt.Fprintf(&b, "# Material schedule: %s\n\n", s.bySeverity())
	fmt.Fprintf(&b, "Checked %s.", counted(len(s.Files), "file"))
	if topics := s.byTopic(); topics != "" {
		fmt.Fprintf(&b, " By topic: %s.", topics)
	}
	if s.Waived > 0 {
		fmt.Fprintf(&b, " Waived: %d.", s.Waived)
	}
	b.WriteString("\n")
	if left := len(run.Findings) - n; left > 0 {
		fmt.Fprintf(&b, "\n**Left out here to fit a comment: %s**, the mildest first. The other reports hold all.\n", counted(left, "finding"))
	}
	for _, text := range []string{s.Otherwise(), s.Aside()} {
		if text != "" {
			fmt.Fprintf(&b, "\n%s\n", markdown(text))
		}
	}
	if text := s.notUnderstood(); text != "" {
		fmt.Fprintf(&b, "\n%s\n", text)
	}
	for i, p := range s.Problems {
		if i == problemLimit {
			fmt.Fprintf(&b, "\n**Not done:** %d more, which the other reports name\n", len(s.Problems)-i)
			break
		}
		fmt.Fprintf(&b, "\n**Not done:** %s\n", markdown(p.Line()))
	}
	findings := weightiest(run.Findings, n)
	markdownTables(&b, findings)
	markdownReasons(&b, findings)
	fmt.Fprintf(&b, "\n---\n\n%s\n", s.Caution)
	return b.String()
}

// weightiest picks n findings, those not waived and the severe ones first, and
// leaves them in their order.
func weightiest(findings []engine.Finding, n int) []engine.Finding {
	weight := func(i int) int {
		if findings[i].Waived != nil {
			return len(engine.Severities())
		}
		return slices.Index(engine.Severities(), findings[i].Severity)
	}
	order := make([]int, len(findings))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return weight(a) - weight(b) })
	order = order[:n]
	slices.Sort(order)
	picked := make([]engine.Finding, n)
	for i, at := range order {
		picked[i] = findings[at]
	}
	return picked
}

func markdownTables(b *strings.Builder, findings []engine.Finding) {
	for i, f := range findings {
		if i == 0 || f.File != findings[i-1].File || f.Sheet != findings[i-1].Sheet {
			title := markdown(f.File)
			if f.Sheet != "" {
				title += ", sheet " + markdown(f.Sheet)
			}
			fmt.Fprintf(b, "\n## %s\n\n| row | mark | severity | finding | what to do |\n| --- | --- | --- | --- | --- |\n", title)
		}
		severity, remedy := f.Severity, markdown(f.Remedy)
		if f.Waived != nil {
			severity, remedy = "waived", markdown(waiver(*f.Waived))
		}
		finding := markdown(f.Message)
		for _, row := range with(f) {
			finding += "<br>With " + markdown(row)
		}
		fmt.Fprintf(b, "| %s | %s | %s | %s (%s) | %s |\n",
			markdownRow(f), markdown(f.Mark), severity, finding, f.Rule, remedy)
	}
}

func markdownRow(f engine.Finding) string {
	if f.Row == 0 {
		return "–"
	}
	return strings.TrimSpace(fmt.Sprintf("%d %s", f.Row, strings.Join(f.Cells, " ")))
}

func markdownReasons(b *strings.Builder, findings []engine.Finding) {
	told := map[string]bool{}
	for _, f := range findings {
		line := fmt.Sprintf("- **%s**: %s (%s)\n", f.Rule, markdown(f.Reason), markdown(f.Source))
		if told[line] {
			continue
		}
		if len(told) == 0 {
			b.WriteString("\n## Why\n\n")
		}
		told[line] = true
		b.WriteString(line)
	}
}
