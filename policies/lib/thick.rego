# METADATA
# title: Thickness of sheets
# description: |
#   The thickness that counts for a row: its own, else that of its product, and how far two printed figures may lie
#   apart by rounding alone.
package lib.thick

import data.lib.facts
import data.lib.measure
import data.lib.plausible

# of is {"figure", "mm", "item", "own"} for a row of sheet; undefined without a sound figure.
of(line) := {"figure": own, "mm": measure.low(own), "item": item, "own": true} if {
	item := _sheet(line)
	own := line.figures.thickness_mm
	_counts(own, line.role)
} else := {"figure": figure, "mm": measure.low(figure), "item": item, "own": false} if {
	item := _sheet(line)
	not line.figures.thickness_mm.disagree
	product := facts.product_of(item)
	figure := product.figures.thickness_mm
	_counts(figure, product.role)
}

# under: a thickness below a limit by more than rounding.
under(mm, limit) if {
	rules := data.performance.thickness
	mm < (limit * (1 - rules.share)) - rules.rounding_mm
}

# differ: two thicknesses of the same sheet that rounding does not explain.
differ(a, b) if {
	rules := data.performance.thickness.differs
	abs(a - b) > max([rules.share_low * b, min([rules.mm, rules.share_high * b])])
}

_sheet(line) := facts.main_items(line)[0] if line.role in data.performance.sheets.thickness_roles

_counts(figure, role) if {
	measure.is_sound(figure)
	not plausible.slip("thickness_mm", role, figure)
}

# is_film: what is poured, sprayed or rolled on.
is_film(thing) if regex.match(data.performance.films.applied, thing.family)

# A coat whose data asks for a dry film, whatever it is made of.
is_film(product) if {
	product.class == "coating"
	film(product, product.figures.thickness_mm) == "dry"
}

# film is "wet" or "dry" where the words of a thickness or its heading say which; "dry" too where it stands by the
# first figure, which is the one that was read ("20 mil dry; 30 wet"); undefined where they say neither, or the wet film
# first ("42 mil wet, 21 dry").
film(row, figure) := kinds[0] if {
	rules := data.performance.thickness.film
	kinds := [kind | some kind, words in rules.words; regex.match(words, lower(figure.text))]
	count(kinds) == 1
} else := "dry" if {
	regex.match(data.performance.thickness.film.dry_first, lower(figure.text))
} else := kinds[0] if {
	rules := data.performance.thickness.film
	not regex.match(rules.words.wet, lower(figure.text))
	kinds := [kind | some kind, words in rules.words; regex.match(words, _heading(row))]
	count(kinds) == 1
}

_heading(row) := concat("; ", [lower(column.heading) |
	some table in input.reading.tables
	table.sheet == row.sheet
	table.first_row <= row.row
	row.row <= table.last_row
	some column in table.columns
	column.slot == "thickness"
])

# is_asked_dry: the thickness in a product's data is that of the dry film. Where neither its cell nor its heading says
# so, other words of the data may ("30 mil dry" in a remark), or a note on all films.
is_asked_dry(product, figure) if film(product, figure) == "dry"

is_asked_dry(product, figure) if {
	not film(product, figure)
	_says_beside(product, figure, data.performance.thickness.film.dry_beside)
}

# is_asked_wet: it is that of the wet film, by its own words, or by others of the data ("40 wet min" in a remark).
is_asked_wet(product, figure) if film(product, figure) == "wet"

is_asked_wet(product, figure) if {
	not film(product, figure)
	not is_asked_dry(product, figure)
	_says_beside(product, figure, data.performance.thickness.film.wet_beside)
}

# Words of the data tell the figure again, with what it is of.
_says_beside(product, figure, pattern) if {
	number := regex.find_n(`\d+(\.\d+)?`, figure.text, 1)[0]
	like := sprintf(pattern, [replace(number, ".", "[.]")])
	some text in product.texts
	regex.match(like, lower(text))
}

is_asked_dry(product, figure) if {
	not film(product, figure)
	is_film(product)
	some note in input.project.notes
	regex.match(data.performance.thickness.film.dry_listed, lower(note.text))
}

# most_coats is how many coats the words of a row tell at most, 1 without any, or where the film is that of all coats;
# undefined where the number is open.
most_coats(line) := 1 if {
	_is_of_all(line)
} else := max({1} | _coats(line)) if not _is_open(line)

_is_of_all(line) if {
	some text in line.texts
	regex.match(data.performance.thickness.film.total, lower(text))
}

_coats(line) := {number |
	some text in line.texts
	some told in regex.find_all_string_submatch_n(data.performance.thickness.film.coats_told, lower(text), -1)
	number := object.get(data.performance.thickness.film.numbers, told[1], 9)
}

_is_open(line) if {
	count(_coats(line)) == 0
	some text in line.texts
	regex.match(data.performance.thickness.film.coats_open, lower(text))
}
