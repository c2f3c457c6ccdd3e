package contact_test

import (
	"slices"
	"strings"
	"testing"

	"abut/internal/contact"
)

// What is left on a face touches, also where most of the same stuff came off.
func TestWhatIsLeftOn(t *testing.T) {
	for cell, want := range map[string]string{
		"old silicone cut out, smear of silicone left on the east side": "direct",
		"old silicone cut out, face ground":                             "apart",
	} {
		got := []string{}
		for _, c := range find(t, "Mark | Sealant | Substrate | Primer | Installed\nJ1 | urethane sealant | "+cell+" | urethane primer | 2027-05-04\n") {
			if c.A.Slot == "material" && slices.Contains(c.B.Keys, "silicone") {
				got = append(got, c.Kind)
			}
		}
		if slices.Contains(got, "direct") != (want == "direct") || len(got) == 0 {
			t.Errorf("%s: %v, want %s", cell, got, want)
		}
	}
}

// A neighbor that a remark calls by the word of its data, and puts clear of the sheet,
// does not touch it.
func TestCalledByItsDataAndClear(t *testing.T) {
	holdKinds(t, map[string]string{"Gasket kept 20 clear of the membrane.": "near", "Gasket is new.": "direct"},
		func(remark string) string {
			return `
Mark | Membrane | Substrate | Primer | Touches | Remarks
T1 | AB-1 | plywood | none | G-7 in joint | ` + remark + `
T2 | AB-1 | plywood | none | brick |

Tag | Type | Apply min °F | Max exposure, days | Keep off
AB-1 | SBS self-adhered sheet | 40 | 60 | EPDM
G-7 | Hollow gasket, EPDM | – | – | –`
		},
		func(c contact.Contact) bool {
			return c.A.Product == "AB-1" && c.B.Product == "G-7" && c.From == "touches"
		})
}

// A remark may call a neighbor by one word of its name, and put the sheet clear of it.
func TestClearOfWhatTheRowNames(t *testing.T) {
	holdKinds(t, map[string]string{
		"AB-1 ends on the plate, 60 clear of all tar there":  "near",
		"AB-1 ends on the plate, 60 clear of all rust there": "direct",
		"AB-1 ends on the plate":                             "direct",
	},
		func(remark string) string {
			return "Mark | Membrane | Substrate | Primer | Left | Remarks\nT1 | AB-1 | plywood | none | old coal-tar dampprfg | " + remark + "\nT2 | AB-1 | plywood | none | brick | \n\nTag | Type | Apply min °F | Max exposure, days | Keep off\nAB-1 | SBS self-adhered sheet | 40 | 60 | EPDM\n"
		},
		func(c contact.Contact) bool {
			return c.From == "left" && c.A.Product == "AB-1" && slices.Contains(c.B.Keys, "coal-tar")
		})
}

// Sheet metal that a cell of covers names first lies between the sheet and what follows.
func TestCoversOverSheetMetal(t *testing.T) {
	holdKinds(t, map[string]string{"ZP-1, RM-4": "near", "RM-4": "direct"},
		func(cell string) string {
			return `
Mark | Membrane | Substrate | Primer | Covered with
T1 | AB-1 | plywood | none | ` + cell + `
T2 | AB-1 | plywood | none | brick

Tag | Type | Apply min °F | Max exposure, days | Keep off
AB-1 | SBS self-adhered sheet | 40 | 60 | EPDM
ZP-1 | galvanized steel closure plate | – | – | –
RM-4 | PVC roofing membrane, plasticized | – | – | –`
		},
		func(c contact.Contact) bool {
			return c.From == "front" && c.A.Product == "AB-1" && c.B.Product == "RM-4"
		})
}

// What a cell of covers puts on the insulation lies on that, and the sheet below it.
func TestCoversOnInsulation(t *testing.T) {
	holdKinds(t, map[string]string{"EPDM membrane over 3 in. polyiso": "near", "EPDM membrane on XPS boards": "near", "EPDM membrane over all": "direct"},
		func(cell string) string {
			return `
Mark | Membrane | Substrate | Primer | Covered with
T1 | AB-1 | plywood | none | ` + cell + `
T2 | AB-1 | plywood | none | brick

Tag | Type | Apply min °F | Max exposure, days | Keep off
AB-1 | SBS self-adhered sheet | 40 | 60 | coal tar`
		},
		func(c contact.Contact) bool {
			return c.From == "front" && c.A.Product == "AB-1" && slices.Contains(c.B.Keys, "epdm")
		})
}

const threeProducts = `

Tag | Type | Apply min °F | Max exposure, days | Keep off
AB-1 | SBS self-adhered sheet | 40 | 60 | EPDM; plasticized PVC
RF-3 | Roof membrane: plasticized PVC | – | – | asphaltic sheets
JS-7 | neutral silicone sealant | – | – | –
`

// Roofing that lies on a board of its own lies clear of the sheet under that.
func TestRoofingOnABoard(t *testing.T) {
	holdKinds(t, map[string]string{
		"polyiso in two layers; RF-3 above, on cover board": "apart",
		"RF-3 on gypsum cover board":                        "apart",
		"RF-3 above, on the sheet":                          "direct",
		"cover board; RF-3":                                 "direct",
	},
		func(touches string) string {
			return "Mark | Membrane | Substrate | Primer | Touches\nT1 | AB-1 | plywood | none | " + touches + "\nT2 | AB-1 | plywood | none | brick" + threeProducts
		},
		func(c contact.Contact) bool { return c.A.Product == "AB-1" && c.B.Product == "RF-3" })
}

// A remark denies the contact of a neighbor by any word that the row has for it.
func TestDeniedByAWordOfTheRow(t *testing.T) {
	holdKinds(t, map[string]string{
		"The links at no point touch AB-1.":   "apart",
		"The clamping links touch AB-1.":      "direct",
		"The collars at no point touch AB-1.": "direct",
	},
		func(remark string) string {
			return "Mark | Membrane | Substrate | Primer | Touches | Remarks\nT1 | AB-1 | concrete | none | EPDM links in the sleeve | " + remark + "\nT2 | AB-1 | plywood | none | brick |" + threeProducts
		},
		func(c contact.Contact) bool { return c.From == "touches" && slices.Contains(c.B.Keys, "epdm") })
}

// Why two do not meet is no contact of theirs: the one would not hold to the other.
func TestWouldNotHoldTo(t *testing.T) {
	holdKinds(t, map[string]string{
		"JS-7 would not stick to RF-3, so it is set on the metal": "near",
		"JS-7 set on RF-3": "direct",
	},
		func(remark string) string {
			return "Mark | Membrane | Substrate | Primer | Touches | Remarks\nT1 | AB-1 | concrete | none | brick | " + remark + "\nT2 | AB-1 | plywood | none | brick |" + threeProducts
		},
		func(c contact.Contact) bool { return c.A.Product == "JS-7" && c.B.Product == "RF-3" })
}

// Roofing above the insulation that is named before it lies on that.
func TestRoofingAboveInsulation(t *testing.T) {
	holdKinds(t, map[string]string{
		"polyiso 2 x 60, RF-3 above":   "near",
		"EPS, tapered; RF-3 above":     "near",
		"RF-3 above; polyiso 2 x 60":   "direct",
		"polyiso 2 x 60, RF-3 at edge": "direct",
		"no polyiso, RF-3 above":       "direct",
	},
		func(touches string) string {
			return "Mark | Membrane | Substrate | Primer | Touches\nT1 | AB-1 | plywood | none | " + touches + "\nT2 | AB-1 | plywood | none | brick" + threeProducts
		},
		func(c contact.Contact) bool {
			return c.From == "touches" && c.A.Product == "AB-1" && c.B.Product == "RF-3"
		})
}

// A neighbor that comes with something between is parted from the sheet by it.
func TestNeighborWithSomethingBetween(t *testing.T) {
	holdKinds(t, map[string]string{
		"EPDM bulb gasket with a galvanized steel plate between": "separated",
		"EPDM boot, with polyethylene film in between":           "separated",
		"EPDM bulb gasket; polyethylene film where they meet":    "separated",
		"EPDM bulb gasket; no film where they meet":              "direct",
		"EPDM bulb gasket with no plate between":                 "direct",
		"EPDM bulb gasket with galvanized steel clips":           "direct",
	},
		func(touches string) string {
			return "Mark | Membrane | Substrate | Primer | Touches\nT1 | AB-1 | plywood | none | " + touches + "\nT2 | AB-1 | plywood | none | brick" + threeProducts
		},
		func(c contact.Contact) bool { return c.A.Product == "AB-1" && slices.Contains(c.B.Keys, "epdm") })
}

// Sheet metal that a cell calls the separator parts the row's own from what it names next.
func TestSeparatorNamedFirst(t *testing.T) {
	holdKinds(t, map[string]string{
		"galv. steel separator 0.5, then RF-3":             "separated",
		"stainless separator strip continuous; RF-3 under": "separated",
		"galv. steel closure 0.5; RF-3 under":              "direct",
		"no stainless separator; RF-3 under":               "direct",
		"RF-3 at the curb; brick; stainless separator":     "direct",
	},
		func(touches string) string {
			return "Mark | Membrane | Substrate | Primer | Touches | Termination\nT1 | AB-1 | plywood | none | " + touches + " | RF-3 stays behind\nT2 | AB-1 | plywood | none | brick | -" + threeProducts
		},
		func(c contact.Contact) bool { return c.A.Product == "AB-1" && c.B.Product == "RF-3" })
}

// A remark denies the contact of a neighbor by a word that only its data has for it.
func TestDeniedByAWordOfTheData(t *testing.T) {
	holdKinds(t, map[string]string{
		"The plasticized goods never meet the sheet": "apart",
		"The wall sheet does not touch the roof":     "apart",
		"Sheet does not touch the brick":             "direct",
		"The plasticized goods meet the sheet":       "direct",
		"The plasticized goods touch no brick":       "direct",
	},
		func(remark string) string {
			return "Mark | Membrane | Substrate | Primer | Touches | Remarks\nT1 | AB-1 | concrete | none | RF-3 | " + remark + "\nT2 | AB-1 | plywood | none | brick |" + threeProducts
		},
		func(c contact.Contact) bool { return c.From == "touches" && c.B.Product == "RF-3" })
}

// A coat or wrap that the row says its own metal has parts that from what it is bedded in.
func TestCoatOfTheMetal(t *testing.T) {
	holdKinds(t, map[string]string{
		"Two coats of bitumen on all sides":              "separated",
		"Asphalt paint on the back of the zinc":          "separated",
		"Back-painted with epoxy paint before it is set": "separated",
		"Wrapped in isolation tape":                      "separated",
		"Isolation tape at the clips":                    "direct",
		"No bituminous paint":                            "direct",
		"Asphalt paint on the top face only":             "direct",
		"Asphalt paint on the cut ends":                  "direct",
		"Asphalt paint once the mortar is in":            "direct",
		"Bituminous paint on the structural steel":       "direct",
	},
		func(remark string) string {
			return "Mark | Flashing | Substrate | Primer | Touches | Remarks\nT1 | zinc sheet | wet mortar | none | brick | " + remark + "\nT2 | butyl tape | plywood | none | brick |\n"
		},
		func(c contact.Contact) bool { return c.A.Family == "zinc-sheet" && c.From == "substrate" })
}

// A coat stops neither a fastener nor what the row's sheet is no metal for.
func TestCoatIsOfTheMetal(t *testing.T) {
	holdKinds(t, map[string]string{"zinc sheet": "direct", "butyl tape": "direct"},
		func(own string) string {
			return "Mark | Flashing | Substrate | Primer | Touches | Remarks\nT1 | " + own + " | plywood | none | copper nails | Asphalt paint both faces\nT2 | butyl tape | plywood | none | brick |\n"
		},
		func(c contact.Contact) bool { return c.From == "touches" })
}

// What a mortar has in its mix touches it, whether its cell or a remark says so.
func TestMixedIn(t *testing.T) {
	for row, want := range map[string]string{
		"grout, calcium chloride added | ":            "direct",
		"grout | calcium chloride added to the grout": "direct",
		"grout, no calcium chloride | ":               "",
		"grout | calcium chloride stored in shed":     "near",
		"zinc sheet | calcium chloride stored in mix": "near",
	} {
		own, remark, _ := strings.Cut(row, " | ")
		holdKinds(t, map[string]string{remark: want}, func(words string) string {
			return "Mark | Material | Substrate | Primer | Touches | Remarks\nT1 | " + own + " | brick | none | galvanized ties | " + words + "\nT2 | butyl tape | plywood | none | brick |\n"
		}, func(c contact.Contact) bool { return c.B.Family == "deicing-salt" && c.Kind != "apart" })
	}
}

// The cell of the row's own metal tells of its coat, whatever the column is called.
func TestCoatToldBesideTheMetal(t *testing.T) {
	holdKinds(t, map[string]string{
		"zinc 0.8, bituminous paint on both faces":     "separated",
		"aluminum channel, epoxy paint all round":      "separated",
		"aluminum channel, asphalt paint on one face":  "direct",
		"aluminum channel, asphalt paint on the bolts": "direct",
		"aluminum channel, no bituminous paint":        "direct",
		"aluminum channel":                             "direct",
	},
		func(own string) string {
			return "No. | Item | Product code | Laid onto | Prime coat | Touches | Start\n1 | Flashing | " + own + " | wet mortar | none | brick | 2026-05-04\n2 | Sheet | butyl tape | plywood | none | brick | 2026-05-04\n"
		},
		func(c contact.Contact) bool { return c.B.Family == "fresh-mortar" && c.From == "substrate" })
}

// A coat told beside a piece of metal is on it wherever else the row names it.
func TestCoatOfANamedMetal(t *testing.T) {
	holdKinds(t, map[string]string{
		"aluminum channel, asphalt paint all round":                   "separated",
		"aluminum channel":                                            "direct",
		"aluminum channel, asphalt paint on the bolts":                "direct",
		"aluminum channel, no asphalt paint":                          "direct",
		"steel lintel, asphalt paint all round":                       "direct",
		"aluminum channel; steel lintel with asphalt paint all round": "direct",
	},
		func(near string) string {
			return "Mark | Material | Substrate | Primer | Touches | Flashing\nT1 | none | brick | none | " + near + " | aluminum channel set in wet mortar\nT2 | butyl tape | plywood | none | brick |\n"
		},
		func(c contact.Contact) bool { return c.A.Family == "aluminum-sheet" && c.B.Family == "fresh-mortar" })
}

// Fasteners that a row lists beside its sheet go into the lumber below it.
func TestFastenersInTheLumber(t *testing.T) {
	for near, want := range map[string]string{
		"zinc plated nails":                "direct",
		"stainless nails; brick":           "direct",
		"zinc plated nails into the block": "",
		"no nails":                         "",
		"brick":                            "",
	} {
		holdKinds(t, map[string]string{near: want}, func(words string) string {
			return "Mark | Membrane | Substrate | Primer | Touches\nT1 | butyl tape | ACQ treated lumber | none | " + words + "\nT2 | butyl tape | plywood | none | brick\n"
		}, func(c contact.Contact) bool { return c.A.Class == "fastener" && c.B.Class == "lumber" })
	}
}

// A cell of neighbors may tell the coat of the row's own metal by its form; an anchor
// that is painted is parted from its mortar, though not from what goes through the paint.
func TestCoatByTheForm(t *testing.T) {
	for row, want := range map[string]string{
		"aluminum flashing angle | grout; angle back coated with bituminous paint": "separated",
		"aluminum flashing angle | grout; plate coated with bituminous paint":      "direct",
		"aluminum channel | grout":                               "direct",
		"aluminum anchor, bituminous paint where bedded | grout": "separated",
		"aluminum anchor, no bituminous paint | grout":           "direct",
	} {
		own, touches, _ := strings.Cut(row, " | ")
		holdKinds(t, map[string]string{row: want}, func(string) string {
			return "Mark | Material | Substrate | Primer | Touches | Remarks\nT1 | " + own + " | brick | none | " + touches + " |\nT2 | butyl tape | plywood | none | brick |\n"
		}, func(c contact.Contact) bool { return c.B.Family == "fresh-mortar" && c.From == "touches" })
	}
}

// What a cell says stands beyond another, or on its far side, does not touch; what goes
// beyond the sheet, or onto its far side, does.
func TestBeyondAndFarSide(t *testing.T) {
	holdKinds(t, map[string]string{
		"steel cleat; EPDM edging beyond":             "near",
		"EPDM edging on the opposite side of a cleat": "near",
		"SS sep; EPDM edging on far side":             "separated",
		"galv sep 24 ga; EPDM edging behind":          "separated",
		"EPDM edging runs on beyond AB-1":             "direct",
		"EPDM edging on far side of AB-1":             "direct",
		"SS edge, sep piece; EPDM edging":             "direct",
	},
		func(touches string) string {
			return "Mark | Membrane | Substrate | Primer | Touches\nT1 | AB-1 | plywood | none | " + touches + "\nT2 | AB-1 | plywood | none | brick" + threeProducts
		},
		func(c contact.Contact) bool { return c.A.Product == "AB-1" && slices.Contains(c.B.Keys, "epdm") })
}

// A cell of the edge, or a remark, that puts something between the row's own and its
// neighbor parts the two, whatever word it has for the neighbor; nothing between parts none.
func TestPartedInAnotherCell(t *testing.T) {
	for words, want := range map[string]string{
		"channel full width between gasket and AB-1 | ": "apart",
		"joint between gasket and AB-1 | ":              "direct",
		" | no gasket on the membrane":                  "apart",
		" | no gasket on the insulation":                "direct",
		" | no plate between gasket and AB-1":           "direct",
	} {
		holdKinds(t, map[string]string{words: want},
			func(words string) string {
				return "Mark | Material | Substrate | Primer | Touches | Termination | Remarks\nT1 | EPDM gasket | plywood | none | AB-1 | " + words + "\nT2 | AB-1 | plywood | none | brick | - | -" + threeProducts
			},
			func(c contact.Contact) bool { return c.From == "touches" && c.B.Product == "AB-1" })
	}
	for remark, want := range map[string]string{
		"steel angle keeps TPO off the sheet":     "direct",
		"steel angle keeps EPDM off the sheet":    "separated",
		"EPDM held off by a galvanized steel bar": "separated",
		"PVC held off by a galvanized steel bar":  "direct",
		"butyl strip between EPDM and sheet":      "separated",
	} {
		holdKinds(t, map[string]string{remark: want},
			func(remark string) string {
				return "Mark | Membrane | Substrate | Primer | Touches | Sealant | Remarks\nT1 | AB-1 | plywood | none | EPDM roof edge | hybrid sealant | " + remark + "\nT2 | AB-1 | plywood | none | brick | - | -" + threeProducts
			},
			func(c contact.Contact) bool { return c.From == "touches" && slices.Contains(c.B.Keys, "epdm") })
	}
	for touches, want := range map[string]string{"EPDM roof membrane": "separated", "TPO roof membrane": "direct"} {
		holdKinds(t, map[string]string{touches: want},
			func(touches string) string {
				return "Mark | Membrane | Substrate | Primer | Touches | Remarks\nT1 | AB-1 | plywood | none | " + touches + " | SS sep strip full ht between EPDM + sheet, no touch\nT2 | AB-1 | plywood | none | brick | -" + threeProducts
			},
			func(c contact.Contact) bool { return c.From == "touches" && c.B.Class == "roofing" })
	}
}

// A remark may deny the sheet by words for it alone, tell how far off all is, put the
// neighbor on other work only, or name a separator that goes all along.
func TestKeptOffInARemark(t *testing.T) {
	for remark, want := range map[string]string{
		"gasket bears on the cleat, not on the sheet":        "apart",
		"gasket bears on the cleat, not on the block":        "direct",
		"clear by 20 mm all round":                           "near",
		"clear of grade by 200 mm":                           "direct",
		"EPDM glued to the bare steel angle only":            "apart",
		"EPDM glued to the bare steel angle":                 "direct",
		"galvanized steel separator, unbroken":               "separated",
		"galvanized steel separator whole length, primed":    "separated",
		"no galvanized steel separator over the full length": "direct",
		"poly slip sheet, whole width":                       "separated",
		"galvanized steel flashing over the full length":     "direct",
	} {
		holdKinds(t, map[string]string{remark: want},
			func(remark string) string {
				return "Mark | Membrane | Substrate | Primer | Touches | Remarks\nT1 | AB-1 | plywood | none | EPDM gasket | " + remark + "\nT2 | AB-1 | plywood | none | brick | -" + threeProducts
			},
			func(c contact.Contact) bool { return c.From == "touches" && slices.Contains(c.B.Keys, "epdm") })
	}
}

// layered is a wall of numbered layers, whose products have data, and the contacts of its last
// row with what stands before it.
func layered(t *testing.T, rows ...string) string {
	t.Helper()
	grid := "Wall | Layer | Mark | Material | Applied to | Primer\n"
	for i, row := range rows {
		grid += "W7 | " + string(rune('1'+i)) + " | " + row + "\n"
	}
	grid += "\nTag | Product | Type\nAB-1 | Larch sheet | SBS self-adhered membrane\nFX-2 | Larch strip | flexible PVC flashing\n" +
		"IB-3 | Larch board | XPS board\nPR-1 | Larch P | solvent primer\nPR-2 | Larch W | water-based primer"
	var kinds []string
	for _, c := range find(t, grid) {
		if c.From == "layer-order" && c.Line[strings.Index(c.Line, "!")+1:] == string(rune('1'+len(rows))) {
			kinds = append(kinds, c.A.Product+" "+c.B.Product)
		}
	}
	return strings.Join(kinds, ",")
}

// A board lies on the sheet that its row names, and not on the strip told before it; a row
// that names none lies on what comes before.
func TestBoardOnTheNamedSheet(t *testing.T) {
	for last, want := range map[string]string{
		"IB-3 | XPS board | AB-1 | none":       "",
		"IB-3 | XPS board | FX-2 | none":       "IB-3 FX-2",
		"IB-3 | XPS board | block | none":      "IB-3 FX-2",
		"AB-1 | SBS sheet above | AB-1 | PR-1": "AB-1 FX-2",
	} {
		if got := layered(t, "AB-1 | SBS sheet | plywood | PR-1", "FX-2 | PVC strip | AB-1 | none", last); got != want {
			t.Errorf("%s: %q, want %q", last, got, want)
		}
	}
}

// A primer in a row of its own is under what uses it, and not under what has another.
func TestRowOfAPrimer(t *testing.T) {
	for last, want := range map[string]string{
		"FX-2 | PVC strip | block | PR-1": "",
		"AB-1 | SBS sheet | block | PR-2": "AB-1 PR-2",
		"AB-1 | SBS sheet | block | none": "AB-1 PR-2",
	} {
		if got := layered(t, "PR-2 | primer on the whole wall | block | none", last); got != want {
			t.Errorf("%s: %q, want %q", last, got, want)
		}
	}
}

// After the size of a separator the words may go on with what it lies between.
func TestBetweenAfterItsSize(t *testing.T) {
	for touches, want := range map[string]string{
		"PE slip strip, 150 mm wide, between it and AB-1": "separated",
		"bars; poly film, 8 in., between this and AB-1":   "separated",
		"AB-1; poly film, 8 in., at the curb":             "direct",
		"steel bar, 8 in. o.c., AB-1":                     "direct",
	} {
		holdKinds(t, map[string]string{touches: want},
			func(touches string) string {
				return "Mark | Material | Substrate | Primer | Fastening\nT1 | EPDM gasket | plywood | none | " + touches + "\nT2 | AB-1 | plywood | none | screws" + threeProducts
			},
			func(c contact.Contact) bool { return c.From == "touches" && c.B.Product == "AB-1" })
	}
}

// A bead is called by any word for one, and is kept off by what its words go on to deny; what
// they deny of another, or of another's bead, is not said of it.
func TestBeadNotToTheSheet(t *testing.T) {
	for cells, want := range map[string]string{
		"neutral silicone to the angle | caulk to block only, not to membrane":   "near",
		"neutral silicone to the angle | sealant not on the sheet":               "apart",
		"neutral silicone to the angle | caulk clear of the sheet":               "near",
		"neutral silicone joint, not onto the sheet | -":                         "near",
		"neutral silicone to the angle, none to the membrane | -":                "near",
		"neutral silicone to the sheet | caulk to the sheet, not to the block":   "direct",
		"neutral silicone to the angle and sheet | screws not to the sheet":      "direct",
		"neutral silicone to the sheet, not to the angle | -":                    "direct",
		"neutral silicone and acrylic latex caulk | sealant not on the membrane": "direct",
	} {
		holdKinds(t, map[string]string{cells: want},
			func(cells string) string {
				return "Mark | Membrane | Substrate | Primer | Touches | Remarks\nT1 | AB-1 | plywood | none | " + cells + "\nT2 | AB-1 | plywood | none | brick | -" + threeProducts
			},
			func(c contact.Contact) bool { return c.From == "touches" && slices.Contains(c.B.Keys, "silicone") })
	}
}

// A gasket in the pocket of a frame does not reach what lies on the far side of that frame;
// what comes into the pocket, lies on something else, or is no gasket's neighbor does.
func TestBeyondTheFrame(t *testing.T) {
	for _, tc := range []struct{ own, bed, cell, want string }{
		{"EPDM glazing gasket", "aluminum frame", "SBS sheet on the outer face of the frame", "separated"},
		{"EPDM gasket", "alum. mullion", "alum. mullion; SBS sheet behind mullion", "separated"},
		{"EPDM glazing gasket", "aluminum frame", "SBS sheet at back of the aluminum frame", "separated"},
		{"EPDM glazing gasket", "aluminum frame", "SBS sheet on frame", "direct"},
		{"EPDM glazing gasket", "aluminum frame", "SBS sheet from outside of frame into pocket", "direct"},
		{"EPDM glazing gasket", "aluminum frame", "SBS sheet outside of glass", "direct"},
		{"EPDM glazing gasket", "plywood", "SBS sheet outside of frame", "direct"},
		{"EPDM sheet", "aluminum frame", "SBS sheet outside of frame", "direct"},
	} {
		got := []string{}
		for _, c := range find(t, "Mark | Material | Substrate | Touches | Installed\nJ1 | "+tc.own+" | "+tc.bed+" | "+tc.cell+" | 2027-05-04\n") {
			if c.From == "touches" && slices.Contains(c.B.Keys, "asphaltic") {
				got = append(got, c.Kind)
			}
		}
		if !slices.Equal(got, []string{tc.want}) {
			t.Errorf("%s on %s, %s: %v, want %s", tc.own, tc.bed, tc.cell, got, tc.want)
		}
	}
}

// Roofing above a board lies on that, and what a row's own lies on parts it from the membrane
// that was named first; a topping may lie on the slip sheet itself.
func TestAboveTheBoardAndOnTheSlipSheet(t *testing.T) {
	for cells, want := range map[string]string{
		"plywood | EPDM roofing (above the cover board)": "apart",
		"plywood | EPDM roofing above the parapet":       "direct",
		"plywood | EPDM roofing, cover board above":      "direct",
	} {
		holdKinds(t, map[string]string{cells: want},
			func(cells string) string {
				return "Mark | Material | Substrate | Touches\nT1 | AB-1 | " + cells + "\nT2 | AB-1 | plywood | screws" + threeProducts
			},
			func(c contact.Contact) bool { return c.From == "touches" && c.B.Family == "epdm-membrane" })
	}
	for bed, want := range map[string]string{
		"AB-1 at the joint, on polyethylene slip sheet": "separated",
		"AB-1 at the joint, on plywood":                 "direct",
		"AB-1 at the joint":                             "direct",
	} {
		holdKinds(t, map[string]string{bed: want},
			func(bed string) string {
				return "Mark | Material | Substrate | Touches\nT1 | EPDM roofing | " + bed + " | screws\nT2 | AB-1 | plywood | screws" + threeProducts
			},
			func(c contact.Contact) bool { return c.From == "substrate" && c.B.Product == "AB-1" })
	}
}

// The bed that a cell of primers names is no primer on the other bed of the row.
func TestBedInTheCellOfPrimers(t *testing.T) {
	holdKinds(t, map[string]string{"solvent primer on concrete": "", "none": ""},
		func(primer string) string {
			return "Mark | Material | Substrate | Primer\nT1 | silicone sealant | concrete / aluminum frame | " + primer + "\nT2 | AB-1 | plywood | none" + threeProducts
		},
		func(c contact.Contact) bool { return c.A.Family == "cast-concrete" })
}
