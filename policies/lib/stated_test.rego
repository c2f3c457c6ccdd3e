package lib.stated_test

import data.lib.season_bench_test as bench
import data.lib.stated

_line(figures) := bench.sheet({"items": [bench.own], "figures": figures})

_sixty := bench.figure(60, null, "60", "days")

_found(figures, more) := found if {
	product := bench.product({"figures": {"exposure_days": object.union(_sixty, more)}})
	found := stated.figure(_line(figures), "exposure_days") with input as bench.document([], [product], [])
}

test_row_comes_first if {
	found := _found({"exposure_days": bench.figure(30, null, "30", "days")}, {})
	found.from == "row"
	found.figure.min == 30
	stated.whose(found) == "the row"
}

test_product_data if {
	found := _found({}, {})
	found.by.id == "FM-1"
	stated.whose(found) == "its data"
}

test_unread_row_gives_way if {
	unread := object.union(bench.figure(null, null, "see data", ""), {"problem": "not a figure"})
	_found({"exposure_days": unread}, {}).from == "product"
}

test_unread[name] if {
	some name, more in {"no value": {"min": null}, "disagrees": {"disagree": true}, "problem": {"problem": "no unit"}}
	not _found({}, more)
}

test_no_limit_is_an_answer if {
	_found({}, {"min": null, "no_limit": true}).figure.no_limit
}
