package schedule

import (
	"fmt"
	"strconv"
	"strings"

	"abut/internal/regexp"
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

// tagTail is a list of tags of which only the first is written out: "SA-1/-1L, -2",
// "ROLL-40, -40C, -HT".
var tagTail = regexp.MustCompile(`\b([A-Za-z]{1,6})-(\d{1,3}[A-Za-z]{0,3}|[A-Z]{1,4})((?:\s*[/,&]\s*-(?:\d{1,3}[A-Za-z]{0,3}|[A-Z]{1,4})\b)+)`)

// tagStem is a tag without its number, in capitals: "cured FL".
var tagStem = regexp.MustCompile(`([A-Z]{2,4})(?:[^A-Za-z0-9-]|$)`)

// tagsWritten writes out the tags that a cell of product data cuts short: those of a
// list after the first, and those of which it gives the letters alone ("HR, SA or UR").
func (r *reader) tagsWritten(text string) string {
	text = tagTail.ReplaceAllStringFunc(text, func(run string) string {
		m := tagTail.FindStringSubmatch(run)
		tags := []string{m[1] + "-" + m[2]}
		for _, tail := range strings.FieldsFunc(m[3], func(c rune) bool { return strings.ContainsRune("/,& ", c) }) {
			if !r.isProduct(m[1] + tail) {
				return run
			}
			tags = append(tags, m[1]+tail)
		}
		return strings.Join(tags, ", ")
	})
	var out strings.Builder
	last := 0
	for _, at := range tagStem.FindAllStringSubmatchIndex(text, -1) {
		tags, known := r.stems[text[at[2]:at[3]]]
		switch {
		case !known || at[0] > 0 && partOfWord(text[at[0]-1]):
			continue
		case tags == nil:
			return text // of a list with such a word nothing is written out
		}
		out.WriteString(text[last:at[0]] + strings.Join(tags, ", "))
		last = at[3]
	}
	return out.String() + text[last:]
}

func partOfWord(c byte) bool {
	return c == '-' || c >= '0' && c <= '9' || c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z'
}

// numberedTag is a tag of letters and a number.
var numberedTag = regexp.MustCompile(`^([A-Z]{2,4})-\d{1,3}[A-Za-z]?$`)

// tagStems lists the tags of products by their letters; none for those that are a word
// of the trade too ("SAM", "TWF").
func (r *reader) tagStems() map[string][]string {
	stems := map[string][]string{}
	for i := range r.sched.Products {
		tag := r.sched.Products[i].Tag
		m := numberedTag.FindStringSubmatch(tag)
		if m == nil || r.isProduct(m[1]) {
			continue
		}
		before, seen := stems[m[1]]
		switch {
		case !seen && len(r.vocab.Find(m[1])) > 0:
			stems[m[1]] = nil
		case !seen || before != nil:
			stems[m[1]] = append(before, tag)
		}
	}
	return stems
}

// isProduct holds for a tag of the product data.
func (r *reader) isProduct(tag string) bool {
	_, known := r.lex.tags[fold(tag)]
	return known
}
