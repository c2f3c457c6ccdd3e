# METADATA
# title: Dark metal or membrane over a sheet
# description: |
#   Whether a row tells of dark metal over its sheet, or a dark roof membrane: the color stands in a cell that also
#   names the cover, or the metal's own data is dark. Insulation between, a vent space, and a light color end the
#   question.
package lib.hot_cover

import data.lib.facts

# dark lists the words of the row that tell of dark metal over the sheet: {"text", "slot"}.
dark(line) := words if {
	not _is_denied(line)
	not is_parted(line)
	words := array.concat(array.concat(_in_cells(line, "dark_color"), _in_words(line)), _by_data(line))
	count(words) > 0
}

# any lists the words of the row that name a metal cover, of whatever color but light.
any(line) := words if {
	not is_parted(line)
	not _is_stone(line)
	named := [{"text": text, "slot": slot} |
		some slot in data.temperature.service.over
		text := line.texts[slot]
		regex.match(data.temperature.service.direct_words, lower(text))
	]
	words := array.concat(named, _by_tag(line))
	count(words) > 0
	count(_in_cells(line, "light_color")) == 0
}

# panels lists the words of the row that name metal panels over the sheet, which notes may ask a figure behind.
panels(line) := words if {
	not is_parted(line)
	words := [{"text": text, "slot": slot} |
		some slot in data.temperature.service.panel_over
		text := line.texts[slot]
		regex.match(data.temperature.service.panel_words, lower(text))
	]
	count(words) > 0
	not facts.said(line, "light_color")
}

_is_stone(line) if {
	some slot in data.temperature.service.over
	regex.match(data.temperature.service.stone_words, lower(line.texts[slot]))
}

_is_stone(line) if regex.match(data.temperature.service.stone_words, lower(line.place))

# is_direct: the metal is said to lie on the sheet, or is of the sort that lies on it as a rule.
is_direct(line) if facts.said(line, "laid_direct")

is_direct(line) if {
	some told in dark(line)
	regex.match(data.temperature.service.direct_words, lower(told.text))
}

is_direct(line) if {
	dark(line)
	count(_by_tag(line)) > 0
}

# The row may name the metal by its tag alone, and its data say what it is.
_by_tag(line) := [{"text": _words(item), "slot": item.slot} |
	some item in facts.items_in(line, data.temperature.service.over)
	facts.has_key(item, ["metal"])
	product := facts.product_of(item)
	not facts.said(product, "light_color")
	some slot in ["type", "material"]
	regex.match(data.temperature.service.direct_words, lower(product.texts[slot]))
]

# is_parted: insulation or a vent space lies between.
is_parted(line) if facts.said(line, "insulated_over")

is_parted(line) if {
	some signal in line.signals
	signal.id == "vented"
	not signal.slot in data.temperature.service.not_over # "parapet framing, vented" is under it
	not facts.denied(line, "vented")
}

is_parted(line) if {
	not facts.said(line, "laid_direct")
	some item in facts.items_in(line, data.temperature.service.over)
	item.class == "insulation"
	not _is_beside_top(line, item)
}

# What goes on the top of a parapet has the coping on it; the insulation of the wall, in a cell of its own, ends beside
# them.
_is_beside_top(line, insulation) if {
	regex.match(data.temperature.service.top_bed, lower(object.get(line.texts, "substrate", "")))
	some cover in facts.items_in(line, data.temperature.service.over)
	regex.match(data.temperature.service.direct_words, lower(_words(cover)))
	cover.at.cell != insulation.at.cell
}

_is_denied(line) if facts.denied(line, "dark_color")

_in_cells(line, color) := [{"text": text, "slot": signal.slot} |
	some signal in line.signals
	signal.id == color
	not signal.no
	text := line.texts[signal.slot]
	_is_over(signal.slot, text)
	_names_cover(text)
]

_is_over(slot, _) if not slot in data.temperature.service.not_over

# A group names what the wall is clad with; one that is named by what lies over it says so.
_is_over("group", text) if regex.match(data.temperature.service.under_words, lower(text))

# A description of the sheet may say that dark metal comes over it: "Sheet on the parapet. Black coping over."
_in_words(line) := [{"text": cover, "slot": slot} |
	some slot in data.temperature.service.described
	text := object.get(line.texts, slot, "")
	not regex.match(data.temperature.service.barred, text)
	some cover in regex.find_n(data.temperature.service.dark_cover, text, -1)
	_lies_over(cover, text)
]

_lies_over(cover, _) if endswith(lower(cover), " over")

_lies_over(cover, text) if regex.match(data.temperature.service.under_dark, substring(text, 0, indexof(text, cover)))

_names_cover(text) if regex.match(data.temperature.service.metal_words, lower(text))

_names_cover(text) if names_membrane(text)

# names_membrane: the words are those of a roof membrane and of no metal.
names_membrane(text) if {
	regex.match(data.temperature.service.membrane_words, lower(text))
	not regex.match(data.temperature.service.metal_words, lower(text))
}

# is_membrane: what is dark over the sheet is a membrane. Base plies under cap sheets rarely have a figure of their own.
is_membrane(line) if {
	told := dark(line)
	every one in told { names_membrane(one.text) }
}

_by_data(line) := [{"text": _words(item), "slot": item.slot} |
	some item in facts.items_in(line, data.temperature.service.over)
	facts.has_key(item, ["metal"])
	facts.said(facts.product_of(item), "dark_color")
	not facts.said(line, "light_color")
]

# A bare tag tells less than the clause it stands in.
_words(item) := item.clause if item.clause != ""

_words(item) := item.text if item.clause == ""
