# METADATA
# title: Panel with a core that burns
# description: |
#   A composite panel has a core of plain polyethylene where the notes ask for one that resists fire, or it hangs
#   higher than codes bear without a fire test of the wall. Such a core melts, drips and carries fire from floor to
#   floor on the outside of the wall, behind every firestop. So does one for which the notes ask for the report of a
#   fire test and the row has none. A panel too high with no note that asks is a question. It does not apply to rows of
#   a mock-up, nor to panels whose core is not told or whose height is not told and no note asks.
# custom:
#   id: performance-panel-core
#   topic: performance
#   severity: error
#   reason: A core of plain polyethylene burns like fuel, and the fire test of the wall was not made with it.
#   remedy: Use the panel with the fire-retardant or mineral core that the wall was tested with.
#   source: the project's notes; NFPA 285, as IBC 1406 asks for it above 40 ft (from memory)
#   basis: from-memory
#   example: "notes: composite panels with FR core; row: 4 mm panel, PE core, at the upper band"
package performance.panel_core

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	item := _panel(line)
	ask := _asked(line)[0]
	message := naming.say("%s has a core of plain polyethylene; the notes ask for one that resists fire (%s)", [
		naming.plain(item),
		words.quoted(ask.text),
	])
	extra := {"related": [finding.related_address(ask.at, words.quoted(ask.text))]}
	found := finding.at_with(line, ["material", "tag"], message, extra)
}

# The notes ask for the report of a fire test of the wall, and the row has none or says so.
findings contains found if {
	some line in facts.live_lines
	item := _panel(line)
	count(_asked(line)) == 0
	ask := _tests[0]
	not _has_test(line)
	message := naming.say("%s has a core of plain polyethylene; the notes ask for a fire test of the wall (%s)", [
		naming.plain(item),
		words.quoted(ask.text),
	])
	extra := {"related": [finding.related_address(ask.at, words.quoted(ask.text))]}
	found := finding.at_with(line, array.concat(["material", "tag"], _lacking(line)), message, extra)
}

_tests := [{"text": note.text, "at": note.at} |
	some note in input.project.notes
	text := lower(note.text)
	regex.match(data.performance.core.asks_test, text)
	regex.match(data.performance.core.asks_test_of, text)
]

_has_test(line) if {
	count(_lacking(line)) == 0
	some text in line.texts
	regex.match(data.performance.core.has_test, lower(text))
}

_lacking(line) := [slot |
	some slot, text in line.texts
	regex.match(data.performance.core.lacks_test, lower(text))
]

findings contains found if {
	some line in facts.live_lines
	item := _panel(line)
	count(_asked(line)) == 0
	count(_tests) == 0
	told := _high(line)[0]
	message := naming.say("%s has a core of plain polyethylene, at %s; codes ask for a fire test of the wall there", [
		naming.plain(item),
		words.quoted(told.text),
	])
	found := finding.at_with(line, ["material", "tag", told.slot], message, {"severity": "warning"})
}

_panel(line) := item if {
	item := facts.main_items(line)[0]
	said := lower(concat(" | ", array.concat(_own(line), _of_product(item))))
	regex.match(data.performance.core.pe, said)
	regex.match(data.performance.core.panel, said)
	not regex.match(data.performance.core.not_pe, said)
	not regex.match(data.performance.core.mock_up, lower(concat(" | ", _own(line))))
}

_own(line) := [text | some slot in ["material", "tag", "type", "place", "remark"]; text := line.texts[slot]]

_of_product(item) := [text |
	product := facts.product_of(item)
	some slot in ["material", "type", "chemistry", "alias"]
	text := product.texts[slot]
]

_asks := [{"text": note.text, "at": note.at} |
	some note in input.project.notes
	text := lower(note.text)
	regex.match(data.performance.core.asks_panel, text)
	regex.match(data.performance.core.asks_core, text)
]

# A note may ask it only of what hangs high.
_asked(line) := [ask | some ask in _asks; _is_meant(ask, line)]

_is_meant(ask, _) if not regex.match(data.performance.core.asks_high, lower(ask.text))

_is_meant(ask, line) if {
	regex.match(data.performance.core.asks_high, lower(ask.text))
	count(_high(line)) > 0
}

# _high lists where the row tells that it reaches higher than panels without a fire test may.
_high(line) := [{"slot": slot, "text": text} |
	some slot in ["place", "group", "type"]
	text := line.texts[slot]
	some way in [["told_feet", data.performance.core.foot_m], ["told_meters", 1]]
	some found in regex.find_all_string_submatch_n(data.performance.core[way[0]], lower(text), -1)
	to_number(found[1]) * way[1] > data.performance.core.above_m
]
