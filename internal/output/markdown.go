package output

import (
	"fmt"
	"io"
	"strings"

	"abut/internal/engine"
)

// writeMarkdown makes a table of each sheet, then each reason once.
func writeMarkdown(w io.Writer, run Run) error {
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
	if text := s.notUnderstood(); text != "" {
		fmt.Fprintf(&b, "\n%s\n", text)
	}
	for _, p := range s.Problems {
		fmt.Fprintf(&b, "\n**Not done:** %s\n", markdown(p.Line()))
	}
	markdownTables(&b, run.Findings)
	markdownReasons(&b, run.Findings)
	fmt.Fprintf(&b, "\n---\n\n%s\n", s.Caution)
	_, err := io.WriteString(w, b.String())
	return err
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
		for _, r := range f.Related {
			finding += "<br>With " + markdown(related(f, r))
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
