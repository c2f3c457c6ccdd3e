package lib.sheet_test

import data.lib.bench_test as bench
import data.lib.sheet

_words := bench.item("material", "Air barrier sheet", "air-barrier-unspecified", "membrane", [])

_untagged := object.union(_words, {"tag": ""})

_tagged := object.union(bench.sbs, {"slot": "tag"})

_felt := bench.item("material", "felt", "asphalt-felt", "membrane", ["asphaltic", "moisture-holding"])

test_own_is_what_the_tag_stands_for if sheet.own(bench.line("a", 1, {"items": [_untagged, _tagged]})).text == "FM-1"

test_own_without_a_tag if sheet.own(bench.line("a", 1, {"items": [_untagged]})).text == "Air barrier sheet"

test_chemistry[name] if {
	some name, case in {
		"asphaltic": {"item": bench.sbs, "is": "asphaltic"},
		"butyl": {"item": bench.butyl_tape, "is": "butyl"},
		"acrylic": {"item": bench.permeable, "is": "acrylic"},
		"fluid": {"item": bench.fluid, "is": ""},
		"felt": {"item": _felt, "is": ""},
		"not known": {"item": _words, "is": ""},
	}
	sheet.chemistry(case.item) == case.is
}

test_beds[name] if {
	noun := object.union(bench.item("substrate", "post", "lumber-unspecified", "lumber", ["wood"]), {"tag": ""})
	plate := object.union(bench.angle, {"text": "cap plate", "clause": "cap plate on CMU"})
	beneath := object.union(bench.block, {"clause": "cap plate on CMU"})
	some name, case in {
		"two faces": {"items": [bench.concrete, bench.foam], "are": {"CIP curb", "I-1 edge"}},
		"noun of a tag": {"items": [bench.own(bench.angle), noun], "are": {"Z-1"}},
		"screws in the board": {
			"items": [bench.block, bench.item("substrate", "screws", "fastener-unspecified", "fastener", ["metal"])],
			"are": {bench.block.text},
		},
		"noun alone": {"items": [noun], "are": {"post"}},
		"one on the other": {"items": [plate, beneath], "are": {"cap plate"}},
		"face of a board": {
			"items": [object.union(bench.foam, {"clause": "room-side face of I-1 edge"})],
			"are": {"I-1 edge"},
		},
		"lap": {"items": [object.union(bench.permeable, {"slot": "substrate"})], "are": set()},
		"gap filled with it": {
			"items": [bench.block, object.union(bench.foam, {
				"relation": "with",
				"clause": "slab edge gaps packed solid with I-1 edge",
			})],
			"are": {bench.block.text},
		},
		"insulated with it": {
			"items": [object.union(bench.foam, {"relation": "with", "clause": "plinth faced with I-1 edge"})],
			"are": {"I-1 edge"},
		},
	}
	line := bench.line("a", 1, {"items": array.concat([bench.sbs], case.items)})
	{bed.under.text | some bed in sheet.beds_of(line)} == case.are
}

test_face[name] if {
	some name, case in {
		"cmu-standard": bench.block,
		"cmu-split-face": object.union(bench.block, {"text": "split-face block"}),
		"plywood-exterior": bench.plywood,
		"": bench.item("substrate", "wall", "", "", []),
		"concrete-precast": object.union(bench.concrete, {"text": "precast panel"}),
	}
	sheet.face(case) == name
}

# The sides of a joint are beds where the table has no column of substrates; metal there is none.
test_beds_across_a_joint[name] if {
	slots := ["left", "right", "material", "primer"]
	some name, case in {
		"no substrates": {"slots": slots, "are": {"CIP curb", "I-1 edge"}},
		"with them": {"slots": array.concat(slots, ["substrate"]), "are": set()},
		"sides of the sheet": {"slots": ["left", "right", "primer"], "are": set()},
	}
	sides := [
		object.union(bench.concrete, {"slot": "left"}),
		object.union(bench.foam, {"slot": "right"}),
		object.union(bench.angle, {"slot": "right"}),
	]
	line := bench.line("a", 1, {"items": array.concat([bench.sbs], sides)})
	table := {"id": line.table, "columns": [{"slot": slot} | some slot in case.slots]}
	found := {bed.under.text | some bed in sheet.beds_of(line)} with input as {"reading": {"tables": [table]}}
	found == case.are
}
