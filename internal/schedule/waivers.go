package schedule

import (
	"io/fs"
	"slices"
	"strings"
	"time"
	"unicode"

	"abut/internal/knowledge"
	"abut/internal/phrase"
	"abut/internal/workbook"
)

// Waiver is an accepted finding as the workbook or the settings write it.
// Texts are by slot: rule, mark, place, material, reason, reference, by,
// until, content, workbook.
type Waiver struct {
	At      At                `json:"at"`
	Texts   map[string]string `json:"texts"`
	Where   map[string]At     `json:"where"`   // of each text
	Until   string            `json:"until"`   // yyyy-mm-dd, "" if not read
	Problem string            `json:"problem"` // why it cannot be used, "" if it can
	State   string            `json:"state"`   // held, loose, changed, expired, unused, bad; "" before findings were held against it
	Name    string            `json:"name"`    // what a report calls it
	Now     []string          `json:"now"`     // content keys of the lines that it was held against
}

// waiverWords are from policies/knowledge/waivers.json.
type waiverWords struct {
	Sheets   []string            `json:"sheets"`
	Needed   []string            `json:"needed"` // slots that a heading row must have
	Beside   []string            `json:"beside"` // and one of these
	Headings map[string][]string `json:"headings"`
}

func loadWaiverWords(fsys fs.FS) (*waiverWords, error) {
	var file struct {
		Waivers waiverWords `json:"waivers"`
	}
	if err := knowledge.Read(fsys, "words of waivers", "knowledge/waivers.json", &file); err != nil {
		return nil, err
	}
	return &file.Waivers, nil
}

// withoutWaivers reads the sheets of waivers and gives the book without what
// stands on them and on a list of earlier findings, so that none of it is taken
// for materials or notes. The order of the sheets stays.
func (r *reader) withoutWaivers(b *workbook.Book) *workbook.Book {
	rest := *b
	rest.Sheets = slices.Clone(b.Sheets)
	for i := range b.Sheets {
		s := &b.Sheets[i]
		if listsFindings(s) {
			r.listSheets[s.Name] = true
			rest.Sheets[i].Rows = nil
			continue
		}
		if s.Kind != workbook.Worksheet || s.FeedsDropDowns() || len(s.Rows) == 0 {
			continue
		}
		head, slots, missing := r.waiverHead(s)
		named := slices.Contains(r.waiverWords.Sheets, plainHeading(s.Name))
		if missing != "" && !named {
			continue
		}
		r.waiverSheets[s.Name] = head
		rest.Sheets[i].Rows = nil
		if missing != "" {
			at := At{Sheet: s.Name, Row: max(head, s.Rows[0].Number)}
			r.sched.Waivers = append(r.sched.Waivers, Waiver{At: at, Problem: "the sheet has no column for " + missing + ", so no waiver on it was read"})
			continue
		}
		r.waiverRows(s, head, slots)
	}
	return &rest
}

// waiverHead finds the heading row: the first row with several cells. It says
// which column is missing there.
func (r *reader) waiverHead(s *workbook.Sheet) (head int, slots map[int]string, missing string) {
	for _, row := range s.Rows {
		slots = map[int]string{}
		filled := 0
		for _, c := range row.Cells {
			if c.Value == "" || c.Merged {
				continue
			}
			filled++
			if slot := r.waiverWords.slot(c.Value); slot != "" && !hasValue(slots, slot) {
				slots[c.Col] = slot
			}
		}
		missing = r.waiverWords.missing(slots)
		if filled > 2 || missing == "" {
			return row.Number, slots, missing
		}
	}
	return 0, nil, r.waiverWords.Needed[0]
}

func hasValue(slots map[int]string, slot string) bool {
	for _, s := range slots {
		if s == slot {
			return true
		}
	}
	return false
}

func (w *waiverWords) slot(heading string) string {
	heading = plainHeading(heading)
	for slot, words := range w.Headings {
		if slices.Contains(words, heading) {
			return slot
		}
	}
	return ""
}

func (w *waiverWords) missing(slots map[int]string) string {
	for _, slot := range w.Needed {
		if !hasValue(slots, slot) {
			return `"` + w.Headings[slot][0] + `"`
		}
	}
	if !slices.ContainsFunc(w.Beside, func(slot string) bool { return hasValue(slots, slot) }) {
		return `"accepted by", "until" or "reference"`
	}
	return ""
}

func plainHeading(s string) string {
	words := strings.FieldsFunc(strings.ToLower(s), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	return strings.Join(words, " ")
}

func (r *reader) waiverRows(s *workbook.Sheet, head int, slots map[int]string) {
	for _, row := range s.Rows {
		if row.Number <= head {
			continue
		}
		w := Waiver{Texts: map[string]string{}, Where: map[string]At{}}
		for col, slot := range slots {
			w.Where[slot] = At{Sheet: s.Name, Row: row.Number, Cell: workbook.Ref(row.Number, col)}
			if c, ok := s.At(row.Number, col); ok && strings.TrimSpace(c.Value) != "" {
				w.Texts[slot] = strings.TrimSpace(c.Value)
			}
		}
		w.At = w.Where["rule"]
		if len(w.Texts) == 0 {
			continue
		}
		w.Until = r.lastDay(w.Texts["until"])
		r.sched.Waivers = append(r.sched.Waivers, w)
	}
}

// lastDay gives the day on which a date or span of dates ends, "" where none
// is told or where day and month could be read both ways.
func (r *reader) lastDay(text string) string {
	dates := r.phrase.Dates(text, phrase.Unknown, 0)
	if len(dates) != 1 || dates[0].State != "day" && dates[0].State != "span" || dates[0].Ambiguous || dates[0].NoYear || dates[0].To.IsZero() {
		return ""
	}
	return dates[0].To.Format(time.DateOnly)
}
