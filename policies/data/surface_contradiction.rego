# METADATA
# title: One cell says the face is dry, the remark says it is wet
# description: |
#   The substrate cell calls the face dry, often by a list of choices, and the remark of the same row tells of
#   water on it. The remark is mostly what someone saw. It does not apply where the remark also says that the
#   face was dried.
# custom:
#   id: data-surface-contradiction
#   topic: data
#   severity: warning
#   reason: On a wet face neither primer nor adhesive bonds, and the row can be read either way.
#   remedy: Ask which holds on the day; let the face dry, or strike the remark.
#   source: the row itself
#   basis: source-read
#   example: "substrate condition: dry, clean; remark: sheathing wet from hose test, not dried"
package data.surface_contradiction

import data.lib.face
import data.lib.finding
import data.lib.sheet

findings contains finding.at(line, [said.dry.slot, said.wet.slot], message) if {
	some stuck in sheet.stuck
	line := stuck.line
	said := face.two_minds(line)
	message := sprintf("the substrate cell says the face is %s, and the remark says it is wet (%s)", [
		lower(said.dry.text),
		face.quote(line, {"here": true, "slot": said.wet.slot, "text": said.wet.text}),
	])
}
