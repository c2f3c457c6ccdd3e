package material

import (
	"encoding/json"
	"os"
	"slices"
	"strings"
	"testing"

	"abut/policies"
)

// wanted is a text with the materials that it names; family is null where the
// words leave it open.
type wanted struct {
	Text      string `json:"text"`
	Materials []struct {
		Words  string   `json:"words"`
		Family *string  `json:"family"`
		Also   []string `json:"also"` // families that the author takes as right too
	} `json:"materials"`
	Note string `json:"note"`
}

const mustBeRight = 0.95

func TestPhrases(t *testing.T) {
	raw, err := os.ReadFile("testdata/phrases.json")
	if err != nil {
		t.Fatal(err)
	}
	var all []wanted
	if err := json.Unmarshal(raw, &all); err != nil {
		t.Fatal(err)
	}
	v, err := Load(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	choices, right := choicesOf(t), 0
	for _, w := range all {
		if why := w.wrong(v.Find(w.Text), choices); why != "" {
			t.Logf("%q: %s", w.Text, why)
			continue
		}
		right++
	}
	t.Logf("%d of %d right", right, len(all))
	if float64(right) < mustBeRight*float64(len(all)) {
		t.Errorf("%d of %d right, want %.0f%%", right, len(all), 100*mustBeRight)
	}
}

// choicesOf reads the families that the phrases were written for.
func choicesOf(t *testing.T) map[string]bool {
	t.Helper()
	raw, err := os.ReadFile("testdata/choices.txt")
	if err != nil {
		t.Fatal(err)
	}
	return set(strings.Fields(string(raw)))
}

// wrong says what is wrong with the materials found, "" for nothing: every
// family wanted is found where its words stand, and nothing is made up.
func (w wanted) wrong(found []Material, choices map[string]bool) string {
	used := make([]bool, len(found))
	for _, m := range w.Materials {
		at := -1
		for i, f := range found {
			if !used[i] && overlaps(w.Text, m.Words, f) && fits(m.Family, m.Also, f, choices) {
				at = i
				break
			}
		}
		switch {
		case at >= 0:
			used[at] = true
		case m.Family != nil:
			return "missing " + *m.Family + " (" + m.Words + "), found " + list(found)
		}
	}
	for i, f := range found {
		if !used[i] && f.Family != "" && !f.Generic && choices[f.Family] && !w.names(f.Family) {
			return "not wanted: " + f.Family + " (" + f.Text + ")"
		}
	}
	return ""
}

// names holds where the text is said to name the family: a standard beside the
// words that names it again is no mistake.
func (w wanted) names(family string) bool {
	for _, m := range w.Materials {
		if m.Family != nil && *m.Family == family {
			return true
		}
	}
	return false
}

// fits: where the words leave the family open, none of the families that could
// be chosen may be found.
func fits(family *string, also []string, f Material, choices map[string]bool) bool {
	if slices.Contains(also, f.Family) {
		return true
	}
	if family == nil {
		return f.Family == "" || f.Generic || !choices[f.Family]
	}
	return f.Family == *family
}

func list(found []Material) string {
	out := ""
	for _, f := range found {
		out += "[" + f.Text + "] " + f.Family + "; "
	}
	return out
}

// overlaps holds where the words stand, in any case, within or around what was found.
func overlaps(text, words string, f Material) bool {
	low, w := strings.ToLower(text), strings.ToLower(words)
	for from := 0; ; {
		i := strings.Index(low[from:], w)
		if i < 0 {
			return from == 0 // words are told in other order: any place will do
		}
		if start := from + i; start < f.End && f.Start < start+len(w) {
			return true
		}
		from += i + 1
	}
}
