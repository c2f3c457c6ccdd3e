package schedule_test

import (
	"strings"
	"testing"
)

const laidProducts = `
Tag | Description | Min application temp °F | Lap in. | Max days exposed | Keep off
WB-1 | self-adhered SBS membrane | 40 | 2.5 | 60 | silicone
TF-1 | stainless steel flashing | – | 3 | – | –
TF-2 | silicone transition strip | 0 | 2 | 365 | –
LQ-1 | STPE liquid flashing | 35 | 1 | 180 | –
PR-1 | solvent-based primer | 20 | – | – | –`

// TestLaidBefore: a sheet that is said to be in place before the work of a row is what
// that goes on, and the row is about what stands in the column of its flashings; so it
// is where the row has no sheet.
func TestLaidBefore(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Substrate | Primer | Membrane | Tied in by | Lap | Remarks
D1 | sheathing | PR-1 | WB-1 | TF-1 / TF-2 | 3 in. | prime > WB-1 > TF-1
D2 | sheathing; WB-1 already in place | – | WB-1 | LQ-1 | 1 in. | LQ-1 > frame
D3 | concrete curb | – | WB-1 | LQ-1 pan | 1 in. | WB-1 in place below > LQ-1 > frame
D4 | concrete | – | – | TF-1 | 3 in. | TF-1 > brick
D5 | cast-in-place concrete | PR-1 | WB-1 | TF-2 | 3 in. | WB-1 on cast in place curb > TF-2
D6 | sheathing; WB-1 in place | – | WB-1 | – | 3 in. | bar`}, page{name: "P", grid: laidProducts})
	for mark, want := range map[string]string{"D1": "WB-1", "D2": "LQ-1", "D3": "LQ-1", "D4": "TF-1", "D5": "WB-1", "D6": "WB-1"} {
		l := line(t, s, mark)
		if main := l.Main(); main == nil || main.Tag != want {
			t.Errorf("%s: is about %+v, want %s", mark, main, want)
		}
	}
	if l := line(t, s, "D2"); l.Cells["material"] != "E3" {
		t.Errorf("D2: the material stands in %s", l.Cells["material"])
	}
}

// TestRequirementsAreNoProducts: numbered rows with a subject each are the requirements
// of the project; a column that points at them names no products of a row.
func TestRequirementsAreNoProducts(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Substrate | Primer | Membrane | Lap | Remarks | Q
D1 | sheathing | PR-1 | WB-1 | 3 in. | prime > WB-1 | Q-01, Q-02
D2 | sheathing | PR-1 | WB-1 | 3 in. | prime > WB-1 | Q-02
D3 | concrete | PR-1 | WB-1 | 3 in. | prime > WB-1 | Q-03, Q-04`}, page{name: "P", grid: laidProducts}, page{name: "Q", grid: `
Q | Subject | Requirement
Q-01 | Laps | Self-adhered sheet 3" min, side and end. Upper over lower.
Q-02 | Heat | Membrane within 1" of dark metal: service rating 220 °F min.
Q-03 | Vapor | Air barrier 10 perm min. Pool hall 0.1 perm max.
Q-04 | Season | Water-borne primer only in tent at 50 °F min. No summer-grade sheet.
Q-05 | Metals | No copper to aluminum. Stainless isolated.`})
	for _, p := range s.Products {
		if p.Sheet == "Q" {
			t.Errorf("product %s", p.ID)
		}
	}
	for _, it := range line(t, s, "D1").Items {
		if it.Tag == "Q-01" || it.Tag == "Q-02" {
			t.Errorf("item %s in %s", it.Tag, it.Slot)
		}
	}
}

// TestBracketOfOneBed: a primer in brackets amid a list is that of the bed before it, and
// "as per" another product asks for none.
func TestBracketOfOneBed(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Substrate | Primer | Membrane
D1 | aluminum | – | ST-1
D2 | aluminum | – | ST-1`}, page{name: "P", grid: `
Tag | Description | Min application temp °F | Primer | Goes on
ST-1 | silicone transition strip | 0 | as per SE-1 | Bedded in SE-1 on glass, brick (PM-4), aluminum
SE-1 | neutral-cure silicone sealant | 0 | PM-4 on brick | glass, brick
PM-4 | silane primer for joints | 20 | n/a | brick, for SE-1`})
	for _, a := range product(t, s, "ST-1").Accepts {
		if want := a.Text == "brick"; want != (a.Primer == "listed") || a.Primer == "always" && a.Text != "PM-4" {
			t.Errorf("%s: %s %v", a.Text, a.Primer, a.Primers)
		}
	}
}

// TestStepsOfWork: the steps that signs part are clauses of their own, so that what one
// says of its materials is not said of the next; a figure after the sign is a limit.
func TestStepsOfWork(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Substrate | Primer | Membrane | Lap | Remarks
D1 | sheathing | PR-1 | WB-1 | 3 in. | LQ-1 over TF-1 edge > TF-2 bedded in sealant > brick, U > 0.2`}, page{name: "P", grid: laidProducts})
	for _, it := range line(t, s, "D1").Items {
		if it.Tag == "TF-2" && it.Slot == "remark" && (it.Relation == "over" || strings.Contains(it.Clause, "LQ-1")) {
			t.Errorf("%s is %s in %q", it.Tag, it.Relation, it.Clause)
		}
	}
}
