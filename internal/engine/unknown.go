package engine

import (
	"io/fs"
	"maps"
	"regexp"
	"slices"
	"strings"

	"github.com/hbollon/go-edlib"
)

// nearWord is how alike a known key must be to be offered for an unknown one.
const nearWord = 0.6

// unread finds the keys of an office's data that nothing would read: a typing
// mistake in a limit must not leave the built-in one standing in silence.
type unread struct {
	file  source
	rules string // text of the office's own rules, which may read keys of their own
}

// checkKeys tells the keys of a file that neither stand in the data it goes
// over nor are named in the office's rules.
func checkKeys(s source, have map[string]any, rules string) Problems {
	return unread{file: s, rules: rules}.object(nil, have, keysOf(have), s.data)
}

// object goes through src, which lies over have; known are the keys that may
// stand there, nil for any.
func (u unread) object(at []string, have map[string]any, known []string, src map[string]any) Problems {
	var problems Problems
	open := known == nil
	var fields []string
	if open {
		fields = fieldsOf(have)
	}
	for _, key := range sortedKeys(src) {
		name := strings.TrimSuffix(key, "+")
		here := append(slices.Clone(at), key)
		if !open && !slices.Contains(known, name) && !remark(name) {
			if !u.named(name) {
				problems = append(problems, u.problem(here, name, known))
			}
			continue
		}
		within, isObject := src[key].(map[string]any)
		old, _ := have[name].(map[string]any)
		switch {
		case !isObject:
		case open && fields != nil:
			problems = append(problems, u.object(here, old, fields, within)...)
		case old != nil && len(here) > 1 && isTable(old):
			problems = append(problems, u.object(here, old, nil, within)...)
		case old != nil:
			problems = append(problems, u.object(here, old, keysOf(old), within)...)
		}
	}
	return problems
}

// named says whether a rule of the office speaks of the key.
func (u unread) named(key string) bool {
	return regexp.MustCompile(`\b` + regexp.QuoteMeta(key) + `\b`).MatchString(u.rules)
}

func (u unread) problem(here []string, name string, known []string) Problem {
	words := "data." + strings.Join(here, ".") + " is read by nothing; "
	near, err := edlib.FuzzySearchThreshold(name, known, nearWord, edlib.Levenshtein)
	if err == nil && near != "" {
		words += "is " + near + " meant?"
	} else {
		words += "take it out, or name it in a rule of your own"
	}
	return Problem{File: u.file.name, Line: u.file.lineOfKey(here), Message: words}
}

// remark: a key for the reader of the file alone.
func remark(key string) bool {
	return slices.Contains([]string{"note", "source", "basis"}, key) ||
		strings.HasSuffix(key, "_note") || strings.HasSuffix(key, "_source")
}

// isTable: an object whose values are all of one kind, as families by their
// name, takes any key; a record, with values of several kinds, does not.
func isTable(object map[string]any) bool {
	kinds := map[string]bool{}
	scalar := false
	for key, value := range object {
		if remark(key) {
			continue
		}
		kinds[shape(value)] = true
		scalar = scalar || shape(value) == shape(0)
	}
	return len(kinds) == 1 && !(scalar && slices.ContainsFunc(keysOf(object), remark))
}

// fieldsOf gives the keys that any row of a table of objects has, nil if its
// rows are tables themselves or no objects.
func fieldsOf(table map[string]any) []string {
	fields := map[string]bool{}
	for key, row := range table {
		object, ok := row.(map[string]any)
		if !ok && !remark(key) {
			return nil
		}
		if len(object) > 0 && isTable(object) {
			return nil
		}
		for field := range object {
			fields[field] = true
		}
	}
	if len(fields) == 0 {
		return nil
	}
	return sortedKeys(fields)
}

func keysOf(object map[string]any) []string {
	return slices.Collect(maps.Keys(object))
}

// ownRules is the text of all rules of an office's folder.
func ownRules(files fs.FS, name string) (string, error) {
	sources, err := readSources(files, name, isPolicy)
	var text strings.Builder
	for _, s := range sources {
		text.Write(s.text)
		text.WriteByte('\n')
	}
	return text.String(), err
}
