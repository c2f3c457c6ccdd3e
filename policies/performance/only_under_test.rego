package performance.only_under_test

import data.lib.desk_test as desk
import data.performance.only_under

_products := [{"id": tag, "tag": tag, "texts": {}, "signals": [], "keys": [], "figures": {}} |
	some tag in ["FM-1", "HT-2"]
]

_found(tag, touches, note) := _with(tag, touches, note, [])

_with(tag, touches, note, signals) := found if {
	row := desk.row(12, tag, {"role": "membrane", "texts": {"touches": touches}, "signals": signals})
	notes := {"project": {"notes": [{"text": note, "at": {"sheet": "N", "row": 3, "cell": "A3"}}]}}
	found := only_under.findings with input as object.union(desk.document([row], _products, []), notes)
}

test_fires[note] if {
	some note in ["6. Under metal caps only HT-2.", "7 Only HT-2 under the metal caps"]
	found := _found("FM-1", "zinc cap straight on it", note)
	{f.line | some f in found} == {"W!12"}
	every f in found { endswith(f.message, "where the notes allow only HT-2") }
}

test_silent[name] if {
	some name, case in {
		"the sheet asked for": ["HT-2", "zinc cap straight on it", "Under metal caps only HT-2."],
		"another cover": ["FM-1", "brick", "Under metal caps only HT-2."],
		"another metal": ["FM-1", "zinc cap straight on it", "Under metal sills only HT-2."],
		"no product": ["FM-1", "zinc cap straight on it", "Under metal caps only screws with washers."],
		"not only": ["FM-1", "zinc cap straight on it", "Under metal caps HT-2 or as told."],
	}
	count(_found(case[0], case[1], case[2])) == 0
}

test_silent_over_vents if {
	at := {"sheet": "W", "row": 12, "cell": "K12"}
	vented := {"id": "vented", "no": false, "text": "vented battens", "slot": "touches", "at": at}
	count(_with("FM-1", "zinc cap on vented battens", "Under metal caps only HT-2.", [vented])) == 0
}

# A note that names the sheet and the metal, and no more, asks for it; one that goes on, or denies, says something else.
test_named_and_no_more[note] if {
	some note, n in {
		"6. HT-2 under all metal caps.": 1,
		"Laps 3 in. Use HT-2 below metal caps; tape the joints": 1,
		"HT-2 not under metal caps.": 0,
		"HT-2 under metal caps where the maker asks for it.": 0,
		"Laps of HT-2 under metal caps.": 0,
	}
	found := _found("FM-1", "zinc cap straight on it", note)
	count(found) == n
	every f in found { endswith(f.message, "where the notes ask for HT-2") }
}

# So does a sentence that says what the sheet there is to be; one that tells its thickness or denies it does not.
test_sheet_there_is_to_be[note] if {
	some note, n in {
		"4. Below metal caps the membrane must be HT-2.": 1,
		"Under all metal caps sheets are to be HT-2": 1,
		"Under metal caps the sheet shall be 40 mil.": 0,
		"Under metal caps the sheet shall not be HT-2.": 0,
	}
	count(_found("FM-1", "zinc cap straight on it", note)) == n
}
