package schedule_test

import "testing"

// The codes of the column that no heading tells stand on a sheet of their own, one short
// word in a cell and its meaning in the next.
func TestCodesOfShelter(t *testing.T) {
	table := "Mark | Where | Sheet | Goes on | Put up | Wk\n1 | East | SBS sheet | CMU | 2026-01-12 | OA\n2 | West | SBS sheet | CMU | 2026-01-19 | TH\n3 | South | SBS sheet | CMU | 2026-01-26 | TH"
	for name, tc := range map[string]struct {
		list          string
		heated, slots int
	}{
		"in two cells":     {list: "Abbreviations\nOA | in the open, no heat\nTH | tent, heated\nMW | mineral wool", heated: 2, slots: 1},
		"two in one row":   {list: "Key to short words\nOA / TH | open air / in heated tent", heated: 2, slots: 1},
		"of another thing": {list: "Abbreviations\nOA | north crew\nTH | south crew"},
		"not all told":     {list: "Abbreviations\nTH | tent, heated"},
		"no list of words": {list: "Issue 3\nOA | in the open, no heat\nTH | tent, heated"},
	} {
		s := readPages(t, page{name: "Rows", grid: table}, page{name: "Words", grid: tc.list})
		heated, slots := 0, 0
		for _, l := range s.Lines {
			for _, said := range l.Signals {
				if said.ID == "heated" && !said.No && said.Slot == "shelter" {
					heated++
				}
			}
		}
		for _, c := range s.Reading.Tables[0].Columns {
			if c.Slot == "shelter" {
				slots++
			}
		}
		if heated != tc.heated || slots != tc.slots {
			t.Errorf("%s: %d rows heated and %d columns of shelter, want %d and %d", name, heated, slots, tc.heated, tc.slots)
		}
	}
}
