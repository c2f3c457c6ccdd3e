package settings

import (
	"fmt"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
)

// plain refuses what the library would pass over, and what lets a few lines
// stand for more than any memory holds. What is no YAML is told elsewhere.
func plain(raw []byte) error {
	file, err := parser.ParseBytes(raw, 0)
	if err != nil {
		return nil
	}
	for i, doc := range file.Docs {
		switch {
		case doc.Body == nil:
		case i > 0:
			return fmt.Errorf("line %d: a second document begins; put all in one", doc.Body.GetToken().Position.Line)
		default:
			var found aliases
			ast.Walk(&found, doc.Body)
			if len(found) > 0 {
				return fmt.Errorf("line %d: %s stands for a value given elsewhere; write the value itself", found[0].GetToken().Position.Line, found[0])
			}
		}
	}
	return nil
}

// aliases gathers the nodes that stand for others.
type aliases []*ast.AliasNode

// Visit implements ast.Visitor.
func (a *aliases) Visit(node ast.Node) ast.Visitor {
	if alias, ok := node.(*ast.AliasNode); ok {
		*a = append(*a, alias)
	}
	return a
}
