package phrase

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"abut/internal/regexp"
)

// listed is a lexicon of a few tags and words.
type listed struct{ re *regexp.Regexp }

func (l listed) Nouns(text string) []Noun {
	var out []Noun
	for _, m := range l.re.FindAllStringIndex(text, -1) {
		out = append(out, Noun{Span: Span{m[0], m[1]}, Key: text[m[0]:m[1]], Kind: "material"})
	}
	return out
}

func testLexicon() listed {
	return listed{regexp.MustCompile(`(?i)\b(?:M-\d+|K-\d+|PVC pipe|PVC|EPDM gasket|EPDM|creosoted pile|old pier|wool board|foam board|zinc flashing|copper gutter|alum sill|coping|plank|concrete|block|plywood|curing compound|wax|oil|pitch coating|butyl tape|lead|felt|shims|studs|primer|lintel|XPS|brick|grout)\b`)}
}

// showClause prints a clause as the tables below write it:
// polarity subject relation object, clearance.
func showClause(text string, c Clause) string {
	names := func(nouns []Noun) string {
		var out []string
		for _, n := range nouns {
			out = append(out, text[n.Start:n.End])
		}
		return strings.Join(out, "+")
	}
	s := c.Polarity + " [" + names(c.Subject) + "]"
	if c.Relation != "" {
		s += " " + c.Relation + " [" + names(c.Object) + "]"
	}
	if c.Clearance != nil {
		s += fmt.Sprintf(" clear %.0f", *c.Clearance.Min)
	}
	if c.Of >= 0 {
		s += fmt.Sprintf(" of %d", c.Of)
	}
	return s
}

func TestRead(t *testing.T) {
	r := reader(t)
	for _, tc := range []struct{ text, want string }{
		{"M-1; K-2\nEPDM gasket", "yes [M-1] / yes [K-2] / yes [EPDM gasket]"},
		{"M-1, K-2 and plywood", "yes [M-1] / yes [K-2+plywood]"},
		{"concrete / M-1 / XPS / brick", "yes [concrete] / yes [M-1] / yes [XPS] / yes [brick]"},
		{"M-1 + K-2", "yes [M-1+K-2]"},
		{"zinc flashing bedded in K-2", "yes [zinc flashing] set_in [K-2]"},
		{"zinc flashing direct @ plank", "yes [zinc flashing] on [plank]"},
		{"alum sill directly at concrete", "yes [alum sill] on [concrete]"},
		{"coping on plank over M-1", "yes [coping] on [plank] / yes [plank] over [M-1]"},
		{"coping over, shims below", "yes [coping] over [] / yes [shims]"},
		{"PVC pipe kept 3 in. clear of membrane", "yes [PVC pipe] clear_of [membrane] clear 76"},
		{"butyl tape (6/14) stops short of EPDM", "yes [butyl tape] clear_of [EPDM]"},
		{"K-2 at laps, 60 clr M-1", "yes [K-2] / yes [K-2] clear_of [M-1] clear 60"},
		{"gland 40 clear of M-1", "yes [] clear_of [M-1] clear 40"},
		{"EPDM 2 layers, clear of M-1", "yes [EPDM] / yes [EPDM] clear_of [M-1]"},
		{"PVC pipe, 1,5 m away", "yes [PVC pipe] clear_of [] clear 1500"},
		{"old pier 900 mm off the wall", "yes [old pier] clear_of [] clear 900"},
		{"copper gutter, 8 in. below M-1", "yes [copper gutter] / yes [copper gutter] clear_of [M-1] clear 203"},
		{"600 mm of washed gravel, then creosoted pile", "yes [] clear_of [] clear 600 / yes [] then [creosoted pile] clear 600"},
		{"bar on top, then K-2 along the edge of the sheet", "yes [] / yes [K-2] along [sheet]"},
		{"M-1, then K-2 on plywood", "yes [M-1] / yes [M-1] then [K-2] / yes [K-2] on [plywood]"},
		{"creosoted pile, tight against the sheet", "yes [creosoted pile] / yes [creosoted pile] against [sheet]"},
		{"EPDM gasket does not touch the sheet", "no [EPDM gasket] against [sheet]"},
		{"EPDM gasket not in contact with M-1", "no [EPDM gasket] against [M-1]"},
		{"no EPDM here", "no [EPDM]"},
		{"no'EPDM", "no [EPDM]"},
		{"M-1; no'EPDM’XPS", "yes [M-1] / no [EPDM+XPS]"},
		{"no wax, oil or pigmented curing compound", "no [wax] / no [oil+curing compound]"},
		{"zinc flashing on lintel without felt", "yes [zinc flashing] on [lintel] / no [felt]"},
		{"zinc flashing on lintel, no felt", "yes [zinc flashing] on [lintel] / no [felt]"},
		{"no grout other than K-2", "no [grout] / yes [grout] except [K-2]"},
		{"no grout except K-2", "no [grout] / yes [grout] except [K-2]"},
		{"all grout except K-2", "yes [grout] / no [grout] except [K-2]"},
		{"K-2 only in the copper gutter, not on M-1", "yes [K-2] set_in [copper gutter] / no [K-2] on [M-1]"},
		{"no frost on block", "yes [] on [block]"},
		{"primer if required", "conditional [primer]"},
		{"wool board loose until brick is up", "conditional [wool board+brick]"},
		{"pitch coating removed", "removed [pitch coating]"},
		{"pitch coating, fully stripped", "removed [pitch coating]"},
		{"pitch coating, not removed", "yes [pitch coating]"},
		{"foam board and felt dropped per Bulletin 6", "removed [foam board+felt]"},
		{"felt goes out with the answer to RFI 88, wool board stays", "removed [felt] / yes [wool board]"},
		{"wool board comes out of the stud bays", "removed [wool board]"},
		{"zinc flashing comes out 1 in. past brick", "yes [zinc flashing+brick]"},
		{"felt left out in the rain", "yes [felt]"},
		{"block, loose sand swept", "yes [block]"},
		{"after removal of the pitch coating", "removed [] after [pitch coating]"},
		{"on old wall, scrape off pitch coating to sound block", "yes [] / yes [pitch coating] to [block]"},
		{"scrape off pitch coating", "removed [pitch coating]"},
		{"do not remove pitch coating", "yes [pitch coating]"},
		{"butyl tape between copper gutter and alum sill", "yes [butyl tape] between [copper gutter+alum sill]"},
		{"lead, full width, between M-1 and PVC", "yes [lead] / yes [lead] between [M-1+PVC]"},
		{"M-1 (EPDM is inside the frame)", "yes [M-1] / yes [EPDM] of 0"},
		{"M-1 (4 no.)", "yes [M-1]"},
		{"K-2 at laps. Alum sill clipped to plank", "yes [K-2] / yes [Alum sill] on [plank]"},
		{"coping laps 4 in. Set plank against it", "yes [coping] lapped_onto [] / yes [plank] against [it]"},
		{"lintel below the edge of M-1", "yes [lintel] below [M-1]"},
		{"M-1 turned up 6 in. behind brick", "yes [M-1] behind [brick]"},
		{"no lead within 3 ft", "no [lead] clear 914"},
		{"", ""},
		{"—", ""},
	} {
		t.Run(tc.text, func(t *testing.T) {
			var got []string
			for _, c := range r.Read(tc.text, testLexicon(), Options{}) {
				got = append(got, showClause(tc.text, c))
			}
			if s := strings.Join(got, " / "); s != tc.want {
				t.Errorf("got  %s\nwant %s", s, tc.want)
			}
		})
	}
}

// TestReadDeals wants every noun, figure, date and signal in one clause only.
func TestReadDeals(t *testing.T) {
	r := reader(t)
	text := "M-1 on block (K-2 primed 3/9/2026, 40 mil, frost-free), lapped 4 in. over PVC; XPS 2 in. thick, set 5 May 2026 (dry)"
	var nouns, figures, dates []string
	signals := map[string]int{}
	for _, c := range r.Read(text, testLexicon(), Options{Order: MonthFirst}) {
		for _, n := range c.Nouns {
			if n.Kind != "self" {
				nouns = append(nouns, n.Key)
			}
		}
		for _, q := range c.Quantities {
			figures = append(figures, q.Text+":"+q.Role)
		}
		for _, d := range c.Dates {
			dates = append(dates, d.Text+":"+d.Verb)
		}
		for _, s := range c.Signals {
			signals[s.ID]++
		}
	}
	slices.Sort(nouns)
	for got, want := range map[string]string{
		strings.Join(nouns, ","):   "K-2,M-1,PVC,XPS,block",
		strings.Join(figures, ","): "40 mil:,4 in.:lap,2 in.:thickness",
		strings.Join(dates, ","):   "3/9/2026:prime,5 May 2026:install",
	} {
		if got != want {
			t.Errorf("got %s, want %s", got, want)
		}
	}
	if signals["frost"] != 1 || signals["surface_dry"] != 1 {
		t.Errorf("signals dealt out wrongly: %v", signals)
	}
}

func FuzzRead(f *testing.F) {
	for _, s := range []string{"M-1 on block; no EPDM", "K-2 (M-1 (XPS (", ")))", "no, or, no or wax", "lap.. over", "then then", "4 in. Brick", "M-1\n\n—", "w/o w/", "\xff(\xfe)", "kept clear, 2 in."} {
		f.Add(s)
	}
	r := reader(f)
	f.Fuzz(func(t *testing.T, text string) {
		nouns := 0
		clauses := r.Read(text, testLexicon(), Options{Year: 2026})
		for _, c := range clauses {
			if c.Start < 0 || c.End > len(text) || c.Start > c.End || c.Of >= len(clauses) {
				t.Fatalf("clause %+v outside %q", c, text)
			}
			for _, s := range c.Signals {
				if text[s.Start:s.End] != s.Text {
					t.Fatalf("signal %+v is not at its span in %q", s, text)
				}
			}
			for _, n := range c.Nouns {
				if n.Kind != "self" {
					nouns++
				}
			}
		}
		if want := len(testLexicon().Nouns(text)); nouns != want {
			t.Fatalf("%d nouns dealt out of %d in %q", nouns, want, text)
		}
	})
}

// A condition after a comma holds for what it names, and not for the sheet.
func TestConditionOfAnAddedPiece(t *testing.T) {
	for _, cl := range reader(t).Read("sheet laid in the sun, unless heated", nil, Options{}) {
		for _, s := range cl.Signals {
			if want := s.ID == "heated"; s.If != want {
				t.Errorf("%s: under a condition %v, want %v", s.ID, s.If, want)
			}
		}
	}
}

// What one thing comes with between is what parts it from the row's own.
func TestWithSomethingBetween(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"EPDM gasket with zinc flashing between":                      "yes [EPDM gasket] separated_by [zinc flashing]",
		"coping, with felt in between them":                           "yes [coping] / yes [coping] separated_by [felt]",
		"EPDM gasket with wool board interposed":                      "yes [EPDM gasket] separated_by [wool board]",
		"shims with no felt between":                                  "yes [shims] / no [shims] separated_by [felt]",
		"lintel with shims between plank and coping":                  "yes [lintel] with [shims] / yes [shims] between [plank+coping]",
		"EPDM gasket with shims":                                      "yes [EPDM gasket] with [shims]",
		"coping on plank with butyl tape between, clear of the grout": "yes [coping] on [plank] / yes [plank] separated_by [butyl tape] / yes [plank] clear_of [grout]",
	} {
		var got []string
		for _, c := range r.Read(text, testLexicon(), Options{}) {
			got = append(got, showClause(text, c))
		}
		if s := strings.Join(got, " / "); s != want {
			t.Errorf("%s:\n got %s\nwant %s", text, s, want)
		}
	}
}

// What is said of another case, time or version is not said of this work; what is
// said of this work is, whatever stands beside it.
func TestAsides(t *testing.T) {
	r := reader(t)
	watched := []string{"surface_wet", "surface_dry", "frost", "dusty", "end_dam", "edge_open", "curing_compound", "release_oil", "primer_none"}
	for text, want := range map[string]string{
		// a rule
		"never stick on a damp face":                 "(surface_wet)",
		"priming over rime is forbidden":             "(frost)",
		"wet block may not be covered":               "(surface_wet)",
		"on no account is the edge left loose":       "(edge_open)",
		"not primed, damp face":                      "primer_none surface_wet",
		"never mind the damp":                        "surface_wet",
		"stay away from any soaked block":            "",
		"keep going on damp block":                   "surface_wet",
		"do not wait, face is damp":                  "surface_wet",
		"frost never came off":                       "frost",
		"nobody swept it: face is dusty":             "dusty",
		"it was not covered and the block is soaked": "surface_wet",
		// a case
		"block moist under 6 %":                          "",
		"block moist at the base":                        "surface_wet",
		"should the block be damp, wait":                 "(surface_wet)",
		"whenever frost shows, stop":                     "(frost)",
		"any loose edge, left loose or not, gets rolled": "edge_open",
		"damp block is set aside":                        "(surface_wet)",
		"form oil, if any, is washed away":               "(release_oil)",
		"is the face damp?":                              "(surface_wet)",
		"when the tent came off the block was damp":      "surface_wet",
		"if late, prime at noon; block is damp":          "surface_wet",
		// another time or version
		"the early sketch had no end dams":             "(!end_dam)",
		"like the early sketch, no end dams":           "!end_dam",
		"the 2019 wall was damp, here frost in joints": "(surface_wet) frost",
		"wall no. 2019 is damp":                        "surface_wet",
		"two years ago the wall was damp":              "(surface_wet)",
		"has been damp since last winter":              "surface_wet",
		"trial was dry. Face is damp":                  "(surface_dry) surface_wet",
		"curing compound was sprayed last fall":        "curing_compound",
		// turned down
		"edge left loose was considered":               "(edge_open)",
		"the offer (pan without end dams) was refused": "(!end_dam)",
		"bead was refused, edge left loose":            "edge_open",
		"cured by hose instead of being left loose":    "(!edge_open)",
	} {
		var got []string
		for _, cl := range r.Read(text, nil, Options{Year: 2027}) {
			for _, s := range cl.Signals {
				if !slices.Contains(watched, s.ID) {
					continue
				}
				id := map[bool]string{true: "!"}[s.No] + s.ID
				if s.If {
					id = "(" + id + ")"
				}
				got = append(got, id)
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
	for text, want := range map[string]string{
		"EPDM gasket was refused":                               "conditional [EPDM gasket]",
		"EPDM gasket was in the old drawings":                   "conditional [EPDM gasket]",
		"EPDM gasket stays as in the old drawings":              "yes [EPDM gasket]",
		"pitch coating was swapped for butyl tape":              "conditional [pitch coating] / yes [pitch coating] for [butyl tape]",
		"butyl tape refused, EPDM gasket on M-1":                "conditional [butyl tape] / yes [EPDM gasket] on [M-1]",
		"the mock-up is done, EPDM gasket on M-1":               "yes [] / yes [EPDM gasket] on [M-1]",
		"instead of being set in grout, zinc flashing on plank": "conditional [] set_in [grout] / yes [zinc flashing] on [plank]",
	} {
		var got []string
		for _, c := range r.Read(text, testLexicon(), Options{}) {
			got = append(got, showClause(text, c))
		}
		if s := strings.Join(got, " / "); s != want {
			t.Errorf("%s:\n got %s\nwant %s", text, s, want)
		}
	}
}
