package schedule_test

import "testing"

// Tables that stand one below the other on a sheet: what a column of the upper one
// holds is told by its own rows, and the short words of both by the notes.
func TestTablesOneBelowTheOther(t *testing.T) {
	s := read(t, `
NOTES
Substrate: SFB split-face block / GMX glass-mat gypsum sheathing / PWD plywood, sanded

Tag | What | Mil | Perm | Primer ok | OK on
B-1 | butyl sheet | 30 | 0.1 | P-1 | GMX; SFB
B-2 | butyl tape, wide | 25 | 0.1 | P-1 | SFB
P-1 | water-borne primer | | | |

Mark | Place | Membrane | Substrate | Primer | Covered
C1 | north | B-1 | GMX | P-1 | 2 Mar 2026
C2 | north | B-1 | GMX | P-1 | 2 Mar 2026
C3 | north | B-1 | GMX | P-1 | 2 Mar 2026
C4 | north | B-1 | GMX | P-1 | 2 Mar 2026
C5 | north | B-1 | GMX | P-1 | 2 Mar 2026
C6 | south | B-2 | SFB | P-1 | 3 Mar 2026
C7 | south | B-2 | SFB | P-1 | 3 Mar 2026
`)
	p := product(t, s, "B-1")
	if f := p.Figures["vapor_ng"]; f.Min == nil {
		t.Errorf("no permeance of B-1: %+v", p.Texts)
	}
	if len(p.Accepts) != 2 || p.Accepts[0].Keys[0] != "glass-mat-gypsum-sheathing" || p.Accepts[1].Keys[0] != "concrete-masonry" {
		t.Errorf("B-1 accepts %+v", p.Accepts)
	}
	for mark, want := range map[string]string{"C1": "glass-mat-gypsum-sheathing", "C6": "concrete-masonry"} {
		if got := items(line(t, s, mark), "substrate"); got != want {
			t.Errorf("%s goes on %q, want %q", mark, got, want)
		}
	}
}
