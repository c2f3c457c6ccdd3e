package schedule

import (
	"strings"

	"abut/internal/workbook"
)

// mostGlossed is how long a heading may be that only a note explains, and leastHeaded
// how many texts stand in a row of headings.
const (
	mostGlossed = 12
	leastHeaded = 4
)

// glosses lists what notes say of words that stand in a row as headings do, before
// any table is known.
func (r *reader) glosses(b *workbook.Book) map[string]string {
	heads, out := map[string]bool{}, map[string]string{}
	for i := range b.Sheets {
		for _, row := range b.Sheets[i].Rows {
			if n, _ := r.ownTexts(&b.Sheets[i], row.Number); n < leastHeaded {
				continue
			}
			for _, c := range row.Cells {
				if v := strings.TrimSpace(c.Value); v != "" && len(v) <= mostGlossed && !strings.Contains(v, " ") && !r.isFigure(v) {
					heads[v] = true
				}
			}
		}
	}
	for i := range b.Sheets {
		for _, row := range b.Sheets[i].Rows {
			if n, _ := r.ownTexts(&b.Sheets[i], row.Number); n >= leastHeaded {
				continue
			}
			for _, c := range row.Cells {
				for _, e := range r.explanations(c.Value, heads) {
					if out[e.word] == "" {
						out[e.word] = e.says
					}
				}
			}
		}
	}
	return out
}

// byGloss lists what a note says that a heading stands for, which says nothing itself.
func (r *reader) byGloss(heading string) []guess {
	says := meant(r.glossed[heading])
	if says == "" {
		return nil
	}
	list := r.guesses(says, "", says)
	for i := range list {
		list[i].noted = true
	}
	return list
}
