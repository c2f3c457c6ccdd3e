package phrase

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"
)

func reader(t testing.TB) *Reader {
	t.Helper()
	r, err := New()
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// show prints a quantity the short way the tables below write it:
// kind min..max, @ test pressure, = twin, and what is odd about it.
func show(q Quantity) string {
	s := q.Kind + " " + span(q)
	if q.At != nil {
		s += " @" + span(*q.At)
	}
	if q.Other != nil {
		s += " =" + span(*q.Other)
	}
	for _, x := range []struct {
		is   bool
		name string
	}{{q.Disagree, "disagree"}, {q.Assumed, "assumed"}, {q.NoLimit, "no limit"}, {q.Bound == "about", "about"}} {
		if x.is {
			s += " " + x.name
		}
	}
	return s
}

func span(q Quantity) string {
	low, high := "", ""
	if q.Min != nil {
		low = fmt.Sprintf("%.5g", *q.Min)
	}
	if q.Max != nil {
		high = fmt.Sprintf("%.5g", *q.Max)
	}
	if low == high {
		return low
	}
	return low + ".." + high
}

func TestQuantities(t *testing.T) {
	r := reader(t)
	for _, tc := range []struct{ text, hint, want string }{
		{"36 mil (0.9 mm)", "", "length 0.9144 =0.9"},
		{"60 mil / 1.5 mm", "", "length 1.524 =1.5"},
		{"60 mil (2.5 mm)", "", "length 1.524 =2.5 disagree"},
		{"80 mil facer (2.0 mm)", "", "length 2.032 =2"},
		{"80 mil facer (3.2 mm)", "", "length 2.032 =3.2 disagree"},
		{"30 mil DFT (0.76 mm)", "", "length 0.762 =0.76"},
		{"60 mils wet (0.6 in.)", "", "length 1.524 =15.24 disagree"},
		{"60 mil EPDM (6 in.)", "", "length 1.524|length 152.4"},
		{"80 mil facer (3.2 mm bead)", "", "length 2.032|length 3.2"},
		{"2 in. (50 mm) or more", "", "length 50.8.. =50.."},
		{"36 in. (900 mm)", "", "length 914.4 =900"},
		{"3/8 in.", "", "length 9.525"},
		{"1 5/8\"", "", "length 41.275"},
		{"1-5/8 in wide", "", "length 41.275"},
		{"2-1/2\" all edges", "", "length 63.5"},
		{"1 1/2 in. all round", "", "length 38.1"},
		{"2 in all but the corners", "", ""},
		{"3½ in", "", "length 88.9"},
		{"¾\" ply", "", "length 19.05"},
		{".032 in. sheet", "", "length 0.8128"},
		{"2'-6\"", "", "length 762"},
		{"4 ft 3 1/2 in. away", "", "length 1308.1"},
		{"12 x 18 in.", "", "size 304.8..457.2"},
		{"2x8 blocking, 4x4 post", "", ""},
		{"1,5 m from the wall", "", "length 1500"},
		{"6,200 ft", "", "length 1.8898e+06"},
		{"0.003 cfm/sq. ft. @ 1.57 psf", "", "air_permeance 0.01524 @75.172"},
		{"0.004 cfm/ft² max. at 0.30 in. w.g.", "", "air_permeance ..0.02032 @74.727"},
		{"0.02 L/s·m² at 75 Pa (0.004 cfm/ft2 at 1.57 psf) or less", "", "air_permeance ..0.02 @75 =..0.02032"},
		{"0,0008", "air_permeance:L/(s·m²)", "air_permeance 0.0008 assumed"},
		{"8E-04", "air_permeance:cfm/ft2", "air_permeance 0.004064 assumed"},
		{"11 ng/Pa-s-m2", "", "vapor_permeance 11"},
		{"0.5 perms or less", "", "vapor_permeance ..28.607"},
		{"7,5", "vapor_permeance:ng/(Pa·s·m²)", "vapor_permeance 7.5 assumed"},
		{"50 F", "", "temperature 10"},
		{"-12C", "", "temperature -12"},
		{"\u221212 \u00b0C (10 \u00b0F)", "", "temperature -12 =-12.222"},
		{"minus 5 °C", "", "temperature -5"},
		{"40 to 100 °F (4 to 38 °C)", "", "temperature 4.4444..37.778 =4..38"},
		{"between 5 and 35 °C", "", "temperature 5..35"},
		{"15\u201395 °F", "", "temperature -9.4444..35"},
		{"20 °F (-7 °C) and up", "", "temperature -6.6667.. =-7.."},
		{"40 deg. F (9 deg. C)", "", "temperature 4.4444 =9 disagree"},
		{"5 F above the dew point", "", "temperature_difference 2.7778"},
		{"21 ± 2 °C", "", "temperature 19..23"},
		{"keep 3 C-1 clips", "", ""},
		{"75 in B-2", "length:mm", "length 75 assumed"},
		{"4 in. B-2 strip", "", "length 101.6"},
		{"VOC not over 275 g/l", "", "voc ..275"},
		{"2.1 lb/gal", "", "voc 251.64"},
		{"22 ga.", "", "gauge 22"},
		{"20 oz lead-coated copper", "", "area_mass 6103"},
		{"45% RH at 70 F", "", "ratio 0.45|temperature 21.111"},
		{"21 d, dry", "", "days 21"},
		{"wait three weeks", "", "days 21"},
		{"16d nails", "", ""},
		{"up to 120 days", "", "days ..120"},
		{"90", "days", "days 90 assumed"},
		{"no limit", "days:day", "days  no limit"},
		{"n/a", "days", ""},
		{"≥ 40", "length:mil", "length 1.016.. assumed"},
		{"max. 350", "voc:g/L", "voc ..350 assumed"},
		{"45 - 95", "temperature:F", "temperature 7.2222..35 assumed"},
		{"40 mil", "length:mm", "length 1.016"},
		{"~1.5 mm", "", "length 1.5 about"},
		{"at least 100 mm", "", "length 100.."},
		{"9 am to 2 pm", "", "clock 9..14"},
		{"11 to 3 pm", "", "clock 11..15"},
		{"R-19 batts", "", "r_value 3.3461"},
		{"R-19", "", ""},
		{"layer 4 in the cavity", "", ""},
		{"see 4/A-501, AB-12, R-01/02/03, DN300, 3.04", "", ""},
		{"ASTM D4397, type 304", "", ""},
		{"cast 3/9/2026, 28 days old", "", "days 28"},
		{"no metal within 3'", "", "length 914.4"},
		{"runs hot: 180 F at most", "", "temperature ..82.222"},
		{"abc", "length:mil", ""},
		{"laps 75 mm least, better 100 mm", "", "length 75..|length 100"},
		{"12 perms (E96 B) or more", "", "vapor_permeance 686.56.."},
		{"45 days (see data) at most", "", "days ..45"},
		{"12 perms (E96 B), or 30 days at most", "", "vapor_permeance 686.56|days ..30"},
	} {
		t.Run(tc.text, func(t *testing.T) {
			var got []string
			for _, q := range r.Quantities(tc.text, tc.hint) {
				got = append(got, show(q))
				if q.Text != tc.text[q.Start:q.End] {
					t.Errorf("text %q is not at its span", q.Text)
				}
			}
			if s := strings.Join(got, "|"); s != tc.want {
				t.Errorf("got %q, want %q", s, tc.want)
			}
		})
	}
}

// unitCheck is one conversion with its source.
type unitCheck struct {
	What      string
	Value     float64
	Unit      string
	Expected  float64
	Tolerance struct{ Rel, Abs float64 }
	Source    string
}

func unitChecks(t *testing.T) []unitCheck {
	raw, err := os.ReadFile("testdata/units.json")
	if err != nil {
		t.Fatal(err)
	}
	var checks []unitCheck
	if err := json.Unmarshal(raw, &checks); err != nil {
		t.Fatal(err)
	}
	if len(checks) < 20 {
		t.Fatalf("only %d reference values", len(checks))
	}
	return checks
}

// TestUnitChecks converts the reference values of testdata/units.json, which
// are in SI base units, both ways.
func TestUnitChecks(t *testing.T) {
	checks := unitChecks(t)
	// what the reference is told in, per inner unit
	scale := map[string]float64{"length": 1000, "strength": 1000, "pressure": 1, "voc": 1, "line_force": 1, "r_value": 1, "area_mass": 1, "vapor_permeance": 1}
	back := map[string]string{"1.5 mm to mil": "mil", "75 Pa to psf": "psf", "250 g/L to lb/gal": "lb/gal", "775 g/L to lb/gal": "lb/gal",
		"200 g/m2 to lb/ft2": "", "metric perm to US perm": "perm", "33 in to mm (weep spacing)": "mm"}
	r := reader(t)
	for _, c := range checks {
		u := r.units.byName[fold(c.Unit)]
		if c.Unit == "R" {
			u = r.units.byName[fold("R-ip")]
		}
		if u == nil {
			t.Fatalf("%s: unit %q is unknown", c.What, c.Unit)
		}
		got := u.inner(c.Value) / scale[u.kind]
		if to, ok := back[c.What]; ok {
			if to == "" {
				got = u.inner(c.Value) / 4882.428 // no spelling of its own: psf is a pressure
			} else {
				got = u.inner(c.Value) / r.units.byName[to].Factor
			}
		}
		room := max(c.Tolerance.Abs, c.Tolerance.Rel*math.Abs(c.Expected))
		if math.Abs(got-c.Expected) > room {
			t.Errorf("%s (%s): got %g, want %g ± %g", c.What, c.Source, got, c.Expected, room)
		}
	}
}

// TestUnitSpellings reads every spelling behind a figure and wants its unit back.
func TestUnitSpellings(t *testing.T) {
	r := reader(t)
	seen := map[*unit]bool{}
	for _, u := range r.units.byName {
		if seen[u] {
			continue
		}
		seen[u] = true
		for _, s := range u.Spellings {
			if u.Upper && len(s) == 1 {
				s = strings.ToUpper(s)
			}
			got, end := r.units.match("7 "+s, 2)
			if got != u || end != len(s)+2 {
				t.Errorf("%s: spelling %q read as %v, %d of %d bytes", u.ID, s, got, end-2, len(s))
			}
		}
	}
	if len(seen) < 60 {
		t.Errorf("only %d units", len(seen))
	}
}

func FuzzQuantities(f *testing.F) {
	for _, s := range []string{"40 mil (1.0 mm)", "7 5/8 in.", "0.004 cfm/ft2 max. at 1.57 psf", "3'-0\"", "1\u202f200 mm", "2½\"", "±", "- 7", "5/", "1e9999", "(((40 mil (", "R-", "7:30 am", "\xff40 F"} {
		f.Add(s, "length:mil")
	}
	r := reader(f)
	f.Fuzz(func(t *testing.T, text, hint string) {
		for _, q := range r.Quantities(text, hint) {
			if q.Start < 0 || q.End > len(text) || q.Start > q.End || q.Text != text[q.Start:q.End] {
				t.Fatalf("span %v outside %q", q.Span, text)
			}
			if q.Min != nil && q.Max != nil && *q.Min > *q.Max {
				t.Fatalf("minimum above maximum in %q", text)
			}
		}
	})
}

// TestBracketsOfEitherKind: a second unit in square brackets belongs to the figure as one
// in round brackets does, with the bracket that closes it.
func TestBracketsOfEitherKind(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"40 mils [1.0 mm] dry":       "40 mils [1.0 mm]",
		"40 mils (1.0 mm) dry":       "40 mils (1.0 mm)",
		"[film of 40 mils] on decks": "40 mils",
	} {
		if said := r.Quantities(text, ""); len(said) == 0 || said[0].Text != want {
			t.Errorf("%s: %+v, want %s", text, said, want)
		}
	}
}

// Before a count "in" is no inch: what is laid in two beads or coats.
func TestInBeforeACount(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{"laps 90 in two beads": false, "sprayed 40 in three passes": false, "laps 4 in, two beads": true, "laps 4 in. two beads": true} {
		got := slices.ContainsFunc(r.Quantities(text, ""), func(q Quantity) bool { return q.Kind == "length" && strings.HasPrefix(q.Unit, "in") })
		if got != want {
			t.Errorf("%q: an inch %v", text, got)
		}
	}
}

// A word that names numbered things stands before a length too, where the sign of inches follows
// the figure; at the end of a quotation that sign is none.
func TestInchesBehindALabel(t *testing.T) {
	r, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]int{`up the wall 8" min`: 1, `2" past the door 4"`: 2, `called "wall 8" there`: 0, `wall 8 in the north`: 0} {
		lengths := 0
		for _, q := range r.Quantities(text, "") {
			if q.Kind == "length" {
				lengths++
			}
		}
		if lengths != want {
			t.Errorf("%s: %d lengths, want %d", text, lengths, want)
		}
	}
}
