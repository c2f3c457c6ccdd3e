package schedule_test

import (
	"cmp"
	"math"
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
)

// The limit that holds with a primer is that of the rows that have it.
func TestLimitWithPrimer(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Placed
D1 | ZB-1 | plywood | ZP-2 | @2026-03-02
D2 | ZB-1 | plywood | ZP-1 | @2026-03-02
D3 | ZB-1 | plywood | none | @2026-03-02
D4 | ZB-2 | plywood | ZP-1 | @2026-03-02
D5 | ZB-2 | plywood | none | @2026-03-02`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open
ZB-1 | butyl sheet | 5 (-4 with ZP-2) | 90
ZB-2 | SBS sheet | 10, 0 over primer | 90
ZP-1 | solvent primer | -5 | 1
ZP-2 | solvent primer | -10 | 1`})
	for mark, want := range map[string]float64{"D1": -4, "D2": math.NaN(), "D3": math.NaN(), "D4": 0, "D5": math.NaN()} {
		f, ok := line(t, s, mark).Figures["primed_apply_min_c"]
		if ok == math.IsNaN(want) || ok && (f.Min == nil || *f.Min != want || f.At.Cell[0] != 'C') {
			t.Errorf("%s: %+v, want %v", mark, f, want)
		}
	}
}

// So is the age of concrete that holds over a primer; it does not ask for that primer.
func TestAgeOverPrimer(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Concrete placed | Placed
D1 | ZF-1 | concrete | ZP-3 | @2026-03-02 | @2026-03-10
D2 | ZF-1 | concrete | none | @2026-03-02 | @2026-03-10
D3 | ZF-1 | concrete | ZP-4 | @2026-03-02 | @2026-03-10`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Goes on | Primer
ZF-1 | urethane fluid-applied membrane | 5 | concrete 21 d (5 to 20 d over ZP-3), CMU | none, ZP-3 where dusty
ZP-3 | epoxy primer | 5 | concrete | -
ZP-4 | acrylic primer | 5 | concrete | -`})
	for mark, want := range map[string]float64{"D1": 5, "D2": math.NaN(), "D3": math.NaN()} {
		f, ok := line(t, s, mark).Figures["primed_concrete_age_days"]
		if ok == math.IsNaN(want) || ok && (f.Min == nil || *f.Min != want) {
			t.Errorf("%s: %+v, want %v", mark, f, want)
		}
	}
	p := product(t, s, "ZF-1")
	if f := p.Figures["concrete_age_days"]; f.Min == nil || *f.Min != 21 {
		t.Errorf("age %+v, want 21 days", f)
	}
	if got := accepted(p); got != "cast-concrete none or ZP-3, concrete-masonry none or ZP-3" {
		t.Errorf("accepts %q", got)
	}
}

// The primers' own cell may tell the age that one of them is for.
func TestAgeAmongPrimers(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Concrete placed | Placed
D1 | ZF-1 | concrete | ZP-3 | @2026-03-02 | @2026-03-10
D2 | ZF-1 | concrete | ZP-4 | @2026-03-02 | @2026-03-10`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Goes on | Primer
ZF-1 | SBS sheet | 5 | concrete 14 days old, CMU | ZP-4; ZP-3 where concrete is 4 to 14 days old
ZP-3 | epoxy primer | 5 | concrete | -
ZP-4 | acrylic primer | 5 | concrete | -`})
	for mark, want := range map[string]float64{"D1": 4, "D2": math.NaN()} {
		f, ok := line(t, s, mark).Figures["primed_concrete_age_days"]
		if ok == math.IsNaN(want) || ok && (f.Min == nil || *f.Min != want) {
			t.Errorf("%s: %+v, want %v", mark, f, want)
		}
	}
}

// A column of primers and of other things may tell nothing of a primer; one of primers
// alone names one that has no row of its own.
func TestColumnOfPrimersAndMore(t *testing.T) {
	for heading, want := range map[string]string{
		"Primer / remarks": "brick listed, steel unsaid",
		"Primer":           "brick listed, steel always",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
D1 | SH-3 | brick | PM-2`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open | ` + heading + `
SH-3 | SBS sheet | 5 | 60 | PM-2 on brick; bolted to steel
PM-2 | solvent-borne primer | 5 | 30 | -`})
		var got []string
		for _, a := range product(t, s, "SH-3").Accepts {
			got = append(got, a.Text+" "+a.Primer)
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: %q, want %q", heading, got, want)
		}
	}
}

// A bracket may leave one bed with one primer only.
func TestOnlyPrimerInABracket(t *testing.T) {
	for cell, want := range map[string]string{
		"PM-2 or PM-3 on brick, foam (foam: PM-3 only)":       "brick PM-2 PM-3; foam PM-3",
		"PM-2 or PM-3 on brick, foam (only PM-3 on the foam)": "brick PM-2 PM-3; foam PM-3",
		"PM-2 or PM-3 on brick, foam (PM-3 dries slower)":     "brick PM-2 PM-3; foam PM-2 PM-3",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
D1 | SH-3 | brick | PM-2`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open | Primer
SH-3 | SBS sheet | 5 | 60 | ` + cell + `
PM-2 | solvent-borne primer | 5 | 30 | -
PM-3 | water-borne primer | 5 | 30 | -`})
		var got []string
		for _, a := range product(t, s, "SH-3").Accepts {
			got = append(got, a.Text+" "+strings.Join(a.Primers, " "))
		}
		slices.Sort(got)
		if strings.Join(got, "; ") != want {
			t.Errorf("%s: %q, want %q", cell, got, want)
		}
	}
}

// A product of which only the stuff is told, and that a sealant may be made of as well, is
// a primer where the schedule primes with it and gunned nowhere.
func TestPrimerOfStuffAlone(t *testing.T) {
	for _, c := range []struct{ kind, sealant, want string }{
		{"solvent acrylic", "none", "primer"},
		{"solvent acrylic", "Larch Bond", "sealant"},
		{"solvent acrylic sealant", "none", "sealant"},
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Sealant
D1 | SH-3 | brick | Larch Bond | ` + c.sealant}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open
SH-3 | acrylic self-adhered sheet | 5 | 60
Larch Bond | ` + c.kind + ` | 5 | 30`})
		if got := product(t, s, "Larch Bond").Role; got != c.want {
			t.Errorf("%s, sealant %s: %s, want %s", c.kind, c.sealant, got, c.want)
		}
	}
}

// What a primer is for may be a sentence of its own.
func TestPrimerForInASentence(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
D1 | ZA-1 | plywood | ZP-1`}, page{name: "P", grid: `
Tag | Type
ZA-1 | SBS sheet
ZB-1 | butyl tape
ZP-1 | Water-borne primer. For ZB-1. Store warm.
ZP-2 | Solvent primer. Forms a film in 1 h over ZA-1.
ZS-1 | Hybrid sealant. For ZB-1 joints.`})
	for id, want := range map[string]string{"ZP-1": "ZB-1", "ZP-2": "", "ZS-1": ""} {
		got := ""
		for _, p := range s.Products {
			for _, to := range p.Suits {
				if p.ID == id {
					got += strings.Join(to.Products, " ")
				}
			}
		}
		if got != want {
			t.Errorf("%s suits %q, want %q", id, got, want)
		}
	}
}

// Remarks of a list of products tell of primers on beds that they name, where no column does;
// words about a primer alone, and those on a sealant, tell no rule.
func TestPrimersInRemarks(t *testing.T) {
	for remark, want := range map[string]string{
		"No primer on plywood; PR-1 on masonry":            "plywood none, masonry listed",
		"30 year roll. Primer on concrete":                 "concrete always",
		"Primer by the same maker":                         "",
		"Sticks to plywood. The primer is sold separately": "",
	} {
		data := "\nTag | Type | Min °F | Max °F | Days in sun | Comments\nSH-1 | SBS sheet | 25 | 110 | 90 | " + remark + "\nPR-1 | solvent primer | 25 | 110 | - | -"
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap\n1 | SH-1 | CMU | PR-1 | 3 in."}, page{name: "P", grid: data})
		var got []string
		for _, a := range product(t, s, "SH-1").Accepts {
			got = append(got, a.Text+" "+a.Primer)
		}
		if all := strings.Join(got, ", "); all != want {
			t.Errorf("%s: %q, want %q", remark, all, want)
		}
	}
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap\n1 | SH-1 | CMU | PR-1 | 3 in."}, page{name: "P", grid: `
Tag | Type | Min °F | Days in sun | Primer | Comments
SH-1 | SBS sheet | 25 | 90 | none on CMU | Primer on concrete`})
	if a := product(t, s, "SH-1").Accepts; len(a) != 1 || a[0].Primer != "none" {
		t.Errorf("%+v, want what the column says alone", a)
	}
}

// A primer that its words give to what the sheet touches primes that; the bed, the sheet
// itself and what the row does not have leave it to the row.
func TestPrimersOfWhatIsTouched(t *testing.T) {
	for said, want := range map[string]string{
		"none on board; PB-2 on EPDM":      "F2",
		"PB-2 at EPDM":                     "F2",
		"PB-2 over ZT-1":                   "F2",
		"PB-2 under ZT-1":                  "F2",
		"PB-2 under ZA-1":                  "",
		"PB-2 on plywood":                  "",
		"PB-2 on plywood and EPDM":         "",
		"PB-2 on TPO":                      "",
		"none on ply; PB-2 on EPDM roof":   "F2",
		"PB-2":                             "",
		"PB-2, dry before EPDM goes on it": "",
	} {
		s := readPages(t, page{name: "S", grid: "\nMark | Membrane | Substrate | Primer | Date | Touches\nR1 | ZA-1 | plywood | " + said + " | 4/8/27 | EPDM roof sheet, ZT-1"},
			page{name: "P", grid: "\nTag | Type\nZA-1 | SBS sheet\nZT-1 | butyl tape\nPB-2 | solvent rubber primer"})
		got := "?"
		for _, it := range s.Lines[0].Items {
			if it.Tag == "PB-2" {
				got = it.Primes
			}
		}
		if got != strings.Replace(want, "F2", s.Lines[0].Cells["touches"], 1) {
			t.Errorf("%s: primes %q, want %q", said, got, want)
		}
	}
}

// A primer that a cell lists without a bed is for all that the cell does not name; a bracket
// may tell which of them by its kind, which is no kind where both or none are of it. Beds
// that another column lists are all.
func TestPrimersForTheRest(t *testing.T) {
	for said, want := range map[string]string{
		"QS (none on metal)":                       "metal none, * listed QS",
		"none on plywood; QS elsewhere":            "plywood none, * listed QS",
		"none on plywood. Not QS":                  "plywood none",
		"none; damp block ok":                      "* none",
		"QS or QW (foam: QW only)":                 "foam listed QW, * listed QS QW",
		"QS or QW (water-based only on EPS)":       "* listed QS QW, EPS listed QW",
		"QS / QW (the solvent one only for steel)": "* listed QS QW, steel listed QS",
		"QS or QW (thin coat only on EPS)":         "EPS listed QS QW",
		"QS on block; QW on foam":                  "block listed QS, foam listed QW",
		"QW (also on EPS); QS on block only":       "* listed QW, EPS listed QW, block listed QW QS",
	} {
		data := "\nTag | Type | Min °F | Max °F | Days in sun | Primer\nSH-1 | SBS sheet | 25 | 110 | 90 | " + said +
			"\nSH-2 | SBS sheet | 25 | 110 | 90 | none\nQS | solvent primer | 25 | 110 | - | -\nQW | water-based primer | 40 | 110 | - | -"
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap\n1 | SH-1 | CMU | QS | 3 in.\n2 | SH-1 | CMU | QW | 3 in."}, page{name: "P", grid: data})
		var got []string
		for _, a := range product(t, s, "SH-1").Accepts {
			if slices.Contains(a.Keys, "*") {
				a.Text = "*"
			}
			got = append(got, strings.TrimSpace(a.Text+" "+a.Primer+" "+strings.Join(a.Primers, " ")))
		}
		if all := strings.Join(got, ", "); all != want {
			t.Errorf("%s: %q, want %q", said, all, want)
		}
	}
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap\n1 | SH-1 | CMU | QS | 3 in."}, page{name: "P", grid: `
Tag | Type | Min °F | Days in sun | Substrates | Primer
SH-1 | SBS sheet | 25 | 90 | CMU, metal | QS (none on metal)
QS | solvent primer | 25 | - | - | -`})
	if a := product(t, s, "SH-1").Accepts; len(a) != 2 {
		t.Errorf("%+v, want the two beds of the list", a)
	}
}

// Primers that the data of sheets names and does not list are known where the schedule has
// them by the same name; a second of the same maker may be told by its code alone.
func TestPrimersByName(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
R1 | Alder Seal 40 | CMU | Alder W
R2 | Alder Seal 40 | CMU | Alder S (solvent)
R3 | Elmet Butyl | CMU | Elmet R
R4 | Elmet Butyl | CMU | Rowan Q`}, page{name: "P", grid: `
Product | What it is | Min °F | UV days | Primer
Alder Seal 40 | SBS sheet | 40 | 60 | Alder S (solvent) or W (water) on CMU
Elmet Butyl | butyl flashing | 25 | 90 | Elmet R (synthetic rubber) on porous; none on metal`})
	got := map[string]string{}
	for i := range s.Lines {
		for _, it := range s.Lines[i].Items {
			if it.Slot == "primer" {
				got[s.Lines[i].Mark] = it.Product + " " + it.Family
			}
		}
	}
	want := map[string]string{"R1": "Alder W water-primer", "R2": "Alder S solvent-primer", "R3": "Elmet R solvent-primer"}
	for mark, one := range want {
		if got[mark] != one {
			t.Errorf("%s: %q, want %q", mark, got[mark], one)
		}
	}
	if a := product(t, s, "Alder Seal 40").Accepts; len(a) == 0 || a[0].Primer != "listed" || len(a[0].Primers) != 2 {
		t.Errorf("%+v, want both primers", a)
	}
	for _, p := range s.Products {
		if p.Tag == "Rowan Q" {
			t.Error("a primer that no data names is a product")
		}
	}
}

// A primer of all beds but some is that of the others, and those take none.
func TestPrimerOfAllBut(t *testing.T) {
	for rule, want := range map[string]string{
		"P-2 on all but glass":                             "glass none; * P-2",
		"P-1 or P-2 on everything except steel; XPS P-1":   "steel none; * P-1 P-2; XPS P-1",
		"P-1 on any surface other than glass and aluminum": "glass none; aluminum none; * P-1",
		"P-1 on wood, P-2 on concrete":                     "wood P-1; concrete P-2",
		"P-1 on all except glass (no primer)":              "glass none; * P-1",
		"P-1 or P-2 on all but clean steel (none needed)":  "steel none; * P-1 P-2",
		"P-2 on all but glass (shop made)":                 "glass none; * P-2",
		"P-1 on all concrete":                              "concrete P-1",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer\nD1 | LM-1 | concrete | P-1\nD2 | LM-1 | CMU | P-1"},
			page{name: "P", grid: "Tag | Type | Primer | Apply min °F | Max exposure, days\nLM-1 | SBS self-adhered sheet | " + rule +
				" | 40 | 60\nP-1 | water-borne primer | – | 20 | –\nP-2 | solvent-borne primer | – | 20 | –"})
		got := []string{}
		for _, a := range product(t, s, "LM-1").Accepts {
			bed := cmp.Or(a.Text, "*")
			if a.Primer == "none" {
				got = append(got, bed+" none")
			} else {
				got = append(got, bed+" "+strings.Join(a.Primers, " "))
			}
		}
		if strings.Join(got, "; ") != want {
			t.Errorf("%s: %s, want %s", rule, strings.Join(got, "; "), want)
		}
	}
}

// A cell of primers may end in what is kept off the sheet, which is no bed of it.
func TestNeighborsBarredAmongPrimers(t *testing.T) {
	s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer | Lap\n1 | SH-1 | CMU | QS | 3 in."}, page{name: "P", grid: `
Tag | Type | Min °F | Days in sun | Use / primer
SH-1 | SBS sheet | 25 | 90 | QS on CMU; none on metal. Not to EPDM or silicone
QS | solvent primer | 25 | - | -`})
	var beds, off []string
	for _, a := range product(t, s, "SH-1").Accepts {
		beds = append(beds, a.Text+" "+a.Primer)
	}
	for _, to := range product(t, s, "SH-1").KeepOff {
		off = append(off, to.Text)
	}
	if got := strings.Join(beds, ", ") + " | " + strings.Join(off, ", "); got != "CMU listed, metal none | EPDM, silicone" {
		t.Error(got)
	}
}

// An adhesive of a known kind in the column of primers and adhesives stays what it is; stuff
// of which no use is told is a primer there.
func TestAdhesiveAmongPrimers(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Material | Substrate | Primer / adhesive
R1 | IN-1 | MB-1 | AD-1
R2 | MB-1 | CMU | PX-1`}, page{name: "P", grid: `
Tag | Product
MB-1 | SBS self-adhered sheet
IN-1 | XPS board
AD-1 | Elmet Quick solvent spray contact adhesive
PX-1 | Elmet Key SBS in solvent`})
	for tag, want := range map[string]string{"AD-1": "spray-contact-adhesive", "PX-1": "solvent-primer"} {
		if got := product(t, s, tag).Family; got != want {
			t.Errorf("%s is %q, want %q", tag, got, want)
		}
	}
}

// A sheet with a film face is no roof of the same plastic: a primer of the roof is not its.
func TestPrimerOfARoofOfPolyolefin(t *testing.T) {
	for said, primes := range map[string]bool{"none on board, PB-2 on TPO": true, "PB-2 on sheathing": false} {
		s := readPages(t, page{name: "S", grid: "\nMark | Membrane | Substrate | Primer | Date | Touches\nR1 | ZA-1 | gypsum sheathing | " + said + " | 4/8/27 | TPO roof, 60 mil"},
			page{name: "P", grid: "\nTag | Type\nZA-1 | vapor permeable acrylic self-adhered sheet\nPB-2 | solvent rubber primer"})
		for _, it := range s.Lines[0].Items {
			if it.Tag == "PB-2" && (it.Primes != "") != primes {
				t.Errorf("%s: primes %q", said, it.Primes)
			}
		}
	}
}

// What a sheet's own seams are joined with is no bed of it, and no primer under it.
func TestSeamTapeIsNoBed(t *testing.T) {
	for said, want := range map[string]string{
		"none; splice tape":                      "* none",
		"none required; EPDM seam adhesive":      "* none",
		"none on butyl tape; PX-1 on plywood":    "butyl tape none, plywood listed",
		"PX-1 on block; butyl seam tape at laps": "block listed",
	} {
		s := readPages(t, page{name: "S", grid: "\nMark | Membrane | Substrate | Primer\nD1 | SH-3 | brick | PX-1"},
			page{name: "P", grid: "\nTag | Type | Apply min °C | Max days open | Primer\nSH-3 | EPDM flashing sheet | 5 | 60 | " + said + "\nPX-1 | solvent-borne primer | 5 | 30 | -"})
		var got []string
		for _, a := range product(t, s, "SH-3").Accepts {
			text := a.Text
			if text == "" {
				text = a.Keys[0]
			}
			got = append(got, text+" "+a.Primer)
		}
		slices.Sort(got)
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: %v, want %s", said, got, want)
		}
	}
}

// A primer that a sheet's data names without its maker is the one that is listed with it, and
// no second one.
func TestPrimersWithoutTheirMaker(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer
R1 | Alder Seal 40 | CMU | Alder Bond WX
R2 | Alder Seal 40 | CMU | Rowan ST`}, page{name: "P", grid: `
Product | What it is | Min °F | UV days | Primer
Alder Seal 40 | SBS sheet | 40 | 60 | Bond WX or Bond SX on CMU, wood; Rowan ST on glass
Alder Bond WX | water-borne primer | 40 | - | -
Alder Bond SX | solvent primer | 25 | - | -`})
	a := product(t, s, "Alder Seal 40").Accepts
	if len(a) == 0 || !slices.Equal(a[0].Primers, []string{"Alder Bond SX", "Alder Bond WX"}) {
		t.Errorf("%+v, want the primers of the list", a)
	}
	for _, p := range s.Products {
		if p.Tag == "Bond WX" || p.Tag == "Bond SX" {
			t.Errorf("%s is a product of its own", p.Tag)
		}
	}
	if !slices.ContainsFunc(s.Products, func(p schedule.Product) bool { return p.Tag == "Rowan ST" }) {
		t.Error("the primer that no list has is no product")
	}
}

// A column of primers that holds remarks too may keep neighbors off: those are no beds.
func TestKeptOffInTheCellOfPrimers(t *testing.T) {
	for cell, want := range map[string]string{
		"AD-5 / AD-6. No asphalt, no roof cement":              "asphalt, roof cement",
		"AD-5 on CMU. Keep away from soft vinyl and silicone":  "soft vinyl, silicone",
		"AD-5 on CMU; avoid contact with soft vinyl":           "soft vinyl",
		"AD-5 on CMU. No primer on metal":                      "",
		"AD-5 on CMU. No frost for 24 h":                       "",
		"AD-5 on CMU, no AD-6 on plywood":                      "",
		"AD-5 on CMU, plywood; none on metal. May lap asphalt": "",
	} {
		s := readPages(t, page{name: "S", grid: "Mark | Membrane | Substrate | Primer\nR1 | LX-1 | CMU | AD-5"}, page{name: "P", grid: `
Tag | Type | Min °F | UV days | Primer / remarks
LX-1 | EPDM sheet | 40 | 60 | ` + cell + `
AD-5 | bonding adhesive | 40 | - | -
AD-6 | water-borne primer | 40 | - | -`})
		var off []string
		for _, k := range product(t, s, "LX-1").KeepOff {
			off = append(off, k.Text)
		}
		if got := strings.Join(off, ", "); got != want {
			t.Errorf("%s: keeps off %q, want %q", cell, got, want)
		}
	}
}
