package engine

import (
	"context"
	"fmt"
	"io/fs"
	"os"
	"slices"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"abut/policies"
)

// Load reads the policies, and compiles those that are not compiled beforehand.
// A mistake in a rule, its metadata or its data gives Problems, each with file
// and line.
func Load(opts Options) (*Engine, error) {
	if len(opts.Folders) == 0 {
		return loadAny(opts)
	}
	most := opts.withDefaults().Timeout
	ctx, stop := context.WithTimeoutCause(context.Background(), most, fmt.Errorf(
		"%s: it takes more than %s to compile the rules; look for expressions that lie deep within one another", strings.Join(opts.Folders, ", "), most))
	defer stop()
	return inTime(ctx, func() (*Engine, error) { return loadAny(opts) })
}

func loadAny(opts Options) (*Engine, error) {
	if opts.Tree == nil {
		if kept, err := readPlan(policies.FS, policies.Plan); err == nil {
			return loadPlan(opts, kept)
		}
	}
	return loadTree(opts)
}

// loadPlan compiles an office's own rules only, if there are any. All are
// compiled if a built-in one fails, or is replaced.
func loadPlan(opts Options, kept *planFile) (*Engine, error) {
	e := &Engine{
		shared: kept.shared, rules: kept.rules, options: opts.withDefaults(), across: sync.OnceValue(kept.lookAcross),
		plan: &planned{kept.program, kept.data}, own: &compiled{},
		all: sync.OnceValues(func() (*compiled, error) {
			e, err := loadTree(opts)
			if err != nil {
				return nil, err
			}
			return e.own, nil
		}),
	}
	if slices.ContainsFunc(opts.Folders, hasRules) {
		return e.withRules(opts)
	}
	if err := checkSettings(opts, e.rules); err != nil {
		return nil, err
	}
	if len(opts.Folders) == 0 {
		return e, nil
	}
	t, err := readFiles(e.options, isData)
	if err != nil {
		return nil, err
	}
	return e, e.over(t)
}

// over takes the data of an office's folders.
func (e *Engine) over(t *tree) (err error) {
	e.plan.data, e.changes = t.data, t.changes
	e.shared, err = sharedOf(t.data)
	return err
}

// withRules adds the rules of an office.
func (e *Engine) withRules(opts Options) (*Engine, error) {
	t, rules, err := read(e.options)
	if err != nil {
		return nil, err
	}
	own := slices.DeleteFunc(slices.Clone(rules), func(r Rule) bool { return r.Office == "" })
	replaced := func(c Change) bool { return c.What == rulesReplaced }
	if len(own) == 0 || slices.ContainsFunc(t.changes, replaced) {
		return loadTree(opts)
	}
	if err := checkSettings(opts, rules); err != nil {
		return nil, err
	}
	if e.own, err = compileTree(t, own, e.options, nil); err != nil {
		return nil, err
	}
	e.rules = rules
	return e, e.over(t)
}

// hasRules: what cannot be read is told when it is read.
func hasRules(folder string) bool {
	found := false
	_ = fs.WalkDir(os.DirFS(folder), ".", func(p string, _ fs.DirEntry, err error) error {
		found = found || err != nil || isPolicy(p)
		return nil
	})
	return found
}

// loadTree compiles all rules.
func loadTree(opts Options) (*Engine, error) {
	var skip []ast.StageID
	if opts.Tree == nil && len(opts.Folders) == 0 {
		skip = checkStages() // the tests hold the built-in tree to them, and they are a third of the work
	}
	opts = opts.withDefaults()
	tree, rules, err := read(opts)
	if err != nil {
		return nil, err
	}
	if err := checkSettings(opts, rules); err != nil {
		return nil, err
	}
	shared, err := sharedOf(tree.data)
	if err != nil {
		return nil, err
	}
	own, err := compileTree(tree, rules, opts, skip)
	if err != nil {
		return nil, err
	}
	return &Engine{
		rules: rules, options: opts, changes: tree.changes, across: own.across, shared: shared, own: own,
		all: func() (*compiled, error) { return own, nil },
	}, nil
}
