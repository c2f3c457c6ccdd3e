package schedule

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
)

// tagRun is a run of tags told by its ends: "FS-1 to FS-4", "FS-1 thru 4".
var tagRun = regexp.MustCompile(`\b([A-Za-z]{1,6}[-./ ]?)(\d{1,3})\s+(?:to|thru|through)\s+([A-Za-z]{1,6}[-./ ]?)?(\d{1,3})\b`)

// runsWritten lists each product of a run of tags whose ends the workbook has.
func (r *reader) runsWritten(text string) string {
	return tagRun.ReplaceAllStringFunc(text, func(run string) string {
		m := tagRun.FindStringSubmatch(run)
		from, _ := strconv.Atoi(m[2]) // digits, by the pattern
		to, _ := strconv.Atoi(m[4])
		if m[3] != "" && !strings.EqualFold(m[1], m[3]) || !r.isProduct(m[1]+m[2]) || !r.isProduct(m[1]+m[4]) {
			return run
		}
		var tags []string
		for n := from; n <= to; n++ {
			if tag := fmt.Sprintf("%s%0*d", m[1], len(m[2]), n); r.isProduct(tag) {
				tags = append(tags, tag)
			}
		}
		if len(tags) == 0 { // "FS-4 to FS-1"
			return run
		}
		return strings.Join(tags, ", ")
	})
}

// isProduct holds for a tag of the product data.
func (r *reader) isProduct(tag string) bool {
	_, known := r.lex.tags[fold(tag)]
	return known
}
