package compare

import (
	"testing"

	"abut/internal/schedule"
	"abut/policies"
)

func comparer(t testing.TB) *Comparer {
	t.Helper()
	c, err := New(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func stated(value float64, text, unit string) schedule.Figure {
	return schedule.Figure{Min: &value, Max: &value, Text: text, Unit: unit}
}

func TestOrder(t *testing.T) {
	second := 1.016
	both := stated(1.0, "1.0 mm (40 mil)", "mm")
	both.Other = &second
	tests := map[string]struct {
		kind     string
		was, now schedule.Figure
		want     string
	}{
		"the same":              {"thickness_mm", stated(1.016, "40 mil", "mil"), stated(1.016, "40 mil", "mil"), equal},
		"thinner":               {"thickness_mm", stated(1.016, "40 mil", "mil"), stated(0.8128, "32 mil", "mil"), lower},
		"thinner by one":        {"thickness_mm", stated(0.9144, "36 mil", "mil"), stated(0.889, "35 mil", "mil"), lower},
		"other unit, rounded":   {"thickness_mm", stated(1.143, "45 mil", "mil"), stated(1.1, "1.1 mm", "mm"), equal},
		"other unit, thinner":   {"thickness_mm", stated(1.143, "45 mil", "mil"), stated(1.0, "1.0 mm", "mm"), lower},
		"two units in one cell": {"thickness_mm", stated(1.016, "1.016 mm", "mm"), both, equal},
		"degrees, rounded":      {"apply_min_c", stated(4.444, "40 °F", "°F"), stated(4, "4 °C", "°C"), equal},
		"degrees below zero":    {"apply_min_c", stated(-6.667, "20 °F", "°F"), stated(-7, "-7 °C", "°C"), equal},
		"warmer":                {"apply_min_c", stated(-6.667, "20 °F", "°F"), stated(4, "4 °C", "°C"), higher},
		"perms and metric":      {"vapor_ng", stated(2.8607, "0.05", "perm"), stated(2.9, "2.9", "ng"), equal},
		"no longer stated":      {"air_lsm2", stated(0.003, "0.003", "l"), schedule.Figure{}, missing},
		"stated now":            {"air_lsm2", schedule.Figure{}, stated(0.003, "0.003", "l"), added},
		"neither":               {"air_lsm2", schedule.Figure{}, schedule.Figure{}, none},
		"days without limit":    {"exposure_days", stated(90, "90", "day"), schedule.Figure{NoLimit: true, Text: "no limit"}, higher},
		"in doubt":              {"air_lsm2", stated(0.003, "0.003", "l"), schedule.Figure{Problem: "no-unit", Min: &second}, missing},
	}
	set := comparer(t).set
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			if got := order(tc.was, tc.now, tc.kind, set); got != tc.want {
				t.Errorf("got %q, want %q", got, tc.want)
			}
		})
	}
}

func accepted(text string, keys ...string) schedule.Acceptance {
	return schedule.Acceptance{Target: schedule.Target{Text: text, Keys: keys}}
}

func TestLostSubstrates(t *testing.T) {
	concrete, gypsum := accepted("concrete", "cast-concrete", "cement-based"), accepted("gypsum", "glass-mat", "gypsum")
	tests := map[string]struct {
		was, now []schedule.Acceptance
		want     []string
		here     bool
	}{
		"kept":             {[]schedule.Acceptance{concrete}, []schedule.Acceptance{concrete, gypsum}, nil, false},
		"lost here":        {[]schedule.Acceptance{concrete}, []schedule.Acceptance{gypsum}, []string{"concrete"}, true},
		"lost elsewhere":   {[]schedule.Acceptance{concrete, gypsum}, []schedule.Acceptance{concrete}, []string{"gypsum"}, false},
		"wider word":       {[]schedule.Acceptance{concrete}, []schedule.Acceptance{accepted("masonry and concrete", "cement-based")}, nil, false},
		"nothing is told":  {[]schedule.Acceptance{concrete}, nil, nil, false},
		"no primer at all": {[]schedule.Acceptance{concrete}, []schedule.Acceptance{accepted("", "*")}, nil, false},
		"all was told":     {[]schedule.Acceptance{accepted("", "*")}, []schedule.Acceptance{gypsum}, nil, false},
		"all but this":     {[]schedule.Acceptance{concrete}, []schedule.Acceptance{accepted("", "*"), {Target: schedule.Target{Keys: concrete.Keys, Except: true}}}, []string{"concrete"}, true},
		"said not to suit": {[]schedule.Acceptance{concrete}, []schedule.Acceptance{{Target: schedule.Target{Keys: concrete.Keys, Except: true}}}, []string{"concrete"}, true},
	}
	line := &schedule.Line{Items: []schedule.Item{{Slot: "substrate", Polarity: "yes", Keys: concrete.Keys}}}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			got := lostSubstrates(&schedule.Product{Accepts: tc.was}, &schedule.Product{Accepts: tc.now}, line)
			if len(got) != len(tc.want) {
				t.Fatalf("got %v, want %v", got, tc.want)
			}
			for i, l := range got {
				if l.target.Text != tc.want[i] || l.here != tc.here {
					t.Errorf("got %+v, want %s here %v", l, tc.want[i], tc.here)
				}
			}
		})
	}
}
