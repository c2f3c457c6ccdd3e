package schedule_test

import "testing"

// Notes tell the office's own words for none, for an empty cell and for the row
// above; what they do not tell is left as it stands.
func TestLegendOfShortWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Remarks
T1 | SBS-modified self-adhered sheet | Plywood, frost in the corners | solvent-borne primer | Term bar with bead at top
T2 | SBS-modified self-adhered sheet | idem, brushed and dried | pdq | xu.
T3 | SBS-modified self-adhered sheet | CMU | zz. | qq`}, page{name: "Notes", grid: `
1 | pdq = none.   zz. = nicht verwendet (not used); xu. = as row above`})
	if got := line(t, s, "T2"); got.Texts["primer"] != "none" || got.Texts["substrate"] != "Plywood, brushed and dried" {
		t.Errorf("T2: %v", got.Texts)
	}
	if got := line(t, s, "T2"); !said(got, "edge_sealed") || said(got, "frost") {
		t.Errorf("T2: %v, want the remark of the row above and no frost", got.Signals)
	}
	if got := line(t, s, "T3"); got.Texts["remark"] != "qq" {
		t.Errorf("T3: %v", got.Texts)
	}
}

// An entry of a legend may stand in brackets.
func TestLegendInBrackets(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Dates as logged (§ = as line above)
Mark | Membrane | Substrate | Primer
T1 | butyl sheet | plywood | none
T2 | butyl sheet | § | none`})
	if got := line(t, s, "T2").Texts["substrate"]; got != "plywood" {
		t.Errorf("substrate %q", got)
	}
}

// Short words with points and strokes are written out as the legend tells them; a
// unit stays what it is.
func TestLegendOfPointedWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Abbr.: b.s. = both sides; u/s = underside, s.o. = same opening; l/s = left side; T&H = tented, heated
Mark | Membrane | Substrate | Primer | Env | Remarks
T1 | butyl sheet | CMU | none | T&H 12 C | cut at u/s of slab, b.s.; 0.02 l/s
T2 | butyl sheet | CMU | none | open | none`})
	got := line(t, s, "T1")
	if want := "cut at underside of slab, both sides; 0.02 l/s"; got.Texts["remark"] != want {
		t.Errorf("remark %q, want %q", got.Texts["remark"], want)
	}
}

// A sentence that begins with a short word explains it not.
func TestSentenceIsNoLegend(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Remarks
T1 | butyl sheet | plywood | none | KQ swept out
T2 | butyl sheet | plywood | none | VT by hand
T3 | butyl sheet | plywood | none | KR swept out`}, page{name: "Notes", grid: `
1. KQ is swept BEFORE the sheet goes on.
2. VT vent stack
3. KR sheet on old boards needs a slip sheet.`})
	if got := line(t, s, "T3").Texts["remark"]; got != "KR swept out" {
		t.Errorf("remark %q", got)
	}
	if got := line(t, s, "T1").Texts["remark"]; got != "KQ swept out" {
		t.Errorf("remark %q", got)
	}
	if got := line(t, s, "T2").Texts["remark"]; got != "vent stack by hand" {
		t.Errorf("remark %q", got)
	}
}

// A short word may stand in quotes where a note explains it, and open a cell.
func TestLegendOfQuotedWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Col. F is the face at work; 'shld.' = behind a heated hoarding.
Mark | Membrane | Substrate | Primer | Remarks
T1 | butyl sheet | CMU | none | Shld., all week
T2 | butyl sheet | CMU | none | north side, shld.`})
	for mark, want := range map[string]string{"T1": "behind a heated hoarding, all week", "T2": "north side, behind a heated hoarding"} {
		if got := line(t, s, mark).Texts["remark"]; got != want {
			t.Errorf("%s: remark %q, want %q", mark, got, want)
		}
	}
}

// A list of short words may have commas between.
func TestShortWordsBetweenCommas(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Covered by | Remarks
1 | butyl tape | PLYW | none | 4 in. MFB, brick | -
2 | butyl tape | CMU | none | brick | -`}, page{name: "N", grid: "Short words: MFB = mineral wool, PLYW = plywood sheathing, GL = gridline"})
	l := line(t, s, "1")
	if got := items(l, "front") + "/" + items(l, "substrate"); got != "mineral-wool clay-brick/osb-plywood-sheathing" {
		t.Errorf("front and substrate %s", got)
	}
}

// A list of short words with a meaning each tells also those with a digit, and those before
// a name; sentences beside one another are no list.
func TestListOfShortWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Touches | Remarks
T1 | butyl sheet | plywood | none | RFV | QX4 in
T2 | butyl sheet | plywood | none | KW | VT9 in
T3 | butyl sheet | plywood | none | ZN | -`}, page{name: "Codes", grid: `
Next to | KW mineral wool; RFV PVC roof (flexible); ZN zinc coping; QX4 4 in rigid wool
Rules | VT9 Ask first; all laps rolled; keep dry`})
	if got := line(t, s, "T1").Texts; got["touches"] != "PVC roof (flexible)" || got["remark"] != "4 in rigid wool in" {
		t.Errorf("T1: %v", got)
	}
	if got := line(t, s, "T3").Texts["touches"]; got != "zinc coping" {
		t.Errorf("T3 touches %q", got)
	}
	if got := line(t, s, "T2").Texts["remark"]; got != "VT9 in" {
		t.Errorf("T2 remark %q", got)
	}
}

// An office's letter for none may have two words for it, and opens a part of a primer cell;
// under places it is a side of the building.
func TestLegendOfNoneInTwoWords(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Location | Membrane | Substrate | Primer
T1 | N | SH-3 | concrete | N
T2 | E | SH-3 | plywood | PM-2`}, page{name: "P", grid: `
Tag | Type | Apply min °C | Max days open | Primer
SH-3 | SBS sheet | 5 | 60 | N on steel; PM-2 on concrete, plywood
PM-2 | solvent-borne primer | 5 | 30 | -`}, page{name: "Notes", grid: `
Primer | PM-2 see list; N = not required / none used`})
	got := line(t, s, "T1").Texts
	if got["place"] != "N" || got["primer"] != "not required" {
		t.Errorf("T1: %v", got)
	}
	for _, a := range product(t, s, "SH-3").Accepts {
		if want := map[bool]string{true: "none", false: "listed"}[a.Text == "steel"]; a.Primer != want {
			t.Errorf("%s: %s, want %s", a.Text, a.Primer, want)
		}
	}
}

// A sentence among others explains no word though a word in capitals opens it, nor do
// words that name a product; two entries beside one another do.
func TestSentenceAmongOthers(t *testing.T) {
	for note, want := range map[string]string{
		"Roof sheet stops at the curb. ZB divider strip full height between. Keep dry.": "24 ga ZB strip",
		"ZB divider strip on BT-1":                    "24 ga ZB strip",
		"ZB zinc-coated divider":                      "24 ga zinc-coated divider strip",
		"ZB zinc-coated divider. RK rock wool board.": "24 ga zinc-coated divider strip",
	} {
		s := readPages(t, page{name: "S", grid: `
Mark | Membrane | Substrate | Primer | Remarks
T1 | BT-1 | plywood | none | 24 ga ZB strip`}, page{name: "Notes", grid: note}, page{name: "Data", grid: `
Tag | Type | Apply min °C | Max days open | VOC g/L
BT-1 | butyl sheet | 5 | 30 | 0
BT-2 | SBS sheet | 5 | 30 | 0`})
		if got := line(t, s, "T1").Texts["remark"]; got != want {
			t.Errorf("%s: remark %q, want %q", note, got, want)
		}
	}
}
