package contact.bead_barred_test

import data.contact.bead_barred
import data.lib.bench_test as bench

_rows := bench.pairs([bench.row("copper", "aluminum", "incompatible", "galvanic", "error")])

_bead := object.union(bench.end("sealant", "SE-2", "stpe-sealant", "sealant", ["stpe"]), {"product": "SE-2"})

_sheet := object.union(bench.sheet, {"product": "FM-1"})

_beads := [object.union(bench.product(id, {}), {"class": "sealant"}) | some id in ["SE-2", "SE-5"]]

_found(note, contact, products) := found if {
	doc := bench.document([contact], array.concat(_beads, products))
	notes := {"project": {"notes": [{"text": note, "at": {"sheet": "Notes", "row": 3, "cell": "A3"}}], "signals": []}}
	found := bead_barred.findings with input as object.union(doc, notes)
		with data.knowledge.pairs as _rows
		with data.knowledge.separators as []
}

test_fires if {
	some f in _found("Bitumen sheets: SE-5 only.", bench.contact(_sheet, _bead, {}), [])
	f.severity == "warning"
	contains(f.message, `, and the notes say "Bitumen sheets: SE-5 only"`)
}

test_notes[note] if {
	some note, told in {
		"Only SE-5 at the edges of asphalt sheets.": 1,
		"Against SBS sheets use SE-5 only.": 1,
		"Beads tooled. SE-5 only on rubberized asphalt.": 1,
		"No SE-1 or SE-2 on asphaltic sheets.": 1,
		"Asphaltic sheets: SE-2 or SE-5 only.": 0,
		"Asphaltic sheets: PR-2 only below grade.": 0,
		"SE-5 only in metal joints, away from asphaltic sheets.": 0,
		"EPDM: SE-5 only.": 0,
		"Asphaltic sheets: SE-5 only, unless a letter is at hand.": 0,
		"SE-5 on asphaltic sheets.": 0,
	}
	count(_found(note, bench.contact(_sheet, _bead, {}), [])) == told
}

test_silent_where_apart_or_allowed if {
	note := "Asphaltic sheets: SE-5 only."
	count(_found(note, bench.contact(_sheet, _bead, {"kind": "near"}), [])) == 0
	count(_found(note, bench.contact(_sheet, _bead, {"from": "remark"}), [])) == 0
	allowed := object.union(bench.product("FM-1", {"suits": [bench.target("SE-2", [], ["SE-2"])]}), {"class": "membrane"})
	count(_found(note, bench.contact(_sheet, _bead, {}), [allowed])) == 0
	count(_found("", bench.contact(_sheet, _bead, {}), [])) == 0
}

_listing := object.union(bench.product("FM-1", {"suits": [bench.target("SE-5", [], ["SE-5"])]}), {"class": "membrane"})

# Notes that let only the beads of the data's own list meet a sheet.
test_listed_only[note] if {
	some note, told in {
		"No sealant at a sheet that is not listed in its data.": 1,
		"Sealants at sheets must be listed in the Works With column.": 1,
		"Only beads shown as compatible may touch the air barrier.": 1,
		"Sealants: only listed colors.": 0,
		"Sealants are listed in section 07 92.": 0,
	}
	count(_found(note, bench.contact(_sheet, _bead, {}), [_listing])) == told
}

test_listed_only_needs_a_list if {
	note := "Only sealants named in the Works With column at sheets."
	count(_found(note, bench.contact(_sheet, _bead, {}), [_listing])) == 1
	five := object.union(_bead, {"product": "SE-5", "text": "SE-5"})
	count(_found(note, bench.contact(_sheet, five, {}), [_listing])) == 0
	count(_found(note, bench.contact(_sheet, _bead, {}), [])) == 0
}

# Notes may name the sheets by their tags too, in a list of sealants or with only.
test_sheets_by_tag[note] if {
	some note, told in {
		"Sealants at sheets: SE-5 at FM-1/FM-2; SE-2 at FM-3.": 1,
		"3. Beads: use SE-5 on the cut edges of FM-2 and FM-1. Tool all.": 1,
		"Mastic by sheet: FM-2 = SE-2; FM-1: SE-5": 1,
		"At edges of FM-1, FM-2 use SE-5 only.": 1,
		"Along FM-1, only SE-5.": 1,
		"Only SE-5 on FM-1.": 1,
		"Sealants at sheets: SE-5 at FM-1; SE-2 at FM-1 and FM-3.": 0,
		"Sealants at sheets: SE-5 at FM-2; SE-2 at FM-3.": 0,
		"Sealants: SE-5 at FM-1 in summer.": 0,
		"Sealants: SE-5 at FM-1 only.": 0,
		"SE-5 at FM-1.": 0,
		"Primers: PR-2 at FM-1.": 0,
	}
	count(_found(note, bench.contact(_sheet, _bead, {}), [])) == told
}

# A remark counts where it seals the edge.
test_sheets_by_tag_in_a_remark if {
	note := "Sealants at sheets: SE-5 at FM-1/FM-2."
	count(_found(note, bench.contact(_sheet, _bead, {"from": "remark", "signals": ["edge_sealed"]}), [])) == 1
	count(_found(note, bench.contact(_sheet, _bead, {"from": "remark"}), [])) == 0
	count(_found(note, bench.contact(_sheet, _bead, {"kind": "near"}), [])) == 0
	untagged := object.union(_bead, {"product": ""})
	count(_found(note, bench.contact(_sheet, untagged, {}), [])) == 0
}

# A note may name the one bead for all sheets, or for those of some letters; the tag before "not"; and the edges of
# sheets by their tags.
test_sole_bead_and_others[note] if {
	some note, told in {
		"SE-5 is the only bead allowed against the sheets.": 1,
		"SE-5 is the sole gunned sealant that may touch the XR / FM membranes.": 1,
		"SE-5 is the only sealant on the XR sheets.": 0,
		"SE-5 is the only sealant to touch EPDM sheets.": 0,
		"SE-2 is the only sealant let touch the sheets.": 0,
		"SE-5 is the only sealant in color 4.": 0,
		"SE-2 never against asphaltic sheets.": 1,
		"SE-5 not on SBS.": 0,
		"Edges of FM-1 and FM-2: SE-5 only.": 1,
		"Edges of FM-2: SE-5 only.": 0,
	}
	count(_found(note, bench.contact(_sheet, _bead, {}), [])) == told
}

# The data of a sheet or strip may name the only beads for it.
test_only_of_its_own_data[text] if {
	some text, told in {
		"SE-5 only": 1,
		"use only SE-5": 1,
		"laps rolled; sealants: SE-5 only": 1,
		"SE-2 or SE-5 only": 0,
		"SE-5": 0,
		"SE-5 only below 40 F": 0,
		"PR-2 only": 0,
	}
	more := {"sheet": "Data", "row": 4, "texts": {"suits": text}, "cells": {"suits": "F4"}}
	strip := bench.product("FM-1", more)
	found := _found("No primer.", bench.contact(_sheet, _bead, {}), [strip])
	count(found) == told
	every f in found {
		f.severity == "error"
		contains(f.message, ", and the data of FM-1 says")
	}
}

# A bead that another part of the data takes is one of them.
test_only_of_its_own_data_and_another if {
	strip := object.union(bench.product("FM-1", {}), {
		"sheet": "Data",
		"row": 4,
		"texts": {"suits": "SE-5 only; SE-2 at laps"},
		"cells": {"suits": "F4"},
		"suits": [{"text": "SE-2", "products": ["SE-2"], "keys": [], "except": false}],
	})
	count(_found("No primer.", bench.contact(_sheet, _bead, {}), [strip])) == 0
}

# Notes may point to the heading of the list by its words.
test_listed_only_by_the_heading[note] if {
	some note, told in {
		"Beads on any sheet only as shown under \"Works with\".": 1,
		"Mastics at laps must be listed in Allowed mastics.": 1,
		"Sealants only in colors shown by the architect.": 0,
		"Beads only as shown in elevation.": 0,
	}
	count(_found(note, bench.contact(_sheet, _bead, {}), [_listing])) == told
}
