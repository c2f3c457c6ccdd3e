package lib.target_test

import data.lib.target

_gasket := {"product": "G-1", "tag": "G-1", "family": "epdm-gasket", "class": "gasket", "keys": ["epdm-gasket", "epdm"]}

_copper := ["wood", "copper-preservative"]

_plywood := {"product": "", "tag": "", "family": "osb-plywood-sheathing", "class": "substrate", "keys": ["wood"]}

_primer := {"product": "P-1", "tag": "P-1", "family": "solvent-primer", "class": "primer", "keys": ["solvent-borne"]}

_says(text, keys, products) := {"text": text, "keys": keys, "products": products, "except": false}

test_named_product if target.names(_says("G-1, G-2", [], ["G-1", "G-2"]), _gasket)

test_no_name_is_no_match if not target.means(_says("", [], [""]), _plywood)

test_telling_trait if target.covers(_says("EPDM", ["epdm-membrane", "epdm"], []), _gasket)

test_vague_trait_does_not_tell if {
	not target.covers(_says("treated wood", ["acq-lumber", "wood", "copper-preservative"], []), _plywood)
}

test_vague_trait_alone_tells if target.covers(_says("wood", ["wood"], []), _plywood)

test_open_kind_means_every_kind if {
	lumber := {"product": "", "tag": "", "family": "acq-lumber", "class": "lumber", "keys": _copper}
	target.covers(_says("treated wood", ["treated-lumber"], []), lumber)
	not target.covers(_says("treated wood", ["treated-lumber"], []), _plywood)
}

test_empty_target_means_nothing if not target.means(_says("see letter", [], []), _gasket)

test_sealants_are_not_primers if not target.covers(_says("solvent-borne sealants", ["solvent-borne"], []), _primer)

test_solvents_are_primers_too if target.covers(_says("solvents", ["solvent-borne"], []), _primer)

_film_faced := {
	"product": "", "tag": "", "family": "butyl-flashing-tape", "class": "tape",
	"keys": ["butyl-flashing-tape", "butyl", "polyethylene-film", "low-surface-energy"],
}

_film_keys := ["polyethylene-sheet", "polyethylene-film"]

test_film_means_the_face_of_a_sheet if {
	target.covers(_says("polyethylene", _film_keys, []), _film_faced)
	target.covers(_says("PE film on strips", _film_keys, []), _film_faced)
	not target.covers(_says("polyethylene", _film_keys, []), _plywood)
}

test_sheet_of_film_is_no_face[text] if {
	some text in ["6 mil polyethylene sheeting", "poly sheet", "polyethylene foam rod", "polyethylene vapor retarder"]
	not target.covers(_says(text, _film_keys, []), _film_faced)
}

test_sheet_with_a_film_is_told_by_more if {
	not target.covers(_says("SBS sheet with PE film", ["asphaltic", "polyethylene-film"], []), _film_faced)
}

test_bare_compound_is_no_film_face[text] if {
	some text, means in {"bare bitumen": 0, "exposed asphalt": 0, "bitumen": 1, "asphalt sheets": 1}
	faced := object.union(_film_faced, {"keys": ["asphaltic", "polyethylene-film"]})
	found := {true | target.covers(_says(text, ["asphaltic"], []), faced)}
	count(found) == means
	target.covers(_says(text, ["asphaltic"], []), object.union(_film_faced, {"keys": ["asphaltic"]}))
}
