package schedule

import (
	"strings"

	"abut/internal/regexp"
)

// A list of jobs with strokes between, and the list of their figures: "sealants /
// primers / coatings 200 / 300 / 90 g/L".
var (
	namesByStroke   = regexp.MustCompile(`\pL[\pL-]*(?: \pL[\pL-]*)?(?:\s*/\s*\pL[\pL-]*(?: \pL[\pL-]*)?)+`)
	figuresByStroke = regexp.MustCompile(`\d[\d.]*(?:\s*/\s*\d[\d.]*)+`)
)

// inParallel cuts a sentence that gives a list of figures for a list of jobs into one
// sentence for each; nil for others, and where the two lists are not equally long.
func (r *reader) inParallel(sentence string) []string {
	figures := figuresByStroke.FindAllStringIndex(sentence, -1)
	if len(figures) != 1 {
		return nil
	}
	values := byStroke(sentence[figures[0][0]:figures[0][1]])
	for _, names := range namesByStroke.FindAllStringIndex(sentence, -1) {
		jobs := byStroke(sentence[names[0]:names[1]])
		if len(jobs) != len(values) || !r.allJobs(jobs) {
			continue
		}
		var out []string
		for i, job := range jobs {
			one := sentence[:figures[0][0]] + values[i] + sentence[figures[0][1]:]
			out = append(out, strings.Replace(one, sentence[names[0]:names[1]], job, 1))
		}
		return out
	}
	return nil
}

// allJobs holds where each of the words is one for the job of a material.
func (r *reader) allJobs(words []string) bool {
	for _, w := range words {
		if len(r.rolesIn(w)) == 0 {
			return false
		}
	}
	return true
}

func byStroke(list string) []string {
	out := strings.Split(list, "/")
	for i := range out {
		out[i] = strings.TrimSpace(out[i])
	}
	return out
}
