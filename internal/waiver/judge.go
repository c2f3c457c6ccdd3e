package waiver

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"time"
	"unicode"

	"abut/internal/schedule"
)

// slots are the keys that a waiver may have.
func slots() []string {
	return []string{"rule", "mark", "place", "material", "reason", "reference", "by", "until", "content", "workbook"}
}

// judge settles what can be told of a waiver before any finding is held
// against it: that it is badly written, or has expired.
func (s *Set) judge(w *schedule.Waiver, settings bool) {
	w.Name = name(w)
	if w.Until == "" && settings {
		if day, err := time.Parse(time.DateOnly, w.Texts["until"]); err == nil {
			w.Until = day.Format(time.DateOnly)
		}
	}
	if w.Problem == "" {
		w.Problem = s.problem(w)
	}
	switch {
	case w.Problem != "":
		w.State = bad
	case w.Until < s.options.On.Format(time.DateOnly):
		w.State = expired
		w.At = at(w, "until")
	}
}

// problem says what is wrong with a waiver, and puts its address at the text
// that is wrong.
func (s *Set) problem(w *schedule.Waiver) string {
	for _, key := range slices.Sorted(maps.Keys(w.Texts)) {
		if !slices.Contains(slots(), key) {
			w.At = at(w, key)
			return fmt.Sprintf("it has the key %q; use %s", key, strings.Join(slots(), ", "))
		}
	}
	for _, need := range []struct{ slot, what string }{
		{"rule", "the id of a rule"}, {"reason", "a reason"}, {"by", "who accepted it, by role"}, {"until", "the last day on which it holds"},
	} {
		if empty(w.Texts[need.slot]) {
			w.At = at(w, need.slot)
			return "it does not give " + need.what
		}
	}
	if empty(w.Texts["mark"]) && empty(w.Texts["place"]) && empty(w.Texts["content"]) {
		return "it names no mark, place or content, so it would hold for every line"
	}
	if rule := w.Texts["rule"]; s.topics[rule] == "" {
		w.At = at(w, "rule")
		return fmt.Sprintf("there is no rule %q, or it is off; a file or cell that could not be read is never waived", rule)
	}
	if w.Until == "" {
		w.At = at(w, "until")
		return fmt.Sprintf("%q is not read as a day; write it as 2027-01-31", w.Texts["until"])
	}
	return ""
}

// empty holds for texts without a letter or digit, such as a dash.
func empty(text string) bool {
	return strings.IndexFunc(text, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }) < 0
}

// at is where a text of a waiver stands, or the waiver itself.
func at(w *schedule.Waiver, slot string) schedule.At {
	if where, ok := w.Where[slot]; ok {
		return where
	}
	return w.At
}

// name is what a report calls a waiver: its rule and the line it is for.
func name(w *schedule.Waiver) string {
	subject := ""
	for _, slot := range []string{"mark", "place", "content"} {
		if text := w.Texts[slot]; !empty(text) && subject == "" {
			subject = text
		}
	}
	rule := w.Texts["rule"]
	switch {
	case empty(rule):
		return strings.TrimSpace("this waiver " + prefixed("of ", subject))
	case subject == "":
		return "the waiver of " + rule
	}
	return "the waiver of " + rule + " at " + subject
}

func prefixed(before, text string) string {
	if text == "" {
		return ""
	}
	return before + text
}

// written says where a waiver stands.
func written(file string, at schedule.At) string {
	if at.Sheet == "" {
		return fmt.Sprintf("%s, line %d", file, at.Row)
	}
	return fmt.Sprintf("%s, sheet %s, row %d", file, at.Sheet, at.Row)
}
