package substitution.chemistry_test

import data.lib.swap_test
import data.substitution.chemistry

_found(was, now, more) := found if {
	found := chemistry.findings with input as swap_test.document([swap_test.a_swap(was, now, more)])
}

test_butyl_for_asphalt if {
	some f in _found(swap_test.asphaltic, swap_test.butyl, {})
	f.message == concat("", [
		"ZB-1 is butyl, FM-1 is asphaltic: ",
		"primer, sealants and neighbors of this row were chosen for the other",
	])
	f.severity == "note"
}

test_same_stuff_is_silent if count(_found(swap_test.asphaltic, swap_test.other_asphaltic, {})) == 0

test_unknown_stuff_is_silent if {
	unknown := swap_test.offer("QQ", ["mystery"], {})
	count(_found(swap_test.asphaltic, unknown, {})) == 0
}

# A sealant of another stuff is the business of the contact rules.
test_other_column_is_silent if count(_found(swap_test.asphaltic, swap_test.butyl, {"slot": "touches"})) == 0

_neutral := swap_test.offer(
	"ST-1",
	["neutral-silicone-sealant", "silicone", "silicone-neutral-cure"],
	{"class": "sealant"},
)

_acid := swap_test.offer("ST-2", ["acetoxy-silicone-sealant", "silicone", "silicone-acetoxy"], {"class": "sealant"})

_urethane := swap_test.offer("ST-3", ["polyurethane-sealant", "polyurethane"], {"class": "sealant"})

test_acid_cure_for_neutral if {
	some f in _found(_neutral, _acid, {"slot": "sealant"})
	f.message == concat("", [
		"ST-2 is acid-cure silicone, ST-1 is neutral-cure silicone: ",
		"what the joint meets was chosen for the other",
	])
	f.severity == "warning"
}

test_other_bead_is_a_note if {
	{f.severity | some f in _found(_neutral, _urethane, {"slot": "sealant"})} == {"note"}
	{f.severity | some f in _found(_acid, _neutral, {"slot": "sealant"})} == {"note"}
}

test_same_bead_is_silent if count(_found(_neutral, _neutral, {"slot": "sealant"})) == 0

test_bead_of_unknown_kind_is_silent if {
	unknown := swap_test.offer("ST-4", ["sealant-unspecified"], {"class": "sealant"})
	count(_found(_neutral, unknown, {"slot": "sealant"})) == 0
}

_emulsion := swap_test.offer("ZE-1", ["fluid-applied-asphalt-emulsion-air-barrier", "asphaltic"], {})

test_fluid_for_a_sheet if {
	some f in _found(swap_test.asphaltic, _emulsion, {})
	f.message == "ZE-1 is put on as a fluid, FM-1 is a sheet"
}

test_fluid_for_a_fluid_is_silent if count(_found(_emulsion, _emulsion, {})) == 0

# The acrylic of an adhesive and that of a coating have one name.
test_two_traits_of_one_stuff_are_silent if {
	tape := swap_test.offer("ZT-1", ["acrylic-flashing-tape", "acrylic-adhesive"], {})
	sheet := swap_test.offer("ZT-2", ["vapor-permeable-self-adhered-membrane", "acrylic"], {})
	count(_found(tape, sheet, {})) == 0
}
