package output

import (
	"io"

	"abut/internal/engine"
)

// jsonReport follows schema/findings.schema.json.
type jsonReport struct {
	Findings []engine.Finding `json:"findings"`
	Reading  struct {
		Files []Reading `json:"files"`
	} `json:"reading"`
	Summary Summary `json:"summary"`
}

func writeJSON(w io.Writer, run Run) error {
	report := jsonReport{Findings: append([]engine.Finding{}, run.Findings...), Summary: run.Summary()}
	report.Reading.Files = append([]Reading{}, run.Reading...)
	return writeIndented(w, report)
}

func writeIndented(w io.Writer, value any) error { return WriteJSON(w, "  ", value) }
