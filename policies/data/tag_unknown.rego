# METADATA
# title: Tag without product data
# description: |
#   The workbook explains its tags, and this one is not among them: a slip of the pen, a product taken out, or one
#   added without data. None of its limits could be checked, and what is bought for it is anyone's guess. In
#   cells of substrates, sealants and neighbors it is asked about. In remarks it is a note, since a remark may name
#   a drawing, and so it is where the data names the tag beside another product ("with PR-4"). Each tag is told
#   once. It does not apply to workbooks without any product data.
# custom:
#   id: data-tag-unknown
#   topic: data
#   severity: error
#   reason: Neither primer, temperature, days in the sun nor neighbors of the product can be checked.
#   remedy: Add the product to the data, or correct the tag.
#   source: the workbook's own product data
#   basis: source-read
#   example: "FL-4 is not in the product data, which has FL-1 and FL-2"
#   looks: across rows
package data.tag_unknown

import data.lib.facts
import data.lib.finding
import data.lib.wall_type

findings contains finding.at_with(hits[0].line, [hits[0].item.at.cell], message, extra) if {
	count(input.products) > 0
	some hits in _by_tag
	level := _level(hits[0].item)
	message := sprintf("%s is not in the product data%s", [hits[0].item.tag, _alike(hits[0].item.tag)])
	extra := {"severity": level, "related": [finding.related(hit.line, [hit.item.at.cell], "the same tag") |
		some hit in array.slice(hits, 1, count(hits))
	]}
}

_by_tag := {tag: hits |
	some tag in {one.item.tag | some one in _unknown}
	hits := array.concat(
		[hit | some hit in _unknown; hit.item.tag == tag; _level(hit.item) == "error"],
		[hit | some hit in _unknown; hit.item.tag == tag; _level(hit.item) != "error"],
	)
}

_unknown := [{"line": line, "item": item} |
	some line in facts.live_lines
	some item in line.items
	item.unknown
	item.tag != ""
	item.product == ""
	not item.tag in _aliases
	not item.tag in _assemblies
	not _is_wall(line, item)
]

# What the words of a row call a wall type is no product.
_is_wall(line, item) if {
	some codes in wall_type.told(line)
	item.tag in codes
}

# A list of walls or roofs may say what its codes are built of, without being one of products.
_assemblies := {code |
	some line in facts.live_lines
	line.texts.layers != ""
	some code in {line.mark, line.group, object.get(line.texts, "type", "")}
	code != ""
}

# A row may write the name of a product beside its tag.
_aliases := {product.texts.alias | some product in input.products}

_level(item) := "note" if {
	some text in _told
	contains(text, _spaced(item.tag))
} else := "error" if {
	item.slot in data.data.tags.loud
} else := "warning" if {
	item.slot in data.data.tags.asked
} else := "note"

_told := {_spaced(text) |
	some product in input.products
	some text in product.texts
}

# _spaced sets the words and codes of a text apart by single spaces.
_spaced(text) := sprintf(" %s ", [trim_space(regex.replace(lower(text), `[^\pL\d_-]+`, " "))])

# _alike names the tags of the data that begin as this one does.
_alike(tag) := sprintf(", which has %s", [concat(", ", known)]) if {
	start := regex.find_n(`^\p{L}+[ ._-]?`, tag, 1)[0]
	known := sort({p.tag | some p in input.products; startswith(p.tag, start)})
	count(known) > 0
	count(known) <= 6
} else := ""
