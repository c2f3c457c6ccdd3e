package engine

import (
	"regexp"
	"strings"
	"testing"
)

// leastLesson is the least length of a description in characters: a short one
// does not tell a young reviewer why it happens and what it looks like.
const leastLesson = 200

// TestRulesTeach wants of each rule what `abut rules ID` is for: the mechanism
// at some length, and one sentence that begins with "It does not apply".
func TestRulesTeach(t *testing.T) {
	rules, err := Catalogue(Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range rules {
		t.Run(r.ID, func(t *testing.T) { teaches(t, r) })
	}
}

func teaches(t *testing.T, r Rule) {
	t.Helper()
	text := strings.Join(strings.Fields(r.Description), " ")
	if n := len([]rune(text)); n < leastLesson {
		t.Errorf("%s: the description has %d characters, less than %d", r.File, n, leastLesson)
	}
	if !regexp.MustCompile(`(^|[.!?] )It does not apply `).MatchString(text) {
		t.Errorf("%s: no sentence of the description begins with \"It does not apply\"", r.File)
	}
}
