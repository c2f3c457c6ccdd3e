package schedule

import (
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/workbook"
)

// wallBlock is a wall that a sheet tells in rows of its own: its code with what it is, and
// below that one numbered layer to a row.
type wallBlock struct {
	code   string
	layers []workbook.Row
}

// fewestBlocks is how many such walls a sheet has at least: one may be a numbered note.
const fewestBlocks = 2

// wallBlocks finds the walls of a sheet that are told so.
func (r *reader) wallBlocks(s *workbook.Sheet) []wallBlock {
	var out []wallBlock
	code, layers, last := "", []workbook.Row(nil), 0
	flush := func() {
		if code != "" && r.areLayers(layers) {
			out = append(out, wallBlock{code, layers})
		}
		code, layers = "", nil
	}
	for _, row := range s.Rows {
		first, rest := numberedRow(row)
		switch head := wallHead.FindStringSubmatch(first + " " + rest); {
		case isItem(row):
			flush()
		case code != "" && row.Number == last+1 && layerNumber(first) == len(layers)+1 && rest != "":
			layers = append(layers, row)
		case head != nil:
			flush()
			code = head[1]
		default:
			flush()
		}
		last = row.Number
	}
	flush()
	if len(out) < fewestBlocks {
		return nil
	}
	return out
}

// wallHead opens such a block: "W3 | Brick on block", "EX-2: metal panel, offices".
var wallHead = regexp.MustCompile(`^([A-Z]{1,4}[- ]?\d{1,3}[a-z]?)(?:\s*[:–—-]\s*|\s+)\pL`)

// mostCells is how many cells such a row fills at most: number, material, thickness and a
// remark. With more of them, or a date, it is an item of a schedule, with cells that are
// headed.
const mostCells = 4

func isItem(row workbook.Row) bool {
	n := 0
	for c := range filled(row.Cells) {
		if n++; n > mostCells || c.Kind == workbook.Date {
			return true
		}
	}
	return false
}

// numberedRow parts a row into its first cell and the words of the others.
func numberedRow(row workbook.Row) (first, rest string) {
	words := textsOf(row.Cells)
	if len(words) == 0 {
		return "", ""
	}
	return words[0], strings.Join(words[1:], " ")
}

// layerNumber reads "4" and "4.", 0 for no number.
func layerNumber(text string) int {
	n := 0
	for _, c := range strings.TrimRight(text, ".)") {
		if c < '0' || c > '9' || n > 99 {
			return 0
		}
		n = n*10 + int(c-'0')
	}
	return n
}

// areLayers holds for rows of which at least half name a material.
func (r *reader) areLayers(rows []workbook.Row) bool {
	named := 0
	for _, row := range rows {
		if _, words := numberedRow(row); len(r.lex.named(words)) > 0 {
			named++
		}
	}
	return len(rows) > 1 && named*2 >= len(rows)
}

// joinLayers gives a sheet on which the layers of each wall stand in the cell of its
// first layer, as those of a list of walls do, and keeps the rows of those.
func (r *reader) joinLayers(s workbook.Sheet) workbook.Sheet {
	blocks := r.wallBlocks(&s)
	metric := inMillimeters(blocks)
	gone := map[int]bool{}
	joined := map[int]workbook.Row{}
	for _, b := range blocks {
		var words []string
		for i, row := range b.layers {
			_, layer := numberedRow(row)
			words, gone[row.Number] = append(words, r.oneLayer(layer, metric)), i > 0
		}
		first := b.layers[0]
		first.Cells = nil
		for c := range filled(b.layers[0].Cells) {
			if first.Cells = append(first.Cells, c); len(first.Cells) == 2 {
				break
			}
		}
		first.Cells[0].Value, first.Cells[0].Kind = b.code, workbook.Text
		first.Cells[1].Value, first.Cells[1].Kind = strings.Join(words, " / "), workbook.Text
		joined[first.Number] = first
		r.blocks[s.Name] = append(r.blocks[s.Name], first.Number)
	}
	if len(blocks) == 0 {
		return s
	}
	s.Rows = slices.DeleteFunc(slices.Clone(s.Rows), func(row workbook.Row) bool { return gone[row.Number] })
	for i := range s.Rows {
		if row, ok := joined[s.Rows[i].Number]; ok {
			s.Rows[i] = row
		}
	}
	return s
}

// oneLayer writes a layer as a list of them in one cell has it: the first of several
// products that may be it, and its thickness with the unit.
func (r *reader) oneLayer(layer string, metric bool) string {
	parts := severalTags.Split(layer, -1)
	if !slices.ContainsFunc(parts, func(part string) bool { return !r.isCode(part) }) {
		return parts[0]
	}
	if metric {
		layer = bareThick.ReplaceAllString(layer, "$1 mm $2")
	}
	return strings.ReplaceAll(layer, " / ", " or ")
}

// bareThick is a figure without a unit that a layer begins with, as those of drawings in
// millimeters do: "140 steel stud", and never "20 ga. stud".
var bareThick = regexp.MustCompile(`^(\d{2,3})\s+(\pL{4}|[A-Z]{3}\b|\pL[^\s.]*-\pL)`)

// inches are what drawings in inches have beside their figures.
var inches = regexp.MustCompile(`\d\s*(?:"|”|in\b|-?inch)|\d/\d|\d\s*(?:ga|o\.?c)\b`)

// inMillimeters holds for layers of which many begin with a figure of millimeters and
// none tells inches (common practice of metric drawings: lengths without a unit are mm).
func inMillimeters(blocks []wallBlock) bool {
	all, bare := 0, 0
	for _, b := range blocks {
		for _, row := range b.layers {
			_, layer := numberedRow(row)
			if inches.MatchString(layer) {
				return false
			}
			if all++; bareThick.MatchString(layer) {
				bare++
			}
		}
	}
	return bare*3 >= all
}

// tablesOfBlocks makes a table of each wall of a sheet that is told in rows of its own;
// what the sheet begins with tells from which side the layers are counted.
func (r *reader) tablesOfBlocks(s *workbook.Sheet) []*table {
	rows := r.blocks[s.Name]
	if len(rows) == 0 {
		return nil
	}
	var out []*table
	first, rest := numberedRow(s.Rows[0])
	title := strings.TrimSpace(first + " " + rest)
	for _, row := range rows {
		cells := s.Row(row)
		t := &table{sheet: s, kind: kindSchedule, head: []int{row}, first: row, last: row, end: row, nums: []int{cells[0].Col, cells[1].Col}}
		t.cols = []Column{
			{Letter: workbook.ColumnName(t.nums[0]), Slot: "mark", Confidence: 0.8, Why: "the code of a wall stands over its layers"},
			{Letter: workbook.ColumnName(t.nums[1]), Heading: title, own: title, Slot: "layers", Confidence: 0.8, Why: "numbered layers stand under the code of their wall"},
		}
		out = append(out, t)
	}
	return out
}
