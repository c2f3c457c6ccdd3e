# METADATA
# title: Place of the job not known
# description: |
#   The checks of cold, heat, night frost and winter condensation need a weather station, and the workbook names
#   no place that is known. Without them a standard-grade sheet in January passes unseen. Name the town and the
#   state or province in the title block or the settings; told once for the workbook. It does not apply where the
#   settings name the place or give the project's own climate file.
# custom:
#   id: data-place-unknown
#   topic: data
#   severity: note
#   reason: Without the place no season odds and no vapor profile can be computed.
#   remedy: Name the city and the state, province or country in the title block or in the settings.
#   source: common practice
#   basis: common-practice
#   example: "no city in the title block"
package data.place_unknown

import data.lib.finding

findings contains finding.for_address(_at, message, {}) if {
	input.project.place.problem != ""
	message := sprintf("the place of the job is not known (%s); name the city and the state, province or country", [
		input.project.place.problem,
	])
}

_at := input.project.place.at if {
	input.project.place.at.row > 0
} else := {"sheet": input.reading.tables[0].sheet, "row": 1} if {
	input.reading.tables[0]
} else := {"sheet": input.lines[0].sheet, "row": 1}
