package contact.runoff_test

import data.contact.runoff
import data.lib.bench_test as bench

_row := object.union(
	bench.row("copper-runoff-source", "aluminum", "incompatible", "metal-ion-runoff", "error"),
	{"exposure": "runoff", "order": "a-onto-b"},
)

_rows := bench.pairs([_row])

_tape := bench.end("touches", "tape", "isolation-tape", "separator", ["separator"])

_found(contacts) := found if {
	found := runoff.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(bench.copper, bench.aluminum, {"kind": "runoff"})]) == {{
		"line": "W!12",
		"cells": ["C12", "G12"],
		"severity": "error",
		"message": "Water off C-1 (copper-sheet) runs onto A-2 (aluminum-sheet), and nothing shown catches it",
		"related": [],
		"facts": ["C-1-A-2"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_silent[name] if {
	some name, contact in {
		"other way round": bench.contact(bench.aluminum, bench.copper, {"kind": "runoff"}),
		"touch is another question": bench.contact(bench.copper, bench.aluminum, {}),
		"said apart": bench.contact(bench.copper, bench.aluminum, {"kind": "apart"}),
		"caught": bench.contact(bench.copper, bench.aluminum, {
			"kind": "runoff",
			"clause": "drains onto aluminum panels, diverter above them",
		}),
	}
	count(_found([contact])) == 0
}

_question := object.union(_row, {"verdict": "needs-confirmation", "severity": "warning"})

_asked(clause) := {object.get(f, "severity", "") | some f in found} if {
	one := bench.contact(bench.copper, bench.aluminum, {"kind": "runoff", "clause": clause})
	found := runoff.findings with input as bench.document([one], [])
		with data.knowledge.pairs as bench.pairs([_question])
		with data.knowledge.separators as []
}

test_question_where_it_drains if _asked("drains onto aluminum panels") == {"note"}

test_no_question_for_a_place_alone if _asked("aluminum panels below") == set()

# A remark on the same material may say where its water goes.
_remarked(remark) := found if {
	one := bench.contact(bench.copper, bench.aluminum, {"kind": "runoff"})
	said := object.union(bench.copper, {"slot": "remark", "clause": remark})
	plain := bench.document([one], [])
	doc := object.union(plain, {"lines": [bench.line("W!12", 12, {"items": [said]})]})
	found := runoff.findings with input as doc
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_caught_by_a_remark[remark] if {
	some remark, n in {
		"rain off the copper is led away in a pipe": 0,
		"water off the copper never gets to the panels": 0,
		"rain off the copper goes over the panels": 1,
	}
	count(_remarked(remark)) == n
}

# The gutter that the water runs into leads none of it away from itself.
test_into_a_gutter[name] if {
	gutter := object.union(bench.aluminum, {"text": "mill aluminum gutter"})
	some name, case in {
		"below": ["spills into mill aluminum gutter below", 1],
		"led past": ["mill aluminum gutter below, piped past it", 0],
	}
	one := bench.contact(bench.copper, gutter, {"kind": "runoff", "clause": case[0]})
	count(_found([one])) == case[1]
}
