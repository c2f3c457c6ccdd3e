package engine

import (
	"errors"
	"fmt"
	"path"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"golang.org/x/text/language"
	"golang.org/x/text/message"

	"abut/schema"
)

const (
	pairsFolder = "knowledge"
	pairsKey    = "pairs"
	pairsSchema = "pairs.schema.json"
)

// checkPairs looks at the judgements of pairs that an office brings: a row that
// lacks its verdict, or stands under the wrong key, would never be heard.
func checkPairs(s source, have map[string]any) Problems {
	folder, _ := s.data[pairsFolder].(map[string]any)
	pairs, given := folder[pairsKey]
	if !given || path.Dir(s.path) != pairsFolder {
		return nil
	}
	if problems := againstSchema(s, pairs); problems != nil {
		return problems
	}
	knowledge, _ := have[pairsFolder].(map[string]any)
	known, _ := knowledge[pairsKey].(map[string]any)
	var problems Problems
	byFirst := pairs.(map[string]any)
	for _, a := range sortedKeys(byFirst) {
		bySecond := byFirst[a].(map[string]any)
		for _, b := range sortedKeys(bySecond) {
			problems = append(problems, misplaced(s, known, a, b, bySecond[b].([]any))...)
		}
	}
	return problems
}

// againstSchema tells the innermost mistake, at the line of its row.
func againstSchema(s source, pairs any) Problems {
	compiled, err := schema.Compile(pairsSchema)
	if err != nil {
		return Problems{{File: s.name, Message: err.Error()}}
	}
	err = compiled.Validate(pairs)
	var invalid *jsonschema.ValidationError
	if !errors.As(err, &invalid) {
		return nil
	}
	for len(invalid.Causes) > 0 {
		invalid = invalid.Causes[0]
	}
	words := invalid.ErrorKind.LocalizedString(message.NewPrinter(language.English))
	keys := append([]string{pairsFolder, pairsKey}, invalid.InstanceLocation...)
	return merger{file: s}.problem(keys, words)
}

// misplaced finds rows that name another pair than their keys, and rows whose
// pair is judged already with the keys exchanged: both would be heard, and the
// worse one would win.
func misplaced(s source, known map[string]any, a, b string, rows []any) Problems {
	keys := []string{pairsFolder, pairsKey, a, b}
	reverse, _ := known[b].(map[string]any)
	twins, _ := reverse[a].([]any)
	var problems Problems
	for _, r := range rows {
		row := r.(map[string]any)
		if row["a"] != a || row["b"] != b {
			problems = append(problems, merger{file: s}.problem(keys, fmt.Sprintf("holds a row of %v and %v", row["a"], row["b"]))...)
		}
		for _, t := range twins {
			if twin, _ := t.(map[string]any); twin["exposure"] == row["exposure"] && row["exposure"] != "runoff" {
				problems = append(problems, merger{file: s}.problem(keys,
					fmt.Sprintf("is judged already as %s, %s; give it with the keys in that order", b, a))...)
			}
		}
	}
	return problems
}
