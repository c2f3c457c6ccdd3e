package engine

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// capabilities leaves out network, environment, clock and chance: a policy
// from a stranger sees the document and nothing else, and the same document
// always gives the same findings. What deals with addresses, keys, tokens and
// queries goes too: no schedule needs it, and some of it fills the memory.
func capabilities() *ast.Capabilities {
	c := ast.CapabilitiesForThisVersion()
	c.Builtins = slices.DeleteFunc(slices.Clone(c.Builtins), func(b *ast.Builtin) bool {
		family, _, _ := strings.Cut(b.Name, ".")
		return b.IsNondeterministic() || slices.Contains([]string{"http", "net", "opa", "rand", "uuid", "crypto", "io", "graphql", "providers", "rego"}, family)
	})
	c.AllowNet = []string{} // nil would allow every host
	return c
}

// checkStages find mistakes in policies and change nothing in them.
func checkStages() []ast.StageID {
	return []ast.StageID{
		ast.StageCheckUnusedImports, ast.StageCheckKeywordOverrides, ast.StageCheckDuplicateImports,
		ast.StageCheckVoidCalls, ast.StageCheckRuleConflicts, ast.StageCheckUndefinedFuncs, ast.StageCheckRecursion,
		ast.StageCheckTypes, ast.StageCheckDeprecatedBuiltins, ast.StageBuildRequiredCapabilities,
	}
}

// compile leaves out the checks of what was checked before.
func compile(modules map[string]*ast.Module, holds func([]string) (bool, error), skip ...ast.StageID) (*ast.Compiler, Problems) {
	compiler := ast.NewCompiler().
		WithSkipStages(skip...).
		WithStrict(true).
		WithCapabilities(capabilities()).
		WithDefaultRegoVersion(ast.RegoV1).
		WithPathConflictsCheck(holds)
	compiler.Compile(modules)
	if compiler.Failed() {
		return nil, problemsOf("", compiler.Errors)
	}
	return compiler, nil
}

// holds says whether the data has something at a path: data would hide a rule
// of the same name.
func (t *tree) holds(path []string) (bool, error) {
	var here any = t.data
	for _, key := range path {
		object, ok := here.(map[string]any)
		if !ok {
			return false, nil
		}
		if here, ok = object[key]; !ok {
			return false, nil
		}
	}
	return true, nil
}
