package material

import (
	"slices"
	"strings"
	"testing"
	"testing/quick"

	"abut/internal/phrase"
	"abut/policies"
)

func load(t testing.TB) *Vocabulary {
	t.Helper()
	v, err := Load(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// short lists what was found: the family, (traits) where only those are known.
func short(found []Material) string {
	var out []string
	for _, m := range found {
		switch {
		case m.Unknown:
			out = append(out, "?")
		case m.Family == "":
			out = append(out, "("+strings.Join(m.Traits, " ")+")")
		default:
			out = append(out, m.Family)
		}
	}
	return strings.Join(out, " ")
}

func TestFind(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"unfaced glass batts, R-20": "glass-fiber-insulation", "glass mat sheathing": "glass-mat-gypsum-sheathing",
		"cross-laminated timber, oiled":                           "cross-laminated-timber",
		"HDPE sheeting, preapplied":                               "hdpe-blindside-membrane",
		"HDPE sheeting, 15 mil":                                   "polyethylene-sheet",
		"mastic, asphalt, solventless":                            "rubberized-asphalt-mastic",
		"trowel bitumen mastic":                                   "asphalt-cutback-mastic",
		"asphalt core protection board 6 mm":                      "asphalt-protection-board",
		"20 mm butyl cord":                                        "butyl-joint-rope",
		"two-part urethane":                                       "polyurethane-sealant",
		"2-pt urethane membrane":                                  "polyurethane-waterproofing",
		"corridor, lvl 3":                                         "",
		"butyl tape on LVL":                                       "butyl-flashing-tape lumber-unspecified",
		"mod-bit peel & stick, 40 mil, HDPE face":                 "rubberized-asphalt-membrane",
		"PVC roof sheet, polyethylene film between":               "pvc-roof-membrane polyethylene-sheet",
		"SBS sheet, polyethylene film face":                       "rubberized-asphalt-membrane",
		"alum. edge trim @ PT nailer":                             "aluminum-sheet treated-lumber",
		"XPS, EPS; PIR":                                           "xps eps polyiso",
		"standing-seam roof panel, 22 ga steel, PVDF black":       "prefinished-steel",
		"metal roof panels on clips":                              "sheet-metal-unspecified",
		"MS-polymer joint sealant":                                "hybrid-sealant",
		"LW insulating conc. deck":                                "cast-concrete",
		"hot-dip galv. lintel":                                    "galvanized-sheet",
		"Galvanised steel ledger, bolted":                         "galvanized-sheet",
		"Hot dipped galvanised bolts":                             "hot-dip-galvanized-fastener",
		"sealant, silicone, neutral cure":                         "neutral-silicone-sealant",
		"coping of mill finish aluminium over PT nailer":          "aluminum-sheet treated-lumber",
		"blk on the left, plywood on the right":                   "concrete-masonry osb-plywood-sheathing",
		"GMGS shthg. on mtl. studs":                               "glass-mat-gypsum-sheathing steel-stud-framing",
		"SAF carried onto the CMU, not onto brick":                "self-adhered-flashing-unspecified concrete-masonry clay-brick",
		"plasticized PVC, EPDM, coal tar, solvent-borne sealants": "(pvc-plasticized plasticized) (epdm) coal-tar-pitch solvent-acrylic-sealant",
		"bead over rod. Precast panel":                            "sealant-unspecified cast-concrete",
		"sill on pan. Concrete dry":                               "cast-concrete",
		"uPVC window":                                             "rigid-vinyl-window",
		"TPO rf mbrn; plast. PVC flsh":                            "tpo-membrane pvc-thru-wall-flashing",
		"bkr rod, fib cem pnl, lam. copper":                       "backer-unspecified cement-board asphalt-copper-laminate-flashing",
		"concrete wall sealant":                                   "sealant-unspecified",
		"EPDM boot clamped to SBS sheet":                          "epdm-gasket rubberized-asphalt-membrane",
		"silicone beads at the anodized frame":                    "neutral-silicone-sealant anodized-aluminum",
		"polyisocynurate board":                                   "polyiso",
		"housewrap, house wrap":                                   "housewrap-polyolefin",
		"brick; mineral wool; gyp. bd.":                           "clay-brick mineral-wool gypsum-board",
	} {
		if got := short(v.Find(text)); got != want {
			t.Errorf("%q: %s, want %s", text, got, want)
		}
	}
}

func TestLookAlikes(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"rigid PVC conduit":              "rigid-pvc-product",
		"PVC-U sash":                     "rigid-vinyl-window",
		"coal-tar-free pitch substitute": "",
		"coal-tar-free primer":           "primer-unspecified",
		"unplasticized vinyl frame":      "rigid-vinyl-window",
		"EPDM-free tape":                 "tape-unspecified",
		"tar paper":                      "asphalt-felt",
		"plastic cement":                 "asphalt-cutback-mastic",
		"polyvinyl butyral interlayer":   "laminated-glass",
		"butyl acetate":                  "",
		"lead time 6 weeks":              "",
		"lead flashing":                  "lead-sheet",
		"vinyl gasket":                   "flexible-pvc-gasket",
		"copper-colored gutters":         "sheet-metal-unspecified",
		"dark bronze anodized aluminum":  "anodized-aluminum",
		"water-based primer":             "water-primer",
		"solvent-free primer":            "water-primer",
		"Copper Street":                  "",
		"steel erector":                  "",
		"SPF":                            "?",
		"SS":                             "?",
		"borosilicate":                   "",
		"brick ties":                     "galvanized-wall-tie",
		"asphalt paving":                 "",
		"neutral cure silicone":          "neutral-silicone-sealant",
		"silicon rubber gasket":          "silicone-gasket",
		"siliconized acrylic latex":      "acrylic-latex-sealant",
		"MCQ plate":                      "micronized-copper-lumber",
		"ACQ plate":                      "acq-lumber",
		"borate sill plate":              "borate-lumber",
	} {
		if got := short(v.Find(text)); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func TestDescribe(t *testing.T) {
	v := load(t)
	for _, tc := range []struct {
		parts   []string
		family  string
		with    []string
		without []string
	}{
		{[]string{"Primer, synthetic rubber in solvent", "toluene / hexane"}, "solvent-primer", []string{"solvent-borne"}, nil},
		{[]string{"Butyl sealant, gun grade", "no solvent"}, "butyl-sealant", []string{"butyl"}, []string{"solvent-borne"}},
		{[]string{"Gunnable butyl sealant / tape, solvent-free"}, "butyl-sealant", []string{"butyl"}, []string{"solvent-borne"}},
		{[]string{"Gunnable butyl sealant / strip, polyethylene faced"}, "butyl-sealant", []string{"solvent-borne"}, []string{"polyethylene-film"}},
		{[]string{"Gunnable butyl sealant / acrylic primer, solvent-free"}, "butyl-sealant", []string{"solvent-borne"}, nil},
		{[]string{"Solvent-borne acrylic primer", ""}, "solvent-primer", []string{"solvent-borne"}, []string{"water-borne"}},
		{[]string{"Acrylic primer, solvent-free", ""}, "water-primer", []string{"water-borne"}, []string{"solvent-borne"}},
		{[]string{"Emulsion primer", "water"}, "water-primer", []string{"water-borne"}, []string{"solvent-borne"}},
		{[]string{"Peel and stick flashing", "rubberized asphalt"}, "rubberized-asphalt-flashing-tape", []string{"asphaltic"}, nil},
		{[]string{"Peel and stick flashing", "butyl"}, "butyl-flashing-tape", []string{"butyl"}, []string{"asphaltic"}},
		{[]string{"Peel and stick flashing", ""}, "self-adhered-flashing-unspecified", nil, []string{"asphaltic", "butyl"}},
		{[]string{"Self-adhered SBS sheet", "rubberized asphalt", "Low-temp. grade"}, "rubberized-asphalt-membrane", []string{"grade-low-temp"}, nil},
		{[]string{"Self-adhered SBS sheet, PE film", "", "not on foam; keep off solvents"}, "rubberized-asphalt-membrane", []string{"polyethylene-film"}, []string{"solvent-borne", "polyurethane-foam"}},
		{[]string{"Flashing, butyl on aluminum foil, high-temp.", "butyl"}, "butyl-flashing-tape", []string{"foil-faced", "grade-high-temp"}, []string{"aluminum", "metal"}},
		{[]string{"Aluminum sheet 0.040 in, mill finish", "aluminum"}, "aluminum-sheet", []string{"aluminum"}, []string{"anodized", "organic-coated"}},
		{[]string{"Coping, aluminum, PVDF, dark bronze", "aluminum"}, "painted-aluminum", []string{"organic-coated"}, nil},
		{[]string{"Angle, hot-dip galvanized", "steel"}, "galvanized-sheet", []string{"hot-dip-galvanized"}, []string{"thin-zinc-coated"}},
		{[]string{"1-part silicone, vinegar cure", ""}, "acetoxy-silicone-sealant", []string{"silicone-acetoxy"}, []string{"silicone-neutral-cure"}},
		{[]string{"One-component silicone, neutral cure", ""}, "neutral-silicone-sealant", []string{"silicone-neutral-cure"}, []string{"silicone-acetoxy"}},
		{[]string{"Curing compound, wax-base", ""}, "curing-compound", []string{"oil-or-wax-residue"}, nil},
	} {
		m := v.Describe(tc.parts...)
		if m.Family != tc.family {
			t.Errorf("%q: %s, want %s (%v)", tc.parts, m.Family, tc.family, m.Why)
		}
		if f := v.Family(tc.parts...); f != m.Family {
			t.Errorf("%q: the family alone is %q, and %q as described", tc.parts, f, m.Family)
		}
		for _, tr := range tc.with {
			if !slices.Contains(m.Keys, tr) {
				t.Errorf("%q lacks %s: %v", tc.parts, tr, m.Keys)
			}
		}
		for _, tr := range tc.without {
			if slices.Contains(m.Keys, tr) {
				t.Errorf("%q has %s", tc.parts, tr)
			}
		}
	}
}

func TestUnknownHasNear(t *testing.T) {
	v := load(t).Explaining()
	m := v.Describe("bentonyt panell")
	if !m.Unknown || len(m.Near) == 0 {
		t.Errorf("%+v", m)
	}
	if m := v.Describe("qzx vwk"); !m.Unknown || len(m.Near) != 0 {
		t.Errorf("%+v", m)
	}
	if f := v.Family("bentonyt panell"); f != "" {
		t.Errorf("family %q", f)
	}
	if m := v.Describe(""); !m.Unknown {
		t.Errorf("%+v", m)
	}
}

// Every family's own words name it, or a family that is narrower.
func TestOwnWordsName(t *testing.T) {
	v := load(t)
	for i := range v.families {
		f := &v.families[i]
		for _, w := range f.words {
			found := v.Find(w)
			if len(found) == 0 || !slices.ContainsFunc(found, func(m Material) bool { return m.Family == f.id }) {
				t.Errorf("%s: its word %q is read as %q", f.id, w, short(found))
			}
		}
	}
}

func TestSpansAndKeys(t *testing.T) {
	v := load(t)
	check := func(text string) bool {
		end := 0
		for _, m := range v.Find(text) {
			if m.Start < end || m.End <= m.Start || m.End > len(text) || text[m.Start:m.End] != m.Text {
				t.Errorf("%q: %+v", text, m)
				return false
			}
			end = m.End
			if m.Family != "" && m.Keys[0] != m.Family {
				t.Errorf("%q: keys %v", text, m.Keys)
			}
		}
		return true
	}
	if err := quick.Check(check, nil); err != nil {
		t.Error(err)
	}
	words := strings.Fields("SBS sheet , peel & stick ( EPDM boot ) / copper - free no solvent w/ PE film : ; . é ″ S/S C.I.P. 15# non vinyl")
	for i := range words {
		for j := i; j < len(words); j++ {
			check(strings.Join(words[i:j+1], " "))
			check(strings.Join(words[i:j+1], ""))
		}
	}
}

func TestNouns(t *testing.T) {
	v := load(t)
	var lexicon phrase.Lexicon = v
	got := lexicon.Nouns("EPDM boot on copper")
	if len(got) != 2 || got[0].Key != "epdm-gasket" || got[0].Start != 0 || got[0].End != 9 || got[1].Key != "copper-sheet" {
		t.Errorf("%+v", got)
	}
}

func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		if _, err := Load(policies.FS); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkFind(b *testing.B) {
	v, err := Load(policies.FS)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		v.Find("White alum coping on vented clips over. PT nailer, alum cleat screwed to it. Edge under cleat, silicone bead.")
	}
}

// A bead low in solvent is not told as one that attacks what solvents attack; what the
// kind itself releases stays.
func TestLowSolvent(t *testing.T) {
	v := load(t)
	for text, want := range map[string]bool{
		"lap mastic, low in solvent":                 false,
		"low-solvent edge mastic":                    false,
		"solvent mastic":                             true,
		"solvent-release butyl sealant, low-solvent": true,
	} {
		if got := slices.Contains(v.Describe(text).Traits, "solvent-borne"); got != want {
			t.Errorf("%s: solvent-borne %v, want %v", text, got, want)
		}
	}
}

// What falls on something is a material; a name is written as one.
func TestFallsOn(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"water off the zinc sheet falls onto brick": "zinc sheet",
		"rain of the copper falls into it":          "copper",
		"Copper Falls Clinic":                       "",
		"copper falls":                              "",
	} {
		got := ""
		if found := v.Find(text); len(found) > 0 {
			got = found[0].Text
		}
		if got != want {
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

// The film or foil that a sheet of asphalt or butyl lies on is its face, whatever the sheet
// is for.
func TestFaces(t *testing.T) {
	v := load(t)
	for _, face := range []string{", polyethylene film face", " faced with HDPE film", ", aluminum foil face"} {
		for text, want := range map[string]string{
			"rubberized asphalt sheet":       "rubberized-asphalt-membrane",
			"SBS vapor barrier":              "rubberized-asphalt-membrane",
			"rubber bitumen membrane":        "rubberized-asphalt-membrane",
			"butyl sheet":                    "butyl-flashing-tape",
			"self-adhered asphaltic sheet":   "rubberized-asphalt-membrane",
			"polymer-modified bitumen sheet": "rubberized-asphalt-membrane",
		} {
			if got := v.Family(text + face); got != want {
				t.Errorf("%s%s: %s, want %s", text, face, got, want)
			}
		}
	}
	for text, want := range map[string]string{"polyethylene vapor barrier": "polyethylene-sheet", "10 mil polyethylene sheet": "polyethylene-sheet", "foil-faced vapor retarder": "foil-vapor-retarder"} {
		if got := v.Family(text); got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

// A mastic whose carrier is not stated is not taken for one of solvent, whichever of the
// names of its asphalt it bears.
func TestMasticsOfRubberizedAsphalt(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{"SBS rubberized asphalt mastic": "rubberized-asphalt-mastic", "rubberized asphalt mastic": "rubberized-asphalt-mastic", "asphalt mastic, cutback": "asphalt-cutback-mastic"} {
		if got := v.Family(text); got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

// The foil of a board closes it to vapor, whichever name the board has; one without keeps
// its own traits.
func TestFoilOfABoard(t *testing.T) {
	v := load(t)
	for text, want := range map[string]bool{"foil-faced PIR slab": true, "polyisocyanurate, foil both faces": true, "foil faced ISO": true, "coated-glass polyiso": false, "PIR slab": false} {
		found := v.Describe(text)
		if got := v.Family(text) == "polyiso" && slices.Contains(found.Traits, "foil-faced"); got != want {
			t.Errorf("%s: %v", text, found.Traits)
		}
	}
}

// A sheet that is cut back is no cutback: the word for asphalt thinned with solvent stands
// alone in one word, or beside what it tells of.
func TestCutBack(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"corner cut back and doubled": "", "cut back 40 mm at the jamb": "",
		"cutback": "asphalt-cutback-mastic", "cut-back asphalt": "asphalt-cutback-mastic", "cut-back mastic": "asphalt-cutback-mastic",
	} {
		if got := v.Family(text); got != want {
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

// Kraft by itself is the face of a batt; kraft with other words is what those say.
func TestKraft(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"kraft, class II": "kraft-facer", "kraft VR": "kraft-facer", "kraft WRB": "asphalt-building-paper", "foil-scrim-kraft": "foil-vapor-retarder",
	} {
		if got := v.Family(text); got != want {
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

// The strip that fills a control joint is a gasket where it is of soft vinyl, and the part
// of a roof that turns up a wall is of the sheet of that roof.
func TestSoftStripsAndUpturns(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"soft PVC joint filler":            "flexible-pvc-gasket",
		"plasticized vinyl movement joint": "",
		"rigid PVC joint filler":           "rigid-pvc-product",
		"PVC upstand at the parapet":       "pvc-roof-membrane",
		"rigid PVC upstand":                "rigid-pvc-product",
	} {
		got := ""
		if found := v.Find(text); len(found) > 0 {
			got = found[0].Family
		}
		if got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// A film that opens with moisture is no polyethylene, wherever the words place it.
func TestResponsiveFilms(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"smart interior vapor retarder film":                "vapor-retarder-smart",
		"moisture-responsive vapor retarder":                "vapor-retarder-smart",
		"variable-permeance interior vapor retarder, nylon": "vapor-retarder-smart",
		"interior vapor retarder film":                      "polyethylene-sheet",
	} {
		got := ""
		if found := v.Find(text); len(found) > 0 {
			got = found[0].Family
		}
		if got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// An underlayment of the high grade is of the stuff that its words tell, and of asphalt
// where they tell none.
func TestUnderlaymentsOfTheHighGrade(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"butyl hi-temp. underlayment":                "butyl-flashing-tape",
		"butyl high-heat underlayment, 250F":         "butyl-flashing-tape",
		"high-temp underlayment, butyl adhesive":     "butyl-flashing-tape",
		"hi-temp underlayment":                       "high-temp-asphalt-underlayment",
		"HT underlayment":                            "high-temp-asphalt-underlayment",
		"SBS high-temperature underlayment, 250F":    "high-temp-asphalt-underlayment",
		"240F underlayment":                          "high-temp-asphalt-underlayment",
		"self-adhered high-temperature underlayment": "high-temp-asphalt-underlayment",
	} {
		if got := v.Describe(text); got.Family != want || !slices.Contains(got.Traits, "grade-high-temp") {
			t.Errorf("%q: %q %v, want %q of the high grade", text, got.Family, got.Traits, want)
		}
	}
}

// A sheet called open to vapor and no more is an open membrane of some kind; a plain or a tight
// one may be anything.
func TestSheetOpenToVapor(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"breathable sheet":       "air-barrier-unspecified",
		"vapour-open sheet":      "air-barrier-unspecified",
		"breathable house wrap":  "housewrap-polyolefin",
		"permeable roofing":      "roofing-unspecified",
		"impermeable sheet":      "",
		"sheet of unknown maker": "",
	} {
		m := v.Describe(text)
		if m.Family != want {
			t.Errorf("%q: %q, want %q", text, m.Family, want)
		}
		if open := slices.Contains(m.Keys, "vapor-permeable"); want == "air-barrier-unspecified" && !open {
			t.Errorf("%q is not open: %v", text, m.Keys)
		}
	}
}

// A mastic of the rubberized asphalt of the sheets is theirs, however the words stand; one
// of plain asphalt is cut back with solvent.
func TestMasticsOfTheSheetsAsphalt(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"SBS rubberized asphalt trowel mastic":       "rubberized-asphalt-mastic",
		"SBS rubberised bitumen edge mastic":         "rubberized-asphalt-mastic",
		"SBS rubberized asphalt sheet, self-adhered": "rubberized-asphalt-membrane",
		"asphalt trowel mastic":                      "asphalt-cutback-mastic",
		"SBS rubberized asphalt mastic, solvent":     "asphalt-cutback-mastic",
	} {
		if got := v.Describe(text).Family; got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// The mastic of the edge of a sheet is a mastic of the sheet's asphalt and no sheet; a list of
// the two is both.
func TestMasticsOfAnEdge(t *testing.T) {
	v := load(t)
	for text, want := range map[string]string{
		"rubberised bitumen membrane edge mastic": "rubberized-asphalt-mastic",
		"SBS membrane edge mastic":                "rubberized-asphalt-mastic",
		"sheet lap mastic":                        "mastic-unspecified",
		"rubberized asphalt sheet":                "rubberized-asphalt-membrane",
	} {
		if got := v.Family(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
	if got := v.Family("insulated tie-ins"); got == "insulation-unspecified" {
		t.Error("a tie-in is taken for insulation")
	}
}
