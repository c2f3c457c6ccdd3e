package compare

import (
	"testing"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/schedule"
)

// TestActions: the proposal is that of the worst finding on the swap that
// counts; what was waived is told and raises nothing.
func TestActions(t *testing.T) {
	line := schedule.Line{ID: "S!3", Sheet: "S", Row: 3, Mark: "W1"}
	swap := document.Swap{
		Slot: "material", Was: document.Offer{Text: "Arvo", Tag: "Arvo"},
		Now: document.Offer{Text: "Benth", Tag: "Benth", At: schedule.At{Sheet: "S", Row: 3, Cell: "C3"}},
	}
	doc := &document.Document{
		Lines:      []schedule.Line{line},
		Comparison: &document.Comparison{Pairs: []document.Pair{{Line: "S!3", Swaps: []document.Swap{swap}}}},
	}
	own := func(severity string) engine.Finding {
		return engine.Finding{Rule: "substitution-worse", Topic: "substitution", Severity: severity, Sheet: "S", Row: 3, Cells: []string{"C3"}, Message: "thinner"}
	}
	beside := func(severity string) engine.Finding {
		return engine.Finding{
			Rule: "contact-x", Topic: "contact", Severity: severity, Sheet: "S", Row: 9, Message: "it touches",
			Related: []engine.Related{because(row{"S", 3}, swap)},
		}
	}
	waived := own("error")
	waived.Waived = &engine.Waived{By: "reviewer", Until: "2026-12-31", Reason: "agreed"}
	tests := map[string]struct {
		findings []engine.Finding
		want     string
	}{
		"nothing":            {nil, "no exceptions taken"},
		"notes":              {[]engine.Finding{own("note"), beside("note")}, "no exceptions taken"},
		"a row beside":       {[]engine.Finding{beside("warning")}, "make corrections noted"},
		"worse":              {[]engine.Finding{own("warning"), beside("note")}, "revise and resubmit"},
		"breaks":             {[]engine.Finding{own("note"), beside("error")}, "rejected"},
		"waived":             {[]engine.Finding{waived}, "no exceptions taken"},
		"waived, and breaks": {[]engine.Finding{waived, beside("warning")}, "make corrections noted"},
	}
	c := comparer(t)
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			entries := c.Log(doc, tc.findings)
			if len(entries) != 1 || entries[0].Action != tc.want {
				t.Fatalf("got %+v, want %q", entries, tc.want)
			}
			if len(entries[0].Worse)+len(entries[0].Breaks) != len(tc.findings) {
				t.Errorf("not all told: %+v", entries[0])
			}
		})
	}
}
