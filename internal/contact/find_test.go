package contact_test

import (
	"slices"
	"strings"
	"sync"
	"testing"

	"abut/internal/contact"
	"abut/internal/schedule"
	"abut/internal/workbook"
	"abut/policies"
)

var newReader = sync.OnceValues(func() (*schedule.Reader, error) { return schedule.NewReader(policies.FS) })

// find reads a csv text whose cells are parted by bars, and finds its contacts.
func find(t testing.TB, grid string) []contact.Contact {
	t.Helper()
	r, err := newReader()
	if err != nil {
		t.Fatal(err)
	}
	b, err := workbook.Read("wall.csv", []byte(strings.TrimLeft(grid, "\n")), workbook.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	s, err := r.Read(b, schedule.Settings{})
	if err != nil {
		t.Fatal(err)
	}
	return contact.Find(s)
}

func name(e contact.End) string {
	if e.Tag != "" {
		return e.Tag
	}
	return e.Family
}

// holdKinds holds the kind of one contact against what is wanted of each of several
// words: grid puts them in a schedule, and is tells that contact from the others.
func holdKinds(t *testing.T, wants map[string]string, grid func(words string) string, is func(contact.Contact) bool) {
	t.Helper()
	for words, want := range wants {
		got := ""
		for _, c := range find(t, grid(words)) {
			if is(c) {
				got = c.Kind
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", words, got, want)
		}
	}
}

// told writes the contacts of a line: "a|b kind separator", sorted.
func told(list []contact.Contact, line string) []string {
	var out []string
	for _, c := range list {
		if c.Line != line {
			continue
		}
		word := name(c.A) + "|" + name(c.B) + " " + c.Kind
		if c.Separator != nil {
			word += " by " + name(*c.Separator)
		}
		out = append(out, word)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// Covers are told from the sheet outward: what a separator that comes first is covered
// with does not touch the sheet.
func TestCoversFromTheSheetOutward(t *testing.T) {
	list := find(t, `
Mark,Membrane,Substrate,Primer,Covered with
D1,hot rubberized asphalt,concrete,none,"asphalt protection board, EPS"
D2,hot rubberized asphalt,concrete,none,"EPS, asphalt protection board"`)
	const foam = "hot-rubberized-asphalt-waterproofing|eps "
	first, second := told(list, "!2"), told(list, "!3")
	if !slices.Contains(first, foam+"separated by asphalt-protection-board") || !slices.Contains(second, foam+"direct") {
		t.Errorf("board first %v, foam first %v", first, second)
	}
}

// Of a row with two materials a neighbor meets the one that its cell named last.
func TestNeighborOfTheSecondMaterial(t *testing.T) {
	list := find(t, `
Mark,Membrane,Substrate,Primer,Touches
D1,FM-1 + LM-2,concrete,none,"LM-2 collar at the sleeve, solvent acrylic sealant"
D2,FM-1 + LM-2,concrete,none,"solvent acrylic sealant; LM-2 collar at the sleeve"

Tag,Product,Description
FM-1,Fen,SBS self-adhered membrane
LM-2,Lull,PMMA liquid flashing`)
	if got := told(list, "!2"); !slices.Contains(got, "FM-1|solvent-acrylic-sealant near") || !slices.Contains(got, "LM-2|solvent-acrylic-sealant direct") {
		t.Errorf("after the second: %v", got)
	}
	if got := told(list, "!3"); !slices.Contains(got, "FM-1|solvent-acrylic-sealant direct") {
		t.Errorf("before the second: %v", got)
	}
}

// What metal is bedded in touches it, however the bed is called.
func TestBeddedIn(t *testing.T) {
	holdKinds(t, map[string]string{
		"Bedded solid in fresh mortar": "direct",
		"Laid in wet mortar":           "direct",
		"Set straight into mortar":     "direct",
		"Pressed into fresh mortar":    "direct",
		"Clear of mortar":              "near",
	},
		func(remark string) string {
			return "\nMark,Material,Substrate,Primer,Remarks\nD1,aluminum flashing,brick,none," + remark
		},
		func(c contact.Contact) bool { return strings.Contains(c.B.Text, "mortar") })
}

// What lies on the insulation, or on other work alone, does not touch the sheet; and a
// bead on the edge of another sheet is no neighbor of the gasket whose row tells of it.
func TestOnOtherWork(t *testing.T) {
	holdKinds(t, map[string]string{
		"EPDM over 6\" of ins.":               "near",
		"steel pan, EPDM lands on steel only": "apart",
		"EPDM laid on the sheet":              "direct",
		"EPDM on the frame, wool outside":     "direct",
	},
		func(touches string) string {
			return "\nMark,Membrane,Substrate,Primer,Touches\nD1,SBS sheet,concrete,none,\"" + strings.ReplaceAll(touches, "\"", "\"\"") + "\""
		},
		func(c contact.Contact) bool { return c.B.Text == "EPDM" })
	list := find(t, `
Mark,Material,Substrate,Edges
D1,EPDM gasket,steel frame,"SBS sheet stops 4 in. from it, SBS mastic on its edge"
D2,EPDM gasket,steel frame,SBS mastic on its edge`)
	const mastic = "epdm-gasket|asphalt-cutback-mastic "
	if got := told(list, "!2"); !slices.Contains(got, mastic+"near") {
		t.Errorf("edge of the sheet: %v", got)
	}
	if got := told(list, "!3"); !slices.Contains(got, mastic+"direct") {
		t.Errorf("edge of the gasket: %v", got)
	}
}

// Words that put something between the sheet and a neighbor part the two.
func TestPutBetweenByWords(t *testing.T) {
	holdKinds(t, map[string]string{
		"shims are EPDM on the pavers - rigid insulation between shim and SBS sheet": "separated",
		"EPDM gasket; board between gasket and sheet":                                "apart",
		"EPDM gasket; board between brick and sheet":                                 "direct",
	},
		func(touches string) string {
			return "\nMark,Membrane,Substrate,Primer,Touches\nD1,SBS sheet,concrete,none," + touches
		},
		func(c contact.Contact) bool { return strings.HasPrefix(c.B.Text, "EPDM") && c.From == "touches" })
}

// A row whose own material is not known may still tell what lies between others.
func TestBetweenOfARowWithoutMaterial(t *testing.T) {
	list := find(t, `
Mark,Tag,Substrate,Primer,Touches
D1,HS-1,plywood,none,brick
D2,JS-9,HS-1,steel cleat,"splice plates, HS-3 betw. plate and cap, 3 in. clear of HS-1"

Tag,Type,Days open
HS-1,SBS sheet,90
HS-2,butyl sheet,60
HS-3,slip sheet,60`)
	if !slices.ContainsFunc(list, func(c contact.Contact) bool { return c.Line == "!3" && c.From == "primer" }) {
		t.Errorf("no contact of the cleat: %+v", list)
	}
}

// What lies over what is told by the column, else by the words.
func TestUpper(t *testing.T) {
	list := find(t, `
Mark,Membrane,Substrate,Primer,Touches
D1,SBS sheet,plywood,none,"EPDM sheet laps o/ SBS sheet"
D2,SBS sheet,EPDM sheet,none,EPDM gasket`)
	upper := map[string]string{}
	for _, c := range list {
		upper[c.Line+" "+c.B.Text] = c.Upper
	}
	for at, want := range map[string]string{"!2 EPDM sheet": "b", "!2 plywood": "a", "!3 EPDM sheet": "a", "!3 EPDM gasket": ""} {
		if upper[at] != want {
			t.Errorf("%s: upper %q, want %q", at, upper[at], want)
		}
	}
}

// What a remark puts on something else touches that, and not the row's own sheet.
func TestOnAnother(t *testing.T) {
	holdKinds(t, map[string]string{
		"EPDM blocks of the door sit on the copper pan":   "near",
		"EPDM blocks of the door sit on the sheet":        "direct",
		"EPDM blocks of the door sit on asphalt membrane": "direct",
	},
		func(remark string) string {
			return "Mark | Membrane | Substrate | Primer | Remarks\nD1 | rubberized asphalt membrane | CMU | none | " + remark + "\n"
		},
		func(c contact.Contact) bool { return c.A.Slot == "material" && strings.HasPrefix(c.B.Text, "EPDM") })
}

// A remark in full sentences keeps what stops short of the row's own sheet off it.
func TestRemarkStopsShort(t *testing.T) {
	list := find(t, `
Mark | Membrane | Substrate | Primer | Touches | Remarks
1 | rubberized asphalt membrane | CMU | none | zinc strip; EPDM membrane | The EPDM ends on the zinc strip, 3 in. short of the asphalt sheet.
2 | rubberized asphalt membrane | CMU | none | zinc strip; EPDM membrane | The EPDM ends on the zinc strip, 3 in. from the corner.`)
	for line, want := range map[string]string{"!2": "apart", "!3": "direct"} {
		if got := told(list, line); !slices.Contains(got, "rubberized-asphalt-membrane|epdm-membrane "+want) {
			t.Errorf("%s: contacts %q, want the EPDM %s", line, got, want)
		}
	}
}

func TestKindsOfContact(t *testing.T) {
	for cell, want := range map[string]string{
		"EPDM gasket":                                                     "epdm-gasket direct",
		"polysulfide sealant at the joint":                                "polysulfide-sealant direct",
		"EPDM gasket kept 2 in. clear":                                    "epdm-gasket near",
		"clear of the EPDM gasket by 50 mm":                               "epdm-gasket near",
		"not in contact with the EPDM gasket":                             "epdm-gasket apart",
		"EPDM gasket not in contact":                                      "epdm-gasket apart",
		"no EPDM gasket here":                                             "epdm-gasket apart",
		"EPDM gasket, separated by butyl tape":                            "epdm-gasket separated by butyl-flashing-tape",
		"EPDM gasket separated from it by stainless flashing":             "epdm-gasket separated by stainless-sheet",
		"butyl tape between it and the EPDM gasket":                       "epdm-gasket separated by butyl-flashing-tape",
		"EPDM gasket; a butyl tape holds it clear of the membrane":        "epdm-gasket separated by butyl-flashing-tape",
		"EPDM gasket; stainless flashing isolates EPDM from the membrane": "epdm-gasket separated by stainless-sheet",
		"EPDM gasket kept away from the membrane by butyl tape":           "epdm-gasket near",
		"EPDM gasket; stainless flashing holds the brick":                 "epdm-gasket direct",
		"EPDM gasket not clear of the membrane":                           "epdm-gasket direct",
		"EPDM gasket; nothing keeps EPDM off the membrane":                "epdm-gasket direct",
		"drainage mat stuck on with asphalt cutback mastic":               "asphalt-cutback-mastic direct",
		"existing coal tar pitch removed":                                 "coal-tar-pitch apart",
		"existing coal tar pitch left on":                                 "coal-tar-pitch direct",
	} {
		t.Run(cell, func(t *testing.T) {
			got := told(find(t, "Mark | Membrane | Substrate | Primer | Touches\nD1 | rubberized asphalt membrane | CMU | none | "+cell+"\nD2 | rubberized asphalt membrane | CMU | none | clay brick\n"), "!2")
			if !slices.Contains(got, "rubberized-asphalt-membrane|"+want) {
				t.Errorf("got %q, want %q", got, want)
			}
		})
	}
}

// What the words of a cell put elsewhere than on the row's own sheet (common practice).
func TestPutElsewhere(t *testing.T) {
	for touches, want := range map[string]string{
		"VR-1 ends on brick, 50 mm clear of SA-4":           "apart",
		"VR-1 ends on brick; brick 50 mm clear of SA-4":     "direct",
		"VR-1 ends on brick, 50 mm clear of the windows":    "near",
		"VR-1 laps the copper coping, not on SA-4":          "apart",
		"VR-1 on SA-4, not on brick":                        "direct",
		"VR-1 ends at brick, 25 mm gap to SA-4":             "apart",
		"VR-1 over stainless sheet over SA-4":               "near",
		"VR-1 over SA-4":                                    "direct",
		"VR-1 gasket, in glass pocket only":                 "near",
		"VR-1 w/ butyl tape btwn":                           "separated by butyl-flashing-tape",
		"VR-1 w/ butyl tape at its edge":                    "direct",
		"plasticised PVC roof membrane w/ slip sheet btwn.": "apart",
		"plasticised PVC roof membrane w/o slip sheet":      "direct",
	} {
		list := told(find(t, `Mark | Membrane | Substrate | Primer | Touches
D1 | SA-4 | CMU | none | `+touches+`
D2 | SA-4 | CMU | none | -

Tag | Type | Service temp. (°C) | Days open
VR-1 | plasticised PVC roof membrane | 90 | 900
SA-4 | SBS asphalt sheet | 70 | 60`), "!2")
		name := "VR-1 "
		if strings.HasPrefix(touches, "plasticised") {
			name = "pvc-roof-membrane "
		}
		if !slices.Contains(list, "SA-4|"+name+want) {
			t.Errorf("%s: want %s of %q", touches, want, list)
		}
	}
}

// A layer of insulation that is named first lies between the sheet and its next cover.
func TestCoversInTheirOrder(t *testing.T) {
	for covers, want := range map[string]string{"XPS, EPDM sheet": "near", "EPDM sheet, XPS": "direct", "no XPS, EPDM sheet": "direct"} {
		list := told(find(t, "Mark | Membrane | Substrate | Primer | Covered by\nD1 | rubberized asphalt membrane | CMU | none | "+covers+"\nD2 | rubberized asphalt membrane | CMU | none | clay brick\n"), "!2")
		if !slices.Contains(list, "rubberized-asphalt-membrane|epdm-membrane "+want) {
			t.Errorf("%s: want %s of %q", covers, want, list)
		}
	}
}

func TestWhereContactsAreReadFrom(t *testing.T) {
	head := "Mark | Membrane | Substrate | Primer | Left | Behind | Edge | Sealant | Remarks\n"
	foam := told(find(t, head+"D1 | butyl tape | plywood | solvent-borne primer on XPS | - | - | - | - | -\nD2 | butyl tape | CMU | none | - | - | - | - | -\n"), "!2")
	if !slices.Contains(foam, "solvent-primer|xps direct") {
		t.Errorf("the primer is not said to be on the foam: %q", foam)
	}
	got := find(t, head+"D1 | butyl tape | plywood | solvent-borne primer | EPDM gasket | XPS | termination bar in polyurethane sealant | neutral silicone sealant | Copper flashing laps onto the sheet.\nD2 | butyl tape | CMU | none | - | - | - | - | See drawings.\n")
	for _, want := range []string{
		"butyl-flashing-tape|osb-plywood-sheathing direct", "butyl-flashing-tape|solvent-primer direct", "solvent-primer|osb-plywood-sheathing direct",
		"butyl-flashing-tape|epdm-gasket direct", "butyl-flashing-tape|xps direct", "butyl-flashing-tape|polyurethane-sealant direct",
		"butyl-flashing-tape|neutral-silicone-sealant direct", "butyl-flashing-tape|copper-sheet direct",
	} {
		if list := told(got, "!2"); !slices.Contains(list, want) {
			t.Errorf("%q is not in %q", want, list)
		}
	}
	if list := told(got, "!3"); !slices.Equal(list, []string{"butyl-flashing-tape|concrete-masonry direct"}) {
		t.Errorf("the second line: %q", list)
	}
}

// Words for a kind of sheet that it does not lie on hold for each sheet of that
// kind that the row lists, and for no other.
func TestNotOnAnyOfAKind(t *testing.T) {
	grid := `Mark | Membrane | Substrate | Primer | Touches | Remarks
D1 | ZE-1 | plywood | none | ZB-1, ZB-2 | Lands on the butyl, not on the rubberized asphalt sheet.
D2 | ZE-1 | plywood | none | ZB-1, ZB-2 | Rolled twice.

Tag | Type | Apply min F | Max days open
ZE-1 | EPDM sheet | 25 | 365
ZB-1 | self-adhered rubberized asphalt sheet | 40 | 60
ZB-2 | butyl sheet | 25 | 90
`
	got := find(t, grid)
	for id, want := range map[string][]string{
		"!2": {"ZE-1|ZB-1 apart", "ZE-1|ZB-2 direct"},
		"!3": {"ZE-1|ZB-1 direct", "ZE-1|ZB-2 direct"},
	} {
		for _, w := range want {
			if list := told(got, id); !slices.Contains(list, w) {
				t.Errorf("%q is not in %q", w, list)
			}
		}
	}
}

// A remark of its own column can part the row's material from its neighbor.
func TestRemarkThatSeparates(t *testing.T) {
	for remark, want := range map[string]string{
		"polyethylene slip sheet between membrane and roof": "pvc-roof-membrane separated by polyethylene-sheet",
		"butyl strip between the two":                       "pvc-roof-membrane separated by butyl-flashing-tape",
		"Separate with stainless flashing":                  "pvc-roof-membrane separated by stainless-sheet",
		"stainless flashing between brick and window":       "pvc-roof-membrane direct",
		"mineral wool between studs":                        "pvc-roof-membrane direct",
		"no slip sheet between the two":                     "pvc-roof-membrane direct",
		"Membrane stops 50 short of the PVC roof membrane":  "pvc-roof-membrane near",
		"PVC roof membrane kept 2 in. off the sheet":        "pvc-roof-membrane near",
		"Held back 12 from the brick; PVC roof membrane on": "pvc-roof-membrane direct",
	} {
		got := told(find(t, "Mark | Membrane | Substrate | Touches | Remarks\nD1 | rubberized asphalt membrane | CMU | PVC roof membrane | "+remark+"\n"), "!2")
		if !slices.Contains(got, "rubberized-asphalt-membrane|"+want) {
			t.Errorf("%q: got %q, want %q", remark, got, want)
		}
	}
}

// "Strip between" in the cell of neighbors parts the material from its substrate.
func TestStripBetween(t *testing.T) {
	for touches, want := range map[string]string{
		"butyl strip between":             "aluminum-sheet|copper-treated-lumber separated by butyl-flashing-tape",
		"butyl strip between it and XPS":  "aluminum-sheet|copper-treated-lumber direct",
		"two coats of bituminous paint":   "aluminum-sheet|copper-treated-lumber separated by bituminous-paint",
		"acrylic paint":                   "aluminum-sheet|copper-treated-lumber direct",
		"brick, no strip between the two": "aluminum-sheet|copper-treated-lumber direct",
	} {
		got := told(find(t, "Mark | Material | Substrate | Touches | Lap\nD1 | aluminum sheet | copper-treated lumber | "+touches+" | 50 mm\n"), "!2")
		if !slices.Contains(got, want) {
			t.Errorf("%q: got %q, want %q", touches, got, want)
		}
	}
}

// A remark that says the contact of the columns again, by chemistry, is no other one.
func TestRestatedInARemark(t *testing.T) {
	got := told(find(t, "Mark | Membrane | Substrate | Touches | Remarks\nD1 | EPDM membrane | CMU | SBS sheet | EPDM on the asphalt side\n"), "!2")
	want := []string{"epdm-membrane|concrete-masonry direct", "epdm-membrane|rubberized-asphalt-membrane direct"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestRemarkThatOnlyNamesMakesNoContact(t *testing.T) {
	got := find(t, "Mark | Membrane | Substrate | Primer | Remarks\nD1 | butyl tape | plywood | none | Coal tar pitch is on the list of others.\nD2 | butyl tape | CMU | none | -\n")
	for _, c := range got {
		if c.B.Family == "coal-tar-pitch" && c.Kind == "direct" {
			t.Errorf("contact %+v", c)
		}
	}
}

func TestWet(t *testing.T) {
	got := find(t, "Mark | Membrane | Substrate | Primer | Sealant\nD1 | butyl tape | XPS | solvent-borne primer | polyurethane sealant\nD2 | butyl tape | CMU | none | -\n")
	for _, c := range got {
		wet := c.B.Class == "primer" || c.B.Class == "sealant" || c.A.Class == "primer"
		if c.Wet != wet {
			t.Errorf("%s|%s wet %v", name(c.A), name(c.B), c.Wet)
		}
	}
}

func TestLayerOrder(t *testing.T) {
	got := find(t, `
Wall | Layer | Material | Install date
W1 | 1 | glass-mat gypsum sheathing | 2026-03-02
W1 | 2 | rubberized asphalt membrane | 2026-03-03
W1 | 3 | XPS | 2026-03-04
W2 | 1 | CMU | 2026-03-02
W2 | 2 | butyl tape | 2026-03-03
`)
	for line, want := range map[string][]string{
		"!2": nil,
		"!3": {"rubberized-asphalt-membrane|glass-mat-gypsum-sheathing direct"},
		"!4": {"xps|rubberized-asphalt-membrane direct"},
		"!5": nil,
		"!6": {"butyl-flashing-tape|concrete-masonry direct"},
	} {
		if list := told(got, line); !slices.Equal(list, want) {
			t.Errorf("%s: %q, want %q", line, list, want)
		}
	}
}

func TestBuildUpInOneCell(t *testing.T) {
	got := find(t, "Mark | Membrane | Substrate | Build-up\nD1 | butyl tape | CMU | gypsum board / mineral wool / rubberized asphalt membrane / XPS / clay brick\nD2 | butyl tape | CMU | -\n")
	for _, want := range []string{"gypsum-board|mineral-wool direct", "rubberized-asphalt-membrane|xps direct", "xps|clay-brick direct"} {
		if list := told(got, "!2"); !slices.Contains(list, want) {
			t.Errorf("%q is not in %q", want, list)
		}
	}
}

func TestMetalToMetalAndEmbeddedAreApartFromTheSheet(t *testing.T) {
	for _, cell := range []string{"copper flashing set metal to metal on the galvanized angle", "copper anchor embedded in the block"} {
		got := find(t, "Mark | Membrane | Substrate | Primer | Remarks\nD1 | butyl tape | CMU | none | "+cell+"\nD2 | butyl tape | CMU | none | -\n")
		for _, c := range got {
			if strings.HasPrefix(c.B.Family, "copper") && c.A.Family == "butyl-flashing-tape" && c.Kind == "direct" {
				t.Errorf("%s: %+v", cell, c)
			}
		}
	}
}

func TestStruckLinesTouchNothing(t *testing.T) {
	s := &schedule.Schedule{Lines: []schedule.Line{{ID: "!2", Struck: true, Items: []schedule.Item{
		{ID: "1", Slot: "material", Family: "xps"}, {ID: "2", Slot: "substrate", Family: "cast-concrete"}}}}}
	if got := contact.Find(s); len(got) != 0 {
		t.Errorf("got %+v", got)
	}
}

func TestOwnMaterialNamedAgain(t *testing.T) {
	got := find(t, `
Mark | Membrane | Substrate | Primer | Touches
D1 | AB-1 | CMU | none | AB-1 laps, AB-2
D2 | AB-2 | CMU | none | -

Tag | Type | Min apply °C | Max days open to sun
AB-1 | butyl flashing tape | -5 | 30
AB-2 | rubberized asphalt membrane | 5 | 30
`)
	if list := told(got, "!2"); !slices.Equal(list, []string{"AB-1|AB-2 direct", "AB-1|concrete-masonry direct"}) {
		t.Errorf("got %q", list)
	}
}

// What lies under the bed is not touched, though the list of neighbors names it
// again; under the row's own material it is.
func TestUnderTheBed(t *testing.T) {
	const grid = `Mark | Membrane | Substrate | Primer | Touches
D1 | EP-2 | PE-3 loose over SA-4 | none | PE-3; SA-4 leg beneath it
D2 | EP-2 | EP-2 sits on SA-4 | none | SA-4

Tag | Type | Service temp. (°C) | Days open | Keep off
EP-2 | EPDM sheet | 100 | 900 | asphalt
SA-4 | SBS asphalt sheet | 70 | 60 | EPDM
PE-3 | polyethylene film | 60 | 30 | -`
	list := find(t, grid)
	if got := told(list, "!2"); !slices.Contains(got, "EP-2|SA-4 apart") || slices.Contains(got, "EP-2|SA-4 direct") {
		t.Errorf("over a separator: %q", got)
	}
	if got := told(list, "!3"); !slices.Contains(got, "EP-2|SA-4 direct") {
		t.Errorf("on it: %q", got)
	}
}

// What follows a material and denies that it touches is said of that material.
func TestDeniedAfterwards(t *testing.T) {
	for touches, want := range map[string]bool{
		"clay brick; EPDM gasket, no contact":                            true,
		"clay brick; EPDM gasket is 40 below, untouched, not in contact": true,
		"EPDM gasket behind, not touching":                               true,
		"EPDM gasket, in full contact":                                   false,
		"EPDM gasket; no contact with the clay brick":                    false,
	} {
		for _, c := range find(t, "Mark | Membrane | Substrate | Touches | Lap\nD1 | rubberized asphalt membrane | CMU | "+touches+" | 50 mm\n") {
			if name(c.B) == "epdm-gasket" && slices.Contains(c.Signals, "no_contact") != want {
				t.Errorf("%q: signals %q", touches, c.Signals)
			}
		}
	}
}

// A remark that names the row's own product and what it is clear of beats the
// column that lists it; one that speaks of another material does not.
func TestOwnProductClearOf(t *testing.T) {
	for remark, want := range map[string]string{
		"PS-1 clear of SA-4 throughout":        "near",
		"the copper drip is clear of SA-4":     "direct",
		"PS-1 tooled flush, drip edge painted": "direct",
	} {
		list := told(find(t, `Mark | Sealant | Substrate | Primer | Touches | Remarks
D1 | PS-1 | CMU | none | SA-4 lower down | `+remark+`
D2 | PS-1 | CMU | none | - | -

Tag | Type | Service temp. (°C) | Days open
PS-1 | polysulphide sealant | 90 | 900
SA-4 | SBS asphalt sheet | 70 | 60`), "!2")
		if !slices.Contains(list, "PS-1|SA-4 "+want) || want == "near" && slices.Contains(list, "PS-1|SA-4 direct") {
			t.Errorf("%s: %q", remark, list)
		}
	}
}

// What is laid under the row's own sheet lies between it and its bed.
func TestLaidUnder(t *testing.T) {
	for touches, want := range map[string]string{
		"SF-2 under":            "separated by SF-2",
		"SF-2 over":             "direct",
		"SF-2 under the gutter": "direct",
	} {
		list := told(find(t, `Mark | Membrane | Substrate | Primer | Touches
D1 | VR-1 | SA-4 | none | `+touches+`
D2 | SA-4 | CMU | none | -

Tag | Type | Service temp. (°C) | Days open
VR-1 | plasticised PVC roof membrane | 90 | 900
SF-2 | polyester fleece | 90 | 30
SA-4 | SBS asphalt sheet | 70 | 60`), "!2")
		if !slices.Contains(list, "VR-1|SA-4 "+want) {
			t.Errorf("%s: %q", touches, list)
		}
	}
}

// What a remark says of the chemistry of a neighbor holds for the one that a column
// lists; what was taken off is another.
func TestKeptByKind(t *testing.T) {
	head := "Mark | Membrane | Substrate | Primer | Touches | Remarks\n"
	for remark, want := range map[string]string{
		"EPDM never comes onto the sheet":  "apart",
		"old EPDM removed":                 "direct",
		"butyl never comes onto the sheet": "direct",
	} {
		list := find(t, head+"D1 | SBS membrane | concrete | none | EPDM gasket | "+remark)
		got := ""
		for _, c := range list {
			if c.From == "touches" {
				got = c.Kind
			}
		}
		if got != want {
			t.Errorf("%s: %s, want %s", remark, got, want)
		}
	}
}

// A separator that lies "between" parts the row's sheet from its neighbor, where its own
// words call it one; a film between other things does not.
func TestSeparatorBetweenUnnamed(t *testing.T) {
	head := "Mark | Membrane | Substrate | Primer | Touches | Remarks\n"
	for remark, want := range map[string]string{
		"polyethylene separation sheet all the way between":         "separated by polyethylene-sheet",
		"10 mil poly sep. layer laid between":                       "separated by polyethylene-sheet",
		"10 mil poly between":                                       "direct",
		"polyethylene separation sheet between slab and insulation": "direct",
	} {
		got := ""
		for _, c := range find(t, head+"D1 | SBS membrane | concrete | none | EPDM roof | "+remark) {
			if c.From == "touches" {
				got = c.Kind
				if c.Separator != nil {
					got += " by " + c.Separator.Family
				}
			}
		}
		if got != want {
			t.Errorf("%s: %s, want %s", remark, got, want)
		}
	}
}

// What lies on sheet metal does not meet what the words put behind or under that metal,
// and a cell that says that two do not touch beats one that only names them.
func TestBehindMetalOfBed(t *testing.T) {
	for words, want := range map[string]string{
		"galv. angle | GK-5 seats on the angle; SA-4 ends behind it | -":  "separated",
		"galv. angle | SA-4 tucked under galv. angle | -":                 "separated",
		"galv. angle | galv. angle laps over SA-4 | -":                    "separated",
		"galv. angle | tooled | SA-4 behind the angle":                    "separated",
		"block wall | GK-5 seats on the steel; SA-4 | SA-4, not touching": "near",
		"galv. angle | SA-4 laps over the angle | -":                      "direct",
		"galv. angle | SA-4 tucked under the stone sill | -":              "direct",
		"galv. angle and block | SA-4 ends behind the angle | -":          "direct",
		"block wall | GK-5 set behind the galv. angle, against SA-4 | - ": "direct",
	} {
		got := ""
		for _, c := range find(t, `Mark | Product | Substrate | Edge | Touches
D1 | GK-5 | `+words+`
D2 | GK-5 | block wall | - | -

Tag | Type | Service temp. (°C) | Days open
GK-5 | EPDM gasket | 90 | 900
SA-4 | SBS asphalt sheet | 70 | 60`) {
			if c.Line == "!2" && name(c.A) == "GK-5" && name(c.B) == "SA-4" && got != "direct" {
				got = c.Kind
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", words, got, want)
		}
	}
}

// A cell keeps a neighbor off the row's own by what that is, as by its name; words of
// something else do not.
func TestKeptOffWhatItIs(t *testing.T) {
	for touches, want := range map[string]string{
		"SB-2 ends on the metal above, not touching the EPDM":  "apart",
		"SB-2 ends on the metal above, not touching the brick": "direct",
		"SB-2 laps the EPDM": "direct",
	} {
		list := told(find(t, `Mark | Membrane | Substrate | Primer | Touches
D1 | EP-1 | CMU | none | `+touches+`
D2 | EP-1 | CMU | none | -

Tag | Type | Service temp. (°C) | Days open
EP-1 | EPDM sheet flashing | 70 | 90
SB-2 | SBS asphalt sheet | 70 | 60`), "!2")
		if !slices.ContainsFunc(list, func(c string) bool { return strings.Contains(c, "SB-2") && strings.HasSuffix(c, want) }) {
			t.Errorf("%s: %q", touches, list)
		}
	}
}

// Sheet metal that its own words call the separator parts what has it, or ends at it, from
// the row's own; metal that is only named with it does not.
func TestMetalSeparatorWith(t *testing.T) {
	for touches, want := range map[string]bool{
		"EP-1 w/ stainless separator":                  true,
		"EP-1 stops at galvanized separator strip":     true,
		"EP-1 ends on a stainless steel separator bar": true,
		"EP-1 w/ stainless bar":                        false,
		"EP-1 behind SEP-3":                            true,
		"EP-1 behind SP-4":                             false,
	} {
		parted := false
		for _, c := range find(t, `Mark | Membrane | Substrate | Primer | Touches
D1 | SB-2 | CMU | none | `+touches+`
D2 | SB-2 | CMU | none | -

Tag | Type | Service temp. (°C) | Days open
EP-1 | EPDM roof sheet | 70 | 90
SEP-3 | galvanized steel strip | - | -
SP-4 | galvanized steel strip | - | -
SB-2 | SBS asphalt sheet | 70 | 60`) {
			parted = parted || c.Line == "!2" && name(c.B) == "EP-1" && c.Separator != nil
		}
		if parted != want {
			t.Errorf("%s: parted %v", touches, parted)
		}
	}
}

// A short word that could be more is a metal where it stands right before what it lies
// between; what is no metal, or is said to be missing there, parts nothing.
func TestShortMetalBetween(t *testing.T) {
	for remark, want := range map[string]bool{
		"S/S set between roofing and tape":       true,
		"0.6 mm SS between tape and the roofing": true,
		"SS screws at 300 mm, roofing and tape":  false,
		"no SS between the roofing and the tape": false,
		"tbd between roofing and tape":           false,
	} {
		list := told(find(t, `Mark | Membrane | Substrate | Primer | Touches | Remarks
D1 | rubberized asphalt tape | CMU | none | EPDM roofing | `+remark+`
D2 | rubberized asphalt tape | CMU | none | brick | -`), "!2")
		if got := slices.Contains(list, "rubberized-asphalt-flashing-tape|epdm-membrane separated by stainless-sheet"); got != want {
			t.Errorf("%s: %q", remark, list)
		}
	}
}

// A cell may name a neighbor and then say that the row's own sheet lies over it; what lies
// over the sheet, and a piece of something else on it, is no such neighbor.
func TestOwnSheetOntoIt(t *testing.T) {
	for touches, want := range map[string]string{
		"EPDM apron, SH-1 lapped onto it":           "a",
		"cured silicone strip; SH-1 turned over it": "a",
		"EPDM apron, SH-2 lapped onto it":           "",
		"EPDM apron":                                "",
		"EPDM apron lapped onto SH-1":               "b",
	} {
		upper := "no contact"
		for _, c := range find(t, `Mark | Membrane | Substrate | Primer | Touches
D1 | SH-1 | CMU | none | `+touches+`
D2 | SH-1 | CMU | none | -

Tag | Type | Service temp. (°C) | Days open
SH-1 | SBS sheet | 70 | 90
SH-2 | butyl tape | 70 | 60`) {
			if c.Line == "!2" && c.B.Slot == "touches" && c.B.Tag == "" {
				upper = c.Upper
			}
		}
		if upper != want {
			t.Errorf("%s: upper %q, want %q", touches, upper, want)
		}
	}
}

// What lies behind sheet metal that its own words call the separator is parted by it, and not
// what lies behind any other; words may say that nothing touches.
func TestBehindASeparator(t *testing.T) {
	for touches, want := range map[string]string{
		"EP-1 behind a galvanized separator plate":    "separated",
		"EP-1 sheet behind a copper separation strip": "separated",
		"EP-1 behind a galvanized angle":              "direct",
		"EP-1 above, no touching":                     "near",
	} {
		kind := "no contact"
		for _, c := range find(t, `Mark | Membrane | Substrate | Primer | Touches
D1 | SB-2 | CMU | none | `+touches+`
D2 | SB-2 | CMU | none | -

Tag | Type | Service temp. (°C) | Days open
EP-1 | EPDM roof sheet | 70 | 90
SB-2 | SBS asphalt sheet | 70 | 60`) {
			if c.Line == "!2" && name(c.A) == "SB-2" && name(c.B) == "EP-1" {
				kind = c.Kind
			}
		}
		if kind != want {
			t.Errorf("%s: %s, want %s", touches, kind, want)
		}
	}
}

// A thing that is called by its chemistry, with the short form of that in brackets, is one
// neighbor; two things are two.
func TestChemistryInBrackets(t *testing.T) {
	for touches, want := range map[string]int{
		"soft vinyl (PVC) glazing gasket":   1,
		"soft vinyl gasket; soft PVC boot":  2,
		"soft vinyl, PVC waterstop":         2,
		"flexible vinyl (soft PVC) gaskets": 1,
	} {
		got := 0
		for _, c := range find(t, `Mark | Membrane | Substrate | Primer | Touches
D1 | SBS sheet | CMU | none | `+touches+`
D2 | SBS sheet | CMU | none | -`) {
			if c.Line == "!2" && c.From == "touches" && slices.Contains(c.B.Keys, "pvc-plasticized") {
				got++
			}
		}
		if got != want {
			t.Errorf("%s: %d neighbors, want %d", touches, got, want)
		}
	}
}

// A strip on the very wood that the metal goes on, past both edges, parts the two; one of
// which the row does not say so, or that lies on something else, does not.
func TestStripOnTheBed(t *testing.T) {
	for touches, want := range map[string]string{
		"butyl tape on nailer, 1/2 in. past each side":  "separated",
		"butyl tape over the nailer, past both edges":   "separated",
		"butyl tape on nailer":                          "direct",
		"butyl tape on plywood, 1/2 in. past each side": "direct",
	} {
		kind := "no contact"
		for _, c := range find(t, `Mark | Material | Substrate | Touches
D1 | aluminum edge flashing | ACQ treated nailer | `+touches+`
D2 | aluminum edge flashing | ACQ treated nailer | -`) {
			if c.Line == "!2" && c.B.Slot == "substrate" {
				kind = c.Kind
			}
		}
		if kind != want {
			t.Errorf("%s: %s, want %s", touches, kind, want)
		}
	}
}

// What a cell of the cover puts on the inside of the wall lies behind the bed, where the row
// tells one; a column of what is behind the sheet tells what it meets.
func TestInsideOfTheBed(t *testing.T) {
	for head, want := range map[string]bool{"Covered with": false, "Behind": true} {
		words := "Clay brick. Inside: vinyl wall covering"
		if want {
			words = "vinyl wall covering"
		}
		met := false
		for _, c := range find(t, `Mark | Membrane | Substrate | Primer | `+head+`
D1 | SBS sheet | CMU | none | `+words+`
D2 | SBS sheet | CMU | none | -`) {
			met = met || c.Line == "!2" && slices.Contains(c.B.Keys, "vinyl-wall-covering")
		}
		if met != want {
			t.Errorf("%s: %q meets the sheet: %v, want %v", head, words, met, want)
		}
	}
}

// In a row without a material of its own the bed meets what its neighbors' column names, and
// not what is told there of another place.
func TestBedOfARowWithoutMaterial(t *testing.T) {
	for touches, want := range map[string]bool{
		"copper edge trim": true, "copper edge trim, laid bare": true, "clear of copper trim": false,
	} {
		met := false
		for _, c := range find(t, `Mark | Membrane | Substrate | Touches
D1 | SBS sheet | plywood | -
D2 | - | CCA blocking | `+touches) {
			met = met || c.Kind == "direct" && c.From == "touches" && slices.Contains(c.A.Keys, "copper") && c.B.Slot == "substrate"
		}
		if met != want {
			t.Errorf("%q: the trim meets the blocking %v, want %v", touches, met, want)
		}
	}
}

// A row that says that it has no sheet has its sealant meet what it stands between, and one
// that tells of a sheet in other words does not.
func TestSealantOfARowWithoutSheet(t *testing.T) {
	for what, want := range map[string]bool{
		"none (movement joint)": true, "No membrane": true, "none": true, "none yet, sheet by others": false, "by roofer": false,
	} {
		met := false
		for _, c := range find(t, `Mark | Membrane | Substrate | Touches
D1 | SBS sheet | plywood | -
D2 | `+what+` | marble | acetoxy silicone sealant`) {
			met = met || c.Line == "!3" && c.Kind == "direct" && slices.Contains(c.A.Keys, "silicone-acetoxy") && c.B.Slot == "substrate"
		}
		if met != want {
			t.Errorf("%q: the sealant meets the stone %v, want %v", what, met, want)
		}
	}
}

// A separator in a cell of its own parts the two that its words name, after its size or not, and
// no others.
func TestSeparatorBetweenTwoInACellOfItsOwn(t *testing.T) {
	for cells, want := range map[string]string{
		"EPDM flashing | polyethylene slip sheet, 6 mil, between EPDM and FM-1":           "separated",
		"EPDM flashing | polyethylene slip sheet between the membrane & the EPDM":         "separated",
		"EPDM flashing | polyethylene slip sheet, full width, between the brick and TPO":  "direct",
		"EPDM flashing | polyethylene film, 6 mil, inside":                                "direct",
		"EPDM flashing | drainage mat, full height, between the insulation and the brick": "direct",
	} {
		kind := "no contact"
		for _, c := range find(t, "Mark | Membrane | Substrate | Primer | Adjacent material 1 | Adjacent material 2\nFM-1 | SBS sheet | CMU | none | "+cells+"\nFM-2 | SBS sheet | CMU | none | brick | –\n") {
			if c.Line == "!2" && c.A.Slot == "material" && c.B.Text == "EPDM flashing" {
				kind = c.Kind
			}
		}
		if kind != want {
			t.Errorf("%s: %s, want %s", cells, kind, want)
		}
	}
}

// Sheet metal that a remark says holds the two apart parts them; so does a wrap of what the row's own lies on.
func TestHeldApartAndWrapped(t *testing.T) {
	for remark, want := range map[string]string{
		"SS sheet keeps them apart":           "rubberized-asphalt-membrane|pvc-roof-membrane separated by stainless-sheet",
		"stainless flashing parts the two":    "rubberized-asphalt-membrane|pvc-roof-membrane separated by stainless-sheet",
		"stainless flashing by others":        "rubberized-asphalt-membrane|pvc-roof-membrane direct",
		"stainless screws hold it all up":     "rubberized-asphalt-membrane|pvc-roof-membrane direct",
		"nothing keeps them apart, SS anchor": "rubberized-asphalt-membrane|pvc-roof-membrane direct",
	} {
		got := told(find(t, "Mark | Membrane | Substrate | Touches | Remarks\nD1 | rubberized asphalt membrane | CMU | PVC roof membrane | "+remark+"\n"), "!2")
		if !slices.Contains(got, want) {
			t.Errorf("%q: got %q, want %q", remark, got, want)
		}
	}
	for bed, want := range map[string]string{
		"copper-treated lumber wrapped all around in butyl tape": "aluminum-sheet|copper-treated-lumber separated by butyl-flashing-tape",
		"copper-treated lumber sleeved in polyethylene sheet":    "aluminum-sheet|copper-treated-lumber separated by polyethylene-sheet",
		"copper-treated lumber set in butyl sealant, both faces": "aluminum-sheet|copper-treated-lumber direct",
		"copper-treated lumber not wrapped in butyl tape":        "aluminum-sheet|copper-treated-lumber direct",
	} {
		got := told(find(t, "Mark | Material | Substrate | Lap\nD1 | aluminum sheet | "+bed+" | 50 mm\n"), "!2")
		if !slices.Contains(got, want) {
			t.Errorf("%q: got %q, want %q", bed, got, want)
		}
	}
}
