package engine

import (
	"context"
	"errors"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/topdown"

	"abut/internal/aside"
)

// errLimit ends a rule of an office that takes too long.
var errLimit = errors.New("it was stopped")

// askOffice asks one rule of an office, which may go round in circles: it is
// stopped by itself, after a time and a number of steps, and named.
func (e *compiled) askOffice(ctx context.Context, q query, input ast.Value) (answer, error) {
	limited, cancel := context.WithCancelCause(ctx)
	defer cancel(nil)
	limited, stop := context.WithTimeoutCause(limited, e.options.RuleTime,
		fmt.Errorf("%w after %s; it may go round in circles", errLimit, e.options.RuleTime))
	defer stop()
	a, err := inTime(limited, func() (answer, error) {
		return e.ask(limited, q, input, rego.EvalQueryTracer(&steps{left: e.options.RuleSteps, stop: func() {
			cancel(fmt.Errorf("%w after %d steps; it may go round in circles", errLimit, e.options.RuleSteps))
		}}))
	})
	if errors.Is(err, errLimit) && ctx.Err() == nil {
		r := q.rules[0]
		return answer{raw: make([][]any, 1), problems: Problems{{Rule: r.ID, File: r.File, Line: r.Line, Message: err.Error()}}}, nil
	}
	return a, err
}

// inTime leaves work to itself when the time ends: some of what a rule may call
// looks at no clock until it is done. The run ends soon after.
func inTime[T any](ctx context.Context, work func() (T, error)) (T, error) {
	return aside.Do(ctx, work, func(p any) error { return fmt.Errorf("OPA stumbled over it (%v)", p) })
}

// steps counts what OPA does.
type steps struct {
	left int
	stop func()
}

// Enabled implements topdown.QueryTracer.
func (s *steps) Enabled() bool { return s.left > 0 }

// Config implements topdown.QueryTracer.
func (s *steps) Config() topdown.TraceConfig { return topdown.TraceConfig{} }

// TraceEvent implements topdown.QueryTracer.
func (s *steps) TraceEvent(topdown.Event) {
	if s.left--; s.left == 0 {
		s.stop()
	}
}
