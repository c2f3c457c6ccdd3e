package lib.facts_test

import data.lib.facts

_document := {
	"lines": [
		{
			"id": "W!2", "struck": false, "figures": {"lap_mm": {"min": 50}},
			"items": [
				{"slot": "material", "polarity": "yes", "product": "M-1", "keys": ["sbs", "asphaltic"]},
				{"slot": "primer", "polarity": "no", "product": "P-1", "keys": ["primer"]},
			],
			"signals": [
				{"id": "heated", "no": false, "slot": "remark"},
				{"id": "shaded", "no": true, "slot": "remark"},
				{"id": "frost", "no": false, "slot": "remark"},
				{"id": "frost", "no": true, "slot": "place"},
			],
		},
		{"id": "W!3", "struck": true, "items": [], "signals": []},
	],
	"products": [{"id": "M-1", "figures": {"lap_mm": {"min": 75}, "thickness_mm": {"min": 1}}}],
	"windows": [{"line": "W!2"}, {"line": "W!3"}],
	"contacts": [
		{"id": "1", "line": "W!2", "a": {"line": "W!2"}, "b": {"line": ""}},
		{"id": "2", "line": "W!2", "a": {"line": "W!2"}, "b": {"line": "W!3"}},
		{"id": "3", "line": "W!3", "a": {"line": "W!3"}, "b": {"line": "W!3"}},
	],
	"project": {"signals": [{"id": "shaded", "no": false}, {"id": "vented", "no": false}, {"id": "dusty", "no": true}]},
}

_line := _document.lines[0]

test_live if {
	[l.id | some l in facts.live_lines] == ["W!2"] with input as _document
	[c.id | some c in facts.live_contacts] == ["1"] with input as _document
	[w.line | some w in facts.live_windows] == ["W!2"] with input as _document
}

test_look_ups if {
	facts.lines_by_id["W!3"].struck with input as _document
	facts.windows_by_line["W!2"] == {"line": "W!2"} with input as _document
	[c.id | some c in facts.contacts_of(_line)] == ["1"] with input as _document
	facts.contacts_of({"id": "X!9"}) == [] with input as _document
	facts.product_of(_line.items[0]).id == "M-1" with input as _document
}

test_no_product if {
	not facts.product_of(_line.items[1]) with input as _document
}

test_denied_items_are_left_out if {
	facts.items_in(_line, ["material", "primer"]) == [_line.items[0]]
	facts.main_items(_line) == [_line.items[0]]
}

test_has_key if {
	facts.has_key(_line.items[0], {"asphaltic", "other"})
	not facts.has_key(_line.items[0], {"primer"})
}

test_line_figure_before_product if {
	facts.figure_of(_line, "lap_mm") == {"min": 50} with input as _document
	facts.figure_of(_line, "thickness_mm") == {"min": 1} with input as _document
}

test_no_figure if {
	not facts.figure_of(_line, "voc_gl") with input as _document
}

test_said[note] if {
	some note, tc in {
		"told": {"id": "heated", "want": true},
		"denied": {"id": "shaded", "want": false},
		"told and denied": {"id": "frost", "want": false},
		"never named": {"id": "dusty", "want": false},
	}
	got := [id | some id in [tc.id]; facts.said(_line, id)]
	count(got) > 0 == tc.want
}

test_said_in_one_slot if {
	facts.said_in(_line, "remark", "frost")
	not facts.said_in(_line, "place", "frost")
}

test_project_said if {
	facts.project_said("vented") with input as _document
	not facts.project_said("dusty") with input as _document
	not facts.project_said("frost") with input as _document
}

test_said_here if {
	facts.said_here(_line, "heated") with input as _document
	facts.said_here(_line, "vented") with input as _document
	not facts.said_here(_line, "shaded") with input as _document
}
