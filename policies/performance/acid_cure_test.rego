package performance.acid_cure_test

import data.lib.desk_test as desk
import data.performance.acid_cure

_note := desk.limit("no_acid_cure", null, null, {"text": "in the archive nothing may give off acetic acid"})

_acetoxy := ["acetoxy-silicone-sealant", "silicone", "silicone-acetoxy"]

_found(keys, more, limits) := found if {
	bead := object.union(desk.own(12, "SL-2"), {"family": keys[0], "class": "sealant", "keys": keys, "traits": keys})
	row := object.union(desk.row(12, "SL-2", {"items": [bead], "role": "sealant"}), more)
	found := acid_cure.findings with input as desk.document([row], [desk.product("SL-2", 8, {})], limits)
}

test_fires_in_full if {
	some f in _found(_acetoxy, {"texts": {"place": "Archive windows"}}, [_note])
	endswith(f.message, "gives off acetic acid, which the notes bar there")
	f.related == [{"at": _note.at, "cells": ["A3"], "what": `"in the archive nothing may give off acetic acid"`}]
}

test_note_for_all if {
	note := object.union(_note, {"text": "nothing on this job gives off acetic acid"})
	count(_found(_acetoxy, {"texts": {"place": "Roof light"}}, [note])) == 1
}

test_silent[name] if {
	neutral := ["neutral-silicone-sealant", "silicone"]
	some name, case in {
		"neutral cure": {"keys": neutral, "more": {"texts": {"place": "Archive windows"}}, "limits": [_note]},
		"no note": {"keys": _acetoxy, "more": {"texts": {"place": "Archive windows"}}, "limits": []},
		"another place": {
			"keys": _acetoxy,
			"more": {"texts": {"place": "Canopy glass"}, "group": "CANOPY"},
			"limits": [_note],
		},
	}
	count(_found(case.keys, case.more, case.limits)) == 0
}
