package schedule

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// workWords tell in headings which of two works of a row a column is of: what is put
// on in a shop, and what is put on when the panels are set. Set are words for the day
// of that, which ends the shelter of what came from the shop.
type workWords struct {
	Shop string `json:"shop"`
	Site string `json:"site"`
	Set  string `json:"set"`

	Faced string   `json:"faced"` // a board that came with a coat or sheet on it
	Left  []string `json:"left"`  // signals of what the shop leaves for the site

	Strip string `json:"strip"` // a heading of the strips of details, beside the sheet of the field

	shop, site, set, faced, strip *regexp.Regexp
}

func (w *workWords) compile() error {
	for _, one := range []struct {
		name, pattern string
		into          **regexp.Regexp
	}{{"shop", w.Shop, &w.shop}, {"site", w.Site, &w.site}, {"set", w.Set, &w.set}, {"faced", w.Faced, &w.faced}, {"strip", w.Strip, &w.strip}} {
		var err error
		if *one.into, err = regexp.Compile("(?i)" + one.pattern); err != nil {
			return fmt.Errorf("works: %s: %w", one.name, err)
		}
	}
	return nil
}

// The works that a column may be of.
const (
	inShop = "shop"
	onSite = "site"
)

// of finds the work that a heading names.
func (w *workWords) of(h columnHead) workHead {
	shop, site := w.shop.MatchString(h.whole), w.site.MatchString(h.whole)
	if shop == site {
		return workHead{"", h}
	}
	work, words := inShop, w.shop
	if site {
		work, words = onSite, w.site
	}
	rest := func(text string) string { return strings.Trim(words.ReplaceAllString(text, " "), " :,;/-–—") }
	if h.group, h.sub = rest(h.group), rest(h.sub); h.sub == "" {
		h.group, h.sub = "", h.group
	}
	h.whole = strings.TrimSpace(h.group + " " + h.sub)
	return workHead{work, h}
}

// both holds where the headings speak of both works, which few do.
func (w *workWords) both(heads []columnHead) bool {
	tells := func(work *regexp.Regexp) bool {
		return slices.ContainsFunc(heads, func(h columnHead) bool { return work.MatchString(h.whole) })
	}
	return tells(w.shop) && tells(w.site)
}

// bidsIn lists what a column of a table with two works could be: there the day on which
// panels are set is none of work.
func (r *reader) bidsIn(h workHead) []guess {
	if words := r.head.works.set.FindString(h.head.whole); words != "" && h.work != inShop {
		return []guess{{slot: unwrapped, score: 1, words: strings.ToLower(words)}}
	}
	return r.bids(h.head)
}

// workHead is the work that a heading is of, "" for none, and the heading without it.
type workHead struct {
	work string
	head columnHead
}

// works gives the works of headings, where a table tells the materials of both; nil
// for all other tables. A work that is written over one column is that of the next
// ones too, as far as nothing stands over them.
func (r *reader) works(heads []columnHead, over func(columnHead) string) []workHead {
	if !r.head.works.both(heads) {
		return nil
	}
	var works []workHead
	telling, before := map[string]bool{}, ""
	for _, h := range heads {
		one := workHead{"", h}
		if _, named := r.named(h.whole); !named {
			one = r.head.works.of(h)
		}
		switch above := over(h); {
		case above != "":
			before = r.head.works.of(columnHead{whole: above}).work
		case one.work == "" && h.group == "":
			one.work = before
		}
		works = append(works, one)
		if list := r.bids(one.head); one.work != "" && len(list) > 0 && isOwn(list[0].slot) && list[0].score >= sureMaterial {
			telling[one.work] = true
		}
	}
	if len(telling) < 2 {
		return nil
	}
	return works
}

// unwrapped is the slot of the day on which work from a shop is unwrapped or set.
const unwrapped = "unwrapped"

// ofBoth are the columns that tell of what came from the shop though more was put
// over it on site: the others are of the joint as it was left.
var ofBoth = map[string]bool{
	"mark": true, "group": true, "place": true, "order": true, "substrate": true, "front": true, "cover": true, unwrapped: true,
}

// worksOf are the tables by which a row is read: one for each of its works, that of
// the shop or of the field first, or the table itself.
func (r *reader) worksOf(t *table, row int) []*table {
	if t.strip > 0 {
		return r.stripWorks(t, row)
	}
	if !slices.ContainsFunc(t.cols, func(c Column) bool { return c.work != "" }) {
		return []*table{t}
	}
	shop, site := r.worked(t, row, inShop), r.worked(t, row, onSite)
	switch {
	case shop && site:
		return []*table{t.work(inShop, true), t.work(onSite, true)}
	case shop:
		return []*table{t.work(inShop, false)}
	}
	return []*table{t.work(onSite, false)}
}

// worked holds for a row that names a material of a work.
func (r *reader) worked(t *table, row int, work string) bool {
	for i, c := range t.cols {
		words := text(t.sheet, row, t.nums[i])
		if c.work == work && isOwn(c.Slot) && !r.words.isBlank(words) && !r.words.isNone(words) {
			return true
		}
	}
	return false
}

// isOwn holds for the columns of a row's own material.
func isOwn(slot string) bool { return slot == "material" || slot == "tag" }

// work is the table as one of its works sees it. Beside another, that of the shop has
// no part in the joint, and that of the site goes on it.
func (t *table) work(work string, beside bool) *table {
	w := *t
	w.by, w.beside, w.cols = work, beside, slices.Clone(t.cols)
	dated := slices.ContainsFunc(t.cols, func(c Column) bool { return c.work == onSite && c.Slot == "install" })
	for i := range w.cols {
		c := &w.cols[i]
		ours := c.work == work || c.work == "" && (work == onSite || !beside || ofBoth[c.Slot])
		switch {
		case c.Slot == unwrapped && work == inShop, c.Slot != unwrapped && ours:
		case c.Slot == unwrapped && !dated:
			c.Slot = "install"
		case work == onSite && beside && isOwn(c.Slot):
			c.Slot = "substrate"
		default:
			c.Slot = ""
		}
	}
	return &w
}

// lineID tells the lines of a row apart: the one of a shop beside another by that word,
// those of tables that stand beside one another by a column.
func (t *table) lineID(row int) string {
	id := fmt.Sprintf("%s!%d", t.sheet.Name, row)
	if t.common != "" {
		id += " " + t.common
	}
	if t.beside && (t.by == inShop || t.by == ofField) {
		id += " " + t.by
	}
	return id
}

func tellApart(all []*table) {
	for i, t := range all {
		for _, other := range all[:i] {
			if other.kind == t.kind && other.sheet.Name == t.sheet.Name && other.first <= t.last && t.first <= other.last {
				t.common = workbook.ColumnName(t.nums[0])
			}
		}
	}
}

// settleWork tells of the work in a shop that it is done indoors and in the warm, and
// of the work over it that the shop's is its bed.
func (r *reader) settleWork(t *table, l *Line) {
	if t.strip > 0 {
		return
	}
	shop := map[string]bool{}
	for i, c := range t.cols {
		if c.work != inShop || c.Slot == "" || c.Slot == unwrapped {
			continue
		}
		if at := t.at(t.head[0], t.nums[i]); t.by == inShop && len(shop) == 0 {
			l.Signals = append(l.Signals, Said{ID: "heated", Text: c.Heading, Slot: "shelter", At: at})
		}
		shop[c.Letter] = true
	}
	ofShop := func(s Said) bool { return shop[s.At.column()] }
	switch {
	case t.beside && t.by == inShop: // "foot left loose": for the work on site
		l.Signals = slices.DeleteFunc(l.Signals, func(s Said) bool { return ofShop(s) && slices.Contains(r.head.works.Left, s.ID) })
	case t.beside:
		l.Signals = slices.DeleteFunc(l.Signals, ofShop)
		l.bedOfShop(shop, r.head.works.faced)
	}
}

// bedOfShop puts the board that came with the shop's material on it under that: work on
// site goes on "OSB faced with AB-1" where the row has AB-1 from the shop, and on what
// coats a "coated" board.
func (l *Line) bedOfShop(shop map[string]bool, faced *regexp.Regexp) {
	for i := range l.Items {
		it := &l.Items[i]
		if it.Slot != "substrate" || it.Product != "" || shop[it.At.column()] {
			continue
		}
		if faced.MatchString(it.Text) || slices.ContainsFunc(l.Items, func(o Item) bool { return o.At == it.At && l.cameWith(&o, shop) }) {
			it.Slot = "under"
		}
	}
}

// cameWith holds for a product that the row names as the shop's material too.
func (l *Line) cameWith(it *Item, shop map[string]bool) bool {
	return it.Product != "" && slices.ContainsFunc(l.Items, func(o Item) bool { return shop[o.At.column()] && o.Product == it.Product })
}

// lastOf is the last line of a row, with what each of its works says under the columns:
// a ditto may point at any of them.
func lastOf(works []Line) *Line {
	last := &works[len(works)-1]
	for _, l := range works[:len(works)-1] {
		maps.Copy(last.columns, l.columns)
	}
	return last
}

// readBy is the line of a row that read a column, the last where none did.
func readBy(works []*Line, c Column) *Line {
	for _, l := range works {
		if _, read := l.columns[c.Letter]; read {
			return l
		}
	}
	return works[len(works)-1]
}
