package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// wallTitle begins with what a block of layers is called: the code of its wall, or a word
// for one with its number or letter ("EW-2: ...", "Assembly 3 - ...", "Wall type B - ...").
var wallTitle = regexp.MustCompile(`^(?:[A-Z]{1,4}[- ]?\d{1,3}[a-z]?|(?i:(?:(?:exterior|ext\.?|outside|foundation) )?(?:wall|assembly|build-?up|construction|partition)(?: (?:type|assembly|no\.?))?) #?(?:[A-Z]{0,3}-?\d{1,3}[a-z]?|[A-Z]))(?:$|\s*[:,–—(-]|\s)`)

// fewestBlocks is how many such blocks a sheet has at least: one may be a numbered note.
const fewestBlocks = 2

// joinBlockHeads gives a sheet on which the line over each block of rows stands in one
// cell where it was typed in two, the code of the wall and what that is: "W3 | Brick on
// block". Such a line stands below a gap or a heading and above a fuller row, and there are
// several.
func joinBlockHeads(s workbook.Sheet) workbook.Sheet {
	heads := blockHeads(&s)
	if len(heads) < fewestBlocks {
		return s
	}
	s.Rows = slices.Clone(s.Rows)
	for _, i := range heads {
		row := &s.Rows[i]
		own := slices.Collect(filled(row.Cells))
		row.Cells = slices.Clone(row.Cells)
		for k := range row.Cells {
			switch row.Cells[k].Col {
			case own[0].Col:
				row.Cells[k].Value = strings.TrimSpace(own[0].Value) + " " + strings.TrimSpace(own[1].Value)
				row.Cells[k].Kind = workbook.Text
			case own[1].Col:
				row.Cells[k].Value = ""
			}
		}
	}
	return s
}

// blockHeads are the places of such lines among the rows of a sheet.
func blockHeads(s *workbook.Sheet) []int {
	var out []int
	last, full := 0, 0
	for i, row := range s.Rows {
		n := countFilled(row.Cells)
		opens := row.Number > last+1 || full >= fewestItem && len(out) == 0
		if n == 2 && opens && i+1 < len(s.Rows) && isBlockHead(&row, &s.Rows[i+1]) {
			out = append(out, i)
		}
		if n > 0 {
			last, full = row.Number, n
		}
	}
	return out
}

// isBlockHead holds for a row of two cells, a code and words, right above a fuller one.
func isBlockHead(row, next *workbook.Row) bool {
	own := slices.Collect(filled(row.Cells))
	code := strings.TrimSpace(own[0].Value)
	return own[1].Kind == workbook.Text && wordInIt.MatchString(own[1].Value) && wallTitle.FindString(code) == code &&
		next.Number == row.Number+1 && countFilled(next.Cells) >= fewestItem
}

// wordInIt holds for a text with a word in it.
var wordInIt = regexp.MustCompile(`\pL{3}`)

// titledBlock is the line right above the heading of a table, where that names the wall
// whose layers stand below: each block of a schedule may repeat its headings.
func (t *table) titledBlock() (title workbook.Cell, ok bool) {
	title, ok = loneCell(t.sheet.Row(t.head[0] - 1))
	return title, ok && wallTitle.MatchString(strings.TrimSpace(title.Value))
}

// namesRemarks holds for a heading, or part of one, that is for remarks.
func (r *reader) namesRemarks(part string) bool {
	return slices.ContainsFunc(r.head.match(part), func(g guess) bool { return g.slot == "remark" && g.score >= sureHeading })
}

// notedKinds takes a column for what each thing is, headed for remarks too, for those
// where sentences stand under it: "Description of product / notes".
func (r *reader) notedKinds(t *table) {
	if t.has("material", "tag", "layers") == 0 {
		return
	}
	for i := range t.cols {
		c := &t.cols[i]
		if c.Slot != "type" || !slices.ContainsFunc(headingParts(c.Heading), r.namesRemarks) {
			continue
		}
		if is := r.contents(t, t.nums[i]); is.prose > 0 && (is.prose+is.wordy)*2 >= is.filled {
			c.Slot, c.Why = "remark", c.Why+", and sentences stand under it"
		}
	}
}
