package schedule

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"abut/internal/workbook"
	"abut/policies"
)

// TestMayHeadMissesNoHeading tries sheets of words of headings and others as they
// come: of every row that is taken for the first of a heading, its words tell so.
func TestMayHeadMissesNoHeading(t *testing.T) {
	rd, err := NewReader(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	var words []string
	for _, slot := range rd.head.slots {
		words = append(words, slot.words...)
	}
	words = slices.Concat(words, slices.Sorted(maps.Keys(rd.head.same)), rd.head.lower, rd.head.upper)
	text := rapid.OneOf(
		rapid.SampledFrom(words), rapid.SampledFrom(words), // twice as likely
		rapid.Map(rapid.SliceOfN(rapid.SampledFrom(words), 2, 2), func(two []string) string { return strings.Join(two, " ") }),
		rapid.SampledFrom([]string{"", "", "PutOnDate", "un", "covered", "shop", "shop membrane", "field primer", "set", "Min.", "Max.", "°F", "mils / psi",
			"not below", "keep away from", "$/sf", "what is it on?", "2026", "3 Mar 2026", "12", "butyl sheet", "plywood", "xyz", "xyz, abc", "a long text of nothing that is known"}),
	)
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.IntRange(1, 6).Draw(t, "width")
		rows := rapid.SliceOfN(rapid.SliceOfN(text, width, width), 3, 7).Draw(t, "rows")
		lines := make([]string, len(rows))
		for i, row := range rows {
			lines[i] = strings.Join(row, "|")
		}
		book, err := workbook.Read("random.csv", []byte(strings.Join(lines, "\n")), workbook.DefaultLimits())
		if err != nil {
			t.Skip(err)
		}
		r := rd.begin("random.csv", Settings{})
		for i := range book.Sheets {
			s := &book.Sheets[i]
			for row := 1; row <= s.MaxRow; row++ {
				if b, ok := r.tryHeading(s, row); ok && !r.mayHead(s, row, &headingSearch{}) {
					t.Fatalf("row %d of %q is a heading: %+v", row, lines, b.slots())
				}
			}
		}
	})
}
