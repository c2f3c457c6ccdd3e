package build

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestRandomRules holds rules of random statements against OPA's own evaluation.
func TestRandomRules(t *testing.T) {
	rapid.Check(t, func(draw *rapid.T) {
		g := generator{T: draw}
		text := "f(x) := y if {\n\ty := [x, 1]\n\tx != 3\n}\n\nf(x) := \"three\" if x == 3\n\ng(x) if x in {1, \"a\", \"y\"}\n\nr := p\n\n" + g.rule()
		want, wantErr, ok := tryOPA(text)
		if !ok {
			draw.Skip("OPA does not compile it")
		}
		got, gotErr := planned(t, text)
		if gotErr != nil {
			return // then OPA is asked
		}
		if wantErr != nil || compare(got, want) != 0 {
			draw.Fatalf("%s\nplan gives %v\nOPA %v, error %v", text, got, want, wantErr)
		}
	})
}

// generator writes rules whose variables are all bound.
type generator struct {
	*rapid.T
	vars  []string
	count int
}

func (g *generator) pick(from ...string) string { return rapid.SampledFrom(from).Draw(g.T, "pick") }

func (g *generator) times(most int) int { return rapid.IntRange(0, most).Draw(g.T, "times") }

func (g *generator) rule() string {
	switch g.times(4) {
	case 0:
		return fmt.Sprintf("default p := 0\n\np := %s if {\n\t%s\n}", "1", g.body(2))
	case 1:
		return fmt.Sprintf("p := 1 if {\n\t%s\n} else := 2 if {\n\t%s\n} else := 3", g.body(2), g.alone(2))
	case 2:
		body := g.body(2)
		return fmt.Sprintf("p contains %s if {\n\t%s\n}", g.expr(1), body)
	case 3:
		body := g.body(2)
		return fmt.Sprintf("p[%s] := %s if {\n\t%s\n}", g.expr(0), g.expr(1), body)
	}
	body := g.body(2)
	return fmt.Sprintf("p := %s if {\n\t%s\n}", g.expr(1), body)
}

// alone is a body that sees no variables from without.
func (g *generator) alone(depth int) string {
	kept := g.vars
	g.vars = nil
	defer func() { g.vars = kept }()
	return g.body(depth)
}

func (g *generator) body(depth int) string {
	statements := []string{g.statement(depth)}
	for range g.times(3) {
		statements = append(statements, g.statement(depth))
	}
	return strings.Join(statements, "\n\t")
}

func (g *generator) fresh() string {
	g.count++
	return fmt.Sprintf("v%d", g.count)
}

func (g *generator) statement(depth int) string {
	switch g.times(7) {
	case 0:
		list, v := g.list(depth), g.fresh()
		g.vars = append(g.vars, v)
		return fmt.Sprintf("some %s in %s", v, list)
	case 1:
		list, k, v := g.list(depth), g.fresh(), g.fresh()
		g.vars = append(g.vars, k, v)
		return fmt.Sprintf("some %s, %s in %s", k, v, list)
	case 2:
		value, v := g.expr(depth), g.fresh()
		g.vars = append(g.vars, v)
		return fmt.Sprintf("%s := %s", v, value)
	case 3:
		return fmt.Sprintf("not %s == %s", g.expr(depth-1), g.expr(0))
	case 4:
		return fmt.Sprintf("not %s in %s", g.expr(0), g.list(depth-1))
	case 5:
		list, v := g.list(depth-1), g.fresh()
		return fmt.Sprintf("every %s in %s { %s %s %s }", v, list, v, g.pick("!=", ">", "<"), g.expr(0))
	case 6:
		return fmt.Sprintf("g(%s)", g.expr(0))
	}
	return fmt.Sprintf("%s %s %s", g.expr(depth-1), g.pick("==", "!=", "<", ">="), g.expr(depth-1))
}

func (g *generator) list(depth int) string {
	switch n := g.times(6); {
	case n == 0 && depth > 0:
		return g.comprehension(depth)
	case n == 1 && len(g.vars) > 0:
		return g.pick(g.vars...) + g.pick("", ".tags", "[0]")
	case n == 2:
		return fmt.Sprintf("[%s, %s, 3]", g.expr(0), g.expr(0))
	case n == 3:
		return fmt.Sprintf("{%s, \"y\"}", g.expr(0))
	}
	return g.pick("input.rows", "input.rows[0].tags", "data.limits.by", "data.names", "input.deep.k.v", "numbers.range(1, 12)", "input")
}

func (g *generator) comprehension(depth int) string {
	kept := g.vars
	defer func() { g.vars = kept[:len(kept):len(kept)] }()
	body := strings.ReplaceAll(g.body(depth-1), "\n\t", "; ")
	form := g.pick("[%s | %s]", "{%s | %s}", "{\"k\": %s | %s}")
	return fmt.Sprintf(form, g.expr(0), body)
}

func (g *generator) expr(depth int) string {
	switch n := g.times(8); {
	case n < 3 && len(g.vars) > 0:
		return g.pick(g.vars...) + g.pick("", "", "", ".id", ".n")
	case n == 3 && depth > 0:
		return g.comprehension(depth)
	case n == 4 && depth > 0:
		return fmt.Sprintf("[%s, %s]", g.expr(depth-1), g.expr(depth-1))
	case n == 5 && depth > 0:
		return fmt.Sprintf("{\"a\": %s, \"b\": {%s}}", g.expr(depth-1), g.expr(0))
	case n == 6:
		return fmt.Sprintf("f(%s)", g.expr(0))
	case n == 7 && depth > 0:
		return fmt.Sprintf("count(%s)", g.list(depth-1))
	}
	return g.pick("1", "3", "\"a\"", "\"y\"", "input.name", "data.limits.n", "null", "input.missing", "2.0")
}
