// Package build compiles policies for package plan.
package build

import (
	"context"
	"encoding/json"
	"fmt"
	"maps"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/bundle"
	"github.com/open-policy-agent/opa/v1/compile"
	"github.com/open-policy-agent/opa/v1/ir"

	"abut/internal/plan"
)

// Program compiles modules, by file name, for the rules that will be asked for:
// contact/epdm/findings.
func Program(modules map[string]string, rules []string) (*plan.Program, error) {
	b := &bundle.Bundle{Data: map[string]any{}}
	b.Manifest.SetRegoVersion(ast.RegoV1)
	for _, name := range slices.Sorted(maps.Keys(modules)) {
		parsed, err := ast.ParseModuleWithOpts(name, modules[name], ast.ParserOptions{RegoVersion: ast.RegoV1})
		if err != nil {
			return nil, fmt.Errorf("parse %s: %w", name, err)
		}
		b.Modules = append(b.Modules, bundle.ModuleFile{URL: name, Path: name, Raw: []byte(modules[name]), Parsed: parsed})
	}
	c := compile.New().WithTarget(compile.TargetPlan).WithBundle(b).WithEntrypoints(rules...).
		WithPruneUnused(true).WithRegoVersion(ast.RegoV1)
	if err := c.Build(context.Background()); err != nil {
		return nil, fmt.Errorf("plan the policies: %w", err)
	}
	var policy ir.Policy
	if err := json.Unmarshal(c.Bundle().PlanModules[0].Raw, &policy); err != nil {
		return nil, fmt.Errorf("read the plan of the policies: %w", err)
	}
	return plan.Compile(&policy)
}
