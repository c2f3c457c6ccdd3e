# METADATA
# title: Material past its date
# description: |
#   The row says that rolls, pails or tubes were past their date, or tells when they were made, and the row or the
#   product's data gives a shelf life that has run out by the day of the work. Old primer and sealant do not cure, and
#   old adhesive has lost its tack. It does not apply to papers that have run out, nor where the material was replaced.
# custom:
#   id: pairing-past-shelf
#   topic: pairing
#   severity: warning
#   reason: Past its date the maker answers for nothing, and tack or cure may be gone.
#   remedy: Take new stock, or get the maker's letter for the batch and a pull test.
#   source: "common practice: shelf life and storage by the maker's data"
#   basis: common-practice
#   example: "Remark: primer was past its date"
package pairing.past_shelf

import data.lib.facts
import data.lib.finding
import data.lib.measure
import data.lib.mended
import data.lib.naming
import data.lib.words

findings contains mended.told(line, "past_shelf", "%s is told to be past its date (%s)") if {
	some line in facts.live_lines
}

# Made so long before the work that the shelf life, told by the row or the data, has run out.
findings contains found if {
	some line in facts.live_lines
	not facts.said(line, "past_shelf")
	item := facts.main_items(line)[0]
	life := _life(line, item)
	measure.is_sound(life)
	days := line.spans.stock_days
	days.min > measure.high(life) * data.pairing.shelf.days_in_month
	message := naming.say("%s goes on %s or more after it was made; its shelf life is %s", [
		naming.plain(item),
		words.days(days.min),
		life.text,
	])
	found := finding.at(line, ["material", "tag", "install", line.dates.made.at.cell], message)
}

_life(line, _) := line.figures.shelf_months

_life(line, item) := facts.product_of(item).figures.shelf_months if not line.figures.shelf_months
