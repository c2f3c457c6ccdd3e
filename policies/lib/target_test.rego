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
