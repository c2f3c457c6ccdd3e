package lib.verdict_test

import data.lib.bench_test as bench
import data.lib.rows
import data.lib.verdict

# Worked questions over the table of pairs itself: first, second, how they meet, the verdict.
_cases := [
	["rubberized-asphalt-membrane", "pvc-roof-membrane", "direct", "incompatible"],
	["rubberized-asphalt-flashing-tape", "rigid-vinyl-window", "direct", "compatible-with-condition"],
	["rubberized-asphalt-flashing-tape", "flexible-vinyl-fin", "direct", "incompatible"],
	["butyl-flashing-tape", "rigid-vinyl-window", "direct", "compatible"],
	["solvent-primer", "xps", "direct", "incompatible"],
	["water-primer", "xps", "direct", "compatible"],
	["asphalt-dampproofing-emulsion", "xps", "direct", "compatible"],
	["asphalt-cutback-mastic", "xps", "direct", "incompatible"],
	["rubberized-asphalt-membrane", "xps", "direct", "compatible-with-condition"],
	["hot-rubberized-asphalt-waterproofing", "xps", "direct", "compatible-with-condition"],
	["eps", "pvc-cable", "direct", "incompatible"],
	["eps", "pvc-roof-membrane", "near", "compatible"],
	["polyiso", "pvc-roof-membrane", "direct", "compatible"],
	["xps", "portland-cement-stucco", "direct", "compatible"],
	["copper-sheet", "aluminum-sheet", "direct", "incompatible"],
	["copper-sheet", "aluminum-sheet", "runoff", "incompatible"],
	["aluminum-sheet", "copper-sheet", "runoff", "compatible"],
	["copper-sheet", "aluminum-sheet", "near", "compatible"],
	["copper-sheet", "painted-aluminum", "runoff", "needs-confirmation"],
	["copper-sheet", "stainless-sheet", "direct", "compatible"],
	["copper-sheet", "lead-sheet", "direct", "compatible"],
	["stainless-fastener", "aluminum-sheet", "direct", "compatible"],
	["aluminum-fastener", "stainless-sheet", "direct", "incompatible"],
	["aluminum-sheet", "galvanized-sheet", "direct", "compatible"],
	["painted-aluminum", "galvanized-sheet", "runoff", "needs-confirmation"],
	["fresh-mortar", "copper-sheet", "direct", "compatible"],
	["fresh-mortar", "lead-sheet", "direct", "incompatible"],
	["fresh-mortar", "aluminum-sheet", "direct", "incompatible"],
	["fresh-mortar", "galvanized-wall-tie", "direct", "compatible"],
	["acq-lumber", "hot-dip-galvanized-fastener", "direct", "compatible-with-condition"],
	["acq-lumber", "electroplated-fastener", "direct", "incompatible"],
	["acq-lumber", "aluminum-sheet", "direct", "incompatible"],
	["micronized-copper-lumber", "aluminum-sheet", "direct", "needs-confirmation"],
	["borate-lumber", "bright-steel-fastener", "direct", "compatible"],
	["acq-lumber", "rigid-vinyl-window", "direct", "compatible"],
	["tannin-rich-wood", "stainless-fastener", "direct", "compatible"],
	["tannin-rich-wood", "copper-sheet", "runoff", "needs-confirmation"],
	["acetoxy-silicone-sealant", "limestone-marble", "direct", "incompatible"],
	["acetoxy-silicone-sealant", "architectural-glass", "direct", "compatible"],
	["neutral-silicone-sealant", "limestone-marble", "direct", "needs-confirmation"],
	["neutral-silicone-sealant", "closed-cell-backer-rod", "direct", "compatible"],
	["neutral-silicone-sealant", "epdm-gasket", "direct", "needs-confirmation"],
	["neutral-silicone-sealant", "silicone-transition-strip", "direct", "compatible"],
	["polyurethane-sealant", "rubberized-asphalt-membrane", "direct", "needs-confirmation"],
	["polysulfide-sealant", "asphalt-fiberboard-joint-filler", "direct", "incompatible"],
	["polyurethane-sealant", "fluid-applied-silicone-air-barrier", "direct", "incompatible"],
	["rubberized-asphalt-flashing-tape", "fluid-applied-silicone-air-barrier", "direct", "incompatible"],
	["housewrap-polyolefin", "tannin-rich-wood", "direct", "needs-confirmation"],
	["housewrap-polyolefin", "tannin-rich-wood", "near", "compatible"],
	["magnesium-oxide-board", "steel-stud-framing", "direct", "incompatible"],
	["bituminous-paint", "aluminum-sheet", "direct", "compatible"],
	["bituminous-paint", "xps", "direct", "incompatible"],
	["lead-sheet", "aluminum-sheet", "direct", "needs-confirmation"],
	["limestone-marble", "galvanized-wall-tie", "direct", "needs-confirmation"],
]

_end(family) := bench.end("touches", family, family, one.class, one.traits) if one := data.knowledge.families[family]

_contact(case) := bench.contact(_end(case[0]), _end(case[1]), {"kind": case[2], "wet": true})

test_cases[name] if {
	some case in _cases
	name := concat(" ", [case[0], case[2], case[1]])
	rows.worst(rows.best(_contact(case))).row.verdict == case[3]
}

test_every_case_has_its_families if {
	every case in _cases { _contact(case) }
}

# What the table and the settled pairs come to for a wall: the severity, "" where nothing is said.
test_told[name] if {
	some name, case in {
		"gasket in a row of asphalt": {"pair": ["rubberized-asphalt-membrane", "epdm-gasket", "direct", ""], "is": "error"},
		"gasket on butyl": {"pair": ["butyl-flashing-tape", "epdm-gasket", "direct", ""], "is": ""},
		"rigid vinyl": {"pair": ["rubberized-asphalt-membrane", "rigid-vinyl-window", "direct", ""], "is": ""},
		"soft vinyl": {"pair": ["rubberized-asphalt-membrane", "pvc-roof-membrane", "direct", ""], "is": "error"},
		"solvent bead": {"pair": ["rubberized-asphalt-membrane", "butyl-sealant", "direct", ""], "is": "error"},
		"solvent bead on metal": {"pair": ["aluminum-sheet", "butyl-sealant", "direct", ""], "is": ""},
		"tar": {"pair": ["rubberized-asphalt-membrane", "coal-tar-pitch", "direct", ""], "is": "error"},
		"creosote": {"pair": ["rubberized-asphalt-membrane", "creosote-timber", "direct", ""], "is": "error"},
		"usual termination": {"pair": ["rubberized-asphalt-membrane", "hybrid-sealant", "direct", ""], "is": ""},
		"disputed bead": {"pair": ["rubberized-asphalt-membrane", "polyurethane-sealant", "direct", ""], "is": "note"},
		"mortar on a flashing": {"pair": ["rubberized-asphalt-membrane", "fresh-mortar", "direct", ""], "is": ""},
		"cured concrete at a frame": {"pair": ["aluminum-sheet", "cast-concrete", "direct", ""], "is": ""},
		"mortar on aluminum": {"pair": ["aluminum-sheet", "fresh-mortar", "direct", ""], "is": "error"},
		"copper over aluminum": {"pair": ["copper-sheet", "aluminum-sheet", "runoff", ""], "is": "error"},
		"aluminum over copper": {"pair": ["aluminum-sheet", "copper-sheet", "runoff", ""], "is": ""},
	}
	v := verdict.judge(_contact(case.pair)) with input as bench.document([], [])
	v.severity == case.is
}

test_fine_gives_the_reason if {
	contact := _contact(["butyl-flashing-tape", "epdm-gasket", "direct", ""])
	found := verdict.fine with input as bench.document([contact], [])
	count(found) == 1
	found[0].why != ""
}

test_unknown_is_not_fine if {
	odd := bench.end("touches", "thing", "", "", [])
	doc := bench.document([bench.contact(bench.sheet, odd, {})], [])
	fine := verdict.fine with input as doc
	unknown := verdict.unknown with input as doc
	[count(fine), count(unknown)] == [0, 1]
}

# A bead of a kind that usually has solvent harms no asphalt and no foam where it is told to have none.
test_solvent_free_bead[name] if {
	some name, case in {
		"asphalt, as usual": {"solvent": ["solvent-borne"], "meets": "rubberized-asphalt-membrane", "harms": 1},
		"asphalt, without": {"solvent": [], "meets": "rubberized-asphalt-membrane", "harms": 0},
		"foam, as usual": {"solvent": ["solvent-borne"], "meets": "xps", "harms": 1},
		"foam, without": {"solvent": [], "meets": "xps", "harms": 0},
	}
	bead := object.union(_end("butyl-sealant"), {"keys": array.concat(["butyl-sealant", "butyl"], case.solvent)})
	contact := bench.contact(_end(case.meets), bead, {})
	judged := [v | v := verdict.judge(contact) with input as bench.document([], [])]
	count([v | some v in judged; v.outcome == "harm"]) == case.harms
}
