package schedule_test

import (
	"slices"
	"strings"
	"testing"

	"abut/internal/schedule"
)

// TestTagThatBeginsAMaterial reads a short tag whose noun the vocabulary takes
// together with it; the noun is the tag's own and no second material.
func TestTagThatBeginsAMaterial(t *testing.T) {
	s := readPages(t,
		page{name: "P", grid: "Tag | Description | Application temp. | VOC g/L\nQ7 | self-adhered rubberized asphalt sheet | 40 to 100 F | -\nK2 | butyl sheet | 40 to 100 F | -"},
		page{name: "S", grid: "Mark | Tag | Substrate | Primer | Touches | Install date\nD1 | K2 | plywood | none | Q7 film | @2026-03-02"})
	if got := items(line(t, s, "D1"), "touches"); got != "Q7" {
		t.Errorf("touches %q, want Q7", got)
	}
}

// TestDatesAreNoFigures keeps a column of dates from a heading that could be one
// of temperatures.
func TestDatesAreNoFigures(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Put on | Cover date
D1 | butyl sheet | plywood | none | 8/18-8/20/26 | 9/1/26
D2 | butyl sheet | plywood | none | 8/21/26 | 9/2/26`})
	l := line(t, s, "D1")
	if f, ok := l.Figures["apply_min_c"]; ok {
		t.Errorf("a temperature was read: %+v", f)
	}
	if got := l.Dates["install"]; got.From != "2026-08-18" || got.To != "2026-08-20" {
		t.Errorf("install %+v", got)
	}
}

// TestSizeAfterATag keeps the size that follows a tag from being a further tag.
func TestSizeAfterATag(t *testing.T) {
	s := readPages(t,
		page{name: "P", grid: "Tag | Description | Application temp. | VOC g/L\nQ-2 | neutral silicone sealant | 20 to 120 F | 30\nQ-3 | solvent-release butyl sealant | 20 to 120 F | 230\nK-1 | butyl sheet | 40 to 100 F | -"},
		page{name: "S", grid: "Mark | Tag | Substrate | Primer | Sealant | Install date\nD1 | K-1 | plywood | none | Q-2, 3/8 in. deep | @2026-03-02\nD2 | K-1 | plywood | none | Q-2, 3 | @2026-03-02\nD3 | K-1 | plywood | none | Q-2 / 3 in. air | @2026-03-02"})
	for mark, want := range map[string]string{"D1": "Q-2", "D2": "Q-2 Q-3", "D3": "Q-2"} {
		if got := items(line(t, s, mark), "sealant"); got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}

// TestResistanceIsNoTag: R-21 is a thermal resistance and R-2 a roof that the data
// lack, where the data have a roof R-1.
func TestResistanceIsNoTag(t *testing.T) {
	s := readPages(t,
		page{name: "Products", grid: "Tag | Description | Thickness\nR-1 | TPO roof membrane | 60 mil\nAB-1 | butyl sheet | 40 mil\nI-4 | fiberglass batts | 5.5 in."},
		page{name: "Schedule", grid: "Mark | Product | Substrate | Remarks\nD1 | AB-1 | plywood | studs hold R-21\nD2 | AB-1 | plywood | lapped on R-2"})
	var unknown []string
	for _, l := range s.Lines {
		for _, it := range l.Items {
			if it.Unknown {
				unknown = append(unknown, l.Mark+" "+it.Tag)
			}
		}
	}
	if got := strings.Join(unknown, ", "); got != "D2 R-2" {
		t.Errorf("not in the data: %s", got)
	}
}

// TestTagsOfBuildUps: "Tag" over the names of walls is their mark, since the row
// beside it tells their layers; over tags of the data it stays the tag.
func TestTagsOfBuildUps(t *testing.T) {
	data := page{name: "Products", grid: "Tag | Description | Thickness\nAB-1 | butyl sheet | 40 mil\nI-4 | mineral wool | 4 in.\nI-5 | XPS | 2 in."}
	s := readPages(t, data, page{name: "Walls", grid: "Tag | Layers\nQ1 | gypsum sheathing / AB-1 / I-4 / brick\nQ2 | concrete block / AB-1 / I-5 / brick"})
	if got := s.Lines[0]; got.Mark != "Q1" || slices.ContainsFunc(got.Items, func(it schedule.Item) bool { return it.Unknown }) {
		t.Errorf("mark %q of %+v", got.Mark, got.Items)
	}
	s = readPages(t, data, page{name: "Walls", grid: "Tag | Layers\nI-4 | gypsum sheathing / AB-1 / brick\nI-5 | concrete block / AB-1 / brick"})
	if got := s.Lines[0]; got.Mark != "" {
		t.Errorf("mark %q", got.Mark)
	}
}

// The number of a test is no product, though products have its letter: one of as many
// digits as theirs is.
func TestNumberOfATestIsNoTag(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Remarks
D1 | S1 | CMU | none | tested by (S134.2)
D2 | S2 | CMU | none | laps onto S4`}, page{name: "P", grid: "Tag | Type | Apply min °C | Max days open\nS1 | butyl sheet | 5 | 60\nS2 | SBS sheet | 5 | 60"})
	var unknown []string
	for _, l := range s.Lines {
		for _, it := range l.Items {
			if it.Unknown && it.Tag != "" {
				unknown = append(unknown, l.Mark+" "+it.Tag)
			}
		}
	}
	if got := strings.Join(unknown, ", "); got != "D2 S4" {
		t.Errorf("not in the data: %s", got)
	}
}

// A thermal resistance may be written as the tag of another product is: the insulation behind
// it tells so, or its other digits. Words of other things make it a tag that is missing.
func TestResistanceWrittenAsATag(t *testing.T) {
	s := readPages(t,
		page{name: "Products", grid: "Tag | Description | Thickness\nR-1 | TPO roof membrane | 60 mil\nR-2 | TPO walkway roll | 80 mil\nAB-1 | butyl sheet | 40 mil"},
		page{name: "Schedule", grid: `
Mark | Product | Substrate | Remarks
D1 | AB-1 | plywood, R-6 XPS over it | -
D2 | AB-1 | plywood | R-7.5 ci outside
D3 | AB-1 | plywood | R-9 continuous
D4 | AB-1 | plywood, laps on R-4 roof sheet | -
D5 | AB-1 | plywood | R-5, XPS beside it`})
	var unknown []string
	for _, l := range s.Lines {
		for _, it := range l.Items {
			if it.Unknown {
				unknown = append(unknown, l.Mark+" "+it.Tag)
			}
		}
	}
	if got := strings.Join(unknown, ", "); got != "D4 R-4, D5 R-5" {
		t.Errorf("not in the data: %s", got)
	}
}

// A number of coats or of plies after a tag is no second tag.
func TestNumberOfThingsAfterATag(t *testing.T) {
	s := readPages(t,
		page{name: "P", grid: "Tag | Description | Application temp. | VOC g/L\nQ-2 | fluid-applied acrylic membrane | 40 to 100 F | 30\nQ-3 | liquid flashing | 40 to 100 F | 30"},
		page{name: "S", grid: "Mark | Tag | Substrate | Primer | Touches\nD1 | Q-2 | plywood | none | Q-2, 3 passes\nD2 | Q-2 | plywood | none | Q-2, 3\nD3 | Q-2 | plywood | none | Q-2 & 3 Coats"})
	for mark, want := range map[string]string{"D1": "Q-2", "D2": "Q-2 Q-3", "D3": "Q-2 Q-3"} {
		if got := items(line(t, s, mark), "touches"); got != want {
			t.Errorf("%s: %q, want %q", mark, got, want)
		}
	}
}
