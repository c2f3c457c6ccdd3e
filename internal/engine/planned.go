package engine

import (
	"context"
	"fmt"
	"strings"

	"abut/internal/document"
	"abut/internal/plan"
	"abut/internal/plan/value"
)

// planned is the built-in rules as they were compiled beforehand, with data.
type planned struct {
	program *plan.Program
	data    any
}

// questions parts the rules among the processors, which the distinct cases
// share with the rows they stand for. Rules of a topic stay together, since
// they share most of what they look up.
func (p *planned) questions(rules []Rule, of *document.Document, c *cases, count int) []question {
	var asked []question
	for _, part := range shares(rules, count) {
		asked = append(asked, question{rules: part, cases: c, ask: func(ctx context.Context) (answer, error) {
			return p.ask(ctx, part, of)
		}})
	}
	return asked
}

func shares(rules []Rule, count int) [][]Rule {
	var out [][]Rule
	size := (len(rules) + count - 1) / count
	for i, r := range rules {
		last := len(out) - 1
		if last < 0 || len(out[last]) >= size && rules[i-1].Topic != r.Topic {
			out = append(out, nil)
			last++
		}
		out[last] = append(out[last], r)
	}
	return out
}

// manyLines are so many that memory counts for more than time: one processor
// judges them, and what the rules of a topic looked up is let go before the
// next topic, though it looks some of it up again.
const manyLines = 10_000

func (p *planned) ask(ctx context.Context, rules []Rule, of *document.Document) (answer, error) {
	run := p.program.Run(ctx, of, p.data)
	a := answer{raw: make([][]any, len(rules))}
	for i, r := range rules {
		if i > 0 && rules[i-1].Topic != r.Topic && len(of.Lines) > manyLines {
			run = p.program.Run(ctx, of, p.data)
		}
		found, err := run.Rule(entry(r))
		if err != nil {
			return answer{}, err
		}
		list, ok := value.Plain(found).([]any)
		if !ok {
			return answer{}, fmt.Errorf("the findings are not a set")
		}
		a.raw[i] = list
	}
	return a, nil
}

func (p *planned) value(ctx context.Context, path string, of *document.Document) (any, error) {
	v, err := p.program.Run(ctx, of, p.data).Rule(path)
	return value.Plain(v), err
}

// entry is the path at which a rule gives its findings.
func entry(r Rule) string {
	return strings.ReplaceAll(r.Package, ".", "/") + "/findings"
}
