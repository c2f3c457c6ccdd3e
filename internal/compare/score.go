package compare

import (
	"maps"
	"math"
	"slices"
	"strings"
	"time"
)

// scorer tells how alike two lines are, 0 to 1.
type scorer struct {
	was, now *side
	set      settings
	rare     map[string]float64 // word -> how much it tells
	trust    map[string]float64 // feature -> share of its values that both sides have
}

func newScorer(was, now *side, set settings) *scorer {
	s := &scorer{was: was, now: now, set: set, rare: rarity(was, now), trust: map[string]float64{}}
	s.trust["mark"] = shared(was, now, func(f features) []string { return f.marks })
	s.trust["detail"] = shared(was, now, func(f features) []string { return f.details })
	s.trust["place"] = sharedWords(was, now)
	s.trust["order"] = shared(was, now, func(f features) []string { return []string{f.order} })
	return s
}

// rarity is the inverse document frequency of each word, over both sides.
func rarity(sides ...*side) map[string]float64 {
	count := map[string]float64{}
	total := 0.0
	for _, s := range sides {
		for _, f := range s.features {
			total++
			seen := slices.Concat(f.where, f.words)
			slices.Sort(seen)
			for _, w := range slices.Compact(seen) {
				count[w]++
			}
		}
	}
	rare := map[string]float64{}
	for w, n := range count {
		rare[w] = math.Log(1 + total/n)
	}
	return rare
}

// shared is the share of the values of the side with fewer of them that the
// other side has too: marks that were all lettered anew tell nothing.
func shared(was, now *side, of func(features) []string) float64 {
	a, b := values(was, of), values(now, of)
	if len(a) > len(b) {
		a, b = b, a
	}
	both := 0.0
	for v := range a {
		if b[v] {
			both++
		}
	}
	if len(a) == 0 {
		return 0
	}
	return both / float64(len(a))
}

// sharedWords is the share of the words for places, of the side with fewer of
// them, that the other side uses too: wall types on the one and rooms on the
// other tell nothing.
func sharedWords(was, now *side) float64 {
	a, b := placeWords(was), placeWords(now)
	if len(a) > len(b) {
		a, b = b, a
	}
	both := 0.0
	for _, w := range a {
		if slices.ContainsFunc(b, func(o string) bool { return sameWord(w, o) }) {
			both++
		}
	}
	if len(a) == 0 {
		return 0
	}
	return both / float64(len(a))
}

func placeWords(s *side) []string {
	seen := map[string]bool{}
	for _, f := range s.features {
		for _, w := range f.where {
			seen[w] = true
		}
	}
	return slices.Sorted(maps.Keys(seen))
}

func values(s *side, of func(features) []string) map[string]bool {
	out := map[string]bool{}
	for _, f := range s.features {
		for _, v := range of(f) {
			out[v] = true
		}
	}
	delete(out, "")
	return out
}

func (s *scorer) all() [][]float64 {
	scores := make([][]float64, len(s.was.lines))
	for i, a := range s.was.features {
		scores[i] = make([]float64, len(s.now.lines))
		for j, b := range s.now.features {
			scores[i][j] = s.score(a, b)
		}
	}
	return scores
}

// score is the mean likeness of the features that both lines have, by weight.
func (s *scorer) score(a, b features) float64 {
	sum, weights := 0.0, 0.0
	add := func(name string, both bool, like float64) {
		trust, limited := s.trust[name]
		if !both || limited && trust == 0 {
			return
		}
		w := s.set.Weights[name]
		if limited {
			w *= trust
		}
		sum, weights = sum+w*like, weights+w
	}
	add("mark", len(a.marks) > 0 && len(b.marks) > 0, likeMarks(a.marks, b.marks))
	add("detail", len(a.details) > 0 && len(b.details) > 0, share(a.details, b.details))
	add("order", a.order != "" && b.order != "", same(a.order, b.order))
	add("place", len(a.where) > 0 && len(b.where) > 0, s.likeWords(a.where, b.where))
	add("role", a.role != "" && b.role != "", same(a.role, b.role))
	add("material", a.main != nil && b.main != nil, likeMaterial(a, b))
	add("around", len(a.around)+len(b.around) > 0, likeItems(a.around, b.around))
	add("words", len(a.words) > 0 && len(b.words) > 0, s.likeWords(a.words, b.words))
	_, known := middle(a.thickness, "min")
	_, knownToo := middle(b.thickness, "min")
	add("thickness", known && knownToo, same(order(a.thickness, b.thickness, "thickness_mm", s.set), equal))
	like, dated := s.likeDates(a.dates, b.dates)
	add("dates", dated, like)
	if weights == 0 {
		return 0
	}
	return sum / weights
}

func same(a, b string) float64 {
	if a == b {
		return 1
	}
	return 0
}

// share is 1 for two lists with a text in common.
func share(a, b []string) float64 {
	if slices.ContainsFunc(a, func(one string) bool { return slices.Contains(b, one) }) {
		return 1
	}
	return 0
}

// likeMarks is the likeness of the two marks that are most alike.
func likeMarks(a, b []string) float64 {
	best := 0.0
	for _, m := range a {
		for _, n := range b {
			best = max(best, likeMark(m, n))
		}
	}
	return best
}

// likeMark lets "3a" and "3 b" be parts of "3".
func likeMark(a, b string) float64 {
	if a == b {
		return 1
	}
	short, long := a, b
	if len(short) > len(long) {
		short, long = long, short
	}
	rest, isPart := strings.CutPrefix(long, short)
	rest = strings.TrimSpace(rest)
	if isPart && len(rest) == 1 && rest[0] >= 'a' && rest[0] <= 'z' {
		return 0.8
	}
	return 0
}

// parts tells whether one line can be a part of the other: its mark or detail is
// one of the other's, or its place has all the words of the other's. "Window head" is
// no part of "Window sill", however alike the rows are.
func (s *scorer) parts(a, b features) bool {
	if likeMarks(a.marks, b.marks) > 0 && s.trust["mark"] > 0 || share(a.details, b.details) > 0 && s.trust["detail"] > 0 {
		return true
	}
	return within(a.spot, b.spot) || within(b.spot, a.spot)
}

// within tells whether each word of a list stands in another.
func within(words, other []string) bool {
	return !slices.ContainsFunc(words, func(w string) bool {
		return !slices.ContainsFunc(other, func(o string) bool { return sameWord(w, o) })
	})
}

func likeMaterial(a, b features) float64 {
	if a.main == nil || b.main == nil {
		return 0
	}
	if a.material == b.material || slices.Contains(b.standsFor, a.material) {
		return 1
	}
	if a.main.Family != "" && a.main.Family == b.main.Family {
		return 0.7
	}
	return 0.6 * shareOf(a.main.Keys, b.main.Keys)
}

func shareOf(a, b []string) float64 {
	both := 0
	for _, k := range a {
		if slices.Contains(b, k) {
			both++
		}
	}
	if all := len(a) + len(b) - both; all > 0 {
		return float64(both) / float64(all)
	}
	return 0
}

func likeItems(a, b []item) float64 {
	gone, added := difference(a, b)
	like := len(a) + len(b) - len(gone) - len(added)
	for _, g := range gone {
		if slices.ContainsFunc(added, g.standsIn) {
			like += 2
		}
	}
	return min(1, float64(like)/float64(len(a)+len(b)))
}

// likeWords weighs the words that both have, by how rare they are. A word and
// its beginning of three letters or more are alike ("galv", "galvanized").
func (s *scorer) likeWords(a, b []string) float64 {
	hit, all := 0.0, 0.0
	for _, side := range [][2][]string{{a, b}, {b, a}} {
		for _, w := range side[0] {
			all += s.rare[w]
			if slices.ContainsFunc(side[1], func(other string) bool { return sameWord(w, other) }) {
				hit += s.rare[w]
			}
		}
	}
	if all == 0 {
		return 0
	}
	return hit / all
}

func sameWord(a, b string) bool {
	if a == b {
		return true
	}
	short, long := a, b
	if len(short) > len(long) {
		short, long = long, short
	}
	return len(short) >= 3 && strings.HasPrefix(long, short) && strings.IndexFunc(long, isDigit) < 0
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

func (s *scorer) likeDates(a, b map[string]time.Time) (float64, bool) {
	sum, count := 0.0, 0.0
	for _, slot := range slices.Sorted(maps.Keys(a)) {
		to, ok := b[slot]
		if !ok {
			continue
		}
		count++
		sum += max(0, 1-math.Abs(to.Sub(a[slot]).Hours()/24)/s.set.DaysNear)
	}
	if count == 0 {
		return 0, false
	}
	return sum / count, true
}
