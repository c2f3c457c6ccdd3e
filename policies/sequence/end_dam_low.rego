# METADATA
# title: End dam or rear leg lower than asked
# description: |
#   The row gives the height of the end dam, or of the leg that a flashing turns up the wall, and the notes ask for
#   more. A flashing that is level holds water up to its lowest end, and a heavy rain fills it; a low leg lets the rain
#   that the wind drives over its top. It does not apply on the limit itself, nor where the notes give no height for
#   such a place, and says nothing of how the ends are made.
# custom:
#   id: sequence-end-dam-low
#   topic: sequence
#   severity: error
#   reason: Water that stands on the flashing runs over the low end or leg into the wall.
#   remedy: Turn it up to the height that the notes ask for.
#   source: the project's own notes
#   basis: source-read
#   example: "sill pan, end dam 1/4 in.; notes: end dams 1 in. minimum"
package sequence.end_dam_low

import data.lib.facts
import data.lib.finding
import data.lib.limits
import data.lib.measure
import data.lib.naming

findings contains found if {
	some line in facts.live_lines
	some kind, noun in data.sequence.dams.heights
	height := line.figures[kind]
	measure.is_sound(height)
	item := facts.main_items(line)[0]
	limit := limits.highest_min([one |
		some one in limits.limits_for(kind, line, item.keys, line.role)
		_is_meant(one, line)
	])
	measure.low(height) < limit.min - data.sequence.lap.tolerance_mm
	message := naming.say("%s has %s of %s; the notes ask for %s", [
		naming.plain(item),
		noun,
		measure.as_said("length", height),
		measure.written(limit.min, "length", height),
	])
	found := finding.at_with(line, ["material", "tag", object.get(height, ["at", "cell"], "end_dam")], message, {
		"related": [finding.related_address(limit.at, limit.text)],
	})
}

# A note on the legs of flashings that names no place means those in the wall, and no pans or curbs.
_is_meant(limit, _) if limit.kind != "upturn_mm"

_is_meant(limit, _) if limit.scope != ""

_is_meant(limit, line) if {
	limit.scope == ""
	limit.kind == "upturn_mm"
	texts := [line.mark, line.place, object.get(line.texts, "type", ""), object.get(line.texts, "material", "")]
	own := concat(" ", array.concat(texts, object.get(line, "refs", [])))
	not regex.match(data.sequence.dams.not_wall, own)
}
