package engine

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/topdown"
)

// compiled is rules that OPA evaluates.
type compiled struct {
	rules   []Rule
	options Options
	store   storage.Store
	queries []query
	across  func() map[string]bool
}

// query asks for the findings of the rules of one topic at once, so that they
// share what the look-ups have found.
type query struct {
	rules    []Rule
	compiler *ast.Compiler
	prepared rego.PreparedEvalQuery
	parts    func() ([]query, error) // the rules that look at a row by itself, and the others
}

// compileTree compiles the rules, and makes ready to ask them.
func compileTree(t *tree, rules []Rule, opts Options, skip []ast.StageID) (*compiled, error) {
	c := &compiled{rules: rules, options: opts, across: sync.OnceValue(t.across)}
	var wait sync.WaitGroup
	wait.Go(func() {
		c.store = inmem.NewFromObjectWithOpts(t.data,
			inmem.OptRoundTripOnWrite(false), inmem.OptReturnASTValuesOnRead(true))
	})
	groups, err := compileGroups(t, rules, skip)
	wait.Wait()
	if err != nil {
		return nil, err
	}
	return c, c.prepare(groups)
}

// prepare makes one query of the built-in rules of a topic: they share a
// compiler and take no time. A rule of an office is asked alone, so that it can
// be stopped and named.
func (e *compiled) prepare(groups []group) error {
	for _, g := range groups {
		for _, topic := range g.topics {
			var sets [][]Rule
			var builtIn []Rule
			for _, r := range e.rules {
				switch {
				case r.Topic != topic || slices.Contains(e.options.Off, r.ID):
				case r.Office != "":
					sets = append(sets, []Rule{r})
				default:
					builtIn = append(builtIn, r)
				}
			}
			if len(builtIn) > 0 {
				sets = append(sets, builtIn)
			}
			for _, rules := range sets {
				q, err := e.query(g.compiler, rules)
				if err != nil {
					return err
				}
				e.queries = append(e.queries, q)
			}
		}
	}
	return nil
}

func (e *compiled) query(compiler *ast.Compiler, rules []Rule) (query, error) {
	refs := make([]string, len(rules))
	for i, r := range rules {
		topic, name, _ := strings.Cut(r.Package, ".")
		refs[i] = fmt.Sprintf("data[%q][%q].findings", topic, name)
	}
	prepared, err := rego.New(
		rego.Query("["+strings.Join(refs, ", ")+"]"),
		rego.Compiler(compiler),
		rego.Store(e.store),
	).PrepareForEval(context.Background())
	if err != nil {
		return query{}, fmt.Errorf("prepare the rules of %s: %w", rules[0].Topic, err)
	}
	q := query{rules: rules, compiler: compiler, prepared: prepared}
	q.parts = sync.OnceValues(func() ([]query, error) { return e.partsOf(q) })
	return q, nil
}

// questions is a question of each query, or of its parts.
func (e *compiled) questions(whole, distinct ast.Value, c *cases) ([]question, error) {
	var asked []question
	for _, q := range e.queries {
		parts := []query{q}
		if c != nil {
			var err error
			if parts, err = q.parts(); err != nil {
				return nil, err
			}
		}
		for _, part := range parts {
			r := part.rules[0]
			next := question{rules: part.rules, cases: c}
			of := distinct
			if c == nil || r.Office != "" || e.across()[r.File] {
				next.cases, of = nil, whole
			}
			next.ask = func(ctx context.Context) (answer, error) {
				if r.Office != "" {
					return e.askOffice(ctx, part, of)
				}
				return e.ask(ctx, part, of)
			}
			asked = append(asked, next)
		}
	}
	return asked, nil
}

// partsOf makes a query of the rules that look across rows and one of the
// others.
func (e *compiled) partsOf(q query) ([]query, error) {
	if q.rules[0].Office != "" {
		return []query{q}, nil
	}
	var across, single []Rule
	for _, r := range q.rules {
		if e.across()[r.File] {
			across = append(across, r)
		} else {
			single = append(single, r)
		}
	}
	var parts []query
	for _, rules := range [][]Rule{across, single} {
		if len(rules) == 0 {
			continue
		}
		part, err := e.query(q.compiler, rules)
		if err != nil {
			return nil, err
		}
		parts = append(parts, part)
	}
	return parts, nil
}

// ask runs a query. If it fails, its rules are asked one by one, so that one
// broken rule does not silence its topic. The error is the end of the context.
func (e *compiled) ask(ctx context.Context, q query, input ast.Value, more ...rego.EvalOption) (answer, error) {
	var failed []topdown.Error
	options := append([]rego.EvalOption{rego.EvalParsedInput(input), rego.EvalBuiltinErrorList(&failed)}, more...)
	result, err := q.prepared.Eval(ctx, options...)
	if ctx.Err() != nil {
		return answer{}, context.Cause(ctx)
	}
	a := answer{raw: make([][]any, len(q.rules))}
	// A failing built-in is undefined to OPA; a rule would miss in silence.
	for _, f := range failed {
		a.problems = append(a.problems, located(f.Location, f.Message))
	}
	if err == nil {
		err = a.read(result)
	}
	switch {
	case err == nil:
		return a, nil
	case len(q.rules) == 1:
		r := q.rules[0]
		a.problems = append(a.problems, Problem{Rule: r.ID, File: r.File, Line: r.Line, Message: err.Error()})
		return a, nil
	}
	return e.askEach(ctx, q, input)
}

func (e *compiled) askEach(ctx context.Context, q query, input ast.Value) (answer, error) {
	var all answer
	for _, r := range q.rules {
		one, err := e.query(q.compiler, []Rule{r})
		if err != nil {
			return answer{}, err
		}
		a, err := e.ask(ctx, one, input)
		if err != nil {
			return answer{}, err
		}
		all.raw = append(all.raw, a.raw[0])
		all.problems = append(all.problems, a.problems...)
	}
	return all, nil
}

func (a *answer) read(result rego.ResultSet) error {
	if len(result) != 1 || len(result[0].Expressions) != 1 {
		return fmt.Errorf("the findings are undefined")
	}
	sets, ok := result[0].Expressions[0].Value.([]any)
	if !ok || len(sets) != len(a.raw) {
		return fmt.Errorf("the findings are not sets")
	}
	for i, set := range sets {
		list, ok := set.([]any)
		if !ok {
			return fmt.Errorf("the findings are not a set")
		}
		a.raw[i] = list
	}
	return nil
}
