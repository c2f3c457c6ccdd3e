package schedule_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
)

const walls = "Mark | Membrane | Substrate | Primer | Touches\nD1 | R-1 | CMU | PR-1 | brick\nD2 | R-1 | plywood | none | brick\n\n"

// accepted writes an acceptance list as "family primer(list)".
func accepted(p *schedule.Product) string {
	var out []string
	for _, a := range p.Accepts {
		what := "*"
		if len(a.Keys) > 0 {
			what = a.Keys[0]
		}
		rule := a.Primer
		if len(a.Primers) > 0 {
			rule = strings.Join(a.Primers, "/")
		}
		if len(a.Primers) > 0 && a.Primer == "none" {
			rule = "none or " + rule
		}
		if a.Only {
			rule += " only"
		}
		out = append(out, what+" "+rule)
	}
	return strings.Join(out, ", ")
}

func targets(list []schedule.Target) string {
	var out []string
	for _, tg := range list {
		word := strings.Join(tg.Products, "/")
		if word == "" && len(tg.Keys) > 0 {
			word = tg.Keys[0]
		}
		if tg.Except {
			word = "fine:" + word
		}
		out = append(out, word)
	}
	return strings.Join(out, " ")
}

// Where a list of what to keep off tells the place of the product, that is not barred.
func TestWhatItStaysOnIsNotBarred(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Touches
D1 | BT-1 | plywood | G-1`}, page{name: "P", grid: `
Tag | Type | Min apply °C | Keep off
BT-1 | butyl sheet | -5 | coal tar
G-1 | EPDM gasket | -20 | BT-1 - keep to aluminum
G-2 | EPDM gasket | -20 | BT-1, copper; stays on glass`})
	for _, tag := range []string{"G-1", "G-2"} {
		for _, off := range product(t, s, tag).KeepOff {
			if barred := off.Text == "BT-1" || off.Text == "copper"; barred == off.Except {
				t.Errorf("%s: %+v", tag, off)
			}
		}
	}
}

// What a product is for is not what it is, unless nothing else is told.
func TestUseIsNotTheProduct(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Sealant
D1 | butyl sheet | J-2 | J-1`}, page{name: "P", grid: `
Tag | Name | Type | VOC g/L | Keep off
J-1 | Sealant, polyurethane | one part, for concrete joints | 40 | coal tar
J-2 | Face brick | clay brick for veneer | 0 | coal tar`})
	for tag, want := range map[string]string{"J-1": "sealant", "J-2": "masonry"} {
		if got := product(t, s, tag).Class; got != want {
			t.Errorf("%s is of class %q, want %q", tag, got, want)
		}
	}
}

func TestAcceptances(t *testing.T) {
	primers := "PR-1 | solvent-borne rubber primer | %s |\nPR-2 | water-borne acrylic primer | %s |\n"
	for name, tc := range map[string]struct {
		heading, cells, want string
	}{
		"primers in brackets": {"Substrates and primers", "CMU (PR-1 or PR-2); plywood (PR-2); galvanized steel (no primer)",
			"concrete-masonry PR-1/PR-2, osb-plywood-sheathing PR-2, galvanized-sheet none"},
		"a primer after a colon": {"Substrates and primers", "PR-1: CMU, cast concrete; PR-2: plywood",
			"concrete-masonry PR-1, cast-concrete PR-1, osb-plywood-sheathing PR-2"},
		"only": {"Substrates and primers", "CMU, plywood, XPS (with PR-2 only)",
			"concrete-masonry unsaid, osb-plywood-sheathing unsaid, xps PR-2 only"},
		"substrates alone": {"Accepted substrates", "CMU, cast concrete, plywood",
			"concrete-masonry unsaid, cast-concrete unsaid, osb-plywood-sheathing unsaid"},
		"none after an abbreviation": {"Substrates and primers", "PR-1 on plywd. or conc. None on galv.",
			"osb-plywood-sheathing PR-1, cast-concrete PR-1, galvanized-sheet none"},
		"items with their colons": {"Substrates and primers", "Block, plywood: PR-1 or PR-2 reqd. Galv.: none. Conc: PR-2",
			"concrete-masonry PR-1/PR-2, osb-plywood-sheathing PR-1/PR-2, galvanized-sheet none, cast-concrete PR-2"},
		"a primer for the damp": {"Substrates and primers", "cast concrete, dry (damp with PR-2), plywood (if wet: no)",
			"cast-concrete unsaid, osb-plywood-sheathing unsaid"},
		"none": {"Accepted substrates", "-", ""},
	} {
		t.Run(name, func(t *testing.T) {
			s := read(t, walls+"Tag | Type | Min apply °C | "+tc.heading+"\nR-1 | rubberized asphalt membrane | 5 | "+tc.cells+"\n"+strings.ReplaceAll(primers, "%s", "0"))
			if got := accepted(product(t, s, "R-1")); got != tc.want {
				t.Errorf("got  %s\nwant %s", got, tc.want)
			}
		})
	}
}

func TestPrimerColumnOfItsOwn(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Accepted substrates | Primer
R-1 | rubberized asphalt membrane | 5 | CMU, galvanized steel, plywood | none on galvanized steel; PR-1 elsewhere
PR-1 | solvent-borne rubber primer | -5 | - | -
`)
	want := "concrete-masonry PR-1, galvanized-sheet none, osb-plywood-sheathing PR-1"
	if got := accepted(product(t, s, "R-1")); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

// A primer that is asked for in some cases only, beside none: the sheet may have it.
func TestPrimerInSomeCases(t *testing.T) {
	for cell, want := range map[string]string{
		"none, PR-1 on dusty faces":      "none or PR-1",
		"PR-1 under 4 °C, else none":     "none or PR-1",
		"PR-1 on plywood, none on CMU":   "PR-1",
		"PR-1 (none at laps)":            "PR-1",
		"none on CMU; PR-1 on all other": "PR-1",
	} {
		s := read(t, walls+`
Tag | Type | Min apply °C | Accepted substrates | Primer
R-1 | rubberized asphalt membrane | 5 | plywood | `+cell+`
PR-1 | solvent-borne rubber primer | -5 | - | -
`)
		if got := accepted(product(t, s, "R-1")); !strings.HasPrefix(got, "osb-plywood-sheathing "+want) {
			t.Errorf("%s: %q, want %q", cell, got, want)
		}
	}
}

// The office's plain words for the cold and the heat that a product takes, and short
// forms of metals in a list.
func TestColdestAndHottest(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Coldest to lay | Hottest in use | Bonds to
R-1 | rubberized asphalt membrane | 5 °C | 71 °C | CMU, cu, ss
`)
	p := product(t, s, "R-1")
	if low, high := p.Figures["apply_min_c"], p.Figures["service_max_c"]; low.Min == nil || *low.Min != 5 || high.Min == nil || *high.Min != 71 {
		t.Errorf("from %+v up to %+v", low, high)
	}
	if got := accepted(p); got != "concrete-masonry unsaid, copper-sheet unsaid, stainless-sheet unsaid" {
		t.Errorf("accepts %s", got)
	}
}

// What holds for the rest may be told first.
func TestPrimerOfTheRestFirst(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Accepted substrates | Primer
R-1 | rubberized asphalt membrane | 5 | CMU, galvanized steel, plywood | none; PR-1 on CMU
PR-1 | solvent-borne rubber primer | -5 | - | -
`)
	want := "concrete-masonry PR-1, galvanized-sheet none, osb-plywood-sheathing none"
	if got := accepted(product(t, s, "R-1")); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

// A primer may say what it is made of where others say what they stick to.
func TestPrimerMadeOf(t *testing.T) {
	s := read(t, "Mark | Membrane | Substrate | Primer\nD1 | R-1 | CMU | K-1\nD2 | R-1 | CMU | K-2\nD3 | R-1 | CMU | K-3\n"+`
Tag | Min apply °C | Max days open | Bonds to
R-1 | 5 | 60 | CMU
K-1 | -5 | - | solvent-borne, for R-1
K-2 | 5 | - | water based; R-1 only
K-3 | 5 | - | R-1
`)
	for tag, want := range map[string]string{"K-1": "solvent-primer", "K-2": "water-primer", "K-3": "primer-unspecified"} {
		p := product(t, s, tag)
		if p.Family != want || targets(p.Suits) != "R-1" {
			t.Errorf("%s is %s for %q, want %s", tag, p.Family, targets(p.Suits), want)
		}
	}
}

// "No solvent primer" bars it where a list bars, and a bracket may say why.
func TestBarredInAListOfWhatIsBarred(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Keep away from
R-1 | butyl flashing tape | 5 | coal tar; no solvent-borne primer (softens the butyl adhesive)
`)
	if got := targets(product(t, s, "R-1").KeepOff); got != "coal-tar-pitch solvent-primer" {
		t.Errorf("keeps off %q", got)
	}
}

// A comma parts primers where each has its own bed.
func TestPrimersPartedByCommas(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Accepted substrates | Primer
R-1 | rubberized asphalt membrane | 5 | CMU, galvanized steel, plywood | PR-1 on CMU and plywood, none on galvanized steel
R-2 | rubberized asphalt membrane | 5 | CMU, galvanized steel, plywood | no primer on plywood, PR-1 for CMU
PR-1 | solvent-borne rubber primer | -5 | - | -
`)
	for tag, want := range map[string]string{
		"R-1": "concrete-masonry PR-1, galvanized-sheet none, osb-plywood-sheathing PR-1",
		"R-2": "concrete-masonry PR-1, galvanized-sheet unsaid, osb-plywood-sheathing none",
	} {
		if got := accepted(product(t, s, tag)); got != want {
			t.Errorf("%s: got  %s\nwant %s", tag, got, want)
		}
	}
}

// What the column of primers names as unprimed is no primer.
func TestUnprimedIsNoPrimer(t *testing.T) {
	s := read(t, "Mark | Membrane | Substrate | Primer\nD1 | R-1 | CMU, coat | K-1 on CMU, none on LC-2\n"+`
Tag | Type | Min apply °C | Max days open
R-1 | rubberized asphalt membrane | 5 | 60
K-1 | Key coat | 5 | 60
LC-2 | Fluid membrane | 5 | 60
`)
	for tag, want := range map[string]string{"K-1": "primer", "LC-2": "membrane"} {
		if got := product(t, s, tag).Role; got != want {
			t.Errorf("%s is a %s, want %s", tag, got, want)
		}
	}
}

// A bracket after the primer tells what takes none, and "metal" all that is metal.
func TestPrimerWithAnExceptionInBrackets(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Accepted substrates | Primer
R-1 | rubberized asphalt membrane | 5 | CMU, galvanized steel, plywood | PR-1 (none on metal)
PR-1 | solvent-borne rubber primer | -5 | - | -
`)
	want := "concrete-masonry PR-1, galvanized-sheet none, osb-plywood-sheathing PR-1"
	if got := accepted(product(t, s, "R-1")); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

func TestColumnsOfPrimedAndUnprimed(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | No primer on | Primer required on
R-1 | rubberized asphalt membrane | 5 | galvanized steel, aluminum | CMU, concrete
`)
	got := accepted(product(t, s, "R-1"))
	for _, want := range []string{"galvanized-sheet none", "concrete-masonry always", "cast-concrete always"} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not in %q", want, got)
		}
	}
}

func TestKeepOff(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Keep away from
R-1 | rubberized asphalt membrane | 5 | flexible PVC, coal tar, polysulfide sealant; EPDM gasket is fine
R-2 | butyl flashing tape | -10 | as R-1
R-3 | butyl flashing tape | -10 | S-9, solvents
S-9 | oil-based caulk | 0 | -
`)
	if got := targets(product(t, s, "R-1").KeepOff); !strings.Contains(got, "polysulfide-sealant") || !strings.Contains(got, "coal-tar") || !strings.Contains(got, "fine:epdm-gasket") {
		t.Errorf("R-1 keeps off %q", got)
	}
	if a, b := targets(product(t, s, "R-2").KeepOff), targets(product(t, s, "R-1").KeepOff); a != b {
		t.Errorf("R-2 keeps off %q, R-1 %q", a, b)
	}
	if got := targets(product(t, s, "R-3").KeepOff); !strings.HasPrefix(got, "S-9") {
		t.Errorf("R-3 keeps off %q", got)
	}
}

// A heading that names first what a product goes with bars only what a sentence
// bars, and no separator is kept off.
func TestGoesWithAndKeepOff(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Works with / keep away from
R-1 | rubberized asphalt membrane | 5 | S-8, S-9. Keep away from EPDM, coal tar
E-1 | EPDM roof membrane | -5 | Never on asphaltic sheet; B-1 between
S-8 | neutral-cure silicone sealant | 0 | -
S-9 | rubberized asphalt mastic | 0 | -
B-1 | polyethylene slip sheet separator | - | -
`)
	if got := targets(product(t, s, "R-1").KeepOff); !strings.Contains(got, "fine:S-8") || !strings.Contains(got, "fine:S-9") || !strings.Contains(got, "coal-tar") {
		t.Errorf("R-1 keeps off %q", got)
	}
	if got := targets(product(t, s, "E-1").KeepOff); strings.Contains(got, "B-1") {
		t.Errorf("E-1 keeps off %q", got)
	}
}

func TestPrimersOneByOne(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Accepted substrates | Primer
R-1 | rubberized asphalt membrane | 5 | CMU, plywood | PR-1; PR-2 from 4 °C up
PR-1 | solvent-borne rubber primer | -5 | - | -
PR-2 | water-borne acrylic primer | 4 | - | -
`)
	if got := accepted(product(t, s, "R-1")); got != "concrete-masonry PR-1/PR-2, osb-plywood-sheathing PR-1/PR-2" {
		t.Errorf("got %s", got)
	}
}

// What a stance gives as its reason is not what it bars, and two that a joining
// word reaches are both joined.
func TestKeepOffByItsWords(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Keep off - OK with
R-1 | rubberized asphalt membrane | No creosote. Bed it in S-8, stuck to S-8, S-9 and S-7
R-2 | Same membrane, winter grade | as R-1
S-7 | neutral silicone sealant | lead
S-8 | rubberized asphalt mastic | coal tar
S-9 | oil-based caulk | Oily – never near R-1
R-3 | The same film; summer grade | creosote - coal tar
`)
	for tag, want := range map[string]string{"R-1": "creosote-timber", "R-2": "creosote-timber", "S-9": "R-1", "R-3": "creosote-timber coal-tar-pitch"} {
		if got := targets(product(t, s, tag).KeepOff); got != want {
			t.Errorf("%s keeps off %q, want %q", tag, got, want)
		}
	}
	if p := product(t, s, "R-2"); p.Family != "rubberized-asphalt-membrane" || !slices.Contains(p.Traits, "grade-low-temp") {
		t.Errorf("R-2 is %s %v", p.Family, p.Traits)
	}
}

// Tags may be cut short in a list, or to their letters.
func TestTagsCutShort(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Keep off
SV-1 | rubberized asphalt membrane | LQ; S-8/-9
LQ-1 | PMMA liquid flashing | lead
LQ-2 | PMMA liquid flashing | lead
S-8 | neutral silicone sealant | lead
S-9 | oil-based caulk | lead
`)
	if got := targets(product(t, s, "SV-1").KeepOff); got != "LQ-1 LQ-2 S-8 S-9" {
		t.Errorf("keeps off %q", got)
	}
}

// What is told by its stuff alone, and has the data of a film, is a membrane.
func TestFilmToldByItsStuff(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Thickness | Max days open
R-1 | two-part urethane | 60 mil dry | 30 days
R-2 | two-part urethane | - | 30 days
R-3 | two-part urethane sealant | 60 mil dry | 30 days
`)
	for tag, want := range map[string]string{"R-1": "membrane", "R-2": "sealant", "R-3": "sealant"} {
		if got := product(t, s, tag).Class; got != want {
			t.Errorf("%s is a %s, want %s", tag, got, want)
		}
	}
}

// What is barred in one order only says in which.
func TestKeepOffInOneOrder(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Keep off
R-1 | rubberized asphalt membrane | not over coal tar or EPDM; creosote; S-8 never over it
R-2 | rubberized asphalt membrane | not on EPDM
S-8 | neutral silicone sealant | lead
`)
	var got []string
	for _, tag := range []string{"R-1", "R-2"} {
		for _, tg := range product(t, s, tag).KeepOff {
			got = append(got, strings.TrimSpace(tg.Text+" "+tg.Lies))
		}
	}
	if want := []string{"coal tar over", "EPDM over", "creosote", "S-8 under", "EPDM"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestFiguresOfProducts(t *testing.T) {
	s := read(t, walls+`
Tag | Generic type | Thickness | Application temperature | Max service temp (°F) | UV days | Air permeance (cfm/ft2) | Vapor (perms) | VOC g/L
R-1 | rubberized asphalt membrane | 40 mil (1.0 mm) | 40 to 100 F | 180 | 30 | 0.004 | 0.05 | -
R-2 | butyl flashing tape | 1.5 mm | -10 °C and above | 200 | no limit | <0.001 | 0.02 | -
PR-1 | solvent-borne rubber primer | - | 25 F min. | - | - | - | - | 650
`)
	for _, tc := range []struct {
		tag, key string
		min, max float64
	}{
		{"R-1", "thickness_mm", 1.016, -1},
		{"R-1", "apply_min_c", 4.444, -1},
		{"R-1", "apply_max_c", 37.78, -1},
		{"R-1", "service_max_c", 82.22, -1},
		{"R-1", "exposure_days", 30, -1},
		{"R-1", "air_lsm2", 0.02032, -1},
		{"R-1", "vapor_ng", 2.8607, -1},
		{"R-2", "apply_min_c", -10, -1},
		{"R-2", "thickness_mm", 1.5, -1},
		{"R-2", "air_lsm2", -1, 0.00508},
		{"PR-1", "apply_min_c", -3.889, -1},
		{"PR-1", "voc_gl", 650, -1},
	} {
		f, ok := product(t, s, tc.tag).Figures[tc.key]
		if !ok || tc.min != -1 && !near(f.Min, tc.min) || tc.max != -1 && !near(f.Max, tc.max) {
			t.Errorf("%s %s: %+v, want %g, %g", tc.tag, tc.key, f, tc.min, tc.max)
		}
	}
	if f := product(t, s, "R-2").Figures["exposure_days"]; !f.NoLimit {
		t.Errorf("no limit: %+v", f)
	}
	if _, ok := product(t, s, "R-2").Figures["apply_max_c"]; ok {
		t.Error("R-2 has no upper limit")
	}
}

func TestRepeatedTag(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Max days open to sun
R-1 | rubberized asphalt membrane | 5 | 30
R-1 | butyl flashing tape | -10 | 60
`)
	if len(s.Products) != 2 || !s.Products[0].Repeats || !s.Products[1].Repeats || s.Products[0].ID == s.Products[1].ID {
		t.Errorf("products %+v", s.Products)
	}
}

func TestTags(t *testing.T) {
	data := `

Tag | Type | Min apply °C | Max days open to sun
R-01 | rubberized asphalt membrane | 5 | 30
R-02 | butyl flashing tape | -10 | 60
Fennick Seal W | polyurethane sealant | 5 | -
Fennick Seal G | butyl sealant | 5 | -
Fennick Prime | solvent-borne primer | -5 | -
`
	for cell, want := range map[string][]string{
		"R-01/02":             {"R-01", "R-02"},
		"R-01 or -02":         {"R-01", "R-02"},
		"R-01 & R-02":         {"R-01", "R-02"},
		"R‑01":                {"R-01"}, // a hyphen that does not break
		"r-02 strip":          {"r-02"},
		"R-09":                {"?R-09"},
		"Fennick Seal G":      {"Fennick Seal G"},
		"Fennick Edge":        {"?Fennick Edge"},
		"R-010":               {"?R-010"},
		"ER-01":               {},
		"Fennick Seal W bead": {"Fennick Seal W"},
	} {
		t.Run(cell, func(t *testing.T) {
			s := read(t, "Mark | Membrane | Substrate | Primer | Touches\nD1 | R-01 | CMU | none | "+cell+"\nD2 | R-02 | CMU | none | brick\n"+data)
			var got []string
			for _, it := range line(t, s, "D1").Items {
				if it.Slot != "touches" || it.Tag == "" {
					continue
				}
				if it.Product == "" {
					it.Tag = "?" + it.Tag
				}
				got = append(got, it.Tag)
			}
			if !slices.Equal(got, want) {
				t.Errorf("got %q, want %q", got, want)
			}
		})
	}
}

func TestUnits(t *testing.T) {
	for name, tc := range map[string]struct {
		grid    string
		key     string
		want    float64
		problem string
	}{
		"in the cell":                      {"Mark | Membrane | Substrate | Lap\nD1 | butyl tape | CMU | 2 1/2\"", "lap_mm", 63.5, ""},
		"both in the cell":                 {"Mark | Membrane | Substrate | Thickness\nD1 | butyl tape | CMU | 60 mil (1.5 mm)", "thickness_mm", 1.524, ""},
		"in the heading":                   {"Mark | Membrane | Substrate | Lap (mm)\nD1 | butyl tape | CMU | 75", "lap_mm", 75, ""},
		"in a column heading with a point": {"Mark | Membrane | Substrate | Min. lap, in.\nD1 | butyl tape | CMU | 3", "lap_mm", 76.2, ""},
		"by the column":                    {"Mark | Membrane | Substrate | Lap\nD1 | butyl tape | CMU | 3\nD2 | butyl tape | CMU | 4 in.", "lap_mm", 76.2, ""},
		"by the sheet":                     {"All dimensions in mm\n\nMark | Membrane | Substrate | Lap\nD1 | butyl tape | CMU | 75\nD2 | butyl tape | CMU | 100", "lap_mm", 75, ""},
		"nowhere":                          {"Mark | Membrane | Substrate | Lap\nD1 | butyl tape | CMU | 75\nD2 | butyl tape | CMU | 100", "lap_mm", -1, "no unit"},
		"words for a figure":               {"Mark | Membrane | Substrate | Lap\nD1 | butyl tape | CMU | as detailed\nD2 | butyl tape | CMU | 100 mm", "lap_mm", -1, "not a figure"},
		"the same in brackets":             {"Mark | Membrane | Substrate | Lap, in (mm)\nD1 | butyl tape | CMU | 3 (75)", "lap_mm", 76.2, ""},
		"the first of two units":           {"Mark | Membrane | Substrate | Lap mm (in)\nD1 | butyl tape | CMU | 100", "lap_mm", 100, ""},
		"a range":                          {"Mark | Membrane | Substrate | Lap\nD1 | butyl tape | CMU | 3 to 4 in.\nD2 | butyl tape | CMU | 100 mm", "lap_mm", 76.2, ""},
	} {
		t.Run(name, func(t *testing.T) {
			f := line(t, read(t, tc.grid+"\n"), "D1").Figures[tc.key]
			if f.Problem != tc.problem || tc.want != -1 && !near(f.Min, tc.want) {
				t.Errorf("got %+v, want %g %q", f, tc.want, tc.problem)
			}
		})
	}
}

func TestFiguresThatDisagree(t *testing.T) {
	s := read(t, "Mark | Membrane | Substrate | Thickness\nD1 | butyl tape | CMU | 40 mil (2.0 mm)\nD2 | butyl tape | CMU | 40 mil (1.0 mm)\n")
	if !line(t, s, "D1").Figures["thickness_mm"].Disagree || line(t, s, "D2").Figures["thickness_mm"].Disagree {
		t.Errorf("figures %+v %+v", line(t, s, "D1").Figures, line(t, s, "D2").Figures)
	}
}

// A second figure in brackets is in the second unit of the heading.
func TestSecondUnitOfAHeading(t *testing.T) {
	s := read(t, "Mark | Membrane | Substrate\nD1 | A-1 | CMU\n"+`
Tag | Type | Min apply °C | Vapour permeance US perm, ng/(Pa·s·m²) in brackets
A-1 | vapor-permeable sheet | 5 | 14 (800)
A-2 | vapor-permeable sheet | 5 | 14 (80)
`)
	for tag, want := range map[string]bool{"A-1": false, "A-2": true} {
		if f := product(t, s, tag).Figures["vapor_ng"]; f.Disagree != want || !near(f.Min, 800.989) {
			t.Errorf("%s: %+v, disagrees: want %v", tag, f, want)
		}
	}
}

// Words of product data that stand for more than they say.
func TestProductWords(t *testing.T) {
	s := read(t, `
Legend, limits in deg F, mm and ng/(Pa·s·m²)
Tag | Description | Apply min | Vapor permeance | Primer | Keep off
10.A1 | SBS self-adhered sheet | 40 | 2.0 (A) | 10.P2 or .P3 on concrete | EPDM
A9 | butyl tape | 20 | 2 | none | -
10.B2 | A9, winter grade | 15 | 1 650 (B) | 10.P2 | EPDM
10.P2 | solvent primer | 15 | - | - | -
10.P3 | water primer | 40 | - | - | -
E1 | EPDM roof membrane | 40 | - | SP1 at laps | solvents
BA1 | Bonding adhesive for E1, solvent | 40 | - | - | -
SP1 | splice primer | 40 | - | - | -

Mark | Tag | Substrate | Primer | Lap | Remarks
D1 | 10.A1 | concrete | .P3 | 75 mm | none
D2 | E1 | plywood | BA1 | 75 mm | none
`)
	products := map[string]*schedule.Product{}
	for i := range s.Products {
		products[s.Products[i].Tag] = &s.Products[i]
	}
	a := products["10.A1"]
	if len(a.Accepts) != 1 || !slices.Equal(a.Accepts[0].Primers, []string{"10.P2", "10.P3"}) {
		t.Errorf("accepts %+v", a.Accepts)
	}
	if !near(a.Figures["apply_min_c"].Min, 4.44444) || !near(a.Figures["vapor_ng"].Min, 2) {
		t.Errorf("figures %+v", a.Figures)
	}
	if w := products["10.B2"]; w.Family != "butyl-flashing-tape" || !near(w.Figures["vapor_ng"].Min, 1650) {
		t.Errorf("%s %+v", w.Family, w.Figures)
	}
	if e := products["E1"]; len(e.Accepts) != 0 {
		t.Errorf("a primer of laps: %+v", e.Accepts)
	}
	if b := products["BA1"]; len(b.Suits) != 1 || !slices.Equal(b.Suits[0].Products, []string{"E1"}) {
		t.Errorf("suits %+v", b.Suits)
	}
	if it := s.Lines[0].Items[2]; it.Product != "10.P3" {
		t.Errorf("%+v", it)
	}
}

func TestCoatingThatPrimes(t *testing.T) {
	s := read(t, `Mark | Product | Substrate | Primer | Lap
W-1 | LQ-1 | deck slab, blasted | EP-1 | 4 in.
W-2 | LQ-1 | deck slab, blasted | EP-1 | 4 in.

Tag | Type | Min apply °C | UV days
LQ-1 | cold fluid polyurethane waterproofing | 5 | 14
EP-1 | epoxy primer, two parts | 5 | -
`)
	if got := product(t, s, "EP-1").Role; got != "primer" {
		t.Errorf("EP-1 is a %q", got)
	}
}

// The numbers of the rows are no products, though they look like their tags.
func TestNumbersOfRowsAreNoTags(t *testing.T) {
	s := read(t, `
Item | Membrane | Substrate | Primer | Touches
R-07 | R-1 | CMU | none | R-08 sheet comes down over it
R-08 | R-1 | CMU | none | R-9 over it

Tag | Type | Min apply °C
R-1 | rubberized asphalt membrane | 5
R-2 | butyl sheet | 5
`)
	var got []string
	for i := range s.Lines {
		for _, it := range s.Lines[i].Items {
			if it.Unknown && it.Tag != "" {
				got = append(got, it.Tag)
			}
		}
	}
	if strings.Join(got, " ") != "R-9" {
		t.Errorf("unknown tags %v", got)
	}
}

// A heading over temperatures may tell by words for cold and heat which end it means.
func TestEndsOfTemperatures(t *testing.T) {
	for heading, want := range map[string]string{
		"Coldest to put on": "apply_min", "Put on at, max": "apply_max", "Hottest to put on": "apply_max",
	} {
		s := read(t, walls+"Tag | Type | Sticks to | "+heading+"\nR-1 | rubberized asphalt membrane | concrete | 40 °F\nR-2 | butyl sheet | plywood | 25 °F\n")
		if p := product(t, s, "R-1"); p.Texts[want] == "" {
			t.Errorf("%s: %v, want %s", heading, p.Texts, want)
		}
	}
}

// What a colon tells to put between is kept off nothing.
func TestKeepOffTellsWhatParts(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Min apply °C | Keep away from
R-1 | plasticized PVC roof membrane | 5 | bitumen of any kind: sheet of steel as separator
R-2 | aluminum flashing | | copper, zinc: strip betw.
`)
	for tag, never := range map[string]string{"R-1": "steel", "R-2": "strip"} {
		if got := targets(product(t, s, tag).KeepOff); got == "" || strings.Contains(got, never) || strings.Contains(got, "metal") {
			t.Errorf("%s keeps off %q", tag, got)
		}
	}
}

// The film on the face of sheets is told in words of its own, and what does not bond to it
// is kept off it.
func TestKeepOffFilmFaces(t *testing.T) {
	for words, want := range map[string]string{
		"PE or HDPE film face (lets go)":   "PE or HDPE film face",
		"Polythene faces":                  "Polythene faces",
		"HDPE film":                        "HDPE film",
		"Will not adhere to LDPE film":     "LDPE film",
		"Poor adhesion to polyethylene":    "polyethylene",
		"Never left bare, bond to PE film": "",
		"Plywood":                          "Plywood",
	} {
		for _, heading := range []string{"Not with", "Not with / note"} {
			s := readPages(t, page{name: "S", grid: "Mark | Code | Goes on | Primer | Lap\n1 | QS-4 | Concrete | none | -\n2 | QS-5 | Steel | none | -"},
				page{name: "P", grid: "Code | Type | Apply at °C | VOC, g/L | " + heading + "\nQS-4 | Hybrid sealant | 5 to 40 | 90 | " + words + "\nQS-5 | Hybrid, one part | 5 to 40 | 20 | EPDM"})
			var got []string
			for _, off := range product(t, s, "QS-4").KeepOff {
				if len(off.Keys) > 0 && !off.Except {
					got = append(got, off.Text)
				}
			}
			if strings.Join(got, ", ") != want {
				t.Errorf("%s: %s: keeps off %q, want %q", heading, words, got, want)
			}
		}
	}
}

// A stroke in the column of tags is no tag: such products go by what they are called.
func TestStrokeIsNoTag(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Code | Goes on | Primer | Lap\n1 | SH-2 | Concrete | none | 3 in.\n2 | SH-2 | Steel | none | 3 in."},
		page{name: "P", grid: "Code | Type | Apply at °C | Days open\nSH-2 | SBS sheet | 5 to 40 | 60\n- | Rigid PVC weep | - | -\n- | Cedar blocking | - | -"})
	var got []string
	for _, p := range s.Products {
		got = append(got, p.Tag)
		if p.Repeats {
			t.Errorf("%s repeats", p.Tag)
		}
	}
	if want := "SH-2, Rigid PVC weep, Cedar blocking"; strings.Join(got, ", ") != want {
		t.Errorf("products %s, want %s", strings.Join(got, ", "), want)
	}
}

// TestKeepOffNotItsOwnFace: a sentence that says what does not hold to a face of the product
// bars that, and not the face; one that opens with the verb bars what the product does not
// hold to.
func TestKeepOffNotItsOwnFace(t *testing.T) {
	for words, want := range map[string]string{
		"EPDM. Silicone does not hold to the polyethylene film.": "EPDM, Silicone",
		"Coal tar; acrylic tape won't stick to the PE film":      "Coal tar, acrylic tape",
		"Does not hold to polyethylene film.":                    "polyethylene film",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Code | Goes on | Primer | Lap\n1 | QS-4 | Concrete | none | -\n2 | QS-5 | Steel | none | -"},
			page{name: "P", grid: "Code | Type | Apply at °C | VOC, g/L | Not with\nQS-4 | SBS self-adhered sheet on polyethylene film | 5 to 40 | 90 | " + words + "\nQS-5 | Hybrid, one part | 5 to 40 | 20 | EPDM"})
		var got []string
		for _, off := range product(t, s, "QS-4").KeepOff {
			if len(off.Keys) > 0 && !off.Except {
				got = append(got, off.Text)
			}
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: keeps off %q, want %q", words, got, want)
		}
	}
}

// TestEndsInTwoUnits: of a range of which each end is told in two units, the upper end is
// the most at which the product goes on.
func TestEndsInTwoUnits(t *testing.T) {
	for cell, want := range map[string]string{
		"20 °F [-7 °C] to 100 °F [38 °C]":              "-6.7 37.8",
		"40 °F (4 °C) and rising, up to 95 °F (35 °C)": "4.4 35.0",
		"5 °C (41 °F) to 35 °C (95 °F), dry":           "5.0 35.0",
		"40 °F (4 °C); service to 180 °F (82 °C)":      "4.4 -",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Code | Goes on | Primer | Lap\n1 | QS-4 | Concrete | none | -\n2 | QS-5 | Steel | none | -"},
			page{name: "P", grid: "Code | Type | Apply at | VOC, g/L | Not with\nQS-4 | SBS self-adhered sheet | " + cell + " | 90 | EPDM\nQS-5 | Hybrid, one part | 40 °F to 100 °F | 20 | EPDM"})
		figures := product(t, s, "QS-4").Figures
		low, high := figures["apply_min_c"].Min, figures["apply_max_c"].Max
		got := "-"
		if high == nil {
			high = figures["apply_max_c"].Min
		}
		if low != nil {
			got = fmt.Sprintf("%.1f -", *low)
			if high != nil {
				got = fmt.Sprintf("%.1f %.1f", *low, *high)
			}
		}
		if got != want {
			t.Errorf("%s: %s, want %s", cell, got, want)
		}
	}
}

// Of a product of which only the chemistry is told the rest of the row tells the kind: what
// is called a sealant, or has no thickness and no days in the sun, is no sheet.
func TestChemistryByTheRestOfTheRow(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer
1 | A-1 | CMU | none
2 | B-2 | CMU | none
3 | C-3 | CMU | none

Tag | Type | Thickness mm | Exposure max d | Apply min C
A-1 | Polyurethane, 2-part | – | unlimited | 5
B-2 | Butyl panel-lap sealant | – | concealed | 0
C-3 | Butyl | 1 | 60 | 0
`)
	got := ""
	for _, p := range s.Products {
		got += p.Tag + " " + p.Family + " " + p.Role + "; "
	}
	want := "A-1 polyurethane-sealant sealant; B-2 butyl-sealant sealant; C-3 butyl-flashing-tape flashing; "
	if got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

// "No primer on" lists what a sheet takes as it is, and bars none of it.
func TestUnprimedBarsNothing(t *testing.T) {
	s := readPages(t, page{name: "Products", grid: `
Tag | Description | Thickness (mm) | Used with
VO-3 | vapor permeable self-adhered sheet, acrylic | 0.5 | no primer required on OSB, cement board; PR-2 on block
VO-4 | vapor permeable self-adhered sheet, acrylic | 0.5 | not on OSB
PR-2 | water-borne acrylic primer | - | -`}, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Lap | Install date
D1 | VO-3 | OSB | none | brick | 2 in. | @2026-05-02
D2 | VO-4 | OSB | none | brick | 2 in. | @2026-05-02`})
	for _, p := range s.Products {
		if want := p.Tag == "VO-4"; p.Tag != "PR-2" && len(p.KeepOff) > 0 != want {
			t.Errorf("%s keeps off %+v", p.Tag, p.KeepOff)
		}
	}
}

// A remark that bars something in brackets, or after it has said what the product is for,
// bars only that.
func TestRemarkTurns(t *testing.T) {
	for words, want := range map[string]string{
		"Gutter seams, copper flashings (has naphtha: never on polystyrene)": "polystyrene",
		"Copper flashings, not for polystyrene":                              "polystyrene",
		"Never on copper, not on polystyrene":                                "copper polystyrene",
		"Not on copper (ask first)":                                          "copper",
		"Copper flashings (first prime zinc)":                                "",
		"For cavities; solvent primer not on polystyrene":                    "",
		"Water-borne primer never on copper. Not on zinc":                    "zinc",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Code | Goes on | Primer | Lap\n1 | QS-4 | Concrete | none | -\n2 | QS-5 | Steel | none | -"},
			page{name: "P", grid: "Code | Type | Apply at °C | VOC, g/L | Remarks\nQS-4 | Butyl sealant | 5 to 40 | 90 | " + words + "\nQS-5 | Hybrid sealant | 5 to 40 | 20 | -"})
		var got []string
		for _, off := range product(t, s, "QS-4").KeepOff {
			if !off.Except {
				got = append(got, off.Text)
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: keeps off %q, want %q", words, got, want)
		}
	}
}

// What a primer column names, of which the data tells the stuff and no use, is a primer;
// what the schedule also lays, or calls a sealant, is none.
func TestPrimersOfStuffOnly(t *testing.T) {
	s := read(t, `Mark | Product | Substrate | Primer | Lap
W-1 | A-1 | block | P-1 | 3 in.
W-2 | A-1 | plywood | P-2 | 3 in.
W-3 | A-1 | block | none, C-3 at edges | 3 in.
W-4 | D-4 | brick | none | -
W-5 | A-1 | brick | D-4 | 3 in.

Tag | Chemistry | Thickness | Apply min °F | Days open
A-1 | rubberized asphalt, self-adhered | 40 mil | 40 | 60
P-1 | acrylic, water-borne | - | 40 | same shift
P-2 | SBS rubber in solvent | - | 20 | same shift
C-3 | butyl caulk, solvent release | - | 25 | -
D-4 | latex | 4 mil | 40 | no limit
`)
	got := ""
	for _, p := range s.Products {
		got += p.Tag + " " + p.Role + " " + p.Family + "; "
	}
	want := "A-1 membrane rubberized-asphalt-membrane; P-1 primer water-primer; P-2 primer solvent-primer; C-3 sealant butyl-sealant; D-4 coating latex-paint; "
	if got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

// In the row of a primer the column of primers tells what it is for, and not what it is
// primed with.
func TestPrimersTellTheirBeds(t *testing.T) {
	s := read(t, `Mark | Membrane | Substrate | Primer | Lap
W-1 | R-1 | block | P-1 | 3 in.
W-2 | R-1 | brick | P-2 | 3 in.
W-3 | R-1 | brick | P-3 | 3 in.

Tag | Type | Thickness | Max days open | Min apply °C | Primer / use
R-1 | rubberized asphalt membrane | 1 mm | 60 | 5 | P-1 or P-2
P-1 | water-borne primer | - | - | 5 | block, plywood. Not on steel
P-2 | solvent primer | - | - | -5 | brick, steel; never XPS
P-3 | acrylic primer | - | - | 5 | none
`)
	got := ""
	for _, tag := range []string{"P-1", "P-2", "P-3"} {
		p := product(t, s, tag)
		got += tag + " for " + targets(p.Suits) + ", not " + targets(p.KeepOff) + "; "
	}
	want := "P-1 for concrete-masonry osb-plywood-sheathing, not carbon-steel; P-2 for clay-brick carbon-steel, not xps; P-3 for , not ; "
	if got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

// A product may be told as a grade of another; "grade A2" of a steel is none of it.
func TestGradeOfAnotherProduct(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
D1 | M4 | brick | PM-2
D2 | M4W | brick | PM-2`}, page{name: "P", grid: `
Code | What | Apply min °C | Max days open
M4 | self-adhered butyl sheet | 5 | 60
M4W | winter grade of M4, slit rolls | -10 | 60
M6 | stainless sheet, fine grade of finish | - | -
PM-2 | solvent-borne primer | 5 | 30`})
	m4, winter := product(t, s, "M4"), product(t, s, "M4W")
	if winter.Family == "" || winter.Family != m4.Family {
		t.Errorf("M4W is %q, M4 %q", winter.Family, m4.Family)
	}
	if got := winter.Texts["type"]; got != "self-adhered butyl sheet, winter grade, slit rolls" {
		t.Errorf("M4W is %q", got)
	}
	if got := product(t, s, "M6").Family; got != "stainless-sheet" {
		t.Errorf("M6 is %q", got)
	}
}

// Product data may tell its limits by their units alone, or by nothing but the end of a
// range that each is.
func TestLimitsWithoutWords(t *testing.T) {
	walls := page{name: "Walls", grid: `
No. | Where | Sheet | Goes on | Primer | Sealed with | Lap (in.) | Put on | Clad
1 | north | BT-1 | CMU | PX | CK | 3 | 2026-05-04 | 2026-06-01
2 | south | BT-2 | CMU | PX | CK | 3 | 2026-05-11 | 2026-06-08`}
	for _, data := range []string{`
 | Name | What it is | Min (°F) | Max (°F) | Sun (days) | perms
BT-1 | Kesler 40 | butyl sheet | 40 | 110 | 45 | 0.05
BT-2 | Kesler 40 W | butyl sheet, cold weather | 20 | 75 | 45 | 0.05
PX | Kesler wash | acrylic primer, water-borne | 40 | 95 | |
CK | Kesler bead | hybrid sealant | 30 | 100 | |`, `
Products | Name | Kind | Min | Max | Open days | Perm
BT-1 | Kesler 40 | butyl sheet | 4 | 43 | 45 | 0.05
BT-2 | Kesler 40 W | butyl sheet, cold weather | -7 | 24 | 45 | 0.05
PX | Kesler wash | acrylic primer, water-borne | 4 | 35 | |
CK | Kesler bead | hybrid sealant | -1 | 38 | |
all temperatures in C | | | | | |`} {
		s := readPages(t, walls, page{name: "Stuff", grid: data})
		p := product(t, s, "BT-2")
		if !strings.HasPrefix(p.Family, "butyl") {
			t.Errorf("BT-2 is %q", p.Family)
		}
		low, high, open := p.Figures["apply_min_c"], p.Figures["apply_max_c"], p.Figures["exposure_days"]
		if low.Text == "" || high.Text == "" || open.Text != "45" {
			t.Errorf("limits of BT-2: %+v", p.Figures)
		}
	}
}

// The same words over a schedule tell no limits: it has days, or what it meets.
func TestEndsOfASchedule(t *testing.T) {
	s := read(t, `Item | Location | Material | Substrate | Primer | Min | Max | Open days | Installed | Covered
1 | north | butyl sheet | CMU | acrylic primer | -7 | 4 | 20 | 2026-05-04 | 2026-06-01
2 | south | butyl sheet | CMU | acrylic primer | -3 | 9 | 20 | 2026-05-11 | 2026-06-08
`)
	if len(s.Lines) != 2 || len(s.Products) != 0 {
		t.Errorf("%d lines and %d products, want 2 and 0", len(s.Lines), len(s.Products))
	}
}

// A note below the rows tells the unit of all their figures; one of some of them does not.
func TestUnitsInNotesBelow(t *testing.T) {
	for note, want := range map[string]string{
		"All dimensions in mm":          "mm",
		"2. Figures in mm unless noted": "mm",
		"drip edges in mm, by others":   "",
	} {
		s := read(t, `Mark | Sheet | Substrate | Primer | Lap | Covered
K1 | butyl sheet | CMU | none | 80 | 2026-05-04
K2 | butyl sheet | CMU | none | 80 | 2026-05-04
K3 | butyl sheet | CMU | none | 80 | 2026-05-04

Notes
`+note+`
`)
		if got := line(t, s, "K1").Figures["lap_mm"].Unit; got != want {
			t.Errorf("%s: %q, want %q", note, got, want)
		}
	}
}

// A list of tags may be headed by the kind of what it lists; what one of them says of
// itself after "as" another goes on with no list of that.
func TestListHeadedByItsKind(t *testing.T) {
	rows := "Code | Product | Type | Thickness (mil) | Install temp. (F)\nSM-1 | Alder 40 | SBS sheet | 40 | 40-120\nSM-2 | Alder 60 | SBS sheet | 60 | 40-120\n\nPrimers | Product | Type | Install temp. (F) | Use\n%s\n\nMark | Membrane | Substrate | Primer | Install\n1 | SM-1 | CMU | PR-1 | 2027-05-03\n2 | SM-1 | CMU | PR-2 | 2027-05-04\n"
	s := read(t, fmt.Sprintf(rows, "PR-1 | Alder S | solvent-borne synthetic rubber | 25 and up | sheets on block; not on foam plastics\nPR-2 | Alder C | solvent-borne, quick | 10 and up | as PR-1, cold days"))
	for tag, want := range map[string]string{"PR-1": "solvent-primer", "PR-2": "solvent-primer"} {
		i := slices.IndexFunc(s.Products, func(p schedule.Product) bool { return p.Tag == tag })
		if i < 0 || s.Products[i].Family != want {
			t.Fatalf("%s is not read as %s", tag, want)
		}
		for _, a := range s.Products[i].KeepOff {
			if strings.Contains(a.Text, "cold days") {
				t.Errorf("%s keeps off %q", tag, a.Text)
			}
		}
	}
	again := read(t, fmt.Sprintf(rows, "PR-1 | Alder S | solvent-borne synthetic rubber | 25 and up | first\nPR-1 | Alder C | solvent-borne, quick | 10 and up | second"))
	if len(again.Products) > 3 {
		t.Errorf("a column of primers that repeat is read as a list of them: %d products", len(again.Products))
	}
}

// The adhesive that a board is stuck on with is not the board; an adhesive for boards, and a
// sheet with its adhesive, are what they are.
func TestBoardWithItsAdhesive(t *testing.T) {
	for words, want := range map[string]string{
		"XPS 50 mm, water-borne foam adhesive":    "insulation",
		"EPS board with foam-safe adhesive":       "insulation",
		"Polyiso, low-rise polyurethane adhesive": "insulation",
		"Foam-safe adhesive for XPS":              "mastic",
		"Vapor permeable sheet, acrylic adhesive": "membrane",
	} {
		s := read(t, "Mark | Membrane | Substrate | Primer | Touches\nT1 | SH-1 | plywood | none | IB-7\n\n"+
			"Tag | Product | Chemistry / description | Days open\nSH-1 | Alder 5 | SBS sheet | 60\nIB-7 | Rowan K | "+words+" | -")
		if p := product(t, s, "IB-7"); p.Class != want {
			t.Errorf("%s: %s (%s), want %s", words, p.Class, p.Family, want)
		}
	}
}

// A bracket after the primer may tell another for beds of its own; one that only says more
// of the beds, or tells the one primer, tells no other.
func TestPrimerInBracketsForItsOwnBeds(t *testing.T) {
	for cell, want := range map[string]string{
		"CMU, plywood: PR-1 (PR-2 on XPS)":      "PR-1 PR-1 PR-2 ",
		"CMU, plywood, XPS: PR-1 (or PR-2)":     "PR-1,PR-2 PR-1,PR-2 PR-1,PR-2 ",
		"CMU, plywood: PR-1 (two coats on XPS)": "PR-1 PR-1 PR-1 ",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer\n1 | SH-1 | CMU | PR-1\n2 | SH-1 | XPS | PR-2"}, page{name: "P", grid: `
Tag | Type | Apply min °C | Sun days | Goes on / primer
SH-1 | SBS sheet, self-adhered | 5 | 60 | ` + cell + `
PR-1 | solvent primer | -5 | - | -
PR-2 | water-based primer | 5 | - | -`})
		got := ""
		for _, a := range product(t, s, "SH-1").Accepts {
			got += strings.Join(a.Primers, ",") + " "
		}
		if got != want {
			t.Errorf("%s: %q, want %q", cell, got, want)
		}
	}
}

// A list of primers by bed may end with those of all other beds.
func TestPrimersElsewhere(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap\nD1 | R-1 | CMU | PR-1 | 75 mm"}, page{name: "P", grid: `
Tag | Type | Min apply °F | Primer / substrate
R-1 | SBS sheet | 40 | Primer on all: PR-2 on gypsum sheathing, PR-1 or PR-2 elsewhere
R-2 | SBS sheet | 40 | PR-2 on gypsum sheathing
PR-1 | solvent-borne primer | 20 | block, metal
PR-2 | water-borne primer | 40 | board`})
	all := func(tag string) bool {
		return slices.ContainsFunc(product(t, s, tag).Accepts, func(a schedule.Acceptance) bool { return slices.Equal(a.Keys, []string{"*"}) })
	}
	if !all("R-1") || all("R-2") {
		t.Errorf("every bed is taken: R-1 %v, R-2 %v", all("R-1"), all("R-2"))
	}
}

// What nothing is offered for stays as it was specified.
func TestNothingOffered(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Specified | Offered | Substrate | Primer
D1 | R-1 | R-2 | CMU | PR-1
D2 | R-1 | | CMU | PR-1
D3 | R-1 | - | CMU | PR-1
D4 | R-1 | as spec | CMU | PR-1`}, page{name: "P", grid: "Tag | Type | Min °F\nR-1 | SBS sheet | 40\nR-2 | butyl sheet | 20\nPR-1 | water-borne primer | 40"})
	for i, want := range []string{"R-2", "R-1", "R-1", "R-1"} {
		if m := s.Lines[i].Main(); m == nil || m.Product != want {
			t.Errorf("%s: %+v, want %s", s.Lines[i].Mark, m, want)
		}
	}
}

// A column under a heading that says little is that of the tags where each cell has a tag of
// the product data and its name; with what is done with it in words it is none.
func TestTagsWithTheirNames(t *testing.T) {
	for cells, want := range map[[2]string]string{
		{"R-1 Alder Sheet 40", "R-2 Larch Vent"}:                "tag",
		{"R-1 over the old sheet", "R-2 turned up at the wall"}: "",
	} {
		s := readPages(t, page{name: "S", grid: "Ref | Component | Substrate | Primer | Stuff or so | Lap\nA1 | wall sheet | CMU | PR-1 | " + cells[0] + " | 75 mm\nA2 | wall sheet | plywood | none | " + cells[1] + " | 75 mm\nA3 | wall sheet | CMU | PR-1 | " + cells[0] + " | 75 mm"},
			page{name: "P", grid: "Tag | Name | Type | Min °C\nR-1 | Alder Sheet 40 | SBS sheet | 5\nR-2 | Larch Vent | acrylic sheet, vapor permeable | -5\nPR-1 | Alder Prime | solvent primer | -5"})
		got := ""
		for _, c := range s.Reading.Tables[0].Columns {
			if c.Heading == "Stuff or so" && c.Slot == "tag" {
				got = c.Slot
			}
		}
		if got != want {
			t.Errorf("%v: %q, want %q", cells, got, want)
		}
	}
}

// A product that is listed in words with its thickness is known without it, and with
// another; two that differ by that alone are not, nor one called by its stuff.
func TestListedWithThickness(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Lap
1 | Butyl flashing sheet, film faced, 30 mil | CMU | none | 3 in.
2 | Butyl flashing sheet, film faced, 45 mil | CMU | none | 3 in.
3 | Butyl flashing sheet, film faced | CMU | none | 3 in.
4 | SBS base sheet, sanded, 60 mil | CMU | none | 3 in.
5 | EPDM sheet, 45 mil | CMU | none | 3 in.`}, page{name: "Materials", grid: `
Material | Min °F | Max °F | Days in sun | Thickness | Permeance
Butyl flashing sheet, film faced, 30 mil | 25 | 110 | 90 | 30 mil | 0.05 perm
SBS base sheet, sanded, 80 mil | 40 | 100 | 60 | 80 mil | 0.05 perm
SBS base sheet, sanded, 120 mil | 40 | 100 | 60 | 120 mil | 0.04 perm
EPDM sheet, 60 mil | 40 | 100 | 60 | 60 mil | 0.04 perm`})
	for mark, want := range map[string]string{
		"1": "Butyl flashing sheet, film faced, 30 mil", "2": "Butyl flashing sheet, film faced, 30 mil", "3": "Butyl flashing sheet, film faced, 30 mil",
		"4": "", "5": "",
	} {
		l := line(t, s, mark)
		if got := l.Main(); got == nil || got.Product != want {
			t.Errorf("row %s: %+v, want product %q", mark, got, want)
		}
	}
	if f := line(t, s, "2").Figures["thickness_mm"]; f.Min == nil || *f.Min < 1.14 || *f.Min > 1.15 {
		t.Errorf("row 2: %+v, want 45 mil", f)
	}
}

// The words of a cell turn the end that its heading tells, where they tell another.
func TestOneEndOfTemperatures(t *testing.T) {
	s := read(t, walls+"Tag | Type | Sticks to | Warmest to lay\nR-1 | SBS sheet | concrete | 25 °F and rising\nR-2 | butyl sheet | plywood | 95 °F\n")
	for tag, want := range map[string]string{"R-1": "apply_min_c", "R-2": "apply_max_c"} {
		if p := product(t, s, tag); len(p.Figures) != 1 || p.Figures[want].Text == "" {
			t.Errorf("%s: %v, want %s", tag, p.Figures, want)
		}
	}
}

// What makers agreed to in writing tells of no primer, and asks for none.
func TestConsentIsNoPrimer(t *testing.T) {
	for cell, want := range map[string]string{
		"none on block, board. letters on file from Alder": "none",
		"none; written consent of Alder":                   "none",
		"PR-1 on block, board; OK in writing by Alder":     "listed PR-1",
		"written instructions of Alder: PR-1":              "listed PR-1",
		"none (self-priming)":                              "none",
		"self primes":                                      "none",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer\nD1 | RL-1 | concrete block | none"}, page{name: "P", grid: `
Tag | Type | Trade name | Apply min °C | Max days open | Primer
RL-1 | STPE liquid flashing | Larch 10 | -5 | 90 | ` + cell + `
RL-2 | SBS sheet | Alder 40 | 5 | 60 | PR-1
PR-1 | solvent primer | Alder Prime | -5 | 30 | -`})
		p := product(t, s, "RL-1")
		got := p.Texts["primer_rule"]
		if got == "listed" {
			got = "listed PR-1"
		}
		for _, a := range p.Accepts {
			got = strings.TrimSpace(a.Primer + " " + strings.Join(a.Primers, " "))
			if got != want {
				break
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", cell, got, want)
		}
	}
}

// A remark that opens with a thermal resistance describes no product of that name.
func TestResistanceIsNoProduct(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Thickness | Remarks
D1 | XPS board (R-21) | concrete | 4 in | R-21, on steel pins
D2 | K-21 | concrete | 4 in | K-21, XPS board of two layers`})
	for _, tag := range []string{"R-21", "K-21"} {
		known := slices.ContainsFunc(s.Products, func(p schedule.Product) bool { return p.Tag == tag })
		if known != (tag == "K-21") {
			t.Errorf("%s is a product: %v", tag, known)
		}
	}
}

// Two sheets with a stroke between in a sentence are no list of what short words stand for.
func TestStrokeListsNoWords(t *testing.T) {
	for note, want := range map[string]string{
		"ST-2 is kept off the RA / VQ sheets and strips.": "",
		"RA rubberized asphalt / VQ vapor-open sheet":     "vapor-open sheet",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Material | Substrate | Primer\nD1 | SBS sheet | VQ | none"}, page{name: "N", grid: "Notes\n" + note})
		if got := line(t, s, "D1").Texts["substrate"]; (got != "VQ") != (want != "") {
			t.Errorf("%s: %q", note, got)
		}
	}
}

// A row of product data may be of two products, with strokes between their names and between
// what they are; one of two names of one thing is not.
func TestRowOfTwoProducts(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Insulation
D1 | RA-1 | CMU | KP-2 | Larch EPS 15
D2 | RA-1 | CMU | KP-1 | WB-6`}, page{name: "P", grid: `
Product | What it is | Apply, °F | Days open
RA-1 | SBS sheet | 40 and up | 60
Alder KP-1 / KP-2 | primers, solvent / water-borne | KP-1 20 up; KP-2 45 up |
Larch EPS 15 / WB-6 | expanded polystyrene / mineral wool board | any | 45
Quill drain board / Quill mat | HDPE core with fabric | any | 90`})
	for tag, want := range map[string]string{
		"Alder KP-1": "solvent-primer -6.7", "Alder KP-2": "water-primer 7.2", "Larch EPS 15": "eps", "Larch WB-6": "mineral-wool", "Quill drain board / Quill mat": "",
	} {
		p := product(t, s, tag)
		got := p.Family
		if f := p.Figures["apply_min_c"]; f.Min != nil {
			got += fmt.Sprintf(" %.1f", *f.Min)
		}
		if want != "" && got != want {
			t.Errorf("%s: %s, want %s", tag, got, want)
		}
	}
	for mark, want := range map[string]string{"D1": "Alder KP-2", "D2": "Alder KP-1"} {
		got := ""
		for _, it := range line(t, s, mark).Items {
			if it.Slot == "primer" {
				got = it.Product
			}
		}
		if got != want {
			t.Errorf("%s is primed with %q, want %q", mark, got, want)
		}
	}
}

// A film told before its unit is one as well; so many inches of a stuff are no film.
func TestFilmToldBeforeItsUnit(t *testing.T) {
	s := read(t, walls+`
Tag | Type | Thickness | Max days open
R-1 | two-part urethane | 45 wet mils | 14 days
R-2 | two-part urethane | 1/2 in. dry joint | 14 days
R-3 | two-part urethane joint filler | 45 wet mils | 14 days
`)
	for tag, want := range map[string]string{"R-1": "membrane", "R-2": "sealant", "R-3": "sealant"} {
		if got := product(t, s, tag).Class; got != want {
			t.Errorf("%s is a %s, want %s", tag, got, want)
		}
	}
}

// An adhesive in the column of primers is what the sheet is stuck with: the sheet is not said
// to lie on such, and a bed beside it is still one.
func TestAdhesiveIsNoBed(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
D1 | RM-4 | plywood | -
D2 | RM-5 | plywood | -
D3 | RM-6 | block | PR-1`}, page{name: "P", grid: `
Tag | What it is | Apply, °F | Days open | Primer
RM-4 | EPDM sheet | 40 and up | 90 | membrane contact adhesive
RM-5 | EPDM sheet | 40 and up | 90 | contact adhesive on plywood
RM-6 | SBS sheet | 40 and up | 60 | PR-1 on block
PR-1 | solvent primer | 40 and up | |`})
	for tag, want := range map[string]string{"RM-4": "", "RM-5": "plywood", "RM-6": "block"} {
		var got []string
		for _, a := range product(t, s, tag).Accepts {
			got = append(got, a.Text)
		}
		if strings.Join(got, ",") != want {
			t.Errorf("%s lies on %v, want %q", tag, got, want)
		}
	}
}

// Data of several grades may tell a figure of one of them in brackets, by the letters that its
// name ends in; brackets with other letters say nothing of it.
func TestFigureOfAGrade(t *testing.T) {
	for apply, want := range map[string][2]float64{
		"45 °F and up (CW 10 °F)":     {45, 10},
		"45 °F min. (CW: 10 °F min.)": {45, 10},
		"45 °F and up (HT 60 °F)":     {45, 45},
		"45 °F and up (7 °C)":         {45, 45},
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate\nD1 | Heron 60 | block\nD2 | Heron 60 CW | block"},
			page{name: "P", grid: "Tag | What it is | Days open | Apply\nHeron 60 | butyl membrane | 30 | " + apply + "\nHeron 60 CW | butyl membrane | 30 | " + apply})
		for i, tag := range []string{"Heron 60", "Heron 60 CW"} {
			f := product(t, s, tag).Figures["apply_min_c"]
			if c := (want[i] - 32) / 1.8; f.Min == nil || *f.Min-c > 0.1 || c-*f.Min > 0.1 || f.Max != nil {
				t.Errorf("%s: %s from %v, want %.1f", apply, tag, f, c)
			}
		}
	}
}

// The lower parts of a list may have columns of their own: what seals stands where the sheets
// have the names of their makers, and what it is used with under their kind.
func TestKindInACellBeside(t *testing.T) {
	const grid = `
MEMBRANES
Tag | Product (own line) | Type | Sun, days | Temp F | Seal / bed
SH-1 | Alder Forty | SBS sheet, self-adhered | 60 | 40 to 100 | B-1
SH-2 | Alder Silk | silicone strip | 365 | 20 to 110 | B-2

BEADS AND BEDS
B-1 | bituminous mastic | SH-1 laps and edges
B-2 | neutral-cure silicone sealant | SH-2, frames
B-3 | do not use on the north side before the frost has gone | SH-1
B-4 | Larch Grip | butyl tape for SH-1`
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Sealant\nD1 | SH-1 | CMU | B-1\nD2 | SH-2 | alum | B-2\nD3 | SH-1 | CMU | B-3\nD4 | SH-1 | CMU | B-4"}, page{name: "Data", grid: grid})
	got := map[string]string{}
	for _, p := range s.Products {
		got[p.Tag] = p.Class
		if p.Tag == "SH-1" && (len(p.Accepts) != 0 || targets(p.Suits) == "") {
			t.Errorf("what seals it is its bed: %s", accepted(&p))
		}
	}
	for tag, want := range map[string]string{"SH-1": "membrane", "SH-2": "membrane", "B-1": "mastic", "B-2": "sealant", "B-4": "tape"} {
		if got[tag] != want {
			t.Errorf("%s is %q, want %q", tag, got[tag], want)
		}
	}
	if got["B-3"] == "sealant" || got["B-3"] == "mastic" {
		t.Errorf("a sentence makes B-3 %q", got["B-3"])
	}
}

// What a mastic is not put on is none of its beds, also under "Primer / remarks"; the
// primer of a sealant is told there as before.
func TestBeadBarredBesidePrimers(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Sealant\nD1 | SH-1 | CMU | M-1"}, page{name: "D", grid: `
Tag | What | Sun, days | Primer / remarks
SH-1 | SBS sheet, self-adhered | 60 | P-1 on CMU
M-1 | SBS mastic, solvent | - | laps of sheets; not on EPDM; never on XPS
U-1 | polyurethane sealant | - | P-1 on concrete
P-1 | solvent primer | - | -`})
	for _, p := range s.Products {
		switch p.Tag {
		case "M-1":
			if got := targets(p.KeepOff); len(p.Accepts) != 0 || !strings.Contains(got, "epdm") || !strings.Contains(got, "xps") {
				t.Errorf("M-1 accepts %q, keeps off %q", accepted(&p), got)
			}
		case "U-1":
			if len(p.KeepOff) != 0 {
				t.Errorf("U-1 keeps off %q", targets(p.KeepOff))
			}
		}
	}
}

// A list may call products by the letters that their tags begin with: "MB sheets" of MB-S
// and MB-HT. One product is no kind, and words that are no letters of tags stay as they are.
func TestListByTheLettersOfTags(t *testing.T) {
	for remark, want := range map[string][]string{
		"for SAM sheets":          {"SAM-R", "SAM-T"},
		"for self-adhered sheets": {},
		"for SA sheets":           {},
	} {
		s := readPages(t, page{name: "S", grid: "\nMark | Tag | Substrate | Primer\nW1 | SAM-R | CMU | none"},
			page{name: "P", grid: "\nTag | Type | Thickness mm | Max days open | Apply from °C | Remarks\n" +
				"SAM-R | SBS bitumen self-adhered sheet | 1 | 60 | 5 |\nSAM-T | SBS bitumen self-adhered sheet, high temperature | 1 | 90 | 5 |\n" +
				"SA-1 | acrylic self-adhered sheet | 1 | 60 | 5 |\n" +
				"EM-1 | bitumen mastic for edges | | | -5 | " + remark})
		got := []string{}
		for _, k := range slices.Concat(product(t, s, "EM-1").KeepOff, product(t, s, "EM-1").Suits) {
			got = append(got, k.Products...)
		}
		if slices.Sort(got); !slices.Equal(got, want) {
			t.Errorf("%q: %v, want %v", remark, got, want)
		}
	}
}
