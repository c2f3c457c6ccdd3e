# METADATA
# title: Name and permeance of a sheet contradict
# description: |
#   The name of a product says vapor-permeable and its figure is class I or II, or it says vapor barrier and the
#   figure is above 10 perm. Most often a perm was read as ng, or the wet cup as the dry one. The sheet is then
#   put on the wrong side of the wall, which is damp within two winters. Every sheet in the product data is looked
#   at, used or not; so is a class of the code that the cell tells beside its figure. It does not apply to figures
#   within rounding of the bound, nor to sheets called semi-permeable or variable.
# custom:
#   id: vapor-class-word
#   topic: vapor
#   severity: warning
#   reason: A sheet called permeable that is not, or a barrier that is none, is put on the wrong side.
#   remedy: Check the figure, its unit and its procedure (dry or wet cup) against the maker's sheet.
#   source: vapor classes of IBC 1404.3 and IRC R702.7; permeable is 10 perm or more
#   basis: source-read
#   example: "vapor-permeable sheet, 0.5 perm"
package vapor.class_word

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.naming
import data.lib.stated
import data.lib.vaporclass

findings contains finding.for_product(product, ["material", "type", "vapor"], message, {}) if {
	some product in input.products
	product.role in data.performance.sheets.vapor_roles
	figure := product.figures.vapor_ng
	measure.is_sound(figure)
	word := _word(lower(sprintf("%s %s", [product.name, concat(" ", [
	object.get(product.texts, slot, "") |
		some slot in ["material", "type", "description", "chemistry"]
	])])))
	vaporclass.by_ng(measure.high(figure)) in word.not
	message := sprintf("%s is called %s, but its vapor permeance of %s is %s", [
		product.tag,
		word.says,
		measure.as_said("vapor", figure),
		word.is,
	])
}

_word(text) := {"says": "vapor-permeable", "not": {"I", "II"}, "is": "that of a vapor retarder"} if {
	regex.match(data.vapor.open.named.open, text)
	not regex.match(data.vapor.open.named.tight, text)
	not regex.match(data.vapor.open.named.denied, text)
} else := {"says": "a vapor barrier", "not": {"none"}, "is": "that of a vapor-open sheet"} if {
	regex.match(data.vapor.open.named.tight, text)
	not regex.match(data.vapor.open.named.open, text)
	not regex.match(data.vapor.open.named.denied, text)
}

# The cell of the permeance states a class of the code that is not that of its own figure.
findings contains finding.for_product(product, ["material", "type", "vapor"], message, {}) if {
	some product in input.products
	product.role in data.performance.sheets.vapor_roles
	figure := product.figures.vapor_ng
	measure.is_sound(figure)
	text := lower(object.get(product.texts, "vapor", ""))
	not regex.match(data.vapor.classes.stated_several, text)
	told := {class |
		some found in regex.find_all_string_submatch_n(data.vapor.classes.stated, text, -1)
		class := data.vapor.classes.stated_as[found[1]]
	}
	count(told) == 1
	some class in told
	is := vaporclass.by_ng(measure.high(figure))
	is == vaporclass.by_ng(measure.low(figure))
	_is_other_class(class, is, text)
	message := sprintf("%s is called class %s beside its vapor permeance (\"%s\"), which is that of %s", [
		product.tag,
		class,
		trim_space(product.texts.vapor),
		{"I": "class I", "II": "class II", "III": "class III", "none": "a vapor-open sheet"}[is],
	])
}

# Above class III some write the last class for all that is open; a wet cup reads higher than the dry one.
_is_other_class(class, is, text) if {
	class != is
	not _is_open_by_any_name(class, is)
	not _may_be_wet(class, is, text)
}

_is_open_by_any_name("III", "none") := true

_may_be_wet(class, is, text) if {
	_order[class] < _order[is]
	regex.match(data.vapor.classes.stated_wet, text)
}

_order := {"I": 1, "II": 2, "III": 3, "none": 4}

# The row counts on the sheet for a barrier, which its permeance is not.
findings contains finding.at_with(line, ["material", "tag", slot], message, {"severity": "warning"}) if {
	some line in facts.live_lines
	found := stated.figure(line, "vapor_ng")
	figure := found.figure
	not figure.no_limit
	vaporclass.by_ng(measure.low(figure)) == "none"
	some slot in data.vapor.open.counted.slots
	some sentence in regex.split(`[;\n]|\.(\s|$)`, object.get(line.texts, slot, ""))
	regex.match(data.vapor.open.counted.words, lower(sentence))
	not regex.match(data.vapor.open.counted.unless, lower(sentence))
	message := naming.say("%s is counted on for a vapor barrier (\"%s\"), but its vapor permeance of %s is that of a %s", [
		naming.plain(found.item),
		trim_space(sentence),
		measure.as_said("vapor", figure),
		"vapor-open sheet",
	])
}
