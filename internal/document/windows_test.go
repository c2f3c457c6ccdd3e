package document_test

import (
	"maps"
	"strings"
	"testing"

	"abut/internal/document"
	"abut/internal/schedule"
	"abut/internal/workbook"
)

const winter = `
Heron Street Depot, Saskatoon, Saskatchewan

Mark | Membrane | Substrate | Primer | Install date
D1 | R-1 | CMU | PR-1 | 12 Jan 2026
D2 | R-1 | CMU | none | 6-10 Jul 2026
D3 | R-1 | CMU | none | TBD
D4 | butyl tape | CMU | none | 12 Jan 2026

Tag | Type | Min apply °C | Max apply °C | Max days open to sun
R-1 | rubberized asphalt membrane, self-adhered | 5 | 40 | 30
PR-1 | solvent-borne rubber primer | -5 | - | -
`

func window(doc *document.Document, mark string) *document.Window {
	for i := range doc.Lines {
		for j := range doc.Windows {
			if doc.Lines[i].Mark == mark && doc.Windows[j].Line == doc.Lines[i].ID {
				return &doc.Windows[j]
			}
		}
	}
	return nil
}

func TestPlaceAndWindows(t *testing.T) {
	doc := build(t, winter, document.Settings{})
	if p := doc.Project.Place; !strings.Contains(p.Station, "Saskatoon") || p.Country != "CA" || p.At.Row != 1 || p.Problem != "" {
		t.Fatalf("place %+v", p)
	}
	w := window(doc, "D1")
	if w == nil || w.From != "2026-01-12" || w.To != "2026-01-12" || w.MeanMaxC > 0 || w.NightFrost < 0.9 {
		t.Fatalf("window %+v", w)
	}
	limits := map[string]float64{}
	for _, c := range w.Checks {
		limits[c.Role+" "+c.Bound] = c.LimitC
		if !c.Stated {
			t.Errorf("not stated: %+v", c)
		}
		if c.Bound == "apply_min_c" && c.ShareBelow < 0.5 {
			t.Errorf("January: %+v", c)
		}
	}
	if len(limits) != 3 || limits["membrane apply_min_c"] != 5 || limits["membrane apply_max_c"] != 40 || limits["primer apply_min_c"] != -5 {
		t.Errorf("limits %v", limits)
	}
	if w := window(doc, "D2"); w == nil || w.To != "2026-07-10" || w.Checks[0].ShareBelow > 0.05 {
		t.Errorf("July %+v", w)
	}
	if w := window(doc, "D3"); w != nil {
		t.Errorf("a date that is not known has a window: %+v", w)
	}
	if w := window(doc, "D4"); w == nil || len(w.Grades) == 0 {
		t.Errorf("grades %+v", w)
	}
}

// A sheet whose words name a winter grade and whose data states nothing is held
// against the usual figures of that grade, which are marked as not stated.
func TestUsualGrade(t *testing.T) {
	doc := build(t, `Place: Saskatoon, SK

Mark | Material | Substrate | Install
D1 | rubberized asphalt sheet, cold-weather grade | plywood | 2026-01-12
D2 | rubberized asphalt sheet | plywood | 2026-07-10
D3 | butyl sheet membrane, low-temp grade | plywood | 2026-07-10
`, document.Settings{})
	for mark, want := range map[string]map[string]float64{
		"D1": {"apply_min_c": -6.67, "apply_max_c": 32.2}, "D2": {"apply_min_c": 4.44}, "D3": {},
	} {
		w := window(doc, mark)
		if w == nil {
			t.Fatalf("%s: no window", mark)
		}
		got := map[string]float64{}
		for _, c := range w.Checks {
			got[c.Bound] = c.LimitC
			if c.Stated {
				t.Errorf("%s: stated: %+v", mark, c)
			}
		}
		if !maps.Equal(got, want) {
			t.Errorf("%s: %v, want %v", mark, got, want)
		}
	}
}

func TestPlaceOfTheSettingsBeatsTheTitle(t *testing.T) {
	doc := build(t, winter, document.Settings{Place: "Miami, Florida"})
	if p := doc.Project.Place; !strings.Contains(p.Station, "Miami") {
		t.Errorf("place %+v", p)
	}
	doc = build(t, winter, document.Settings{Place: "Nowhere at All"})
	if p := doc.Project.Place; p.Problem == "" || len(doc.Windows) != 0 {
		t.Errorf("place %+v, %d windows", p, len(doc.Windows))
	}
}

func TestNoPlace(t *testing.T) {
	doc := build(t, strings.Replace(winter, "Heron Street Depot, Saskatoon, Saskatchewan", "Depot", 1), document.Settings{})
	if doc.Project.Place.Problem == "" || doc.Windows == nil || len(doc.Windows) != 0 {
		t.Errorf("place %+v, windows %v", doc.Project.Place, doc.Windows)
	}
}

// A town of which there are several is named with all of them.
func TestPlaceOfSeveral(t *testing.T) {
	doc := build(t, strings.Replace(winter, "Saskatoon, Saskatchewan", "Springfield", 1), document.Settings{})
	if p := doc.Project.Place; !strings.Contains(p.Problem, "Springfield, IL, Springfield, MO") || p.At.Row != 1 || len(doc.Windows) != 0 {
		t.Errorf("place %+v", p)
	}
}

func TestCountryOfThePlaceOrdersDates(t *testing.T) {
	grid := "Depot, %s\n\nMark | Membrane | Substrate | Primer | Install date\nD1 | butyl tape | CMU | none | 3/4/2026\n"
	for place, want := range map[string]string{"Duluth, Minnesota": "2026-03-04", "": "2026-03-04"} {
		doc := build(t, strings.Replace(grid, "%s", place, 1), document.Settings{})
		if d := doc.Lines[0].Dates["install"]; d.From != want || !strings.Contains(d.Note, "both ways") || place != "" && !strings.Contains(d.Note, "(US)") {
			t.Errorf("%q: %+v", place, d)
		}
		if c := doc.Reading.Tables[0].Columns[4]; !strings.Contains(c.Why, "month before the day") {
			t.Errorf("column %+v", c)
		}
	}
	doc := build(t, strings.Replace(grid, "%s", "Duluth, Minnesota", 1), document.Settings{Schedule: schedule.Settings{Country: "GB"}})
	if d := doc.Lines[0].Dates["install"]; d.From != "2026-04-03" {
		t.Errorf("the settings' country: %+v", d)
	}
}

func TestProfiles(t *testing.T) {
	doc := build(t, `
Depot, Duluth, Minnesota

Wall | Layer | Material | Thickness
W1 | 1 | gypsum board | 12.7 mm
W1 | 2 | mineral wool | 140 mm
W1 | 3 | glass-mat gypsum sheathing | 12.7 mm
W1 | 4 | rubberized asphalt membrane | 1 mm
W1 | 5 | XPS | 50 mm
W1 | 6 | clay brick | 90 mm
W2 | 1 | CMU | 190 mm

Notes
1. Rooms are kept at 21 °C and 40% RH.
`, document.Settings{})
	if len(doc.Profiles) != 1 {
		t.Fatalf("profiles %+v", doc.Profiles)
	}
	p := doc.Profiles[0]
	if p.Mark != "W1" || len(p.Layers) != 6 || len(p.Lines) != 6 || p.Result == nil || len(p.Missing) != 0 {
		t.Errorf("profile %+v", p)
	}
	if !p.Layers[1].Insulates || p.Layers[0].Insulates || p.Layers[4].Thick == nil || *p.Layers[4].Thick != 50 || p.Layers[3].VaporBy != "usual" {
		t.Errorf("layers %+v", p.Layers)
	}
}

func TestBuildUpInOneCell(t *testing.T) {
	doc := build(t, "Mark | Membrane | Substrate | Build-up\nD1 | butyl tape | CMU | gypsum board / mineral wool / rubberized asphalt membrane / XPS / clay brick\nD2 | butyl tape | CMU | -\n", document.Settings{})
	if len(doc.Profiles) != 1 || len(doc.Profiles[0].Layers) != 5 || doc.Profiles[0].Layers[4].Family != "clay-brick" {
		t.Errorf("profiles %+v", doc.Profiles)
	}
}

func TestDocumentsKeepToTheSchema(t *testing.T) {
	for _, grid := range []string{winter, "Mark | Membrane | Substrate\nD1 | qq | ww\n"} {
		if err := document.Validate(build(t, grid, document.Settings{})); err != nil {
			t.Error(err)
		}
	}
}

// buildSheets builds the document of a workbook of two sheets, South and North.
func buildSheets(t *testing.T, set document.Settings, south, north string) *document.Document {
	t.Helper()
	var book *workbook.Book
	for name, grid := range map[string]string{"South": south, "North": north} {
		one, err := workbook.Read("log.csv", []byte(strings.TrimLeft(grid, "\n")), workbook.DefaultLimits())
		if err != nil {
			t.Fatal(err)
		}
		one.Sheets[0].Name = name
		switch {
		case book == nil:
			book = one
		case name == "North":
			book.Sheets = append(book.Sheets, one.Sheets...)
		default:
			book.Sheets = append(one.Sheets, book.Sheets...)
		}
	}
	doc, err := builder(t).Build(book, set)
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// A sheet that tells another place in the cell of the form in which the first tells the
// project's has the seasons of that place; one that tells it elsewhere has not.
func TestSheetsOfTwoPlaces(t *testing.T) {
	log := func(mark, site, above string) string {
		return "Annex log |" + above + "\nSite: " + site + `

Mark | Membrane | Substrate | Primer | Install date
` + mark + `1 | SBS-modified self-adhered sheet | CMU | solvent-borne primer | 12 Feb 2026
` + mark + `2 | SBS-modified self-adhered sheet | CMU | solvent-borne primer | 13 Feb 2026`
	}
	south := log("S", "Savannah, Georgia", "")
	for name, c := range map[string]struct {
		north, want string
		set         document.Settings
	}{
		"the same cell":          {log("N", "Duluth, Minnesota", ""), "Duluth", document.Settings{}},
		"the same place":         {log("N", "Savannah, Georgia", ""), "", document.Settings{}},
		"another cell":           {log("N", "as before", "as in Duluth, Minnesota"), "", document.Settings{}},
		"the settings beat both": {log("N", "Duluth, Minnesota", ""), "", document.Settings{Place: "Savannah, Georgia"}},
	} {
		doc := buildSheets(t, c.set, south, c.north)
		s, n := window(doc, "S1"), window(doc, "N1")
		if s == nil || n == nil || s.Place != "" || !strings.HasPrefix(n.Place, c.want) || (n.Place == "") != (c.want == "") {
			t.Fatalf("%s: %+v, %+v", name, s, n)
		}
		if colder := n.MeanMaxC < s.MeanMaxC-10; colder != (c.want != "") {
			t.Errorf("%s: highs of %.0f and %.0f °C", name, s.MeanMaxC, n.MeanMaxC)
		}
	}
}
