package document

import (
	"math"
	"testing"

	"abut/internal/schedule"
)

// Margins of the published check values: 3 K rule with the WMO dew point.
func TestDewPoints(t *testing.T) {
	for name, tc := range map[string]struct {
		surface, air, rh, dew *float64
		margin                float64 // NaN: none
	}{
		"too near":                {ptr(10), ptr(12), ptr(0.80), nil, 1.35},
		"enough":                  {ptr(12), ptr(12), ptr(0.80), nil, 3.35},
		"cold and damp":           {ptr(4.5), ptr(6), ptr(0.85), nil, 0.83},
		"warm air":                {ptr(14.5), ptr(20), ptr(0.60), nil, 2.5},
		"dew point told":          {ptr(4), ptr(12), ptr(0.80), ptr(3), 1},
		"frost point below 0":     {ptr(-5), ptr(-5), ptr(0.80), nil, 2.01},
		"no humidity":             {ptr(4), ptr(6), nil, nil, math.NaN()},
		"no surface":              {nil, ptr(6), ptr(0.85), nil, math.NaN()},
		"humidity of no percent":  {ptr(4), ptr(6), ptr(0), nil, math.NaN()},
		"humidity over a hundred": {ptr(4), ptr(6), ptr(8.5), nil, math.NaN()},
	} {
		t.Run(name, func(t *testing.T) {
			figures := map[string]schedule.Figure{}
			for key, v := range map[string]*float64{"reading_surface_c": tc.surface, "reading_air_c": tc.air, "reading_rh": tc.rh, "reading_dew_c": tc.dew} {
				if v != nil {
					figures[key] = schedule.Figure{Min: v, Max: v, Text: "x"}
				}
			}
			dewPoints([]schedule.Line{{Figures: figures}})
			got, told := figures["reading_margin_k"]
			switch {
			case !told && math.IsNaN(tc.margin):
			case told && got.Min != nil && math.Abs(*got.Min-tc.margin) <= 0.02:
			default:
				t.Errorf("margin %v (%+v), want %.2f", told, got, tc.margin)
			}
		})
	}
}

func TestMarginToldIsKept(t *testing.T) {
	figures := map[string]schedule.Figure{
		"reading_surface_c": {Min: ptr(10)}, "reading_dew_c": {Min: ptr(9)}, "reading_margin_k": {Min: ptr(4), Text: "4 K"},
	}
	dewPoints([]schedule.Line{{Figures: figures}})
	if got := figures["reading_margin_k"]; *got.Min != 4 {
		t.Errorf("margin %v", *got.Min)
	}
}

func ptr(x float64) *float64 { return &x }
