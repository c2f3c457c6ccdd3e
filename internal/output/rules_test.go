package output

import (
	"bytes"
	"path/filepath"
	"testing"

	"abut/internal/engine"
)

func sampleRules() []engine.Rule {
	return []engine.Rule{
		{
			ID: "contact-oil", Topic: "contact", Severity: "error", Title: "Oil between two materials",
			Description: "Oil moves from the softer one to the other.\nIt shows after two summers.\n\nBy two winters it is hard. It does not apply through metal.",
			Reason:      "the oil has room to move", Remedy: "part them by metal", Source: "maker's bulletin on oils", Basis: "from-memory",
			Example: "vinyl flashing on an asphaltic sheet", Package: "contact.oil", File: "policies/contact/oil.rego", Line: 20,
		},
		{
			ID: "sequence-lap", Topic: "sequence", Severity: "note", Title: "Lap", Description: "d", Reason: "r", Remedy: "m",
			Source: "common practice", Basis: "common-practice", Package: "sequence.lap", File: "policies/sequence/lap.rego", Line: 9,
		},
	}
}

func TestRulesGolden(t *testing.T) {
	for _, format := range []string{"text", "json"} {
		t.Run(format, func(t *testing.T) {
			var list, page bytes.Buffer
			if err := WriteRules(&list, format, sampleRules()); err != nil {
				t.Fatal(err)
			}
			if err := WriteRule(&page, format, sampleRules()[0]); err != nil {
				t.Fatal(err)
			}
			golden(t, filepath.Join("testdata", "rules."+format), list.String())
			golden(t, filepath.Join("testdata", "rule."+format), page.String())
		})
	}
}

func TestRulesUnknownFormat(t *testing.T) {
	if WriteRules(&bytes.Buffer{}, "sarif", nil) == nil || WriteRule(&bytes.Buffer{}, "sarif", engine.Rule{}) == nil {
		t.Error("no error")
	}
}
