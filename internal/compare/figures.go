package compare

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"abut/internal/regexp"
	"abut/internal/schedule"
)

// How an offered figure stands to the specified one.
const (
	lower   = "lower"
	equal   = "equal"
	higher  = "higher"
	missing = "missing" // stated of the specified product, not of the offer
	added   = "new"     // the reverse
	none    = "none"
)

// middle is the value of a figure: its lower or upper bound as asked, else the
// other one; false where it has none or its words are in doubt.
func middle(f schedule.Figure, bound string) (float64, bool) {
	if f.Problem != "" || f.Disagree {
		return 0, false
	}
	if f.NoLimit {
		return math.Inf(1), true
	}
	first, second := f.Min, f.Max
	if bound == "max" {
		first, second = f.Max, f.Min
	}
	if first == nil {
		first = second
	}
	if first == nil {
		return 0, false
	}
	return *first, true
}

// order compares two figures of a kind. Figures written in one unit are held
// against each other as they are; across units each may be off by half of its
// last digit, and a second unit in the cell widens it further.
func order(was, now schedule.Figure, kind string, set settings) string {
	a, known := middle(was, set.Figures[kind])
	b, knownToo := middle(now, set.Figures[kind])
	switch {
	case !known && !knownToo:
		return none
	case !knownToo:
		return missing
	case !known:
		return added
	}
	lowA, highA := reach(was, a, kind, was.Unit != now.Unit, set)
	lowB, highB := reach(now, b, kind, was.Unit != now.Unit, set)
	switch {
	case highB < lowA:
		return lower
	case lowB > highA:
		return higher
	}
	return equal
}

func reach(f schedule.Figure, value float64, kind string, converted bool, set settings) (low, high float64) {
	if math.IsInf(value, 0) {
		return value, value
	}
	slack := math.Abs(value) * set.Tolerance
	if converted {
		slack += rounding(f, value, kind)
	}
	low, high = value-slack, value+slack
	if f.Other != nil {
		low, high = min(low, *f.Other), max(high, *f.Other)
	}
	return low, high
}

// rounding is half of the last digit that the author wrote, in the unit of the
// value. Degrees do not scale from zero, so theirs is told by the unit.
func rounding(f schedule.Figure, value float64, kind string) float64 {
	written := regexp.MustCompile(`\d+(?:[.,](\d+))?`).FindStringSubmatch(f.Text)
	if written == nil {
		return 0
	}
	half := 0.5 * math.Pow10(-len(written[1]))
	if strings.HasSuffix(kind, "_c") {
		if strings.Contains(strings.ToUpper(f.Unit), "F") {
			return half * 5 / 9
		}
		return half
	}
	number, err := strconv.ParseFloat(strings.ReplaceAll(written[0], ",", "."), 64)
	if err != nil || number == 0 {
		return 0
	}
	return math.Abs(value) * half / number
}

// lostSubstrates lists what the data of the specified product accepts and that
// of the offered one does not; nothing where either lists no substrate.
func lostSubstrates(was, now *schedule.Product, line *schedule.Line) []lostSubstrate {
	var out []lostSubstrate
	if len(now.Accepts) == 0 {
		return nil
	}
	for _, a := range was.Accepts {
		barred := slices.ContainsFunc(now.Accepts, func(b schedule.Acceptance) bool { return b.Except && covers(b.Target, a.Target) })
		covered := func(b schedule.Acceptance) bool {
			return !b.Except && covers(b.Target, a.Target) && !(barred && onAll(b.Target))
		}
		if a.Except || len(a.Keys) == 0 || onAll(a.Target) || slices.ContainsFunc(now.Accepts, covered) {
			continue
		}
		out = append(out, lostSubstrate{a.Target, stands(line, a.Target, now)})
	}
	return out
}

// onAll holds for a rule that names no bed and is of all: "no primer".
func onAll(t schedule.Target) bool { return slices.Contains(t.Keys, "*") }

type lostSubstrate struct {
	target schedule.Target
	here   bool
}

// covers: the first key of a target is the narrowest; a list that names it, or
// something wider that it belongs to, covers it, as does a rule for every bed.
func covers(list, one schedule.Target) bool {
	return len(list.Keys) > 0 && (onAll(list) || slices.Contains(list.Keys, one.Keys[0]) || slices.Contains(one.Keys, list.Keys[0]))
}

// stands: the line is on that substrate, and the offer takes it by no other word.
func stands(line *schedule.Line, lost schedule.Target, now *schedule.Product) bool {
	for _, it := range line.Items {
		if it.Slot != "substrate" || it.Polarity != "yes" || !slices.Contains(it.Keys, lost.Keys[0]) {
			continue
		}
		taken := func(b schedule.Acceptance) bool {
			return !b.Except && len(b.Keys) > 0 && slices.Contains(it.Keys, b.Keys[0])
		}
		if !slices.ContainsFunc(now.Accepts, taken) {
			return true
		}
	}
	return false
}
