package engine

import (
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"path/filepath"
	"runtime"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"golang.org/x/sync/errgroup"
)

// Limits on a folder of policies that may come from a stranger's change.
const (
	maxFiles = 2000
	maxBytes = 8 << 20
)

// builtIn is what file names of the built-in tree begin with in messages.
const builtIn = "policies"

// tree is a policy tree in memory: parsed modules by file name, merged data.
type tree struct {
	modules map[string]*ast.Module
	data    map[string]any
}

// source is one file of a tree: its name for messages, its path in the tree.
type source struct {
	name, path string
	text       []byte
}

func readTree(opts Options) (*tree, error) {
	t := &tree{modules: map[string]*ast.Module{}, data: map[string]any{}}
	if err := t.add(opts.Tree, builtIn, nil); err != nil {
		return nil, err
	}
	for _, folder := range opts.Folders {
		if err := t.addFolder(folder, opts.Replace); err != nil {
			return nil, err
		}
	}
	return t, nil
}

func (t *tree) addFolder(folder string, replace []string) error {
	root, err := os.OpenRoot(folder) // links cannot lead out of it
	if err != nil {
		return fmt.Errorf("open policy folder: %w", err)
	}
	defer root.Close()
	return t.add(root.FS(), filepath.ToSlash(filepath.Clean(folder)), &guard{owned: t.packages(), replace: replace})
}

// add reads a tree over what is there already; g keeps what is there from
// being changed, nil for the first tree.
func (t *tree) add(files fs.FS, name string, g *guard) error {
	sources, err := readSources(files, name)
	if err != nil {
		return err
	}
	modules, err := parseAll(sources)
	if err != nil {
		return err
	}
	var problems Problems
	if g != nil {
		for _, module := range modules {
			problems = append(problems, g.check(module)...)
			t.drop(g.replaced(module))
		}
	}
	maps.Copy(t.modules, modules)
	own := map[string]any{}
	for _, s := range sources {
		if isData(s.path) {
			problems = append(problems, mergeFile(own, s, sameLayer)...)
		}
	}
	if err := problems.asError(); err != nil {
		return err
	}
	return mergeInto(t.data, own, newLayer, name).asError()
}

func (t *tree) packages() []string {
	names := map[string]bool{}
	for _, module := range t.modules {
		names[packageName(module)] = true
	}
	return sortedKeys(names)
}

func (t *tree) drop(pkg string) {
	for file, module := range t.modules {
		if pkg != "" && packageName(module) == pkg {
			delete(t.modules, file)
		}
	}
}

func readSources(files fs.FS, name string) ([]source, error) {
	var sources []source
	size := 0
	err := fs.WalkDir(files, ".", func(p string, entry fs.DirEntry, err error) error {
		if err != nil {
			return fmt.Errorf("read policies %s: %w", path.Join(name, p), err)
		}
		if entry.IsDir() || !isPolicy(p) && !isData(p) {
			return nil
		}
		text, err := fs.ReadFile(files, p)
		if err != nil {
			return fmt.Errorf("read policies %s: %w", path.Join(name, p), err)
		}
		size += len(text)
		if len(sources) == maxFiles || size > maxBytes {
			return Problem{File: name, Message: fmt.Sprintf("more than %d files or %d MB of policies", maxFiles, maxBytes>>20)}
		}
		sources = append(sources, source{name: path.Join(name, p), path: p, text: text})
		return nil
	})
	return sources, err
}

func isPolicy(p string) bool {
	return strings.HasSuffix(p, ".rego") && !strings.HasSuffix(p, "_test.rego")
}

func isData(p string) bool { return strings.HasSuffix(p, ".json") }

// parseAll parses on all processors: it is half of the time to start.
func parseAll(sources []source) (map[string]*ast.Module, error) {
	found := slices.DeleteFunc(slices.Clone(sources), func(s source) bool { return !isPolicy(s.path) })
	modules := make([]*ast.Module, len(found))
	failed := make([]Problems, len(found))
	options := ast.ParserOptions{ProcessAnnotation: true, RegoVersion: ast.RegoV1, Capabilities: capabilities()}
	var group errgroup.Group
	group.SetLimit(runtime.GOMAXPROCS(0))
	for i, s := range found {
		group.Go(func() error {
			module, err := ast.ParseModuleWithOpts(s.name, string(s.text), options)
			if err != nil {
				failed[i] = problemsOf(s.name, err)
			} else if module == nil {
				failed[i] = Problems{{File: s.name, Message: "the file is empty"}}
			}
			modules[i] = module
			return nil
		})
	}
	if err := group.Wait(); err != nil {
		return nil, err
	}
	byFile := make(map[string]*ast.Module, len(found))
	for i, s := range found {
		byFile[s.name] = modules[i]
	}
	return byFile, slices.Concat(failed...).asError()
}
