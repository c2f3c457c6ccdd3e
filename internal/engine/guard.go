package engine

import (
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// guard keeps an office's folder from changing rules that are not its own: a
// module may not stand in, above or below a package that exists already.
type guard struct {
	owned   []string
	replace []string
}

func (g *guard) check(module *ast.Module) Problems {
	name := packageName(module)
	first, rest, _ := strings.Cut(name, ".")
	if rest == "" || first != "lib" && !slices.Contains(Topics(), first) {
		return Problems{located(module.Package.Location,
			"package "+name+": begin with a topic and a name of your own (contact.our_rule), or with lib")}
	}
	if g.replaced(module) != "" {
		return nil
	}
	for _, owned := range g.owned {
		if owned == name || strings.HasPrefix(owned, name+".") || strings.HasPrefix(name, owned+".") {
			return Problems{located(module.Package.Location,
				"package "+owned+" exists already; choose another name, or name it in the settings to replace it")}
		}
	}
	return nil
}

// replaced is the package that the settings let the module replace, or "".
func (g *guard) replaced(module *ast.Module) string {
	name := packageName(module)
	if slices.Contains(g.replace, name) && slices.Contains(g.owned, name) {
		return name
	}
	return ""
}

// packageName writes a package as in the source, without "data.".
func packageName(module *ast.Module) string {
	parts := make([]string, 0, len(module.Package.Path))
	for _, term := range module.Package.Path[1:] {
		if s, ok := term.Value.(ast.String); ok {
			parts = append(parts, string(s))
		}
	}
	return strings.Join(parts, ".")
}

func sortedKeys[V any](m map[string]V) []string {
	return slices.Sorted(maps.Keys(m))
}
