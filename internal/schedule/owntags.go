package schedule

import (
	"fmt"
	"slices"
	"strings"

	"abut/internal/regexp"
)

// ownTags makes a schedule its own product data where the workbook has no other:
// a code that stands beside a material, again and again, stands for it in the
// cells of other rows too.
func (r *reader) ownTags(t *table) {
	code, name := t.codeColumn(r), t.column("material")
	if code < 0 || name == 0 {
		return
	}
	last := ""
	for row := t.first; row <= t.last; row++ {
		tag, words := text(t.sheet, row, t.nums[code]), text(t.sheet, row, name)
		if !r.words.isDitto(words) && words != "" {
			last = words
		}
		if _, known := r.lex.tags[fold(tag)]; known || t.ownCells(row) < 2 || !codeShape.MatchString(tag) || last == "" {
			continue
		}
		p := newProduct(tag, t.sheet.Name, row)
		p.Texts["type"] = last
		p.Cells["type"] = t.at(row, name).Cell
		r.identify(&p)
		r.ownFigures(t, row, &p)
		r.sched.Products = append(r.sched.Products, p)
		r.lex.add(tag, len(r.sched.Products)-1)
	}
	t.cols[code].Slot, t.cols[code].Why = "tag", "codes that stand for the materials beside them"
	r.lex.done(r.head.begun)
}

var codeShape = regexp.MustCompile(`^[A-Za-z0-9]{1,4}[-.][A-Za-z0-9]{1,4}$`)

// codeColumn finds the column of short codes that repeat from row to row.
func (t *table) codeColumn(r *reader) int {
	for i, c := range t.cols {
		if c.Slot != "mark" && c.Slot != "tag" && c.Slot != "" {
			continue
		}
		n, seen := 0, map[string]bool{}
		for row := t.first; row <= t.last; row++ {
			if v := text(t.sheet, row, t.nums[i]); codeShape.MatchString(v) {
				n++
				seen[v] = true
			}
		}
		if n >= 4 && len(seen)*3 <= n*2 {
			return i
		}
	}
	return -1
}

// ownFigures takes the limits that stand in the row itself.
func (r *reader) ownFigures(t *table, row int, p *Product) {
	for i, col := range t.nums {
		fig, ok := figureOf[t.cols[i].Slot]
		cell, there := t.sheet.At(row, col)
		if ok && there {
			p.Texts[t.cols[i].Slot] = strings.TrimSpace(cell.Value)
		}
		if !ok || !there || r.words.isDitto(cell.Value) || t.cols[i].Slot == "lap" {
			continue
		}
		src := source{slot: t.cols[i].Slot, unit: r.unitIn(t.cols[i].Heading, fig.kind, t.cols[i].Slot), at: t.at(row, col), cell: cell, text: strings.TrimSpace(cell.Value)}
		if f, said := r.figure(src, fig.kind); said && f.Problem == "" {
			p.Figures[fig.key] = f
			p.Cells[t.cols[i].Slot] = src.at.Cell
		}
	}
}

// upperCode is a code in capitals, as keys of products have.
var upperCode = regexp.MustCompile(`^[A-Z]{1,5}[ .-]?\d{0,3}[A-Z]?$`)

// codesOnly holds for schedules in whose tag columns nearly every cell is a
// product of the workbook's data.
func (r *reader) codesOnly(all []*table) bool {
	filled, known := 0, 0
	for _, t := range all {
		col := t.column("tag")
		if t.kind != kindSchedule || col == 0 || t.column(ownData) > 0 {
			continue
		}
		for row := t.first; row <= t.last; row++ {
			words := text(t.sheet, row, col)
			if t.ownCells(row) < 2 || r.words.isBlank(words) || r.words.isDitto(words) {
				continue
			}
			filled++
			if anyProduct(r.lex.findTags(words)) {
				known++
			}
		}
	}
	return filled >= minCodes && known*10 >= filled*8
}

// minCodes is how many tags tell that a column holds nothing else.
const minCodes = 6

func anyProduct(found []mention) bool {
	return slices.ContainsFunc(found, func(m mention) bool { return m.product >= 0 })
}

// strayCode takes a code in a column of tags that nothing explains for a tag that
// the product data lacks.
func (r *reader) strayCode(l *Line, c source) {
	if c.slot != "tag" || !r.coded || !upperCode.MatchString(c.text) || r.words.isNone(c.text) {
		return
	}
	if slices.ContainsFunc(l.Items, func(it Item) bool { return it.At == c.at }) {
		return
	}
	if f := r.vocab.Family(l.Texts["material"], l.Texts["type"]); f != "" && !strings.HasSuffix(f, "-unspecified") {
		return // the row says itself what it is
	}
	it := r.item(mention{product: -1, tag: c.text, unknownTag: true}, c)
	it.ID, it.Text, it.Polarity = fmt.Sprintf("%s/%d", l.ID, len(l.Items)+1), c.text, "yes"
	l.Items = append(l.Items, it)
}
