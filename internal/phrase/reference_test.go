package phrase

import (
	"encoding/json"
	"math"
	"os"
	"testing"
)

// TestReferenceQuantities reads figures as they are written and holds them
// against published values; "per" is the figure that the expected value counts
// in, the inner unit without it.
func TestReferenceQuantities(t *testing.T) {
	raw, err := os.ReadFile("../../testdata/reference/quantities.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Checks []struct {
			ID        string
			Inputs    struct{ Text, Kind, Per string }
			Expected  float64
			Tolerance struct{ Abs, Rel float64 }
			Source    string
		}
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		t.Fatal(err)
	}
	r := reader(t)
	value := func(t *testing.T, text, kind string) float64 {
		for _, q := range r.Quantities(text, "") {
			if q.Kind == kind && q.Min != nil {
				return *q.Min
			}
		}
		t.Fatalf("no %s is read in %q", kind, text)
		return 0
	}
	for _, c := range file.Checks {
		t.Run(c.ID, func(t *testing.T) {
			got := value(t, c.Inputs.Text, c.Inputs.Kind)
			if c.Inputs.Per != "" {
				got /= value(t, c.Inputs.Per, c.Inputs.Kind)
			}
			if room := max(c.Tolerance.Abs, c.Tolerance.Rel*math.Abs(c.Expected)); math.Abs(got-c.Expected) > room {
				t.Errorf("got %g, want %g ± %g (%s)", got, c.Expected, room, c.Source)
			}
		})
	}
}
