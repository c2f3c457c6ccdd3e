# METADATA
# title: What a material is called in a message
# description: |
#   The row's own words come first. A bare tag gets the noun of its kind ("the asphaltic sheet FM-1"), words that say
#   the kind already stay as they are ("EPDM pad G-1").
package lib.naming

import data.lib.facts

# noun names a material by the noun of a kind: noun(end, "asphaltic") is "asphaltic sheet FM-1".
noun(end, kind) := _short(end) if {
	regex.match(data.lib.nouns[kind].known, lower(end.text))
} else := sprintf("%s %s", [_noun(end, kind), _short(end)]) if {
	_is_code(_short(end))
} else := sprintf("%s (%s)", [_short(end), _noun(end, kind)])

# A bead of the stuff is no sheet of it.
_noun(end, kind) := data.lib.nouns[kind].bead if {
	end.class in {"mastic", "sealant"}
} else := data.lib.nouns[kind].noun

# plain names it by its family: "A-2 (aluminum sheet)", or by its words alone where they say enough.
plain(end) := _short(end) if {
	not _is_code(_short(end))
} else := sprintf("%s (%s)", [_short(end), _family(end.name)]) if {
	end.name != ""
} else := _short(end)

# row names a row by its own material, "this row" without one.
row(line) := plain(facts.main_items(line)[0])

default row(_) := "this row"

# Long words give way to the tag, else they are cut.
_short(end) := closed(trim_space(end.text)) if {
	count(trim_space(end.text)) <= 60
	trim_space(end.text) != ""
} else := end.tag if {
	end.tag != ""
} else := sprintf("%s …", [trim_space(substring(end.text, 0, 57))]) if {
	end.text != ""
} else := _family(end.name)

# closed ends a bracket that a cut leaves open.
closed(text) := concat("", [text, ")"]) if {
	contains(text, "(")
	not contains(text, ")")
} else := text

# A code says nothing of the stuff: "FM-1", "R 03", "PR-2".
_is_code(text) if regex.match(`^[\p{L}]{1,5}[ ._-]?\d+\p{L}?$`, text)

# Within brackets a name loses its own brackets and its second half: "butyl tape or butyl flashing" is "butyl tape".
_family(name) := uncapped(trim_space(regex.replace(name, `\s*\([^)]*\)|,.*$|\s+or\s.*$`, "")))

# uncapped begins with a small letter, unless a short form begins it ("EPDM gasket") or it is a name of the author's
# ("Hollin Flex", "Hollin 40", "Hollin SB40"), which stays as it is written.
uncapped(name) := name if {
	regex.match(`^\p{Lu}[\p{Lu}\d]|^\p{Lu}\S* (\p{Lu}\p{Ll}|\p{Lu}+-?\d|\d)`, name)
} else := concat("", [lower(substring(name, 0, 1)), substring(name, 1, -1)])

# sentence begins with a capital.
sentence(text) := concat("", [upper(substring(text, 0, 1)), substring(text, 1, -1)])

# say fills a format and begins with a capital.
say(format, values) := sentence(sprintf(format, values))
