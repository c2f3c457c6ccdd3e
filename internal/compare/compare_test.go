package compare

import (
	"flag"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/schedule"
	"abut/policies"
)

const iso, long = time.DateOnly, "2 Jan 2006"

// TestCopyIsSilent: a copy in another order, with other marks, units, dates and
// columns has no finding.
func TestCopyIsSilent(t *testing.T) {
	fewer(t, "12") // each judges a whole workbook
	d := newDesk(t)
	plain := job{rows(), products()}
	specified := plain.write(t, form{dates: iso})
	rapid.Check(t, func(r *rapid.T) {
		f := form{dates: rapid.SampledFrom([]string{iso, long}).Draw(r, "dates")}
		f.metric = rapid.Bool().Draw(r, "metric")
		f.shuffle = rapid.Uint64Range(0, 1000).Draw(r, "shuffle")
		if offset := rapid.IntRange(0, 9).Draw(r, "marks"); offset > 0 {
			f.mark = func(m string) string { return fmt.Sprintf("%d.%s", offset, strings.TrimPrefix(m[1:], "-")) }
		}
		if _, found := d.findings(t, specified, plain.write(t, f)); len(found) > 0 {
			r.Fatalf("%d findings, first: %+v", len(found), found[0])
		}
	})
}

// fewer limits the tries of rapid for one test.
func fewer(t *testing.T, checks string) {
	t.Helper()
	f := flag.Lookup("rapid.checks")
	before := f.Value.String()
	if before != f.DefValue {
		return // asked for on the command line
	}
	if err := f.Value.Set(checks); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := f.Value.Set(before); err != nil {
			t.Error(err)
		}
	})
}

// TestMarksLetteredAnew: every mark stands for another row now.
func TestMarksLetteredAnew(t *testing.T) {
	d := newDesk(t)
	plain := job{rows(), products()}
	turned := map[string]string{"A-01": "A-02", "A-02": "A-03", "A-03": "A-04", "A-04": "B-01", "B-01": "B-02", "B-02": "A-01"}
	moved := plain.write(t, form{dates: iso, shuffle: 5, mark: func(m string) string { return turned[m] }})
	if _, found := d.findings(t, plain.write(t, form{dates: iso}), moved); len(found) > 0 {
		t.Errorf("got %+v", found)
	}
}

// change makes a submittal by changing a copy of the job.
func change(edit func(*job)) job {
	j := job{rows(), products()}
	edit(&j)
	return j
}

func TestChanges(t *testing.T) {
	thin := sheetData{"Benth 32", "self-adhered SBS-modified asphalt sheet, PE film", "concrete, CMU, glass-mat sheathing (Arvo W)", "EPDM, plasticized PVC", 32, 40, 180, 90, 0.05, 0}
	short, tight, closed := thin, thin, thin
	short.tag, short.mil, short.days = "Benth 20", 40, 20
	tight.tag, tight.mil, tight.accepts = "Benth F", 40, "glass-mat sheathing only (Arvo W)"
	closed.tag, closed.mil, closed.what = "Benth B", 40, "self-adhered vapor-permeable sheet, acrylic"
	closed.perms = 0.5
	equalTo := thin
	equalTo.tag, equalTo.mil = "Benth 40", 40
	offer := func(row int, p sheetData) func(*job) {
		return func(j *job) { j.rows[row].sheet, j.products = p.tag, append(j.products, p) }
	}
	tests := map[string]struct {
		edit func(*job)
		rule string // "" for nothing at or above a warning
		mark string
		want string
	}{
		"equal product":    {offer(0, equalTo), "", "", ""},
		"thinner":          {offer(0, thin), "substitution-worse", "A-01", "thickness 32 mil instead of 40 mil"},
		"fewer days":       {offer(1, short), "substitution-worse", "A-02", "20 days instead of 90 days"},
		"substrate lost":   {offer(4, tight), "substitution-substrate", "B-01", "does not list concrete"},
		"vapor class":      {offer(5, closed), "substitution-worse", "B-02", "0.5 perm instead of 18 perm"},
		"not in the data":  {func(j *job) { j.rows[2].sheet = "Benth Edge" }, "substitution-no-data", "A-03", "Benth Edge"},
		"its data changed": {func(j *job) { j.products[2].days = 20 }, "substitution-worse", "B-02", "Arvo V22 as offered: "},
		"row left out":     {func(j *job) { j.rows = slices.Delete(j.rows, 3, 4) }, "substitution-removed", "", "A-04, Louver, roof"},
		"moved to winter":  {func(j *job) { j.rows[0].install, j.rows[0].cover = day(12, 7), day(12, 21) }, "temperature-cold-sheet", "A-01", "40 °F"},
		"gasket of rubber": {func(j *job) { j.rows[2].touches = "anodized aluminum frame; EPDM boot" }, "contact-epdm-on-asphalt", "A-03", "EPDM"},
		"foil outside":     {func(j *job) { j.rows[5].touches = "polyiso, foil both faces" }, "substitution-closes", "B-02", "closes the permeable sheet"},
	}
	d := newDesk(t)
	specified := job{rows(), products()}.write(t, form{dates: iso})
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			_, found := d.findings(t, specified, change(tc.edit).write(t, form{dates: iso, shuffle: 3}))
			found = slices.DeleteFunc(found, func(f engine.Finding) bool { return f.Severity == "note" })
			if tc.rule == "" {
				if len(found) > 0 {
					t.Errorf("got %+v, want nothing", found)
				}
				return
			}
			is := func(f engine.Finding) bool {
				return f.Rule == tc.rule && f.Mark == tc.mark && strings.Contains(f.Message, tc.want)
			}
			if !slices.ContainsFunc(found, is) {
				t.Errorf("no %s at %s with %q in %+v", tc.rule, tc.mark, tc.want, found)
			}
			for _, f := range found {
				if tc.mark != "" && f.Mark != tc.mark && f.Sheet == "Schedule" {
					t.Errorf("another row: %+v", f)
				}
			}
		})
	}
}

// TestBroughtNamesItsCause: the days run out because of the swap, the cold
// comes with the date.
func TestBroughtNamesItsCause(t *testing.T) {
	short := products()[0]
	short.tag, short.days = "Benth 20", 20
	tests := map[string]struct {
		edit        func(*job)
		topic, want string
	}{
		"swap": {func(j *job) { j.rows[1].sheet, j.products = short.tag, append(j.products, short) },
			"exposure", "brought by the swap: Benth 20 in place of Arvo S40"},
		"date": {func(j *job) { j.rows[0].install, j.rows[0].cover = day(12, 7), day(12, 21) },
			"temperature", `brought by the change of install: "2026-06-08" became "2026-12-07"`},
	}
	d := newDesk(t)
	specified := job{rows(), products()}.write(t, form{dates: iso})
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			_, found := d.findings(t, specified, change(tc.edit).write(t, form{dates: iso}))
			i := slices.IndexFunc(found, func(f engine.Finding) bool { return f.Topic == tc.topic })
			if i < 0 {
				t.Fatalf("nothing of %s in %+v", tc.topic, found)
			}
			if !slices.ContainsFunc(found[i].Related, func(r engine.Related) bool { return r.What == tc.want }) {
				t.Errorf("got %+v, want %q", found[i].Related, tc.want)
			}
		})
	}
}

// TestSplitRow: a row that became two is neither left out nor added.
func TestSplitRow(t *testing.T) {
	d := newDesk(t)
	split := change(func(j *job) {
		second := j.rows[0]
		j.rows[0].mark, second.mark = "A-01a", "A-01b"
		j.rows = append(j.rows, second)
	})
	doc, found := d.findings(t, job{rows(), products()}.write(t, form{dates: iso}), split.write(t, form{dates: iso}))
	if len(doc.Comparison.Added)+len(doc.Comparison.Removed) > 0 {
		t.Errorf("added %+v, removed %+v", doc.Comparison.Added, doc.Comparison.Removed)
	}
	for _, f := range found {
		if f.Severity != "note" {
			t.Errorf("got %+v", f)
		}
	}
}

func TestLog(t *testing.T) {
	d := newDesk(t)
	thin, same := products()[0], products()[0]
	thin.tag, thin.mil, thin.days = "Benth 32", 32, 20
	same.tag = "Benth 40"
	submitted := change(func(j *job) {
		j.rows[0].sheet, j.rows[1].sheet, j.rows[4].sheet = thin.tag, thin.tag, same.tag
		j.products = append(j.products, thin, same)
	})
	doc, found := d.findings(t, job{rows(), products()}.write(t, form{dates: iso}), submitted.write(t, form{dates: iso}))
	got := d.compare.Log(doc, found)
	if len(got) != 2 {
		t.Fatalf("got %d entries, want 2: %+v", len(got), got)
	}
	if got[0].Action != "rejected" || len(got[0].Lines) != 2 || len(got[0].Worse) != 1 || len(got[0].Breaks) == 0 {
		t.Errorf("got %+v", got[0])
	}
	if got[1].Action != "no exceptions taken" || len(got[1].Worse)+len(got[1].Breaks) > 0 {
		t.Errorf("got %+v", got[1])
	}
}

// TestNothingToCompare: schedules without lines, or with no line in common.
func TestNothingToCompare(t *testing.T) {
	d := newDesk(t)
	full := d.read(t, job{rows()[:2], products()}.write(t, form{dates: iso}))
	strange := job{[]entry{{"Z-9", "Dome, lantern", "Benth Q", "Copper", "none", "brick", "solder", day(1, 5), day(2, 1)}}, nil}
	other := d.read(t, strange.write(t, form{dates: iso}))
	empty := &document.Document{}
	tests := map[string]struct {
		was, now                *document.Document
		pairs, removed, brought int
	}{
		"nothing offered":   {full, empty, 0, 2, 0},
		"nothing specified": {empty, full, 0, 0, 2},
		"nothing in common": {full, other, 0, 2, 1},
		"nothing at all":    {empty, empty, 0, 0, 0},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			c := d.compare.Documents(tc.was, tc.now)
			if len(c.Pairs) != tc.pairs || len(c.Removed) != tc.removed || len(c.Added) != tc.brought {
				t.Errorf("got %d pairs, %d removed, %d added", len(c.Pairs), len(c.Removed), len(c.Added))
			}
		})
	}
}

// TestUncertain: a row of which everything was renamed is matched with a doubt.
func TestUncertain(t *testing.T) {
	d := newDesk(t)
	renamed := change(func(j *job) {
		j.rows[3].mark, j.rows[3].place, j.rows[3].sheet = "Q-77", "Vent panel, plant", "Arvo S40"
	})
	doc := d.read(t, renamed.write(t, form{dates: iso}))
	c := d.compare.Documents(d.read(t, job{rows(), products()}.write(t, form{dates: iso})), doc)
	for _, p := range c.Pairs {
		if sure := p.Was.Mark != "A-04"; p.Sure != sure {
			t.Errorf("%s (%s): sure is %v at score %.2f, next %.2f", p.Line, p.Was.Mark, p.Sure, p.Score, p.Next)
		}
	}
}

func BenchmarkDocuments(b *testing.B) {
	d := newDesk(b)
	large := job{products: products()}
	for i := range 500 {
		e := rows()[i%6]
		e.mark, e.place = fmt.Sprintf("%s-%d", e.mark, i), fmt.Sprintf("%s, bay %d", e.place, i)
		large.rows = append(large.rows, e)
	}
	was, now := d.read(b, large.write(b, form{dates: iso})), d.read(b, large.write(b, form{dates: iso, shuffle: 4}))
	for b.Loop() {
		d.compare.Documents(was, now)
	}
}

// TestAlikeIsNoPart: a head that was left out is not part of the sill beside
// it, though the rows say the same in all else; two bays of one edge are.
func TestAlikeIsNoPart(t *testing.T) {
	d := newDesk(t)
	at := func(prefix string, places []string) *document.Document {
		return d.read(t, change(func(j *job) {
			first := j.rows[0]
			for i, place := range places {
				first.mark, first.place = fmt.Sprintf("Q-%d", i), place
				j.rows = append(j.rows, first)
			}
		}).write(t, form{dates: iso, mark: func(m string) string { return prefix + m }}))
	}
	tests := map[string]struct {
		was, now       []string
		removed, added int
	}{
		"head and sill": {[]string{"Window head, plant room", "Window sill, plant room"}, []string{"Window sill, plant room"}, 1, 0},
		"two bays":      {[]string{"Slab edge, plant room"}, []string{"Slab edge, plant room, bays 1-4", "Slab edge, plant room, bays 5-9"}, 0, 0},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			c := d.compare.Documents(at("", tc.was), at("Z", tc.now)) // lettered anew
			if len(c.Removed) != tc.removed || len(c.Added) != tc.added {
				t.Errorf("removed %+v, added %+v", c.Removed, c.Added)
			}
		})
	}
}

// TestRowsReferToMarks: the offer numbers its rows anew, and a column of its own
// says which rows of the specified schedule they answer to.
func TestRowsReferToMarks(t *testing.T) {
	line := func(mark, place string, refs ...string) schedule.Line {
		item := schedule.Item{ID: mark + "/1", Slot: "material", Text: "sheet", Family: "rubberized-asphalt-membrane", Polarity: "yes"}
		return schedule.Line{ID: mark, Mark: mark, Place: place, Refs: refs, Items: []schedule.Item{item}}
	}
	specified := &document.Document{Lines: []schedule.Line{
		line("B-01", "North wall"), line("B-02", "Door thresholds"), line("B-03", "Book return"), line("B-04", "South wall"),
	}}
	submitted := &document.Document{Lines: []schedule.Line{
		line("1", "Brick, cold side", "B-04"), line("2", "Entrances", "B-02 / B-03"), line("3", "Brick, warm side", "B-01", "07-110"),
	}}
	c, err := New(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	got := map[string]string{}
	out := c.Documents(specified, submitted)
	for _, p := range out.Pairs {
		got[p.Was.Mark] = p.Line
	}
	want := map[string]string{"B-01": "3", "B-02": "2", "B-03": "2", "B-04": "1"}
	if !maps.Equal(got, want) || len(out.Removed) > 0 || len(out.Added) > 0 {
		t.Errorf("matched %v, want %v; removed %v, added %v", got, want, out.Removed, out.Added)
	}
}

// TestRowsCiteTheSameDetail: the rows are numbered, named and ordered anew, and cite
// the details of the same drawings, with the sheet first or last.
func TestRowsCiteTheSameDetail(t *testing.T) {
	line := func(mark, place string, refs ...string) schedule.Line {
		item := schedule.Item{ID: mark + "/1", Slot: "material", Text: "sheet", Family: "rubberized-asphalt-membrane", Polarity: "yes"}
		return schedule.Line{ID: mark, Mark: mark, Place: place, Refs: refs, Items: []schedule.Item{item}}
	}
	specified := &document.Document{Lines: []schedule.Line{
		line("X-10", "Ledge", "3/E2.04"), line("X-20", "Cheek wall", "4/E2.03"), line("X-30", "Pit", "11 / E-7"),
		line("X-40", "Stair wall, low", "6/E9"), line("X-50", "Stair wall, high", "8/E9"),
	}}
	submitted := &document.Document{Lines: []schedule.Line{
		line("1", "Sump", "E7-11", "rev 2"), line("2", "Relieving angle", "E2.04-3"), line("3", "Ramp side", "E2.03-4, E2.03-6"),
		line("4", "Both stair walls", "6 & 8/E-9"),
	}}
	c, err := New(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	got := map[string]string{}
	for _, p := range c.Documents(specified, submitted).Pairs {
		got[p.Was.Mark] = p.Line
		if !p.Sure {
			t.Errorf("%s for %s is not sure (%.2f, next %.2f)", p.Line, p.Was.Mark, p.Score, p.Next)
		}
	}
	if want := map[string]string{"X-10": "2", "X-20": "3", "X-30": "1", "X-40": "4", "X-50": "4"}; !maps.Equal(got, want) {
		t.Errorf("matched %v, want %v", got, want)
	}
}

// TestOfferedInPlaceOf: the data of an offer says in whose place each product stands,
// which pairs neighbors that another order or class would cross.
func TestOfferedInPlaceOf(t *testing.T) {
	product := func(tag, stands string) schedule.Product {
		return schedule.Product{ID: tag, Tag: tag, Texts: map[string]string{"specified": stands}}
	}
	item := func(slot, tag, class string) schedule.Item {
		return schedule.Item{ID: tag, Slot: slot, Text: tag, Tag: tag, Product: tag, Class: class, Polarity: "yes"}
	}
	line := func(id string, items ...schedule.Item) schedule.Line {
		return schedule.Line{ID: id, Mark: "M", Items: items}
	}
	specified := &document.Document{
		Lines:    []schedule.Line{line("was", item("material", "Q-1", "membrane"), item("touches", "Q-2", "membrane"), item("touches", "Q-3", "membrane"))},
		Products: []schedule.Product{product("Q-1", ""), product("Q-2", ""), product("Q-3", "")},
	}
	submitted := &document.Document{
		Lines: []schedule.Line{
			line("now", item("material", "Oke 5", "membrane"), item("touches", "Oke 9", "membrane"), item("touches", "Oke 7", "membrane")),
			{ID: "none", Mark: "N", Texts: map[string]string{"material": "by tenant"}, Signals: []schedule.Said{{ID: "by_others", Slot: "material"}}},
		},
		Products: []schedule.Product{product("Oke 5", "Q-1"), product("Oke 7", "Q-2"), product("Oke 9", "Q-3 / Q-4")},
	}
	c, err := New(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	got := map[string]string{}
	for _, p := range c.Documents(specified, submitted).Pairs {
		for _, s := range p.Swaps {
			got[s.Now.Text] = s.Was.Text
		}
	}
	if want := map[string]string{"Oke 5": "Q-1", "Oke 7": "Q-2", "Oke 9": "Q-3"}; !maps.Equal(got, want) {
		t.Errorf("swapped %v, want %v", got, want)
	}
	if m := mainOf(&submitted.Lines[1]); m != nil {
		t.Errorf("%q stands for a material", m.Text)
	}
}
