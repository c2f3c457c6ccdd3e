package lib.hush_test

import data.lib.bench_test as bench
import data.lib.hush

_why(a, b) := why if {
	why := hush.why(bench.contact(a, b, {"from": "primer"})) with input as bench.document([], [])
}

_in_primer(end) := object.union(end, {"slot": "primer"})

_solvent_primer := bench.end("primer", "P-1", "solvent-primer", "primer", ["solvent-borne"])

# The primer cell names a bead beside the primer.
test_a_bead_is_no_primer if not _why(bench.sheet, _in_primer(bench.solvent_sealant))

test_a_primer_is_judged_with_its_sheet if {
	_why(bench.sheet, _solvent_primer) == "the primer is judged with its sheet and its substrate"
}
