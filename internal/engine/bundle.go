package engine

import (
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/bundle"
)

// answerRoot is the package of the bundle that other programs ask:
// data.answer.findings.
const answerRoot = "answer"

// Signing says how a bundle is signed: with a key in PEM, or a secret, and an
// algorithm of JSON Web Signature. The zero value leaves it unsigned.
type Signing struct {
	Key       string
	Algorithm string
}

// WriteBundle writes the rules and data, with an office's own in their place,
// as a bundle that any OPA loads. Rules are left out and graded as the options
// say. The same policies give the same bytes, but for a signature.
func WriteBundle(w io.Writer, opts Options, sign Signing) error {
	opts = opts.withDefaults()            // with a tree named, Load checks all
	if _, err := Load(opts); err != nil { // a bundle that does not compile helps nobody
		return err
	}
	tree, rules, err := read(opts)
	if err != nil {
		return err
	}
	rules = slices.DeleteFunc(rules, func(r Rule) bool { return slices.Contains(opts.Off, r.ID) })
	b, err := tree.bundle(rules, opts.Severity)
	if err != nil {
		return err
	}
	if sign.Key != "" {
		if err := b.GenerateSignature(bundle.NewSigningConfig(sign.Key, sign.Algorithm, ""), "", false); err != nil {
			return fmt.Errorf("sign the bundle: %w", err)
		}
	}
	if err := bundle.NewWriter(w).Write(*b); err != nil {
		return fmt.Errorf("write the bundle: %w", err)
	}
	return nil
}

func (t *tree) bundle(rules []Rule, severity map[string]string) (*bundle.Bundle, error) {
	if _, taken := t.data[answerRoot]; taken {
		return nil, Problem{Message: "data." + answerRoot + " is what a bundle answers with; choose another name for the folder"}
	}
	data := maps.Clone(t.data)
	data[answerRoot] = map[string]any{"rules": answers(rules, severity)}
	modules := []bundle.ModuleFile{moduleFile(answerRoot, []byte(answerModule(rules)))}
	count := map[string]int{}
	for _, file := range sortedKeys(t.modules) {
		name := strings.ReplaceAll(packageName(t.modules[file]), ".", "/")
		if count[name]++; count[name] > 1 {
			name = fmt.Sprintf("%s_%d", name, count[name])
		}
		modules = append(modules, moduleFile(name, t.texts[file]))
	}
	revision, err := revisionOf(modules, data)
	if err != nil {
		return nil, err
	}
	b := &bundle.Bundle{Modules: modules, Data: data}
	roots := rootsOf(t, data)
	b.Manifest = bundle.Manifest{Revision: revision, Roots: &roots}
	b.Manifest.SetRegoVersion(ast.RegoV1)
	return b, nil
}

func moduleFile(name string, text []byte) bundle.ModuleFile {
	path := "/" + name + ".rego"
	return bundle.ModuleFile{URL: path, Path: path, Raw: text}
}

// answers is what the bundle knows of each rule by its id: the words that a
// finding gets, and the severity that counts by the one a finding has.
func answers(rules []Rule, severity map[string]string) map[string]any {
	c := &collector{severity: severity}
	out := map[string]any{}
	for _, r := range rules {
		grades := map[string]any{}
		for _, own := range append(Severities(), "") {
			grades[own] = c.grade(r, own)
		}
		out[r.ID] = map[string]any{
			"grades": grades,
			"words": map[string]any{
				"rule": r.ID, "topic": r.Topic, "reason": r.Reason, "remedy": r.Remedy, "source": r.Source,
			},
		}
	}
	return out
}

// answerModule gathers the findings of all rules under one path. It names each
// rule, since OPA takes a reference by variable for one to itself.
func answerModule(rules []Rule) string {
	var text strings.Builder
	fmt.Fprintf(&text, "package %s\n\nfindings := data.lib.throughout.told(each)\n", answerRoot)
	for _, r := range rules {
		topic, name, _ := strings.Cut(r.Package, ".")
		fmt.Fprintf(&text, "\neach contains data.lib.answer.finding(data.%s.rules[%q], raw) if {\n"+
			"\tsome raw in data[%q][%q].findings\n}\n", answerRoot, r.ID, topic, name)
	}
	return text.String()
}

// rootsOf lists the first parts of all paths under data that the bundle owns.
func rootsOf(t *tree, data map[string]any) []string {
	roots := map[string]bool{}
	for key := range data {
		roots[key] = true
	}
	for _, pkg := range t.packages() {
		first, _, _ := strings.Cut(pkg, ".")
		roots[first] = true
	}
	return sortedKeys(roots)
}

// revisionOf is told by every OPA that has loaded the bundle, so that a firm
// sees which policies gave an answer.
func revisionOf(modules []bundle.ModuleFile, data map[string]any) (string, error) {
	sum := sha256.New()
	for _, m := range modules {
		fmt.Fprintf(sum, "%s\n%s\n", m.Path, m.Raw)
	}
	if err := json.NewEncoder(sum).Encode(data); err != nil {
		return "", fmt.Errorf("data of the bundle: %w", err)
	}
	return fmt.Sprintf("%x", sum.Sum(nil)[:8]), nil
}
