# METADATA
# title: Solvent or heat on polystyrene foam
# description: |
#   Any hydrocarbon, ketone or ester eats XPS and EPS on contact, and its vapor does so in a closed joint: the
#   board behind a bead of the wrong adhesive is a hollow, found when the cladding is opened years later. Hot
#   asphalt melts it. Use a product that its maker lists for polystyrene. It does not apply to solvent-free
#   asphalt laid cold and to water-borne products, which are harmless; a primer on foam is judged with its sheet.
# custom:
#   id: contact-foam-dissolved
#   topic: contact
#   severity: error
#   reason: Solvent dissolves polystyrene, and hot-applied material melts it.
#   remedy: Use an adhesive, sealant or mastic that is free of solvent and says it suits polystyrene.
#   source: foam associations' chemical resistance lists
#   basis: source-read
#   example: "material: XPS board; touches: cutback mastic dabs"
package contact.polystyrene

import data.lib.facts
import data.lib.finding
import data.lib.hit
import data.lib.naming
import data.lib.told

findings contains hit.tell(v, _message(v.contact)) if some v in told.under("polystyrene")

_message(contact) := hit.touch(contact, naming.plain(ends.other), naming.noun(ends.one, "polystyrene")) if {
	ends := hit.ends(contact, ["polystyrene"])
}

# Board that goes into a hot membrane before it has cooled.
findings contains finding.at_with(line, [foam.slot, "material"], message, {"facts": [foam.id]}) if {
	some line in facts.live_lines
	sheet := facts.main_items(line)[0]
	facts.has_key(sheet, data.contact.judging.hot.keys)
	foam := [item | some item in line.items; facts.is_there(item); "polystyrene" in item.keys][0]
	said := [clause |
		some text in line.texts
		some clause in regex.split(`;`, text)
		regex.match(data.contact.judging.hot.words, lower(clause))
		not regex.match(data.contact.judging.hot.unless, lower(clause))
	][0]
	message := naming.say("%s goes into %s while that is hot (\"%s\"), and softens at about 165 °F (74 °C)", [
		naming.plain(foam),
		sheet.text,
		trim_space(said),
	])
}
