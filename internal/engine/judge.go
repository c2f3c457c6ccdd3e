package engine

import (
	"context"
	"fmt"
	"runtime"
	"slices"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/topdown"
	"golang.org/x/sync/errgroup"

	"abut/internal/document"
)

// query asks for the findings of the rules of one topic at once, so that they
// share what the look-ups have found.
type query struct {
	rules    []Rule
	compiler *ast.Compiler
	prepared rego.PreparedEvalQuery
	parts    func() ([]query, error) // the rules that look at a row by itself, and the others
}

// answer is what one query gave: the raw findings of each rule, in the order
// of the query's rules.
type answer struct {
	raw      [][]any
	problems Problems
}

// prepare makes one query of the built-in rules of a topic: they share a
// compiler and take no time. A rule of an office is asked alone, so that it can
// be stopped and named.
func (e *Engine) prepare(groups []group) error {
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

func (e *Engine) query(compiler *ast.Compiler, rules []Rule) (query, error) {
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

// Judge gives the findings of all rules on a document, by sheet in the order
// of the workbook, row, severity and rule. A rule that cannot be run, or makes
// something that is not a finding, is told in Problems beside the findings of
// the others; any other error means that nothing was judged. Lists of the
// document that were never filled are made empty.
func (e *Engine) Judge(ctx context.Context, doc *document.Document) ([]Finding, error) {
	document.Complete(doc)
	return e.judge(ctx, doc, e.cases(doc))
}

func (e *Engine) judge(ctx context.Context, doc *document.Document, cases *cases) ([]Finding, error) {
	asked, err := e.questions(doc, cases)
	if err != nil {
		return nil, fmt.Errorf("judge %s: %w", doc.File, err)
	}
	ctx, cancel := context.WithTimeout(ctx, e.options.Timeout)
	defer cancel()
	answers := make([]answer, len(asked))
	group, ctx := errgroup.WithContext(ctx)
	group.SetLimit(runtime.GOMAXPROCS(0))
	for i, q := range asked {
		group.Go(func() (err error) {
			if q.rules[0].Office != "" {
				answers[i], err = e.askOffice(ctx, q.query, q.input)
			} else {
				answers[i], err = e.ask(ctx, q.query, q.input)
			}
			return err
		})
	}
	if err := group.Wait(); err != nil {
		return nil, fmt.Errorf("judge %s: stopped before the end, nothing is judged (limit %s): %w", doc.File, e.options.Timeout, err)
	}
	c := newCollector(doc, e.options.Severity)
	for i, q := range asked {
		c.problems = append(c.problems, answers[i].problems...)
		for j, raw := range answers[i].raw {
			c.add(q.rules[j], raw, q.cases)
		}
	}
	c.made = e.most.throughout(doc, c.made)
	return c.findings(), c.problems.asError()
}

// question is a query with what it is asked of: the document, or its distinct
// cases.
type question struct {
	query
	input ast.Value
	cases *cases
}

// questions asks the rules that look at a row by itself of each distinct case
// once, where that spares enough, and all others of the whole document.
func (e *Engine) questions(doc *document.Document, c *cases) ([]question, error) {
	whole, err := input(doc)
	if err != nil {
		return nil, err
	}
	var asked []question
	if c == nil {
		for _, q := range e.queries {
			asked = append(asked, question{q, whole, nil})
		}
		return asked, nil
	}
	distinct, err := input(c.doc)
	if err != nil {
		return nil, err
	}
	for _, q := range e.queries {
		parts, err := q.parts()
		if err != nil {
			return nil, err
		}
		for _, part := range parts {
			if r := part.rules[0]; r.Office != "" || e.across()[r.File] {
				asked = append(asked, question{part, whole, nil})
			} else {
				asked = append(asked, question{part, distinct, c})
			}
		}
	}
	return asked, nil
}

// partsOf makes a query of the rules that look across rows and one of the
// others.
func (e *Engine) partsOf(q query) ([]query, error) {
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
func (e *Engine) ask(ctx context.Context, q query, input ast.Value, more ...rego.EvalOption) (answer, error) {
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

func (e *Engine) askEach(ctx context.Context, q query, input ast.Value) (answer, error) {
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
