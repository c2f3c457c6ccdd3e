# METADATA
# title: Project limits
# description: |
#   Which limits stated in the project's notes hold for a material of a line. A limit holds if its kind, roles, keys,
#   place and conditions all fit; an empty one fits everything.
package lib.limits

import data.lib.facts
import data.lib.wall_type

# limits_for lists the limits of a kind that hold for a material with these keys and this role in the line. Where one
# text states a limit for it and another for all or for the rest ("VOC 100 g/L, primers 250"), its own counts; so does
# that of its kind where another is for its role ("primers 250 g/L, primers of sealants 775").
limits_for(kind, line, keys, role) := [limit |
	fitting := _fitting(kind, line, keys, role)
	own := {other.at | some other in fitting; _is_own(other)}
	kinds := {[other.at, other.roles] | some other in fitting; other.roles[0]; other.keys[0]}
	some limit in fitting
	not _is_of_the_rest(limit, own)
	not _is_of_other_kinds(limit, kinds)
]

_is_of_other_kinds(limit, kinds) if {
	not limit.keys[0]
	[limit.at, limit.roles] in kinds
}

_is_of_the_rest(limit, own) if {
	not _is_own(limit)
	limit.at in own
}

_is_own(limit) if limit.roles[0]

_is_own(limit) if limit.keys[0]

_fitting(kind, line, keys, role) := [limit |
	some limit in by_kind[kind]
	_fits(limit.roles, [role])
	_means(limit.keys, line, keys)
	in_scope(limit.scope, line)
	_holds(limit.when, line)
	not _is_for_others(limit, line)
]

# What a note asks of all others is asked of none that it has told of: "W3 10 perms or more. All other sheets 0.1 perm
# or less".
_is_for_others(limit, line) if {
	limit.scope == ""
	regex.match(data.lib.scope.others, lower(limit.text))
	some own in by_kind[limit.kind]
	own.at == limit.at
	own.scope != ""
	in_scope(own.scope, line)
}

# by_kind groups the limits that the project asks.
by_kind := {kind: limits |
	some kind in {one.kind | some one in _asked}
	limits := [limit | some limit in _asked; limit.kind == kind]
}

_asked := [limit | some limit in input.project.limits; not is_letter(limit)]

# is_letter: the limit is what a maker's letter raises, and nothing that the project asks.
is_letter(limit) if object.get(limit, "letter", "") != ""

# raised is the highest limit that a maker's letter gives a material with these keys, in the rows of its place and in
# those that cite it; undefined without one.
raised(kind, line, keys) := limit if {
	letters := [one |
		some one in input.project.limits
		one.kind == kind
		is_letter(one)
		one.max != null
		_means(one.keys, line, keys)
		_is_granted(one, line)
	]
	bound := max([one.max | some one in letters])
	limit := [one | some one in letters; one.max == bound][0]
}

_is_granted(limit, line) if in_scope(limit.scope, line)

# The level of a letter may stand in a column of its own: "L12 N/E/W", "L10-L13".
_is_granted(limit, line) if {
	some ref in line.refs
	_is_at_level(ref, limit.scope)
}

_is_granted(limit, line) if {
	regex.match(`[0-9]`, limit.letter)
	some text in line.texts
	regex.match(sprintf(`(?i)(^|[^\w-])%s([^\w-]|$)`, [limit.letter]), text)
}

_is_at_level(ref, scope) if {
	level := to_number(regex.find_all_string_submatch_n(`^l(?:evel |vl )?(\d+)$`, scope, 1)[0][1])
	told := regex.find_all_string_submatch_n(`(?i)\bl(?:evel |vl )?(\d+)(?:\s*[-–/]\s*l?(\d+))?\b`, ref, 1)[0]
	to_number(told[1]) <= level
	level <= _last_level(told)
}

_last_level(told) := to_number(told[2]) if told[2] != ""

_last_level(told) := to_number(told[1]) if told[2] == ""

# lowest_max and highest_min pick the strictest of several limits; undefined where none has the bound.
lowest_max(limits) := limit if {
	bound := min([l.max | some l in limits; l.max != null])
	limit := [l | some l in limits; l.max == bound][0]
}

highest_min(limits) := limit if {
	bound := max([l.min | some l in limits; l.min != null])
	limit := [l | some l in limits; l.min == bound][0]
}

# yields: the note itself lets the product's own data count before its figure.
yields(limit) if regex.match(data.lib.scope.yields, lower(limit.text))

# in_scope: every word of the scope, or of one part of a list ("walls and roofs"), stands in the line's mark, group,
# place, section, words of what was specified, wall type, role or signals, or in the name of its material. Flat and
# upright hold by what the row works on.
in_scope(scope, _) if scope in {"", null}

in_scope(scope, line) if {
	words := _line_words(line)
	some part in regex.split(`[,;/&]|\band\b|\bor\b`, lower(scope))
	not trim_space(part) in data.lib.scope.sheets.places
	wanted := _words(part)
	count(wanted) > 0
	count(wanted - words) == 0
}

# The sheets of the walls, or those in the ground, as a note means them by these words alone.
in_scope(scope, line) if {
	"wall sheets" in split(scope, ", ")
	not is_of_ground(line)
	not _is_of_roof(line)
}

in_scope(scope, line) if {
	"foundation sheets" in split(scope, ", ")
	is_of_ground(line)
}

# A heading over rows of several kinds puts none of them on the roof.
_is_of_roof(line) if {
	of_rows := [text |
		some slot in ["type", "section", "group"]
		text := object.get(line.texts, slot, "")
		not _heads_several(slot, text)
	]
	named := [item.name | some item in facts.main_items(line)]
	some text in array.concat([object.get(line, "place", "")], array.concat(of_rows, named))
	regex.match(data.lib.scope.sheets.roof, lower(text))
}

# A through-wall flashing is called so by its data or by the cell of its type, wherever it is.
in_scope(scope, line) if {
	scope in data.lib.scope.kinds
	item := facts.main_items(line)[0]
	letters := replace(object.get(item, "tag", ""), "-", " ") # "TWF-1"
	own := [object.get(line.texts, "type", ""), object.get(line.texts, "material", ""), letters]
	data_of := [text | some slot in ["type", "remark", "series"]; text := facts.product_of(item).texts[slot]]
	some text in array.concat(own, data_of)
	count(_words(scope) - _words(text)) == 0
	not regex.match(data.lib.scope.kinds_denied, lower(text))
}

# So is one on a shelf angle, by what the row says of itself.
in_scope(scope, line) if {
	said := concat(" ", [object.get(line.texts, slot, "") | some slot in ["type", "material", "place"]])
	regex.match(data.lib.scope.kinds_at[scope], lower(said))
}

in_scope("flat", line) if _is_flat(line)

in_scope("upright", line) if not _is_flat(line)

# Within a distance of something: the row's place names it, and no greater distance from it.
in_scope(scope, line) if {
	is_near(scope)
	parts := regex.find_all_string_submatch_n(data.lib.scope.near.scope, scope, 1)[0]
	place := lower(line.place)
	not regex.match(data.lib.scope.near.away, place)
	wanted := _words(parts[3])
	count(wanted) > 0
	count(wanted - _words(place)) == 0
	every told in regex.find_all_string_submatch_n(data.lib.scope.near.told, place, -1) {
		to_number(told[1]) * data.lib.scope.near.meters[told[2]] <= to_number(parts[1]) * data.lib.scope.near.meters[parts[2]]
	}
}

# is_near: the scope is a distance from something.
is_near(scope) if regex.match(data.lib.scope.near.scope, scope)

# The row's wall type has the studs filled, and its sheet lies outside of them.
in_scope("outside of the insulation", line) if {
	not facts.said(line, "studs_empty")
	some wall in wall_type.of(line)
	not facts.said(wall, "studs_empty")
	some wool in wall.items
	facts.is_there(wool)
	wool.family in data.vapor.barriers.batt_families
	not regex.match(data.vapor.barriers.outside_words, lower(wool.clause))
}

# What the row's sheet goes on is said to lie outside of insulation.
in_scope("outside of the insulation", line) if {
	some item in facts.items_in(line, ["touches", "substrate"])
	item.class == "insulation"
	item.relation == "in_front"
	item.side == "object"
	item.at.cell == line.cells.substrate
}

_is_flat(line) if {
	own := [line.place, object.get(line.texts, "type", ""), object.get(line.texts, "substrate", "")]
	not regex.match(data.lib.scope.lies.upright, lower(concat(" ", own)))
	regex.match(data.lib.scope.lies.flat, lower(concat(" ", array.concat(own, [line.group]))))
}

_line_words(line) := union({words |
	texts := array.concat(
		[_one_thing(object.get(line, key, "")) | some key in ["mark", "group", "place", "role"]],
		[_without_list(object.get(object.get(line, "texts", {}), slot, "")) | some slot in ["section", "specified"]],
	)
	said := array.concat(
		[replace(s.id, "_", " ") | some s in line.signals; not s.no],
		[code | some code in [trim_space(line.texts.type)]; regex.match(data.lib.scope.wall_code, code)],
	)
	named := [item.name | some item in facts.main_items(line)]
	some text in array.concat(array.concat(texts, said), named)
	words := _words(text)
})

# _one_thing: a heading over rows that names several things ("office + wash bay") puts no row in each of them, but in
# the wall whose code it begins with ("W4 Panel on studs, gables and dormers"). Of one that lists the codes of several
# walls ("Brick on studs (W2 / W6)") the other words hold for all of its rows, and the codes for none.
_one_thing(text) := concat("", [m[1] | some m in codes]) if {
	regex.match(`[+&]|\band\b`, lower(text))
	codes := regex.find_all_string_submatch_n(data.lib.scope.leading_code, text, 1)
} else := _without_list(text)

_without_list(text) := regex.replace(text, data.lib.scope.listed_codes, "")

# _words takes a hyphen between letters as a space ("below-grade") and leaves marks ("W-1") whole.
_words(text) := {word |
	spaced := regex.replace(lower(text), `([a-z])-([a-z])`, `$1 $2`)
	some part in regex.split(`[^\p{L}\p{N}-]+`, spaced)
	some word in _meant(_singular(part))
	not word in data.lib.scope.skip
}

# _meant: a word, or the words that a short form stands for ("TWF").
_meant(word) := object.get(data.lib.scope.same.words, word, [word])

_singular(word) := trim_suffix(word, "s") if count(word) > 3

_singular(word) := word if count(word) <= 3

_fits(wanted, _) if wanted in [null, []]

_fits(wanted, keys) if {
	some key in keys
	key in wanted
}

# _means: the material has one of the keys, or the line is of the product that they name.
_means(wanted, _, keys) if _fits(wanted, keys)

# All that is put on wet, where the words name it by that alone: "28 days before fluid-applied barriers".
_means(wanted, _, keys) if {
	data.lib.scope.fluid in wanted
	some key in keys
	regex.match(data.performance.films.applied, key)
}

# What its data tells so open is vapor-permeable, whatever it is of: the code means all such materials by the word.
_means(wanted, line, _) if {
	"vapor-permeable" in wanted
	items := facts.main_items(line)
	count(items) == 1
	facts.product_of(items[0]).figures.vapor_ng.min >= data.knowledge.limits.open_ng
}

# Whatever sheet or coat is the barrier of a wall, where the words name it by that alone: "WT-2 AVB: 5 perm min."
_means(wanted, line, _) if {
	data.lib.scope.barrier in wanted
	line.role == "membrane"
	items := facts.main_items(line)
	count(items) == 1
	items[0].class in {"membrane", "coating"}
	not is_of_ground(line)
}

# is_of_ground: the row or the data of its material is of waterproofing, or lies in the ground. A heading over rows of
# several kinds puts none of them there.
is_of_ground(line) if {
	rules := data.sequence.lap.waterproofing
	said := [text |
		some slot in rules.slots
		text := object.get(line.texts, slot, "")
		not _heads_several(slot, text)
	]
	own := [text | some text in facts.product_of(facts.main_items(line)[0]).texts]
	some text in array.concat([object.get(line, "place", "")], array.concat(said, own))
	regex.match(rules.said, lower(text))
}

_heads_several(slot, text) if {
	slot in {"section", "group"}
	regex.match(`[/+&;]|\band\b`, lower(text))
}

is_of_ground(line) if facts.said(line, "below_grade")

_means(wanted, line, keys) if {
	items := facts.main_items(line)
	some item in items
	item.product in wanted
	_is_asked(item, items, keys)
}

# Of a row with two materials each has the limits of its own product.
_is_asked(_, items, _) if count(items) == 1

_is_asked(item, _, keys) if item.keys == keys

_holds(when, _) if when == null

_holds(when, line) if {
	every signal in when { _is_case(line, signal) }
}

# A note that speaks of the inside, or of filled studs, puts no row there.
_cases := {"indoors", "studs_filled"}

_is_case(line, signal) if {
	not signal in _cases
	facts.said_here(line, signal)
}

_is_case(line, signal) if {
	signal in _cases
	facts.said(line, signal)
}

# What is done on the room side of a wall is done indoors, unless it is reached from outside or in frost.
_is_case(line, "indoors") if {
	some text in [line.place, line.group, object.get(line.texts, "substrate", "")]
	regex.match(data.vapor.barriers.room_side_words, lower(text))
	not facts.denied(line, "indoors")
	not facts.said_here(line, "from_outside")
	not _is_in_frost(line)
}

_is_in_frost(line) if line.figures.reading_air_c.max < 0
