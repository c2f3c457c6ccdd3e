# METADATA
# title: Unprimed by the usual matrix
# description: |
#   Rows without primer, judged by the usual matrix of adhesive and face because the workbook has no data of the
#   sheet. An asphaltic sheet that is said to go on bare is an error, an empty cell a warning, a maker's word a
#   note.
package lib.unprimed

import data.lib.face
import data.lib.facts
import data.lib.finding
import data.lib.naming
import data.lib.primer
import data.lib.sheet
import data.lib.words

# findings lists the findings for one chemistry.
findings(chemistry) := [finding.at_with(line, ["material", "substrate", "primer"], message, {"severity": severity}) |
	some line in sheet.lines
	_is_without(line)
	beds := [bed |
		some bed in sheet.beds_of(line)
		bed.chemistry == chemistry
		primer.usual(bed) in data.pairing.primer.needs
	]
	count(beds) > 0
	message := _message(line, beds)
	severity := _severity(line, chemistry)
]

_is_without(line) if primer.state(line) in {"none", "blank"}

# "TBD": nobody has named one yet.
_is_without(line) if _is_undecided(line)

_is_undecided(line) if {
	told := trim_space(object.get(line.texts, "primer", ""))
	regex.match(data.pairing.primer.undecided, lower(told))
}

_severity(line, chemistry) := "note" if {
	facts.said(line, "primer_ok_without")
} else := "warning" if {
	_is_undecided(line)
} else := "error" if {
	chemistry == "asphaltic"
	primer.state(line) == "none"
} else := "error" if {
	chemistry == "asphaltic"
	facts.said(line, "dusty")
} else := "warning"

_message(line, beds) := naming.say("%s goes on %s%s without primer (%s); such a sheet usually needs one there", [
	naming.noun(beds[0].item, beds[0].chemistry),
	_dusty(line),
	words.list([bed.under.text | some bed in beds]),
	primer.cell(line),
])

_dusty(line) := "dusty " if {
	some told in face.told(line, "dusty")
	contains(lower(told.text), "dust")
	not contains(lower(object.get(line.texts, "substrate", "")), "dust")
} else := ""
