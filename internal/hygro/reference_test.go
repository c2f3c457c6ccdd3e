package hygro_test

import (
	"encoding/json"
	"io/fs"
	"strconv"
	"testing"

	"abut/internal/hygro"
	"abut/policies"
)

// TestReferenceHumidity holds the formulas and the classes of room air against
// published values.
func TestReferenceHumidity(t *testing.T) {
	type inputs struct {
		Ask   string
		C     float64
		F     *float64
		RH    float64
		Class int
	}
	file := loadJSON[struct {
		Checks []struct {
			ID        string
			Inputs    inputs
			Expected  float64
			Tolerance struct{ Abs, Rel float64 }
		}
	}](t, "../../testdata/reference/humidity.json")
	const paPerPsi = 6894.757 // NIST SP 811 appendix B.8
	ask := map[string]func(inputs) float64{
		"saturation_pa":  func(in inputs) float64 { return hygro.SaturationPa(in.C) },
		"saturation_psi": func(in inputs) float64 { return hygro.SaturationPa((*in.F-32)/1.8) / paPerPsi },
		"dew_point":      func(in inputs) float64 { return hygro.DewPoint(in.C, in.RH) },
		"excess_pa":      func(in inputs) float64 { return excess(t, in.Class) },
	}
	for _, c := range file.Checks {
		compute := ask[c.Inputs.Ask]
		if compute == nil {
			t.Fatalf("%s asks for %q, which is not known", c.ID, c.Inputs.Ask)
		}
		near(t, c.ID, compute(c.Inputs), c.Expected, c.Tolerance.Abs, c.Tolerance.Rel)
	}
}

// excess is the vapor excess of a class at 0 °C outside in the table.
func excess(t *testing.T, class int) float64 {
	t.Helper()
	raw, err := fs.ReadFile(policies.FS, "knowledge/hygro.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Indoor struct {
			Classes map[string]struct {
				Excess float64 `json:"excess_pa"`
			}
		}
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		t.Fatal(err)
	}
	return file.Indoor.Classes[strconv.Itoa(class)].Excess
}
