package temperature.dark_barred_test

import data.lib.season_bench_test as bench
import data.temperature.dark_barred

_bars(text) := bench.product({"texts": {"remark": text}})

_found(remark, more, product) := found if {
	row := bench.sheet(object.union({"items": [bench.own], "texts": {"remark": remark}}, more))
	found := dark_barred.findings with input as bench.document([row], [product], [])
}

test_fires if {
	some found in _found("Plywood dry. Charcoal cap over, west sun.", {}, _bars("Not under dark copings"))
	found.message == concat("", [
		`FM-1 (rubberized-asphalt-membrane) lies under "Charcoal cap over"; `,
		`its data says "Not under dark copings"`,
	])
}

test_other_words if count(_found("black cover on top", {}, _bars("no dark metal over"))) == 1

test_silent[name] if {
	vented := {"signals": [bench.signal("vented", "remark", "on clips")]}
	some name, case in {
		"a light cover": ["white cap over", {}, _bars("Not under dark copings")],
		"the data bars nothing": ["charcoal cap over", {}, _bars("good under dark copings")],
		"vented": ["charcoal cap over, on clips", vented, _bars("Not under dark copings")],
		"no cover": ["charcoal brick", {}, _bars("Not under dark copings")],
	}
	count(_found(case[0], case[1], case[2])) == 0
}
