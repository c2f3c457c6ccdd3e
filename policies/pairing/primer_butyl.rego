# METADATA
# title: Butyl sheet on a porous face without primer
# description: |
#   Butyl holds bare metal, glass and many plastics unaided. On concrete, block and glass-mat gypsum it builds its
#   bond slowly and mostly wants a primer; without it the ends curl within two winters. It does not apply to clean
#   metal, which needs none, nor where the workbook has data of the sheet, which is heard instead.
# custom:
#   id: pairing-butyl-unprimed
#   topic: pairing
#   severity: warning
#   reason: Butyl does not bind the dust of porous faces.
#   remedy: Name the primer that the sheet's maker lists for that face, or show that the data asks for none.
#   source: flashing trade articles; from memory
#   basis: common-practice
#   example: "butyl flashing on concrete, primer: none"
package pairing.primer_butyl

import data.lib.unprimed

findings contains found if some found in unprimed.findings("butyl")
