package engine

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Problem is a mistake in a rule or in policy data, or a rule that could not
// be run; it is never a finding. Line is 0 where it is not known.
type Problem struct {
	Rule    string `json:"rule,omitempty"`
	File    string `json:"file,omitempty"`
	Line    int    `json:"line,omitempty"`
	Message string `json:"message"`
}

// Error writes "file:line: rule: message".
func (p Problem) Error() string {
	var b strings.Builder
	if p.File != "" {
		b.WriteString(p.File)
		if p.Line > 0 {
			fmt.Fprintf(&b, ":%d", p.Line)
		}
		b.WriteString(": ")
	}
	if p.Rule != "" {
		fmt.Fprintf(&b, "rule %s: ", p.Rule)
	}
	b.WriteString(clip(p.Message))
	return b.String()
}

// clip cuts a message that quotes too much of a stranger's text.
func clip(message string) string {
	const most = 400
	if len(message) <= most {
		return message
	}
	return strings.ToValidUTF8(message[:most], "") + "…"
}

// Problems are reported together, in order of file and line.
type Problems []Problem

// Error writes one problem a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}

// asError sorts the problems and drops repeats; nil without any.
func (ps Problems) asError() error {
	if len(ps) == 0 {
		return nil
	}
	slices.SortFunc(ps, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line),
			cmp.Compare(a.Rule, b.Rule), cmp.Compare(b.Message, a.Message)) // the longer first
	})
	return slices.CompactFunc(ps, toldTwice)
}

// toldTwice: the parser tells some mistakes with and without the cause.
func toldTwice(a, b Problem) bool {
	samePlace := a.File == b.File && a.Line == b.Line && a.Rule == b.Rule
	return samePlace && (strings.HasPrefix(a.Message, b.Message) || strings.HasPrefix(b.Message, a.Message))
}

// problemsOf turns an error of the parser or compiler into problems.
func problemsOf(file string, err error) Problems {
	var list ast.Errors
	if !errors.As(err, &list) {
		var one *ast.Error
		if !errors.As(err, &one) {
			return Problems{{File: file, Message: err.Error()}}
		}
		list = ast.Errors{one}
	}
	problems := make(Problems, len(list))
	for i, e := range list {
		problems[i] = located(e.Location, e.Message)
		if problems[i].File == "" {
			problems[i].File = file
		}
	}
	return problems
}

func located(at *ast.Location, message string) Problem {
	p := Problem{Message: message}
	if at != nil {
		p.File, p.Line = at.File, at.Row
	}
	return p
}
