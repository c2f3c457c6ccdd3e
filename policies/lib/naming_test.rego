package lib.naming_test

import data.lib.naming

_end(text, tag, name) := {"text": text, "tag": tag, "name": name}

test_plain[want] if {
	some want, end in {
		"A-2 (aluminum sheet)": _end("A-2", "A-2", "Aluminum sheet (mill finish)"),
		"X-1 (butyl flashing tape)": _end("X-1", "X-1", "Butyl flashing tape or butyl self-adhered flashing"),
		"X-1 (EPDM gasket)": _end("X-1", "X-1", "EPDM gasket or setting block"),
		"EPDM boot GK-1": _end("EPDM boot GK-1", "GK-1", "EPDM gasket"),
		"R-1": _end("R-1", "R-1", ""),
		"AB-1 (Hollin 40)": _end("AB-1", "AB-1", "Hollin 40"),
		"AB-2 (Hollin SB40)": _end("AB-2", "AB-2", "Hollin SB40, SBS sheet"),
		"FL-1 (Hollin Flex)": _end("FL-1", "FL-1", "Hollin Flex, low-temperature grade"),
		"SP-1 (rigid PVC pan)": _end("SP-1", "SP-1", "Rigid PVC pan"),
		"structural steel": _end("", "", "Structural steel"),
	}
	naming.plain(end) == want
}

test_noun[want] if {
	some want, end in {
		"asphaltic sheet FM-1": _end("FM-1", "FM-1", ""),
		"SBS membrane": _end("SBS membrane", "", ""),
		"wall flashing (asphaltic sheet)": _end("wall flashing", "", ""),
		"asphaltic mastic SE-4": object.union(_end("SE-4", "SE-4", ""), {"class": "mastic"}),
	}
	naming.noun(end, "asphaltic") == want
}

test_long_words_give_way_to_the_tag if {
	long := "self-adhered flashing with cross-laminated film, cut to suit the opening on site"
	naming.plain(_end(long, "FM-1", "")) == "FM-1"
	naming.plain(_end(long, "", "")) == "self-adhered flashing with cross-laminated film, cut to s …"
}

test_sentence if naming.sentence("wet face") == "Wet face"

test_say if naming.say("%s on %s", ["bead", "film"]) == "Bead on film"
