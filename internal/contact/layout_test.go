package contact_test

import (
	"cmp"
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"abut/internal/contact"
	"abut/internal/schedule"
	"abut/internal/workbook"
	"abut/policies"
)

// known is one line as it should be read back.
type known struct {
	mark, group                          string
	material, substrate, primer, touches string // families, parted by spaces
	thick, lap                           float64
	install, cover                       time.Time
	words                                map[string]string // slot -> what the cell says
}

// wording are ways to name the families that the property draws from.
func wording() map[string]map[string][]string {
	return map[string]map[string][]string{
		"material": {
			"rubberized-asphalt-membrane": {"rubberized asphalt membrane", "SBS-modified self-adhered membrane", "self-adhered rubberised asphalt sheet"},
			"butyl-flashing-tape":         {"butyl tape", "butyl flashing tape", "self-adhered butyl flashing"},
			"epdm-membrane":               {"EPDM membrane", "EPDM sheet"},
		},
		"substrate": {
			"concrete-masonry":           {"CMU", "concrete block", "concrete masonry"},
			"osb-plywood-sheathing":      {"plywood", "plywood sheathing", "OSB sheathing"},
			"glass-mat-gypsum-sheathing": {"glass-mat gypsum sheathing", "glass mat sheathing"},
			"galvanized-sheet":           {"galvanized steel sheet", "galv. sheet metal"},
		},
		"primer": {
			"solvent-primer": {"solvent-borne primer", "solvent-based primer"},
			"water-primer":   {"water-based primer", "acrylic water-borne primer"},
			"":               {"none", "-", ""},
		},
		"touches": {
			"epdm-gasket":          {"EPDM gasket", "EPDM glazing gasket"},
			"xps":                  {"XPS", "extruded polystyrene", "XPS insulation"},
			"clay-brick":           {"clay brick", "brick veneer"},
			"polyurethane-sealant": {"polyurethane sealant", "urethane sealant"},
			"":                     {"-", "n/a", ""},
		},
	}
}

// headingWords gives the words of columns.json that stand for one slot alone and
// give no unit.
func headingWords(t *testing.T) map[string][]string {
	t.Helper()
	raw, err := policies.FS.ReadFile("knowledge/columns.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Columns struct {
			Slots map[string]struct {
				Words []string `json:"words"`
			} `json:"slots"`
		} `json:"columns"`
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		t.Fatal(err)
	}
	count := map[string]int{}
	for _, s := range file.Columns.Slots {
		for _, w := range s.Words {
			count[w]++
		}
	}
	out := map[string][]string{}
	for name, s := range file.Columns.Slots {
		for _, w := range s.Words {
			if count[w] == 1 && !strings.HasSuffix(w, "mm") && !strings.HasSuffix(w, "mils") && !strings.HasSuffix(w, " in") {
				out[name] = append(out[name], w)
			}
		}
		slices.Sort(out[name])
	}
	return out
}

// draw picks the lines of a schedule.
func draw(t *rapid.T) []known {
	words := wording()
	pick := func(slot, label string) (family, word string) {
		var families []string
		for f := range words[slot] {
			families = append(families, f)
		}
		slices.Sort(families)
		family = rapid.SampledFrom(families).Draw(t, label)
		return family, rapid.SampledFrom(words[slot][family]).Draw(t, label+" words")
	}
	var out []known
	group := 1
	for i := range rapid.IntRange(2, 12).Draw(t, "lines") {
		k := known{mark: fmt.Sprintf("D-%02d", i+1), words: map[string]string{}}
		k.material, k.words["material"] = pick("material", "material")
		k.substrate, k.words["substrate"] = pick("substrate", "substrate")
		k.primer, k.words["primer"] = pick("primer", "primer")
		k.touches, k.words["touches"] = pick("touches", "touches")
		if more, word := pick("touches", "touches too"); k.touches != "" && more != "" && more != k.touches {
			k.touches += " " + more
			k.words["touches"] += rapid.SampledFrom([]string{", ", "; ", "\n", " and ", " + ", " & "}).Draw(t, "joined") + word
		}
		k.thick = float64(rapid.IntRange(6, 40).Draw(t, "thickness")) / 10
		k.lap = float64(rapid.IntRange(50, 200).Draw(t, "lap"))
		k.install = time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC).AddDate(0, 0, rapid.IntRange(0, 330).Draw(t, "day"))
		k.cover = k.install.AddDate(0, 0, rapid.IntRange(1, 60).Draw(t, "days open"))
		if i > 0 && rapid.IntRange(0, 3).Draw(t, "next wall") == 0 {
			group++
		}
		k.group = fmt.Sprintf("W%d", group)
		out = append(out, k)
	}
	return out
}

// layout is one office's way to write lines down.
type layout struct {
	order   []string
	heading map[string]string
	unit    map[string]string
	bare    map[string]bool // the unit stands in the heading
	date    string
	country string
	ditto   string // stands for the material of the row above, "" never
	group   string // column, merged, once, divider, none
	title   []string
	notes   []string
	gap     bool // an empty row before the notes
}

func drawLayout(t *rapid.T, headings map[string][]string) layout {
	l := layout{heading: map[string]string{}, unit: map[string]string{}, bare: map[string]bool{}}
	slots := []string{"mark", "material", "substrate", "primer", "touches", "thickness", "lap", "install", "cover"}
	l.group = rapid.SampledFrom([]string{"column", "merged", "once", "divider", "none"}).Draw(t, "walls")
	if l.group == "column" || l.group == "merged" || l.group == "once" {
		slots = append(slots, "group")
	}
	l.order = rapid.Permutation(append(slots, rapid.SliceOfNDistinct(rapid.SampledFrom(idle()), 0, 2, rapid.ID).Draw(t, "idle")...)).Draw(t, "order")
	for _, s := range slots {
		w := rapid.SampledFrom(headings[s]).Draw(t, s+" heading")
		switch rapid.IntRange(0, 2).Draw(t, s+" case") {
		case 0:
			w = strings.ToUpper(w)
		case 1:
			w = strings.ToUpper(w[:1]) + w[1:]
		}
		l.heading[s] = w
	}
	l.ditto = rapid.SampledFrom([]string{"", "", "ditto", "″", "same as above"}).Draw(t, "ditto")
	for _, s := range []string{"thickness", "lap"} {
		l.unit[s] = rapid.SampledFrom(map[string][]string{"thickness": {"mm", "mil"}, "lap": {"mm", "in."}}[s]).Draw(t, s+" unit")
		if l.bare[s] = rapid.Bool().Draw(t, s+" bare"); l.bare[s] {
			l.heading[s] += " (" + l.unit[s] + ")"
		}
	}
	l.date = rapid.SampledFrom([]string{"2 Jan 2006", "January 2, 2006", "2006-01-02", "02-Jan-06", "1/2/2006", "Jan. 2, 2006", "Mon 2 Jan 2006", "2/1/2006", "02.01.2006", "real"}).Draw(t, "dates")
	l.country = map[bool]string{true: "GB", false: "US"}[l.date == "2/1/2006" || l.date == "02.01.2006"]
	l.title = rapid.SliceOfN(rapid.SampledFrom([]string{"Osprey Point Visitor Center", "Issue 3, for tender", "Duluth, Minnesota", "Drawn by the office", "Sheet 2 of 4"}), 0, 3).Draw(t, "title")
	l.notes = rapid.SliceOfN(rapid.SampledFrom([]string{"Primers 250 g/L max.", "See the drawings for grid lines.", "Keep rolls dry on site until they are used."}), 0, 2).Draw(t, "notes")
	l.gap = rapid.Bool().Draw(t, "gap")
	return l
}

// idle are columns that say nothing of the materials.
func idle() []string { return []string{"Cost code", "Drawing", "Qty", "Status"} }

// sheet writes the lines down.
func (l layout) sheet(lines []known) *workbook.Book {
	s := workbook.Sheet{Kind: workbook.Worksheet, State: "visible", MaxCol: len(l.order)}
	row := 0
	put := func(cells ...workbook.Cell) {
		row++
		r := workbook.Row{Number: row}
		for i, c := range cells {
			if c.Value != "" {
				c.Row, c.Col = row, i+1
				r.Cells = append(r.Cells, c)
			}
		}
		if len(r.Cells) > 0 {
			s.Rows, s.MaxRow = append(s.Rows, r), row
		}
	}
	for _, w := range l.title {
		put(workbook.Cell{Value: w})
	}
	var head []workbook.Cell
	for _, slot := range l.order {
		head = append(head, workbook.Cell{Value: cmp.Or(l.heading[slot], slot)})
	}
	put(head...)
	for i, k := range lines {
		first := i == 0 || lines[i-1].group != k.group
		if l.group == "divider" && first {
			put(workbook.Cell{Value: "Wall " + k.group})
		}
		var cells []workbook.Cell
		for _, slot := range l.order {
			c := l.cell(k, slot, first)
			if slot == "material" && i > 0 && l.ditto != "" && lines[i-1].material == k.material {
				c.Value = l.ditto
			}
			cells = append(cells, c)
		}
		put(cells...)
	}
	if l.gap {
		put()
	}
	for _, w := range l.notes {
		put(workbook.Cell{Value: w})
	}
	return &workbook.Book{Path: "wall.xlsx", Sheets: []workbook.Sheet{s}}
}

func (l layout) cell(k known, slot string, first bool) workbook.Cell {
	switch slot {
	case "mark":
		return workbook.Cell{Value: k.mark}
	case "group":
		switch {
		case l.group == "once" && !first:
			return workbook.Cell{}
		case l.group == "merged" && !first:
			return workbook.Cell{Value: k.group, Merged: true}
		}
		return workbook.Cell{Value: k.group}
	case "thickness":
		return l.figure(slot, k.thick, 0.0254)
	case "lap":
		return l.figure(slot, k.lap, 25.4)
	case "install":
		return l.day(k.install)
	case "cover":
		return l.day(k.cover)
	case "Cost code":
		return workbook.Cell{Value: "07-2" + k.mark[2:]}
	case "Drawing":
		return workbook.Cell{Value: "A-5" + k.mark[2:]}
	case "Qty":
		return workbook.Cell{Value: "40", Kind: workbook.Number, Number: 40}
	case "Status":
		return workbook.Cell{Value: "approved"}
	}
	return workbook.Cell{Value: k.words[slot]}
}

func (l layout) figure(slot string, mm, other float64) workbook.Cell {
	text := fmt.Sprintf("%g", mm)
	if l.unit[slot] != "mm" {
		text = fmt.Sprintf("%.2f", mm/other)
	}
	if !l.bare[slot] {
		text += " " + l.unit[slot]
	}
	return workbook.Cell{Value: text}
}

func (l layout) day(d time.Time) workbook.Cell {
	if l.date == "real" {
		return workbook.Cell{Value: d.Format(time.DateOnly), Kind: workbook.Date, Date: d}
	}
	return workbook.Cell{Value: d.Format(l.date)}
}

// TestLayouts: whatever the layout, the same lines and contacts are read back.
func TestLayouts(t *testing.T) {
	headings := headingWords(t)
	r, err := newReader()
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		want := draw(t)
		l := drawLayout(t, headings)
		s, err := r.Read(l.sheet(want), schedule.Settings{Country: l.country})
		if err != nil {
			t.Fatal(err)
		}
		if len(s.Lines) != len(want) {
			t.Fatalf("%d lines, want %d: %+v", len(s.Lines), len(want), s.Reading.Tables)
		}
		found := contact.Find(s)
		for i, k := range want {
			got := &s.Lines[i]
			if bad := k.differs(got, l); bad != "" {
				t.Fatalf("line %d: %s\ncolumns %+v", i+1, bad, s.Reading.Tables[0].Columns)
			}
			if bad := k.untold(told(found, got.ID)); bad != "" {
				t.Fatalf("line %d: %s", i+1, bad)
			}
		}
	})
}

// differs tells the first thing that was read otherwise than written.
func (k known) differs(l *schedule.Line, lay layout) string {
	for slot, want := range map[string]string{"material": k.material, "substrate": k.substrate, "primer": k.primer, "touches": k.touches} {
		var got []string
		for _, it := range l.Items {
			if it.Slot == slot {
				got = append(got, it.Family)
			}
		}
		if strings.Join(got, " ") != want {
			return fmt.Sprintf("%s %q read as %q, want %q", slot, k.words[slot], got, want)
		}
	}
	group := k.group
	switch lay.group {
	case "divider":
		group = "Wall " + k.group
	case "none":
		group = ""
	}
	if l.Mark != k.mark || l.Group != group {
		return fmt.Sprintf("mark %q of %q, want %q of %q", l.Mark, l.Group, k.mark, group)
	}
	for slot, want := range map[string]time.Time{"install": k.install, "cover": k.cover} {
		if got := l.Dates[slot]; got.From != want.Format(time.DateOnly) || got.To != got.From {
			return fmt.Sprintf("%s %+v, want %s", slot, got, want.Format(time.DateOnly))
		}
	}
	for key, want := range map[string]float64{"thickness_mm": k.thick, "lap_mm": k.lap} {
		if got := l.Figures[key].Min; got == nil || math.Abs(*got-want) > 0.01*want {
			return fmt.Sprintf("%s %+v, want %g", key, l.Figures[key], want)
		}
	}
	return ""
}

// untold tells the first contact that is missing or too many.
func (k known) untold(got []string) string {
	want := []string{k.material + "|" + k.substrate + " direct"}
	if k.primer != "" {
		want = append(want, k.material+"|"+k.primer+" direct", k.primer+"|"+k.substrate+" direct")
	}
	for _, f := range strings.Fields(k.touches) {
		want = append(want, k.material+"|"+f+" direct")
	}
	slices.Sort(want)
	if !slices.Equal(got, want) {
		return fmt.Sprintf("contacts %q, want %q", got, want)
	}
	return ""
}
