package engine

import (
	"cmp"
	"runtime"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"golang.org/x/sync/errgroup"
)

// maxGroups bounds the work that is done more than once: each group compiles
// the helpers that its rules need.
const maxGroups = 4

// group is a set of topics that are compiled together.
type group struct {
	topics   []string
	modules  map[string]*ast.Module
	compiler *ast.Compiler
}

// compileGroups compiles the topics in parallel. Compiling is most of the time
// to start and OPA does it on one processor.
func compileGroups(t *tree, rules []Rule, skip []ast.StageID) ([]group, error) {
	groups := split(t, rules, min(runtime.GOMAXPROCS(0), maxGroups))
	failed := make([]Problems, len(groups))
	var wait errgroup.Group
	for i := range groups {
		wait.Go(func() error {
			groups[i].compiler, failed[i] = compile(groups[i].modules, t.holds, skip...)
			return nil
		})
	}
	if err := wait.Wait(); err != nil {
		return nil, err
	}
	return groups, slices.Concat(failed...).asError()
}

// split puts each topic, largest first, into the group that is smallest so
// far, with every module that its rules refer to.
func split(t *tree, rules []Rule, count int) []group {
	size := map[string]int{}
	files := map[string][]string{}
	for _, r := range rules {
		size[r.Topic] += len(t.modules[r.File].Rules)
		files[r.Topic] = append(files[r.Topic], r.File)
	}
	order := sortedKeys(size)
	slices.SortStableFunc(order, func(a, b string) int { return cmp.Compare(size[b], size[a]) })
	groups := make([]group, min(count, len(order)))
	load := make([]int, len(groups))
	links := t.links()
	for i := range groups {
		groups[i].modules = map[string]*ast.Module{}
	}
	for _, topic := range order {
		i := slices.Index(load, slices.Min(load))
		load[i] += size[topic]
		groups[i].topics = append(groups[i].topics, topic)
		for _, file := range files[topic] {
			t.include(groups[i].modules, links, file)
		}
	}
	t.includeRest(groups, slices.ContainsFunc(rules, func(r Rule) bool { return r.Office == "" }))
	return groups
}

// includeRest adds the modules that no rule refers to, so that a mistake in
// them is told all the same; built-in ones with built-in rules only.
func (t *tree) includeRest(groups []group, builtIn bool) {
	for file, module := range t.modules {
		if t.office[file] == "" && !builtIn {
			continue
		}
		in := func(g group) bool { return g.modules[file] != nil }
		if len(groups) > 0 && !slices.ContainsFunc(groups, in) {
			groups[len(groups)-1].modules[file] = module
		}
	}
}

// include adds a module and all that it refers to.
func (t *tree) include(into map[string]*ast.Module, links map[string][]string, file string) {
	if into[file] != nil {
		return
	}
	into[file] = t.modules[file]
	for _, other := range links[file] {
		t.include(into, links, other)
	}
}

// links lists for each file the files that it refers to.
func (t *tree) links() map[string][]string {
	packages := t.byPackage()
	links := make(map[string][]string, len(t.modules))
	for file, module := range t.modules {
		for _, path := range references(module) {
			for pkg, files := range packages {
				if within(path, pkg) || within(pkg, path) {
					links[file] = append(links[file], files...)
				}
			}
		}
	}
	return links
}

func (t *tree) byPackage() map[string][]string {
	files := map[string][]string{}
	for _, file := range sortedKeys(t.modules) {
		name := packageName(t.modules[file])
		files[name] = append(files[name], file)
	}
	return files
}

// within: a.b.c is within a.b.
func within(path, of string) bool {
	return of == "" || path == of || strings.HasPrefix(path, of+".")
}

// references lists what a module refers to under data, as far as the path is
// constant; its own package is among them, since that may be in several files.
func references(module *ast.Module) []string {
	paths := map[string]bool{packageName(module): true}
	ast.WalkRefs(module, func(ref ast.Ref) bool {
		if ref.HasPrefix(ast.DefaultRootRef) {
			paths[constant(ref)] = true
		}
		return false
	})
	return sortedKeys(paths)
}

func constant(ref ast.Ref) string {
	var parts []string
	for _, term := range ref[1:] {
		text, ok := term.Value.(ast.String)
		if !ok {
			break
		}
		parts = append(parts, string(text))
	}
	return strings.Join(parts, ".")
}
