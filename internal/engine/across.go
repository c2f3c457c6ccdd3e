package engine

import "github.com/open-policy-agent/opa/v1/ast"

// looks is the key of the metadata by which a rule, or a helper of rules, says
// that it looks across rows; all others look at one row and what all rows share.
const (
	looks      = "looks"
	acrossRows = "across rows"
)

// across gives the files of the modules that look across rows: they say so, or
// one says so that they refer to.
func (t *tree) across() map[string]bool {
	users := map[string][]string{}
	for file, used := range t.links() {
		for _, other := range used {
			users[other] = append(users[other], file)
		}
	}
	found := map[string]bool{}
	var mark func(file string)
	mark = func(file string) {
		if !found[file] {
			found[file] = true
			for _, user := range users[file] {
				mark(user)
			}
		}
	}
	for file, module := range t.modules {
		if saysAcross(module) {
			mark(file)
		}
	}
	return found
}

func saysAcross(module *ast.Module) bool {
	notes := packageNotes(module)
	return notes != nil && notes.Custom[looks] == acrossRows
}
