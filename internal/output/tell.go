package output

import "abut/internal/engine"

// Told is a finding in the words of the reports, each text in one line and safe
// to show; for reports in packages of their own.
type Told struct {
	Label   string // its severity, or "waived"
	Message string
	Do      string
	With    []string // the rows that take part
	Waiver  string   // who accepted it and why, "" if nobody did
}

// Tell words a finding.
func Tell(f engine.Finding) Told {
	t := Told{Label: f.Severity, Message: plain(f.Message), Do: plain(f.Remedy)}
	for _, row := range with(f) {
		t.With = append(t.With, plain(row))
	}
	if f.Waived != nil {
		t.Label, t.Waiver = "waived", plain(waiver(*f.Waived))
	}
	return t
}

// Plain makes a text from a workbook one line that is safe to show.
func Plain(text string) string { return plain(text) }

// Counts tells the number of findings by severity and of those waived.
func (s Summary) Counts() string {
	return s.bySeverity() + ", " + counted(s.Waived, "waived finding")
}
