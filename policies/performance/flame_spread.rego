# METADATA
# title: Flame spread or smoke over the project's limit
# description: |
#   The notes limit the flame spread index of the sheets or of the insulation, or their smoke, and a row or the data of
#   its product tells more: mostly a sheet that came in place of the one whose wall passed its fire test. The letter of
#   a class stands for the figures of the code. It does not apply to a figure just on the limit, to words that tell what
#   is asked for, to what a row says of another material, nor where the notes ask for nothing.
# custom:
#   id: performance-flame-spread
#   topic: performance
#   severity: error
#   reason: Fire runs up the face of the sheet in the cavity faster than the tested wall allows for.
#   remedy: Use the product that the wall was tested with, or bring a report (ASTM E84, NFPA 285) that covers this one.
#   source: the project's notes; classes of ASTM E84 as IBC 803 has them (A 25, B 75, C 200, smoke 450; from memory)
#   basis: source-read
#   example: "notes: sheets flame spread 25 max; row: other sheet, FSI 60 by E84"
#   looks: across rows
package performance.flame_spread

import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.uses
import data.lib.words

# A row tells of its own material.
findings contains found if {
	some line in facts.live_lines
	ask := _asks_of(line)[0]
	some slot in data.performance.flame.slots
	told := _told(line.texts[slot], line.role)
	over := _over(told, ask)
	item := facts.main_items(line)[0]
	message := naming.say("%s has a %s of %s (\"%s\"); the notes allow %s", [
		naming.plain(item),
		over.name,
		over.has,
		trim_space(line.texts[slot]),
		words.number(over.most),
	])
	found := finding.at_with(line, [slot], message, {"related": [finding.related_address(ask.at, words.quoted(ask.text))]})
}

# The data of a product tells it.
findings contains found if {
	some product in input.products
	some slot in data.performance.flame.product_slots
	told := _told(product.texts[slot], product.role)
	over := [{"use": use, "ask": ask, "is": is} |
		some use in uses.main(product)
		ask := _asks_of(use.line)[0]
		not _tells_itself(use.line)
		is := _over(told, ask)
	]
	one := over[0]
	message := sprintf("%s has a %s of %s; the notes allow %s", [
		product.tag,
		one.is.name,
		one.is.has,
		words.number(one.is.most),
	])
	found := finding.for_product(product, [slot], message, {"related": array.concat(
		uses.related([hit.use | some hit in over], 0),
		[finding.related_address(one.ask.at, words.quoted(one.ask.text))],
	)})
}

_tells_itself(line) if {
	some slot in data.performance.flame.slots
	_told(line.texts[slot], line.role)
}

_over(told, ask) := {"name": "flame spread index", "has": told.flame_says, "most": ask.flame} if {
	told.flame > ask.flame
} else := {"name": "smoke developed index", "has": words.number(told.smoke), "most": ask.smoke} if {
	told.smoke > ask.smoke
}

# What the notes ask of the row's material, by the part of a note that speaks of its kind and wall.
_asks_of(line) := [ask |
	some ask in _asks
	line.role in ask.roles
	_is_there(ask.walls, line)
]

_is_there(walls, _) if count(walls) == 0

_is_there(walls, line) if lower(line.group) in walls

_asks := [{"flame": flame, "smoke": smoke, "roles": _roles(part), "walls": walls, "text": note.text, "at": note.at} |
	some note in input.project.notes
	some part in regex.split(data.performance.flame.parting, lower(note.text))
	regex.match(data.performance.flame.about, part)
	plain := _plain(part)
	flame := _flame_asked(plain)
	smoke := _smoke(plain, data.performance.flame.most_smoke)
	walls := {code | some code in regex.find_n(data.vapor.share.wall_code, plain, -1); _letters(code) in _families}
]

# A code is that of a wall where walls of the schedule have the same letters.
_families := {_letters(lower(line.group)) | some line in facts.live_lines; line.group != ""}

_letters(code) := regex.find_n(`^[a-z]+`, code, 1)[0]

_flame_asked(plain) := to_number(n) if {
	n := _flame(plain)
} else := data.performance.flame.classes[_class(plain)].most

# Where a note names no kind, both are meant.
_roles(part) := roles if {
	roles := {role |
		some kind in data.performance.flame.kinds
		regex.match(kind.words, part)
		some role in kind.roles
	}
	count(roles) > 0
} else := {role | some kind in data.performance.flame.kinds; some role in kind.roles}

# What words tell of the material of a role: {"flame", "flame_says", "smoke"}, where they tell neither what is asked for
# nor of another kind.
_told(text, role) := {"flame": flame.is, "flame_says": flame.says, "smoke": _smoke(plain, 0)} if {
	part := [p |
		some p in regex.split(data.performance.flame.parting, lower(text))
		regex.match(data.performance.flame.about, p)
	][0]
	not regex.match(data.performance.flame.not_told, part)
	not _is_of_other(part, role)
	plain := _plain(part)
	flame := _flame_told(plain)
}

_is_of_other(part, role) if {
	some kind in data.performance.flame.kinds
	not role in kind.roles
	regex.match(kind.others, part)
}

_flame_told(plain) := {"is": to_number(n), "says": n} if {
	n := _flame(plain)
} else := {"is": class.least, "says": class.says} if {
	class := data.performance.flame.classes[_class(plain)]
}

# The names of tests have figures of their own.
_plain(part) := regex.replace(part, data.performance.flame.tests, " e ")

_flame(plain) := [n |
	some like in data.performance.flame.flame_like
	some found in regex.find_all_string_submatch_n(like, plain, 1)
	n := found[1]
][0]

_smoke(plain, otherwise) := n if {
	n := [to_number(found[1]) |
		some like in data.performance.flame.smoke_like
		some found in regex.find_all_string_submatch_n(like, plain, 1)
	][0]
} else := otherwise

_class(plain) := [n |
	some like in data.performance.flame.class_like
	some found in regex.find_all_string_submatch_n(like, plain, 1)
	n := found[1]
][0]
