package engine

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"path/filepath"
	"runtime"
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

// tree is a policy tree in memory: modules by file name, parsed and as they
// are written, and merged data.
type tree struct {
	modules map[string]*ast.Module
	texts   map[string][]byte
	office  map[string]string // folder of each file that is not built in
	data    map[string]any
	changes []Change
	wanted  func(path string) bool
}

// source is one file of a tree: its name for messages, its path in the tree,
// and what was read of it.
type source struct {
	name, path string
	text       []byte
	module     *ast.Module
	data       map[string]any
	problems   Problems
}

func readTree(opts Options) (*tree, error) {
	return readFiles(opts, func(p string) bool { return isPolicy(p) || isData(p) })
}

func readFiles(opts Options, wanted func(string) bool) (*tree, error) {
	t := &tree{modules: map[string]*ast.Module{}, texts: map[string][]byte{}, office: map[string]string{}, data: map[string]any{}, wanted: wanted}
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
	if info, err := os.Lstat(folder); err == nil && info.Mode()&fs.ModeSymlink != 0 {
		return fmt.Errorf("open policy folder: %s: it is a link; name the folder that it leads to", folder)
	}
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
	sources, err := readSources(files, name, t.wanted)
	if err != nil {
		return err
	}
	if err := parseAll(sources); err != nil {
		return err
	}
	modules := map[string]*ast.Module{}
	for _, s := range sources {
		if s.module != nil {
			modules[s.name] = s.module
			t.texts[s.name] = s.text
			if g != nil {
				t.office[s.name] = name
			}
		}
	}
	var problems Problems
	if g != nil {
		for _, module := range modules {
			problems = append(problems, g.check(module)...)
			if old := g.replaced(module); old != "" {
				t.drop(old)
				t.changes = append(t.changes, Change{rulesReplaced, old, name})
			}
		}
	}
	maps.Copy(t.modules, modules)
	own, rules := map[string]any{}, ""
	for _, s := range sources {
		problems = append(problems, mergeInto(own, s, sameLayer)...)
	}
	if g != nil {
		if rules, err = ownRules(files, name); err != nil {
			return err
		}
	}
	for _, s := range sources {
		if g != nil {
			problems = append(problems, checkPairs(s, t.data)...)
			if unknown := checkKeys(s, t.data, rules); len(unknown) > 0 {
				problems = append(problems, unknown...)
				continue
			}
		}
		problems = append(problems, t.merge(s, g != nil)...)
	}
	return problems.asError()
}

// merge puts the data of a file over that of the tree. What an office changes of
// the built-in data is kept, since it may silence a rule that is not its own.
func (t *tree) merge(s source, office bool) Problems {
	m := merger{layer: newLayer, file: s}
	if office {
		m.changed = func(key string) {
			t.changes = append(t.changes, Change{"data changed", key, s.name})
		}
	}
	return m.merge(nil, t.data, s.data)
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

func readSources(files fs.FS, name string, wanted func(string) bool) ([]source, error) {
	var sources []source
	size := 0
	err := fs.WalkDir(files, ".", func(p string, entry fs.DirEntry, err error) error {
		if err != nil {
			return fmt.Errorf("read policies %s: %w", path.Join(name, p), err)
		}
		if entry.IsDir() || !wanted(p) {
			return nil
		}
		if err := fits(entry); err != nil {
			return Problem{File: path.Join(name, p), Message: err.Error()}
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

// fits refuses a file that would be waited for, or fill the memory, before it is
// opened. A link within the folder is none of these.
func fits(entry fs.DirEntry) error {
	info, err := entry.Info()
	switch {
	case err != nil:
		return err
	case !info.Mode().IsRegular() && info.Mode()&fs.ModeSymlink == 0:
		return errors.New("it is a device or pipe, not a file")
	case info.Size() > maxBytes:
		return fmt.Errorf("more than %d MB of policies", maxBytes>>20)
	}
	return nil
}

func isPolicy(p string) bool {
	return strings.HasSuffix(p, ".rego") && !strings.HasSuffix(p, "_test.rego")
}

func isData(p string) bool { return strings.HasSuffix(p, ".json") }

// parseAll parses on all processors: it is a good part of the time to start.
func parseAll(sources []source) error {
	options := ast.ParserOptions{ProcessAnnotation: true, RegoVersion: ast.RegoV1, Capabilities: capabilities()}
	var group errgroup.Group
	group.SetLimit(runtime.GOMAXPROCS(0))
	for i := range sources {
		group.Go(func() error {
			sources[i].parse(options)
			return nil
		})
	}
	if err := group.Wait(); err != nil {
		return err
	}
	var problems Problems
	for _, s := range sources {
		problems = append(problems, s.problems...)
	}
	return problems.asError()
}

func (s *source) parse(options ast.ParserOptions) {
	if isData(s.path) {
		s.data, s.problems = readData(*s)
		return
	}
	module, err := ast.ParseModuleWithOpts(s.name, string(s.text), options)
	switch {
	case err != nil:
		s.problems = problemsOf(s.name, err)
	case module == nil:
		s.problems = Problems{{File: s.name, Message: "the file is empty"}}
	default:
		s.problems = nested(module)
	}
	s.module = module
}
