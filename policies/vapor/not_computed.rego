# METADATA
# title: Vapor profile not computed
# description: |
#   A section can only be computed if each layer and their order are known. What is named here is not, and nothing
#   is guessed of it, so water that gathers by the second winter would pass unseen. Unless the order is what lacks,
#   it was still looked at. State what is missing and check again. It does not apply to layers that count for
#   nothing, such as those outside of a vented space, nor to sections without a sheet or without insulation.
# custom:
#   id: vapor-not-computed
#   topic: vapor
#   severity: note
#   reason: A layer of the section, or its order, is not known, so winter water could not be computed.
#   remedy: State it in the schedule, its notes or the product data.
#   source: ISO 13788 needs every layer
#   basis: common-practice
#   example: "the thickness of the insulation in W3 is not known"
#   looks: across rows
package vapor.not_computed

import data.lib.facts
import data.lib.finding
import data.lib.section
import data.lib.words

findings contains finding.at_with(rows[0].line, ["material", "tag"], message, {"related": related}) if {
	some rows in _by_lack
	message := sprintf("the vapor profile of %s was not computed, %s", [rows[0].name, rows[0].lack])
	related := [finding.related(row.line, ["material", "tag"], "the same") | some row in array.slice(rows, 1, count(rows))]
}

# Assemblies that lack the same are told once.
_by_lack := {lack: rows |
	some lack in {one.lack | some one in _hits}
	rows := [hit | some hit in _hits; hit.lack == lack]
}

_hits := [{"lack": _lack(profile), "name": section.called(profile), "line": line} |
	some profile in input.profiles
	count(profile.missing) > 0
	_has_sheet(profile)
	not profile.id in _judged
	line := [line | some id in profile.lines; line := facts.lines_by_id[id]; not line.struck][0]
]

_judged := {one.id | some one in section.judged}

_lack(profile) := sprintf("for want of %s", [words.list(sort({said |
	some one in profile.result.missing
	said := sprintf("the %s of %s", [_figure(one.what), one.name])
}))]) if {
	count(profile.result.missing) > 0
} else := sprintf("since %s", [words.list(profile.missing)])

_figure("vapor") := "vapor permeance"

_figure("resistance") := "thermal resistance"

_figure(what) := what if not what in {"vapor", "resistance"}

# Without a sheet and insulation there is nothing to compute.
_has_sheet(profile) if {
	some sheet in profile.layers
	sheet.class in data.vapor.barriers.sheet_classes
	section.is_insulated(profile)
}
