package contact.no_bond_test

import data.contact.no_bond
import data.lib.bench_test as bench

_rows := bench.pairs([
	bench.row("polyurethane", "fluid-applied-silicone-air-barrier", "incompatible", "adhesion-failure", "error"),
	bench.row("acrylic-adhesive", "silicone", "incompatible", "adhesion-failure", "error"),
	bench.row("silicone", "closed-cell-backer", "compatible", "none", "note"),
	bench.row("silicone", "silicone", "incompatible", "adhesion-failure", "error"),
	bench.row("polyolefin", "polyurethane", "needs-confirmation", "adhesion-failure", "warning"),
	bench.row("asphaltic", "silicone-rubber", "needs-confirmation", "adhesion-failure", "warning"),
])

_coating := bench.end("material", "AB-2", "fluid-applied-silicone-air-barrier", "membrane", ["silicone"])

_urethane := bench.end("sealant", "S-4", "polyurethane-sealant", "sealant", ["polyurethane"])

_bead := bench.end("sealant", "S-1", "neutral-silicone-sealant", "sealant", ["silicone"])

_acrylic := bench.end("material", "AB-1", "vapor-permeable-self-adhered-membrane", "membrane", ["acrylic-adhesive"])

_rod := bench.end("touches", "backer rod", "closed-cell-backer-rod", "separator", ["closed-cell-backer"])

_found(contacts) := found if {
	found := no_bond.findings with input as bench.document(contacts, [])
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	_found([bench.contact(_coating, _urethane, {})]) == {{
		"line": "W!12",
		"cells": ["C12", "G12", "H12"],
		"severity": "error",
		"message": concat("", [
			"S-4 (polyurethane-sealant) does not hold on AB-2 (fluid-applied-silicone-air-barrier), ",
			"which it is to be sealed to",
		]),
		"related": [],
		"facts": ["AB-2-S-4"],
		"remedy": "Some remedy.",
		"source": "Some handbook (source-read)",
	}}
}

test_tape_on_silicone_coating if {
	tape := bench.end("touches", "T-1", "acrylic-flashing-tape", "tape", ["acrylic-adhesive"])
	{f.severity | some f in _found([bench.contact(_coating, tape, {})])} == {"error"}
}

test_bead_on_the_face_of_an_acrylic_sheet_is_a_question if {
	{f.severity | some f in _found([bench.contact(_acrylic, _bead, {})])} == {"note"}
}

test_silicone_strip_on_the_face_is_a_question if {
	strip := bench.end("touches", "G-2", "silicone-transition-strip", "membrane", ["silicone"])
	{f.severity | some f in _found([bench.contact(_acrylic, strip, {})])} == {"note"}
}

_dimples := bench.end("touches", "DB-2", "dimple-board", "separator", ["polyolefin"])

test_bead_on_a_loose_sheet_is_a_question if {
	{f.severity | some f in _found([bench.contact(_dimples, _urethane, {})])} == {"note"}
}

test_silent[name] if {
	some name, contact in {
		"gasket need not bond": bench.contact(
			bench.sheet,
			bench.end("touches", "G-1", "silicone-gasket", "gasket", ["silicone-rubber"]),
			{},
		),
		"silicone on silicone": bench.contact(_coating, bench.end("touches", "S-8", "", "sealant", ["silicone"]), {}),
		"backer rod": bench.contact(_bead, _rod, {}),
		"dimpled sheet lies loose": bench.contact(
			bench.end("material", "WP-3", "polyurethane-waterproofing", "membrane", ["polyurethane"]),
			_dimples,
			{},
		),
		"no row": bench.contact(bench.sheet, _rod, {}),
	}
	count(_found([contact])) == 0
}

# A preformed strip is cured, whichever of the two goes on first: the real table.
test_urethane_on_a_cured_strip if {
	{f.severity | some f in _on_a_strip(_urethane)} == {"error"}
	count(_on_a_strip(_bead)) == 0
}

_on_a_strip(bead) := found if {
	strip := bench.end("material", "G-2", "silicone-transition-strip", "membrane", ["silicone", "silicone-rubber"])
	found := no_bond.findings with input as bench.document([bench.contact(strip, bead, {})], [])
}

_asphalt := bench.end("material", "AB-7", "rubberized-asphalt-membrane", "membrane", ["asphaltic"])

_strip_bead := bench.end("sealant", "S-9", "neutral-silicone-sealant", "sealant", ["silicone-rubber", "silicone"])

_told(text, signals) := found if {
	doc := bench.document([bench.contact(_asphalt, _strip_bead, {"signals": signals})], [])
	note := {"text": text, "at": {"sheet": "N", "row": 3, "cell": "B3"}}
	project := object.union(object.get(doc, "project", {}), {"notes": [note]})
	found := no_bond.findings with input as object.union(doc, {"project": project})
		with data.knowledge.pairs as _rows
		with data.contact.judging.letter_asked.pairs as []
		with data.knowledge.separators as []
		with data.contact.judging.letter_asked.pairs as []
}

# A note that wants a letter for such a bead makes a lapse of the question.
test_letter_asked_by_the_notes[text] if {
	some text, severity in {
		"Beads against bituminous sheet need both makers' letters first": "warning",
		"SBS sheet: caulk only S-4, others with written approval": "warning",
		"Caulk on SBS sheet: S-9, others with letter": "note",
		"Caulk on EPDM: letter required": "note",
		"Bituminous sheet: submit letter of warranty": "note",
		"Beads on SBS sheet are tooled": "note",
	}
	{f.severity | some f in _told(text, [])} == {severity}
}

test_letter_asked_and_at_hand if {
	{f.severity | some f in _told("Beads on SBS sheet: letter required", ["letter_on_file"])} == {"note"}
}

test_letter_asked_in_words if {
	some f in _told("Beads on SBS sheet: letter required", [])
	endswith(f.message, "; the notes ask for a letter")
	some related in f.related
	related.what == "Beads on SBS sheet: letter required"
}

_strip_rows := bench.pairs([bench.row("asphaltic", "silicone", "incompatible", "adhesion-failure", "error")])

_strip_found(slot, more) := {f.severity | some f in found} if {
	sheet := bench.end("material", "SH-7", "rubberized-asphalt-membrane", "membrane", ["asphaltic"])
	strip := bench.end(slot, "G-2", "silicone-transition-strip", "membrane", ["silicone"])
	found := no_bond.findings with input as bench.document([bench.contact(sheet, strip, more)], [])
		with data.knowledge.pairs as _strip_rows
		with data.knowledge.separators as []
}

test_sheet_on_a_cured_strip_as_its_bed if _strip_found("substrate", {}) == {"error"}

test_sheet_stuck_onto_a_cured_strip if _strip_found("touches", {"upper": "a"}) == {"error"}

test_strip_over_the_face_of_a_sheet_is_a_question if _strip_found("touches", {"upper": "b"}) == {"note"}

test_strip_beside_a_sheet_is_a_question if _strip_found("touches", {}) == {"note"}

# A row that says itself that it has no letter makes a lapse of the question too; one that says nothing does not.
test_no_letter_in_the_row[name] if {
	some name, case in {
		"none": {"signals": [{"id": "letter_on_file", "no": true, "text": "no letter", "slot": "remark"}], "want": "warning"},
		"at hand": {"signals": [{"id": "letter_on_file", "no": false, "text": "letter", "slot": "remark"}], "want": "note"},
		"unsaid": {"signals": [], "want": "note"},
	}
	doc := bench.document([bench.contact(_asphalt, _strip_bead, {})], [])
	lines := [object.union(line, {"signals": case.signals}) | some line in doc.lines]
	found := no_bond.findings with input as object.union(doc, {"lines": lines})
		with data.knowledge.pairs as _rows
		with data.contact.judging.letter_asked.pairs as []
		with data.knowledge.separators as []
		with data.contact.judging.letter_asked.pairs as []
	{f.severity | some f in found} == {case.want}
}

# A letter may be the other way to what the notes name; another paper is none, nor is a letter to someone else.
test_letter_as_the_other_way[text] if {
	some text, severity in {
		"Bead on an SBS sheet: the mastic of its roll, or a letter from its maker": "warning",
		"Beads at bituminous sheet: S-4 or by manufacturer's letter": "warning",
		"Beads at bituminous sheet: S-4 or a strip of metal": "note",
		"Beads at bituminous sheet: S-4, color as in the letter to the owner": "note",
	}
	{f.severity | some f in _told(text, [])} == {severity}
}

# The note may name the bead, by its kind or its tag, that needs the letter; what it says of others lets that bead go.
test_letter_for_the_named_bead[text] if {
	some text, severity in {
		"Silicone at bituminous sheet only with maker's letter": "warning",
		"S-9 on SBS sheet needs a letter": "warning",
		"No silicone without letter on SBS sheet": "warning",
		"Urethane on SBS sheet only with maker's letter": "note",
		"Silicone S-9 on SBS sheet, others only with letter": "note",
		"Silicone on EPDM only with letter": "note",
		"Silicone on SBS sheet requires no letter": "note",
		"Silicone on SBS sheet only where shown": "note",
	}
	{f.severity | some f in _told(text, [])} == {severity}
}

# A note may call a bead by what it is of alone; one of another bead asks nothing of this one.
test_letter_asked_for_a_kind_of_bead[text] if {
	some text, severity in {
		"Polysulfides off bituminous sheet without a letter of both makers": "warning",
		"Keep polysulphide from SBS sheet until written approval": "warning",
		"Urethanes off SBS sheet unless letter": "note",
		"Polysulfide is pigmented where it lies on SBS sheet": "note",
	}
	doc := bench.document([bench.contact(_asphalt, _sulfide_bead, {})], [])
	note := {"text": text, "at": {"sheet": "N", "row": 3, "cell": "B3"}}
	project := object.union(object.get(doc, "project", {}), {"notes": [note]})
	found := no_bond.findings with input as object.union(doc, {"project": project})
		with data.knowledge.pairs as _rows
		with data.contact.judging.letter_asked.pairs as []
		with data.knowledge.separators as []
	{f.severity | some f in found} == {severity}
}

_sulfide_bead := bench.end("sealant", "S-9", "polysulfide-sealant", "sealant", ["polysulfide", "silicone-rubber"])
