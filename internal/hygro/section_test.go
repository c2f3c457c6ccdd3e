package hygro

import (
	"encoding/json"
	"math"
	"os"
	"testing"
)

// The wall example is printed node by node for one month, layers undivided, so
// it is checked below Profile.
func TestPublishedWall(t *testing.T) {
	raw, err := os.ReadFile("testdata/examples.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Steady struct {
			Layers                 []struct{ R, Sd float64 }
			Rsi, Rse, Seconds, Rel float64
			OutC                   float64   `json:"out_c"`
			OutRH                  float64   `json:"out_rh"`
			InC                    float64   `json:"in_c"`
			InRH                   float64   `json:"in_rh"`
			TempC                  []float64 `json:"temp_c"`
			SatPa                  []float64 `json:"sat_pa"`
			WetNodes               []int     `json:"wet_nodes"`
			TotalG                 float64   `json:"total_g"`
		}
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		t.Fatal(err)
	}
	e := file.Steady
	var layers []LayerResult
	for _, l := range e.Layers {
		layers = append(layers, LayerResult{Counted: true, R: &l.R, SdM: &l.Sd})
	}
	s := newSection(layers, e.Rsi, e.Rse, math.Inf(1), 0.001, 200)
	temps := s.temperatures(e.OutC, e.InC)
	sat := make([]float64, len(temps))
	for i, temp := range temps {
		sat[i] = SaturationPa(temp)
		within(t, "temperature", temp, e.TempC[i], e.Rel)
		within(t, "saturation", sat[i], e.SatPa[i], e.Rel)
	}
	_, stays := s.flow(sat, make([]float64, len(sat)), e.OutRH/100*SaturationPa(e.OutC), e.InRH/100*SaturationPa(e.InC))
	var wet []int
	total := 0.0
	for i, g := range stays {
		if g > 0 {
			wet = append(wet, i)
			total += g * e.Seconds
		}
	}
	if len(wet) != len(e.WetNodes) || wet[0] != e.WetNodes[0] || wet[1] != e.WetNodes[1] {
		t.Errorf("wet nodes %v, want %v", wet, e.WetNodes)
	}
	within(t, "condensate", total, e.TotalG, e.Rel)
}

func within(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	if math.Abs(got-want) > rel*math.Abs(want) {
		t.Errorf("%s: got %.8g, want %.8g within %g", what, got, want, rel)
	}
}
