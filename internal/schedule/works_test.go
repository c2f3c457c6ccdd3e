package schedule_test

import (
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
)

const madeAndSet = `
Mark | Factory-applied membrane | Factory primer | Factory date | Field-applied membrane | Field primer | Field date | Erected | Substrate | Lap | Surface °F | Adjacent | Covered | Remarks
P1 | AB-1 | PR-1 | 4 Jan 2027 | AB-2 strip on AB-1 | none | 20 Feb 2027 | 18 Feb 2027 | gypsum sheathing faced with AB-1 | 3 in. | 28 | EPDM gasket | 30 Mar 2027 | open, windy
P2 | AB-1, foot left loose | " | 5 Jan 2027 | – | – | – | 18 Feb 2027 | " | 2 in. | – | silicone gasket | 30 Mar 2027 |
P3 | – | – | – | AB-2 | PR-1 | 22 Feb 2027 | – | plywood | 3 in. | 30 | " | 1 Apr 2027 |
P4 | AB-1, foot left loose | PR-1 | 6 Jan 2027 | AB-2 strip | " | 23 Feb 2027 | 19 Feb 2027 | coated plywood | 3 in. | 31 | EPDM gasket | 2 Apr 2027 |`

const madeProducts = `
Tag | Description | Min application temp °F | Lap in. | Max days exposed | Keep off
AB-1 | self-adhered SBS membrane | 40 | 2 | 60 | EPDM
AB-2 | self-adhered SBS membrane, low temp | 20 | 3 | 60 | EPDM
PR-1 | solvent-based primer | 20 | – | – | –`

// ofWork is the line of a mark for what was put on in the shop, or on site.
func ofWork(t *testing.T, s *schedule.Schedule, mark string, shop bool) *schedule.Line {
	t.Helper()
	for i := range s.Lines {
		l := &s.Lines[i]
		made := slices.ContainsFunc(l.Signals, func(said schedule.Said) bool { return said.ID == "heated" })
		if l.Mark == mark && made == shop {
			return l
		}
	}
	t.Fatalf("%s: no line (in the shop: %v)", mark, shop)
	return nil
}

// A row tells what is put on in a factory and what in the field: two works, each with
// its material, primer and day; the joint is that of the field.
func TestWorksOfARow(t *testing.T) {
	s := readPages(t, page{name: "S", grid: madeAndSet}, page{name: "P", grid: madeProducts})
	if len(s.Lines) != 6 {
		t.Fatalf("%d lines, want 6", len(s.Lines))
	}
	for _, want := range []struct {
		mark, tag, primer, day, touches string
		lap                             float64
		bare                            int
		shop                            bool
	}{
		{"P1", "AB-1", "PR-1", "2027-01-04", "", 0, 40, true},
		{"P1", "AB-2", "none", "2027-02-20", "EPDM gasket", 76.2, 38, false},
		{"P2", "AB-1", "PR-1", "2027-01-05", "silicone gasket", 50.8, 40, true},
		{"P3", "AB-2", "PR-1", "2027-02-22", "silicone gasket", 76.2, 38, false},
		{"P4", "AB-2", "PR-1", "2027-02-23", "EPDM gasket", 76.2, 38, false},
	} {
		l := ofWork(t, s, want.mark, want.shop)
		lap := 0.0
		if f := l.Figures["lap_mm"]; f.Min != nil {
			lap = *f.Min
		}
		main := l.Main()
		if main == nil || main.Tag != want.tag || l.Texts["primer"] != want.primer || l.Dates["install"].From != want.day ||
			l.Texts["touches"] != want.touches || lap-want.lap > 0.1 || want.lap-lap > 0.1 || l.Spans["bare_days"].Min != want.bare {
			t.Errorf("%s in the shop %v: %+v, primer %q, on %s, touches %q, lap %v, bare %+v", want.mark, want.shop, main, l.Texts["primer"], l.Dates["install"].From, l.Texts["touches"], lap, l.Spans["bare_days"])
		}
		if _, read := l.Figures["reading_surface_c"]; read == want.shop {
			t.Errorf("%s in the shop %v: the reading of the field is there: %v", want.mark, want.shop, read)
		}
	}
}

// The work in the field goes on what came from the factory, and not on the board below.
func TestBedFromTheShop(t *testing.T) {
	s := readPages(t, page{name: "S", grid: madeAndSet}, page{name: "P", grid: madeProducts})
	for _, mark := range []string{"P1", "P4"} {
		for _, it := range ofWork(t, s, mark, false).Items {
			if want := it.Product != ""; it.Slot == "substrate" && !want || it.Tag == "AB-1" && it.Slot != "substrate" {
				t.Errorf("%s: %q in %s", mark, it.Text, it.Slot)
			}
		}
	}
	if got := items(ofWork(t, s, "P1", true), "substrate"); !strings.Contains(got, "gypsum") {
		t.Errorf("in the factory it goes on %s", got)
	}
	if said(ofWork(t, s, "P4", true), "edge_open") || said(ofWork(t, s, "P4", false), "edge_open") {
		t.Error("the edge that the field closes is open")
	}
	if !said(ofWork(t, s, "P2", true), "edge_open") {
		t.Error("the edge that nothing closes is not open")
	}
}

// The words for the two works stand in the heading above, or after what they part, and
// the day of setting is that of the field where no other is told.
func TestWorksInOtherHeadings(t *testing.T) {
	for _, heads := range []string{
		"Mark | IN PLANT | | | AT ERECTION | | | Panels set\n | Membrane | Primer | Date | Membrane | Primer | Date |",
		"Mark | FACTORY | | | FIELD | | | Panels set\n | Membrane | Primer | Date | Membrane | Primer | Date |", // nothing is merged
		"Mark | Membrane (shop) | Primer (shop) | Date (shop) | Membrane (site) | Primer (site) | Date (site) | Hung",
		"Mark | Prefab yard: membrane | Prefab yard: primer | Prefab yard: date | On site: membrane | On site: primer | On site: date | Set",
	} {
		rows := "\nP1 | butyl sheet | none | 4 Jan 2027 | silicone strip | silicone primer | 20 Feb 2027 | 18 Feb 2027"
		p := page{name: "S", grid: heads + rows}
		if strings.Contains(heads, "IN PLANT") {
			p.merges = []string{"B1:D1", "E1:G1"}
		}
		s := readPages(t, p)
		shop, site := ofWork(t, s, "P1", true), ofWork(t, s, "P1", false)
		if shop.Dates["install"].From != "2027-01-04" || shop.Dates["unwrapped"].From != "2027-02-18" || site.Dates["install"].From != "2027-02-20" || site.Texts["primer"] != "silicone primer" {
			t.Errorf("%s: shop %+v, site %+v", heads, shop.Dates, site.Dates)
		}
	}
	s := read(t, "Mark | Shop membrane | Shop primer | Shop date | Site membrane | Site primer | Erected\nP1 | butyl sheet | none | 4 Jan 2027 | silicone strip | silicone primer | 18 Feb 2027")
	if got := ofWork(t, s, "P1", false).Dates["install"].From; got != "2027-02-18" {
		t.Errorf("on site on %q", got)
	}
}

// Headings of one work only, or of a firm's factory, part no rows.
func TestOneWork(t *testing.T) {
	for _, heads := range []string{
		"Mark | Factory membrane | Factory primer | Substrate | Lap",
		"Mark | Membrane | Primer | Substrate | Lap",
		"Mark | Field membrane | Primer | Substrate | Lap",
	} {
		s := read(t, heads+"\nW1 | butyl sheet | none | plywood | 3 in.\nW2 | butyl sheet | none | steel | 3 in.\nW3 | SBS sheet | none | steel | 3 in.")
		if len(s.Lines) != 3 || s.Lines[0].Figures["lap_mm"].Min == nil {
			t.Errorf("%s: %+v", heads, s.Lines)
		}
	}
}

// What was wrapped lies open from the day on which the wrap comes off.
func TestUnwrapped(t *testing.T) {
	s := read(t, `
Mark | Membrane | Substrate | Primer | Applied | Wrap off | Covered
M1 | butyl sheet | plywood | none | 4 Jan 2027 | 20 Feb 2027 | 2 Mar 2027
M2 | butyl sheet | plywood | none | 4 Jan 2027 | | 2 Mar 2027`)
	for mark, want := range map[string]int{"M1": 10, "M2": 57} {
		if got := line(t, s, mark).Spans["bare_days"].Min; got != want {
			t.Errorf("%s: %d days, want %d", mark, got, want)
		}
	}
}

const fieldAndStrip = `
Ref | Where | Backing | Primer | Air barrier | Mils | Flashing strip | Lapped onto | Bead | Lap in. | Placed | Clad by
D1 | pier, east | plywood | none | AB-1 | 40 | – | – | – | – | 4 May 2027 | 8 Jun 2027
D2 | hatch sill | plywood | PR-1 | AB-1 | 40 | AB-2 | steel curb | SE-1 | 3 | 11 May 2027 | 22 Jun 2027
D3 | wall foot | concrete | PR-1 | – | – | AB-2 | concrete | – | 4 | 18 May 2027 | 22 Jun 2027`

const stripProducts = `
Tag | Description | Min application temp °F | Max days exposed | Thickness mil
AB-1 | fluid-applied acrylic air barrier | 40 | 180 | 40
AB-2 | self-adhered butyl flashing | 20 | 30 | 20
SE-1 | silyl-terminated polyether sealant | 20 | – | –
PR-1 | solvent-based primer | 20 | – | –`

// A row of a sheet and a strip with a bed of its own is two lines: the primer, the bead and
// the lap are the strip's, the thickness is the sheet's, and the days are of both.
func TestStripBesideField(t *testing.T) {
	s := readPages(t, page{name: "S", grid: fieldAndStrip}, page{name: "P", grid: stripProducts})
	if len(s.Lines) != 4 {
		t.Fatalf("%d lines, want 4", len(s.Lines))
	}
	for i, want := range []struct{ id, tag, bed, primer, bead, thickness string }{
		{"S!2", "AB-1", "plywood; –", "none", "–", "40"},
		{"S!3 field", "AB-1", "plywood", "", "", "40"},
		{"S!3", "AB-2", "steel curb", "PR-1", "SE-1", ""},
		{"S!4", "AB-2", "concrete", "PR-1", "–", ""},
	} {
		l := &s.Lines[i]
		main := l.Main()
		if main == nil || main.Tag != want.tag || l.ID != want.id || l.Texts["substrate"] != want.bed || l.Texts["primer"] != want.primer ||
			l.Texts["sealant"] != want.bead || l.Texts["thickness"] != want.thickness || l.Dates["install"].From == "" || l.Dates["cover"].From == "" {
			t.Errorf("%s: %+v, texts %v, days %v", l.ID, main, l.Texts, l.Dates)
		}
	}
	if got := items(&s.Lines[2], "touches"); !strings.Contains(got, "AB-1") {
		t.Errorf("the strip touches %q", got)
	}
}

// A strip without a bed of its own is what its row touches, and a column that calls the
// places of transitions names no strip.
func TestNoStripBeside(t *testing.T) {
	for _, grid := range []string{
		strings.ReplaceAll(fieldAndStrip, "Lapped onto", "Fastened by"),
		"Ref | Transition | Onto | Primer | Air barrier | Placed | Clad by\nD1 | sill to curb | plywood | none | AB-1 | 4 May 2027 | 8 Jun 2027\nD2 | head to soffit | plywood | none | AB-1 | 4 May 2027 | 8 Jun 2027\nD3 | jamb to pier | plywood | none | AB-1 | 4 May 2027 | 8 Jun 2027",
		"Ref | Backing | Primer | Air barrier | Transition | Onto | Placed | Clad by\nD1 | plywood | none | AB-1 | sill to curb | plywood | 4 May 2027 | 8 Jun 2027\nD2 | plywood | none | AB-1 | head to soffit | plywood | 4 May 2027 | 8 Jun 2027\nD3 | plywood | none | AB-1 | jamb to pier | steel | 4 May 2027 | 8 Jun 2027",
	} {
		s := readPages(t, page{name: "S", grid: grid}, page{name: "P", grid: stripProducts})
		if len(s.Lines) != 3 {
			t.Errorf("%d lines, want 3, of %s", len(s.Lines), grid)
		}
	}
}

// A strip with a column of its own for the primer leaves the other to the sheet of the field.
func TestStripWithItsOwnPrimer(t *testing.T) {
	grid := strings.NewReplacer("Lapped onto |", "Lapped onto | Strip primer |", "steel curb |", "steel curb | PR-1 |", "| concrete | –", "| concrete | PR-1 | –", "| – | – | – | – | 4 May", "| – | – | – | – | – | 4 May",
		"plywood | PR-1", "plywood | water-based primer").Replace(fieldAndStrip)
	s := readPages(t, page{name: "S", grid: grid}, page{name: "P", grid: stripProducts})
	if len(s.Lines) != 4 {
		t.Fatalf("%d lines, want 4", len(s.Lines))
	}
	for i, want := range []string{1: "water-based primer", 2: "PR-1"} {
		if l := &s.Lines[i]; i > 0 && l.Texts["primer"] != want {
			t.Errorf("%s: primer %q, want %q", l.ID, l.Texts["primer"], want)
		}
	}
}
