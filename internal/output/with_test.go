package output

import (
	"slices"
	"testing"

	"abut/internal/engine"
)

func TestRowsThatTakePart(t *testing.T) {
	f := engine.Finding{Sheet: "Walls", Row: 4}
	for row := 5; row <= 13; row++ {
		f.Related = append(f.Related, engine.Related{Sheet: "Walls", Row: row, What: "covered first"})
	}
	want := []string{
		"row 5: covered first", "row 6: covered first", "row 7: covered first", "row 8: covered first", "row 9: covered first",
		"the like in rows 10, 11, 12, 13",
	}
	if got := with(f); !slices.Equal(got, want) {
		t.Errorf("nine rows: %q", got)
	}
	f.Related = f.Related[:6]
	if got := with(f); len(got) != 6 || got[5] != "row 10: covered first" {
		t.Errorf("six rows: %q", got)
	}
}
