# METADATA
# title: Asphaltic sheet on a porous face without primer
# description: |
#   Rubberized asphalt grips clean smooth faces. On concrete, block, glass-mat gypsum, OSB or parging it needs a
#   primer to bind the dust and to wet the pores. Unprimed it holds for the photograph and fails at the first cold
#   snap, edges first; after two years whole sheets lie in the cavity. It does not apply where the workbook has
#   data of the sheet: sheets sold to need none say so in theirs.
# custom:
#   id: pairing-asphaltic-unprimed
#   topic: pairing
#   severity: warning
#   reason: Dust and pores keep rubberized asphalt from wetting the face.
#   remedy: Name the primer that the sheet's maker lists for that face, or show that the data asks for none.
#   source: flashing trade articles and AAMA 711 on primer classes
#   basis: source-read
#   example: "SBS sheet on block, no primer"
package pairing.primer_asphaltic

import data.lib.unprimed

findings contains found if some found in unprimed.findings("asphaltic")
