# METADATA
# title: Less insulation than the wall must have
# description: |
#   The list of walls has a column for the least resistance of the insulation, or the notes ask for one, and a row
#   there tells an insulation with less: value engineering takes an inch, or the boards of another wall were at hand.
#   The wall breaks the energy code, and what is behind the boards is colder than it was planned for. The row of a sheet
#   counts too where it names the insulation over it. It does not apply to rows that tell no resistance or name several
#   insulations, to a figure by the inch, nor to insulation between the studs where the wall asks it of what is outside.
# custom:
#   id: performance-insulation-less
#   topic: performance
#   severity: error
#   reason: The wall loses more heat than the code and its design allow, and the layers behind the boards get colder.
#   remedy: Put in the thickness that gives the resistance asked for there, or have the wall computed anew.
#   source: the project's list of walls or notes
#   basis: source-read
#   example: "wall EW-3: min R 12; row on EW-3: 2 in. wool R-8.4"
package performance.insulation_less

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.naming
import data.lib.ratio
import data.lib.words

findings contains found if {
	some line in facts.live_lines
	own := _own(line)
	limit := limits.highest_min([asked |
		some asked in limits.limits_for("insulation_m2kw", line, own.item.keys, own.item.class)
		_is_of_cavity(asked, line)
	])
	own.r < limit.min * data.vapor.ratio.short_share
	not line.id in _told_elsewhere
	message := naming.say("%s has %s; %s is asked for there", [
		naming.plain(own.item),
		ratio.written(own.r, contains(own.text, "rsi")),
		ratio.written(limit.min, contains(own.text, "rsi")),
	])
	found := finding.at_with(line, [own.item.at.cell], message, {"related": [finding.related_address(
		limit.at,
		words.quoted(limit.text),
	)]})
}

# What the notes ask of a cavity is that of a masonry veneer, where they tell of none between studs.
_is_of_cavity(asked, _) if asked.scope != "cavity"

_is_of_cavity(asked, line) if {
	asked.scope == "cavity"
	not regex.match(data.performance.insulation.framed, lower(asked.text))
	some text in array.concat([line.group], [text | some text in line.texts])
	regex.match(data.performance.insulation.veneer, lower(text))
}

# What the notes ask outside of a wall has a rule of its own.
_told_elsewhere := {found.line | some found in data.vapor.outside_asked.findings}

# The one insulation that the row has, with the resistance that its words or its data tell.
_own(line) := {"item": item, "r": r, "text": text} if {
	all := facts.items_in(line, data.performance.insulation.slots)
	boards := [item | some item in all; item.class == "insulation"; item.polarity == "yes"]
	count({[item.family, item.product, item.clause] | some item in boards}) == 1
	item := boards[0]
	text := _text(item)
	not regex.match(data.performance.insulation.not, text)
	r := ratio.stated(text)
}

_text(item) := text if {
	text := lower(item.clause)
	_tells_one(text)
} else := text if {
	text := lower(facts.product_of(item).name)
	not regex.match(data.performance.insulation.told, lower(item.clause))
	_tells_one(text)
}

_tells_one(text) if count(regex.find_n(data.performance.insulation.told, text, -1)) == 1
