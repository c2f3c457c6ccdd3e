package plan

import (
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"abut/internal/plan/value"
	"abut/internal/regexp"
)

// search is a built-in function whose first argument is a pattern; the others
// come after it. It gives nil where OPA is to say what is wrong with them.
type search func(like *regexp.Regexp, text string, rest []value.Value) value.Value

func searches() map[string]search {
	return map[string]search{
		ast.RegexMatch.Name: func(like *regexp.Regexp, text string, _ []value.Value) value.Value {
			return ast.Boolean(like.MatchString(text))
		},
		ast.RegexFind.Name: func(like *regexp.Regexp, text string, rest []value.Value) value.Value {
			if n := whole(rest[0]); n != nil {
				return texts(like.FindAllString(text, *n))
			}
			return nil
		},
		ast.RegexFindAllStringSubmatch.Name: func(like *regexp.Regexp, text string, rest []value.Value) value.Value {
			n := whole(rest[0])
			if n == nil {
				return nil
			}
			found := value.NewArray()
			for _, parts := range like.FindAllStringSubmatch(text, *n) {
				found.Append(texts(parts))
			}
			return found
		},
		ast.RegexSplit.Name: func(like *regexp.Regexp, text string, _ []value.Value) value.Value {
			return texts(like.Split(text, -1))
		},
	}
}

func texts(list []string) *value.Array {
	out := make([]value.Value, len(list))
	for i, s := range list {
		out[i] = ast.String(s)
	}
	return value.NewArray(out...)
}

// patterns are compiled once for all runs of a program, as long as they are not
// many: rules may make them of what a document says.
type patterns struct {
	lock sync.Mutex
	made map[ast.String]*regexp.Regexp
}

const manyPatterns = 1000

// of is nil for what is no pattern.
func (p *patterns) of(text ast.String) *regexp.Regexp {
	p.lock.Lock()
	defer p.lock.Unlock()
	like, known := p.made[text]
	if !known {
		like, _ = regexp.Compile(string(text)) // OPA is asked what is wrong with it
		if p.made == nil {
			p.made = map[ast.String]*regexp.Regexp{}
		}
		if len(p.made) < manyPatterns {
			p.made[text] = like
		}
	}
	return like
}

// find searches a text. OPA itself keeps a hundred patterns, which the rules
// exceed.
func (r *Run) find(by search, args []value.Value) value.Value {
	pattern, isText := args[0].(ast.String)
	in, both := args[1].(ast.String)
	if !isText || !both {
		return nil
	}
	like, known := r.patterns[pattern]
	if !known {
		like = r.program.patterns.of(pattern)
		r.patterns[pattern] = like
	}
	if like == nil {
		return nil
	}
	return by(like, string(in), args[2:])
}
