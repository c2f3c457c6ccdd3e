# METADATA
# title: Acrylic sheet on a dusty face without primer
# description: |
#   Acrylic adhesives are mostly sold to need no primer, and on sheathing that is so. Block, brick and parging are
#   the exception: the vapor-permeable sheet bridges the pores and holds the dust, and after two winters it flaps
#   behind the cladding. It does not apply where the workbook has data of the sheet, which is heard instead, nor
#   to sheathing, metal and smooth boards.
# custom:
#   id: pairing-acrylic-unprimed
#   topic: pairing
#   severity: warning
#   reason: Dust and open pores of masonry keep the adhesive from the wall.
#   remedy: Name the primer that the sheet's maker lists for that face, or show that the data asks for none.
#   source: common practice
#   basis: common-practice
#   example: "vapor-permeable acrylic sheet on CMU, no primer"
package pairing.primer_acrylic

import data.lib.unprimed

findings contains found if some found in unprimed.findings("acrylic")
