# METADATA
# title: Which contacts are told
# description: |
#   One touch gives one finding: where a row says the same pair twice, the loudest is told. A question to the makers
#   is one question for the whole schedule: it is told once, at its first row, with the other rows beside it.
# custom:
#   looks: across rows
package lib.told

import data.lib.verdict

# under lists the judgements that a rule tells.
under(rule) := object.get(_by_rule, rule, [])

_by_rule := {rule: told |
	some rule in {v.rule | some v in _told}
	told := [w | some w in _told; w.rule == rule]
}

_told := array.concat(
	[object.union(_loudest_first(group)[0], {"also": []}) | some group in _harm_groups],
	[object.union(object.union(group[0], {"also": _in_other_rows(group)}), _weight(group)) |
		some group in _ask_groups
	],
)

# The first judgement of each other row: what a row says twice is no second row.
_in_other_rows(group) := [group[i] | some i in _firsts(group); i > 0]

_firsts(group) := {places[0] |
	some line in {v.contact.line | some v in group}
	places := [i | some i, v in group; v.contact.line == line]
}

_harm_groups := {key: group |
	some key in {one.key | some one in _harms}
	group := [v | some other in _harms; other.key == key; v := other.verdict]
}

_ask_groups := {key: group |
	some key in {one.key | some one in _asks}
	group := [v | some other in _asks; other.key == key; v := other.verdict]
}

# A key is a text: it is looked up once for each judgement.
_harms := [{"key": key, "verdict": v} |
	some v in verdict.told
	v.outcome == "harm"
	not _is_question(v)
	key := concat("|", [v.contact.line, _pair(v.contact)])
]

# A pair that is a harm somewhere in the same row needs no question there.
_asks := [{"key": concat("|", [v.rule, pair]), "verdict": v} |
	some v in verdict.told
	_is_question(v)
	pair := _pair(v.contact)
	not concat("|", [v.contact.line, pair]) in _harm_keys
]

# Two that meet in row after row are the office's own choice, and asked about as such; in a single row they are more
# often a slip.
_weight(group) := {"severity": "note"} if {
	count({v.contact.line | some v in group}) > data.contact.judging.letter_asked.rows
} else := {}

# A letter that is asked for answers for every row with the two.
_is_question(v) if v.outcome == "ask"

_is_question(v) if v.rule == "letter_asked"

_harm_keys := {one.key | some one in _harms}

_pair(contact) := concat("|", sort([_who(contact.a), _who(contact.b)]))

_who(end) := end.family if end.family != ""

_who(end) := end.text if end.family == ""

_loudest_first(group) := array.concat(
	[v | some v in group; v.severity == "error"],
	array.concat([v | some v in group; v.severity == "warning"], [v | some v in group; v.severity == "note"]),
)
