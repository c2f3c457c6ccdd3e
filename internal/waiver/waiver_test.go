package waiver

import (
	"strings"
	"testing"
	"time"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/schedule"
	"abut/policies"
)

func line(row int, mark, place, material string) schedule.Line {
	return schedule.Line{
		ID: "W!" + mark, Sheet: "W", Row: row, Mark: mark, Place: place,
		Texts: map[string]string{"mark": mark, "place": place, "material": material, "primer": "Arvo W"},
		Items: []schedule.Item{{Slot: "material", Text: material, Tag: material, Product: material}},
	}
}

func sheet(lines ...schedule.Line) *document.Document {
	return &document.Document{
		File: "jobs/walls.xlsx", Lines: lines,
		Products: []schedule.Product{{ID: "S40", Tag: "S40", Name: "SBS sheet", Sheet: "P", Row: 2, Texts: map[string]string{"thickness": "40 mil"}}},
	}
}

func found(rule string, l schedule.Line) engine.Finding {
	return engine.Finding{Rule: rule, Topic: "contact", Severity: "error", File: "jobs/walls.xlsx", Sheet: l.Sheet, Row: l.Row, Mark: l.Mark, Message: "it touches"}
}

func set(t *testing.T, texts map[string]string) (*Set, *schedule.Waiver) {
	t.Helper()
	all := map[string]string{"rule": "contact-x", "reason": "letter", "by": "reviewer", "until": "2026-12-31"}
	for k, v := range texts {
		all[k] = v
	}
	s := New(Options{On: time.Date(2026, 12, 31, 18, 0, 0, 0, time.UTC), Rules: []engine.Rule{{ID: "contact-x", Topic: "contact"}}})
	s.Add("abut.yaml", []schedule.Waiver{{At: schedule.At{Row: 2}, Texts: all, Where: map[string]schedule.At{"until": {Row: 5}}}})
	return s, s.sources[0].waivers[0]
}

func TestFits(t *testing.T) {
	base := line(5, "W1", "North wall, field", "S40")
	tests := map[string]struct {
		texts map[string]string
		state string
	}{
		"mark":               {map[string]string{"mark": "w1"}, loose},
		"place":              {map[string]string{"place": "north wall field"}, loose},
		"part of a place":    {map[string]string{"place": "North wall"}, unused},
		"other mark":         {map[string]string{"mark": "W11"}, unused},
		"material by tag":    {map[string]string{"mark": "W1", "material": "s40"}, loose},
		"other material":     {map[string]string{"mark": "W1", "material": "S400"}, unused},
		"this workbook":      {map[string]string{"mark": "W1", "workbook": "walls.xlsx"}, loose},
		"another workbook":   {map[string]string{"mark": "W1", "workbook": "roof.xlsx"}, unused},
		"other content":      {map[string]string{"mark": "W1", "content": "c0"}, changed},
		"content, no mark":   {map[string]string{"content": "c0"}, unused},
		"expired yesterday":  {map[string]string{"mark": "W1", "until": "2026-12-30"}, expired},
		"no such day":        {map[string]string{"mark": "W1", "until": "2026-02-30"}, bad},
		"no day":             {map[string]string{"mark": "W1", "until": ""}, bad},
		"a dash for a role":  {map[string]string{"mark": "W1", "by": "-"}, bad},
		"unknown rule":       {map[string]string{"mark": "W1", "rule": "contact-y"}, bad},
		"a file not read":    {map[string]string{"mark": "W1", "rule": "[reading failed]"}, bad},
		"for all lines":      {nil, bad},
		"material alone":     {map[string]string{"material": "S40"}, bad},
		"unknown key":        {map[string]string{"mark": "W1", "signed": "x"}, bad},
		"no reason to speak": {map[string]string{"mark": "W1", "reason": " "}, bad},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			s, w := set(t, tc.texts)
			findings := []engine.Finding{found("contact-x", base), found("contact-z", base)}
			s.Apply(sheet(base), findings, "jobs/walls.xlsx", nil)
			s.Rest()
			if w.State != tc.state {
				t.Errorf("state is %q (%s), want %q", w.State, w.Problem, tc.state)
			}
			if waived := findings[0].Waived != nil; waived != (tc.state == loose) {
				t.Errorf("waived is %v", waived)
			}
			if findings[1].Waived != nil {
				t.Error("another rule was waived")
			}
		})
	}
}

// TestContent: the key stays where rows move and are lettered anew, and
// changes with each thing that was accepted.
func TestContent(t *testing.T) {
	base := line(5, "W1", "North wall", "S40")
	key := func(doc *document.Document, f engine.Finding) string { return newPlaces(doc).content(f) }
	before := key(sheet(base), found("contact-x", base))
	moved := line(9, "X7", "North  wall,", "s40")
	moved.Items[0].Product = "S40"
	if got := key(sheet(line(5, "W2", "East", "S40"), moved), found("contact-x", moved)); got != before {
		t.Errorf("a moved row has %s, not %s", got, before)
	}
	for name, change := range map[string]func(*document.Document){
		"material":     func(d *document.Document) { d.Lines[0].Texts["material"] = "S41" },
		"primer":       func(d *document.Document) { d.Lines[0].Texts["primer"] = "none" },
		"figure":       func(d *document.Document) { d.Products[0].Texts["thickness"] = "4.0 mil" },
		"inherited":    func(d *document.Document) { d.Lines[0].Items[0].Text = "S41" },
		"added column": func(d *document.Document) { d.Lines[0].Texts["touches"] = "EPDM" },
	} {
		t.Run(name, func(t *testing.T) {
			doc := sheet(line(5, "W1", "North wall", "S40"))
			change(doc)
			if key(doc, found("contact-x", base)) == before {
				t.Error("the key stayed")
			}
		})
	}
}

// TestRelatedRow: a row that takes part belongs to what was accepted.
func TestRelatedRow(t *testing.T) {
	base, other := line(5, "W1", "North wall", "S40"), line(6, "W2", "North wall", "EPDM")
	f := found("contact-x", base)
	f.Related = []engine.Related{{Sheet: "W", Row: 6, What: "the gasket"}}
	before := newPlaces(sheet(base, other)).content(f)
	third := line(7, "W3", "North wall", "S41")
	f.Related = append(f.Related, engine.Related{Sheet: "W", Row: 7, What: "brought by the swap", Cause: true})
	if newPlaces(sheet(base, other, third)).content(f) != before {
		t.Error("what a comparison adds changes the key")
	}
	other.Texts["material"] = "silicone"
	if newPlaces(sheet(base, other)).content(f) == before {
		t.Error("the key stayed")
	}
}

// TestSubstitution: what was specified belongs to what was accepted, and not
// the row that stands at the same address of the other file.
func TestSubstitution(t *testing.T) {
	base, other := line(5, "W1", "North wall", "S40"), line(6, "W2", "East wall", "S40")
	key := func(was, message, beside string) string {
		doc := sheet(base, other)
		doc.Lines[1].Texts = map[string]string{"material": beside}
		doc.Comparison = &document.Comparison{Pairs: []document.Pair{{Line: base.ID, Swaps: []document.Swap{{Was: document.Offer{Text: was}}}}}}
		f := found("substitution-worse", base)
		f.Topic, f.Message = substitution, message
		f.Related = []engine.Related{{Sheet: "W", Row: 6, What: "specified in spec.xlsx"}}
		return newPlaces(doc).content(f)
	}
	before := key("S50", "40 mil instead of 50 mil", "S40")
	if key("S50", "40 mil instead of 50 mil", "S99") != before {
		t.Error("a row of the submittal counts for one of the specified schedule")
	}
	if key("S60", "40 mil instead of 50 mil", "S40") == before || key("S50", "40 mil instead of 60 mil", "S40") == before {
		t.Error("the key stayed though another product or figure was specified")
	}
}

// TestWithoutRow: a finding of no row is known by its words.
func TestWithoutRow(t *testing.T) {
	f := engine.Finding{Rule: "contact-x", File: "jobs/walls.xlsx", Severity: "warning", Message: "A-04, Louver, roof (row 7) has no row"}
	s, w := set(t, map[string]string{"mark": "A-04"})
	findings := []engine.Finding{f}
	s.Apply(sheet(), findings, "jobs/walls.xlsx", nil)
	if findings[0].Waived == nil || findings[0].Waived.At != "abut.yaml, line 2" {
		t.Errorf("got %+v", findings[0].Waived)
	}
	moved := f
	moved.Message = "A-04, Louver, roof (row 9) has no row"
	if newPlaces(sheet()).content(moved) != w.Now[0] {
		t.Error("the row number is in the key")
	}
}

// TestOwn: what a workbook accepts holds for itself alone.
func TestOwn(t *testing.T) {
	base := line(5, "W1", "North wall", "S40")
	s := New(Options{On: time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC), Rules: []engine.Rule{{ID: "contact-x", Topic: "contact"}}})
	own := []schedule.Waiver{{
		At: schedule.At{Sheet: "Waivers", Row: 3}, Until: "2026-12-31",
		Texts: map[string]string{"rule": "contact-x", "mark": "W1", "reason": "letter", "by": "reviewer", "until": "end of the year"},
	}}
	first, second := []engine.Finding{found("contact-x", base)}, []engine.Finding{found("contact-x", base)}
	s.Apply(sheet(base), first, "a.xlsx", own)
	s.Apply(sheet(base), second, "b.xlsx", nil)
	if first[0].Waived == nil || second[0].Waived != nil {
		t.Errorf("got %v and %v", first[0].Waived, second[0].Waived)
	}
	if len(s.Rest()) > 0 {
		t.Error("the workbook's own are told twice")
	}
}

// TestOtherWorkbook: a waiver of a workbook that is not checked is not spoken
// of, unless it is badly written.
func TestOtherWorkbook(t *testing.T) {
	base := line(5, "W1", "North wall", "S40")
	for name, tc := range map[string]struct {
		texts map[string]string
		told  int
	}{
		"another workbook":          {map[string]string{"mark": "W9", "workbook": "roof.xlsx"}, 0},
		"another workbook, expired": {map[string]string{"mark": "W9", "workbook": "roof.xlsx", "until": "2026-01-31"}, 0},
		"another workbook, bad":     {map[string]string{"mark": "W9", "workbook": "roof.xlsx", "until": "soon"}, 1},
		"this workbook":             {map[string]string{"mark": "W9", "workbook": "Walls.xlsx"}, 1},
	} {
		t.Run(name, func(t *testing.T) {
			s, _ := set(t, tc.texts)
			s.Apply(sheet(base), []engine.Finding{found("contact-x", base)}, "jobs/walls.xlsx", nil)
			if got := s.Rest(); len(got) != tc.told {
				t.Errorf("told of %d, want %d", len(got), tc.told)
			}
		})
	}
}

// TestWrite: what is written accepts the same findings and no others, and
// cannot be broken by a message.
func TestWrite(t *testing.T) {
	base := line(5, "W1", "North wall", "S40")
	f := found("contact-x", base)
	f.Message = "it touches\nwaivers: []"
	note := found("contact-x", base)
	note.Severity = "note"
	s := New(Options{On: time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC), Keep: true})
	s.Apply(sheet(base), []engine.Finding{f, f, note}, "jobs/walls.xlsx", nil)
	var b strings.Builder
	n, err := s.Write(&b, policies.FS)
	if err != nil || n != 1 {
		t.Fatalf("%d, %v", n, err)
	}
	for _, want := range []string{"# it touches waivers: []\n", "rule: contact-x", "mark: W1", `until: "2026-08-30"`, "workbook: walls.xlsx", "reason: stood on 2026-06-01"} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("no %q in\n%s", want, &b)
		}
	}
}
