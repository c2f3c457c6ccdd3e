package schedule_test

import "testing"

func TestHeldBack(t *testing.T) {
	for remark, want := range map[string]float64{
		"held back 2 in. from face on stainless drip":         50.8,
		"recessed 13 mm from face of brick on ss drip edge":   13,
		"ends 3/4 in. short of the brick face; no metal edge": 19.05,
		"held 50 mm behind face of veneer":                    50,
		"EPDM gasket kept 2 in. clear":                        0,
		"copper drip, tape held 3/4 in back, dams 3 in":       19.05,
		"stops 20 mm behind the face, stop ends 75 mm":        20,
		"laps 6 in. over the sheet below":                     0,
		"stops flush with the brick face":                     0,
	} {
		t.Run(remark, func(t *testing.T) {
			s := readPages(t, page{name: "S", grid: "Mark | Flashing | Substrate | Primer | Touches | Remarks\nD1 | butyl sheet | CMU | none | brick | " + remark})
			f, told := s.Lines[0].Figures["held_back_mm"]
			switch {
			case !told && want == 0:
			case told && f.Min != nil && *f.Min > want-0.1 && *f.Min < want+0.1:
			default:
				t.Errorf("got %+v, want %.1f", f, want)
			}
		})
	}
}
