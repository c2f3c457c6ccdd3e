package pairing.old_silicone_test

import data.lib.bench_test as bench
import data.pairing.old_silicone

_fillet := object.union(
	bench.item("substrate", "silicone fillet", "neutral-silicone-sealant", "sealant", ["silicone"]),
	{"signals": ["left_on"], "clause": "old silicone fillet not removed"},
)

_found(items, more) := found if {
	found := old_silicone.findings with input as bench.schedule(items, more, [])
}

test_fires if {
	_found([bench.butyl_tape, bench.block, _fillet], {}) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": concat("", [
			"FM-3 (butyl-flashing-tape) goes over silicone that is left on the face ",
			`("old silicone fillet not removed")`,
		]),
		"facts": ["W!12/FM-3", "W!12/silicone fillet"],
	}}
}

test_fires_under_a_new_bead if {
	bead := bench.item("material", "S-2", "polyurethane-sealant", "sealant", ["polyurethane"])
	count(_found([bead, _fillet], {"role": "sealant"})) == 1
}

test_silent[name] if {
	strip := bench.item("material", "ST-1", "silicone-transition-strip", "membrane", ["silicone"])
	some name, items in {
		"taken off": [bench.butyl_tape, object.union(_fillet, {"polarity": "removed", "signals": ["removed"]})],
		"only old": [bench.butyl_tape, object.union(_fillet, {"signals": ["existing"]})],
		"a neighbor": [bench.butyl_tape, object.union(_fillet, {"slot": "touches"})],
		"another sealant": [bench.butyl_tape, object.union(_fillet, {"keys": ["polyurethane-sealant"]})],
		"silicone strip": [strip, _fillet],
		"no sheet": [_fillet],
	}
	count(_found(items, {})) == 0
}

test_silent_where_a_board_goes_on if count(_found([bench.sbs, _fillet], {"role": "insulation"})) == 0

# "Old silicone" is a bead in the row of a bead, and may be anything under a sheet.
test_bare_word[role] if {
	some role, n in {"sealant": 1, "membrane": 0}
	bead := bench.item("material", "S-2", "polyurethane-sealant", "sealant", ["polyurethane"])
	word := object.union(_fillet, {"family": "", "class": "", "keys": ["silicone"]})
	count(_found([bead, word], {"role": role})) == n
}

# A cured bead of silicone under a tape is no bed, whoever ran it.
_bed(clause) := object.union(
	bench.item("substrate", "S-4", "neutral-silicone-sealant", "sealant", ["silicone"]),
	{"clause": clause},
)

test_bed_of_cured_silicone if {
	_found([bench.butyl_tape, _bed("fully cured S-4 fillet")], {}) == {{
		"line": "W!12",
		"cells": ["C12", "E12"],
		"message": concat("", [
			"FM-3 (butyl-flashing-tape) goes on cured silicone ",
			`("fully cured S-4 fillet"), on which only silicone holds`,
		]),
		"facts": ["W!12/FM-3", "W!12/S-4"],
	}}
}

test_silent_beside_cured_silicone[clause] if {
	some clause in ["S-4 at the frame", "aluminum beside the cured S-4", "fresh S-4", "cured S-4 cut back", "set in S-4"]
	count(_found([bench.butyl_tape, _bed(clause)], {})) == 0
}

test_silent_on_a_cured_bead_of_another_kind if {
	bead := object.union(_bed("cured S-4 fillet"), {"keys": ["hybrid-sealant"], "family": "hybrid-sealant"})
	count(_found([bench.butyl_tape, bead], {})) == 0
}
