package engine

import (
	"context"
	"fmt"
	"runtime"
	"slices"

	"golang.org/x/sync/errgroup"

	"abut/internal/document"
)

// question is a set of rules with what they are asked of: the document, or its
// distinct cases.
type question struct {
	rules []Rule
	cases *cases
	ask   func(ctx context.Context) (answer, error)
}

// answer is the raw findings of each rule, in the order of the rules.
type answer struct {
	raw      [][]any
	problems Problems
}

// Judge gives the findings of all rules on a document, by sheet in the order
// of the workbook, row, severity and rule. A rule that cannot be run, or makes
// something that is not a finding, is told in Problems beside the findings of
// the others; any other error means that nothing was judged. Lists of the
// document that were never filled are taken as empty.
func (e *Engine) Judge(ctx context.Context, doc *document.Document) ([]Finding, error) {
	return e.judge(ctx, doc, e.cases(doc))
}

func (e *Engine) judge(ctx context.Context, doc *document.Document, cases *cases) ([]Finding, error) {
	ctx, cancel := context.WithTimeout(ctx, e.options.Timeout)
	defer cancel()
	asked, answers, err := e.answers(ctx, doc, cases)
	if err != nil {
		return nil, fmt.Errorf("judge %s: %w", doc.File, err)
	}
	c := newCollector(doc, e.options.Severity)
	for i, q := range asked {
		c.problems = append(c.problems, answers[i].problems...)
		for j, raw := range answers[i].raw {
			c.add(q.rules[j], raw, q.cases)
		}
	}
	c.made = e.shared.Most.throughout(doc, c.made)
	return c.findings(), c.problems.asError()
}

// answers asks all rules. Where the plan fails, OPA is asked instead, which
// knows which rule it is and why.
func (e *Engine) answers(ctx context.Context, doc *document.Document, cases *cases) ([]question, []answer, error) {
	asked, err := e.questions(doc, cases)
	if err != nil {
		return nil, nil, err
	}
	atOnce := runtime.GOMAXPROCS(0)
	if len(doc.Lines) > manyLines {
		atOnce = 1
	}
	answers, err := askAll(ctx, asked, atOnce)
	if err != nil && ctx.Err() == nil && e.plan != nil {
		full := *e
		full.plan = nil
		if full.own, err = e.all(); err != nil {
			return nil, nil, err
		}
		return full.answers(ctx, doc, cases)
	}
	if err != nil {
		err = fmt.Errorf("stopped before the end, nothing is judged (limit %s): %w", e.options.Timeout, err)
	}
	return asked, answers, err
}

func askAll(ctx context.Context, asked []question, atOnce int) ([]answer, error) {
	answers := make([]answer, len(asked))
	group, ctx := errgroup.WithContext(ctx)
	group.SetLimit(atOnce)
	for i, q := range asked {
		group.Go(func() (err error) {
			answers[i], err = q.ask(ctx)
			return err
		})
	}
	return answers, group.Wait()
}

// muchMore is how many times as many rows as cases there must be for the rules
// that look across rows to be parted among all processors, which costs some
// work done twice.
const muchMore = 4

// questions asks the rules that look at a row by itself of each distinct case
// once, where that spares enough, and all others of the whole document.
func (e *Engine) questions(doc *document.Document, c *cases) ([]question, error) {
	var asked []question
	if e.plan != nil {
		across, single := e.builtIn(c != nil)
		all := runtime.GOMAXPROCS(0)
		half := (all + 1) / 2
		switch {
		case c == nil:
			asked = append(asked, e.plan.questions(single, doc, nil, all)...)
		case len(doc.Lines) > muchMore*len(c.doc.Lines): // the cases are done in no time
			asked = append(asked, e.plan.questions(single, c.doc, c, 1)...)
			asked = append(asked, e.plan.questions(across, doc, nil, all)...)
		default:
			asked = append(asked, e.plan.questions(across, doc, nil, half)...)
			asked = append(asked, e.plan.questions(single, c.doc, c, half)...)
		}
	}
	if len(e.own.queries) == 0 {
		return asked, nil
	}
	document.Complete(doc)
	whole, err := input(doc)
	if err != nil {
		return nil, err
	}
	distinct := whole
	if c != nil {
		document.Complete(c.doc)
		if distinct, err = input(c.doc); err != nil {
			return nil, err
		}
	}
	own, err := e.own.questions(whole, distinct, c)
	return append(asked, own...), err
}

// builtIn are the built-in rules that are on: those that look across rows, and
// the others; without cases they are all one.
func (e *Engine) builtIn(cases bool) (across, single []Rule) {
	for _, r := range e.rules {
		switch {
		case r.Office != "" || slices.Contains(e.options.Off, r.ID):
		case cases && e.across()[r.File]:
			across = append(across, r)
		default:
			single = append(single, r)
		}
	}
	return across, single
}
