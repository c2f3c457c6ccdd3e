package engine

import "github.com/open-policy-agent/opa/v1/ast"

// How deep things lie within one another, as OPA counts them, at most; the
// built-in rules come to a tenth of the one and to half of the other. Each body
// (of a rule, a comprehension, an every) within a body doubles the time that
// OPA takes to compile it.
const (
	maxDepth  = 250
	maxBodies = 8
)

// nested finds the first expression that lies so deep that OPA would compile
// it without end.
func nested(module *ast.Module) Problems {
	var problems Problems
	var at *ast.Location
	depth, bodies := 0, 0
	ast.NewBeforeAfterVisitor(func(x any) bool {
		if node, ok := x.(ast.Node); ok && node.Loc() != nil {
			at = node.Loc()
		}
		if _, ok := x.(ast.Body); ok {
			bodies++
		}
		if problems == nil && (depth == maxDepth || bodies > maxBodies) {
			problems = Problems{located(at, "its expressions lie too deep within one another; split them into helpers")}
		}
		depth++
		return false
	}, func(x any) {
		if _, ok := x.(ast.Body); ok {
			bodies--
		}
		depth--
	}).Walk(module)
	return problems
}
