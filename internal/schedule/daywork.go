package schedule

import (
	"slices"
	"strings"
	"time"

	"abut/internal/phrase"
)

// dayWork is how words begin by which a heading over days tells of a work: the slot of
// that, "" for what is no work on the wall.
type dayWork struct {
	Slot  string   `json:"slot"`
	Begin []string `json:"begin"`
}

// spanWords are headings that tell the first and the last day of a work and not which. Of are
// what may stand before them in both and names no other work ("On - from | On - to").
type spanWords struct {
	Of    []string `json:"of"`
	First []string `json:"first"`
	Last  []string `json:"last"`
}

// work tells what is done on the days under a heading, and the word that says so.
func (h *headings) work(heading string) (slot, word string, told bool) {
	words := h.usual(headingWords(heading))
	for _, d := range h.days {
		for _, w := range words {
			if slices.ContainsFunc(d.Begin, func(begin string) bool { return strings.HasPrefix(w, begin) }) {
				return d.Slot, w, true
			}
		}
	}
	return "", "", false
}

// byDays tells what is done on the days of a column: by a word of its heading, else by
// their order.
func (r *reader) byDays(t *table, i int) (slot, why string) {
	if t.kind != kindSchedule {
		return "", ""
	}
	col := t.nums[i]
	if slot := r.spanned(t, i); slot != "" && t.column(slot) == 0 {
		return slot, "dates stand under it, and its heading and the one beside it are those of a span"
	}
	if slot, word, told := r.head.work(t.cols[i].Heading); told {
		if slot == "" || t.column(slot) > 0 {
			return "", ""
		}
		return slot, "dates stand under it, and its heading tells of \"" + word + "\""
	}
	install, cover := t.column("install"), t.column("cover")
	switch {
	case t.has("sent", "returned", "approved") > 0: // of papers
	case install == 0 && cover == 0 && r.nearestToCover(t, col):
		return "install", "dates stand under it, and no other column is the installation"
	case install == 0 && cover > 0 && r.nearestToCover(t, col) && r.inOrder(t, col, cover, 0):
		return "install", "dates stand under it that come before those of the cover"
	case install > 0 && cover == 0 && r.inOrder(t, install, col, r.head.coverAfter):
		return "cover", "dates stand under it that come after those of the installation"
	}
	return "", ""
}

// headsOwn holds for the words that head the column of what the rows lay: days under "W/P
// from" beside "W/P" are of the work with that.
func (t *table) headsOwn(words []string) bool {
	return slices.ContainsFunc(t.cols, func(c Column) bool {
		return isOwn(c.Slot) && slices.Equal(headingWords(c.Heading), words)
	})
}

// spanned tells which end of the work the days of a column are, where its heading and the
// one beside it say no more than that ("From | Thru"), alone or below a heading over both
// that tells of the work ("Laying"); "" for neither.
func (r *reader) spanned(t *table, i int) string {
	says := func(i int, words []string) bool {
		if i < 0 || i >= len(t.cols) {
			return false
		}
		c := &t.cols[i]
		own := headingWords(c.own)
		if len(own) == 0 || !slices.Contains(words, own[len(own)-1]) {
			return false
		}
		if of := own[:len(own)-1]; len(of) > 0 {
			return c.own == c.Heading && (slices.Contains(r.head.span.Of, strings.Join(of, " ")) || t.headsOwn(of))
		}
		slot, _, _ := r.head.work(strings.TrimSuffix(c.Heading, c.own))
		return c.own == c.Heading || slot == "install"
	}
	begins := func(i int) bool {
		return says(i, r.head.span.First) || i >= 0 && i < len(t.cols) && t.cols[i].Slot == "install" // "Install from | to"
	}
	ends := func(first int) bool {
		return begins(first) && says(first+1, r.head.span.Last) &&
			r.mostly(t.stretch(), t.nums[first], "date") && r.mostly(t.stretch(), t.nums[first+1], "date")
	}
	switch {
	case ends(i):
		return "install"
	case ends(i - 1):
		return "finish"
	}
	return ""
}

// nearestToCover holds where no other column of dates without a known heading
// stands between this one and that of the cover: what goes before the work, as
// its paper does, stands left of it.
func (r *reader) nearestToCover(t *table, col int) bool {
	cover := t.column("cover")
	for i, c := range t.cols {
		if n := t.nums[i]; c.Slot == "" && col < n && n < cover && r.mostly(t.stretch(), n, "date") {
			return false
		}
	}
	return true
}

// inOrder holds for two columns of days of which the second are hardly ever before the
// first (that would be a mistake of the row), and mostly some days after them.
func (r *reader) inOrder(t *table, first, second, after int) bool {
	order, _ := r.phrase.Order(slices.Concat(t.texts(first), t.texts(second)))
	both, before, later := 0, 0, 0
	for row := t.first; row <= t.last; row++ {
		a, ok := r.dayAt(t, row, first, order)
		b, ok2 := r.dayAt(t, row, second, order)
		if !ok || !ok2 {
			continue
		}
		both++
		switch between := days(a, b); {
		case between < 0:
			before++
		case between > after:
			later++
		}
	}
	return both > 0 && later*2 >= both && before*4 <= both
}

// dayAt is the first day that a cell tells, in some year where it gives none.
func (r *reader) dayAt(t *table, row, col int, order phrase.DateOrder) (time.Time, bool) {
	c, ok := t.sheet.At(row, col)
	if !ok || !c.Date.IsZero() {
		return c.Date, ok
	}
	year := r.yearSaid
	if year == 0 {
		year = anyYear
	}
	for _, d := range r.phrase.ColumnDates(c.Value, order, year) {
		if !d.From.IsZero() {
			return d.From, true
		}
	}
	return time.Time{}, false
}
