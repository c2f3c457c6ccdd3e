package engine

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// looks is the key of the metadata by which a rule, or a helper of rules, says
// that it looks across rows; all others look at one row and what all rows share.
const (
	looks      = "looks"
	acrossRows = "across rows"
)

// across gives the files of the modules that look across rows: they say so, or
// one says so that they refer to.
func (t *tree) across() map[string]bool {
	found := map[string]bool{}
	var packages []string
	refers := map[string][]string{}
	for file, module := range t.modules {
		refers[file] = references(module)
		if saysAcross(module) {
			packages = append(packages, packageName(module))
		}
	}
	for at := 0; at < len(packages); at++ {
		for file, paths := range refers {
			meets := func(path string) bool { return within(path, packages[at]) || within(packages[at], path) }
			if !found[file] && slices.ContainsFunc(paths, meets) {
				found[file] = true
				packages = append(packages, packageName(t.modules[file]))
			}
		}
	}
	return found
}

func saysAcross(module *ast.Module) bool {
	notes := packageNotes(module)
	return notes != nil && notes.Custom[looks] == acrossRows
}
