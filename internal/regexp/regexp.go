// Package regexp is the regular expressions of the standard library, for many of which
// few texts match: one is compiled when the first text may match it, and a text that has
// no word that each of its matches must have is not searched any further.
package regexp

import (
	"regexp"
	"regexp/syntax"
	"sync"
)

// Regexp is as that of the standard library.
type Regexp struct {
	needles func() *needles
	whole   func() *regexp.Regexp
}

// MustCompile is for expressions that the program itself writes.
func MustCompile(expr string) *Regexp {
	return later(expr, func() *syntax.Regexp {
		re, err := syntax.Parse(expr, syntax.Perl)
		if err != nil {
			panic(err)
		}
		return re
	})
}

// Compile is for expressions that are read from data.
func Compile(expr string) (*Regexp, error) {
	re, err := syntax.Parse(expr, syntax.Perl)
	if err != nil {
		return nil, err
	}
	return later(expr, func() *syntax.Regexp { return re }), nil
}

func later(expr string, parsed func() *syntax.Regexp) *Regexp {
	return &Regexp{
		needles: sync.OnceValue(func() *needles { return needlesOf(parsed()) }),
		whole:   sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expr) }),
	}
}

// QuoteMeta is that of the standard library.
func QuoteMeta(text string) string { return regexp.QuoteMeta(text) }

// may holds for a text that may match.
func (re *Regexp) may(text string) bool { return re.needles().in(text) }

// MatchString is as that of the standard library, as all that follow are.
func (re *Regexp) MatchString(s string) bool { return re.may(s) && re.whole().MatchString(s) }

func (re *Regexp) FindString(s string) string {
	if !re.may(s) {
		return ""
	}
	return re.whole().FindString(s)
}

func (re *Regexp) FindStringIndex(s string) []int {
	if !re.may(s) {
		return nil
	}
	return re.whole().FindStringIndex(s)
}

func (re *Regexp) FindStringSubmatch(s string) []string {
	if !re.may(s) {
		return nil
	}
	return re.whole().FindStringSubmatch(s)
}

func (re *Regexp) FindStringSubmatchIndex(s string) []int {
	if !re.may(s) {
		return nil
	}
	return re.whole().FindStringSubmatchIndex(s)
}

func (re *Regexp) FindAllString(s string, n int) []string {
	if !re.may(s) {
		return nil
	}
	return re.whole().FindAllString(s, n)
}

func (re *Regexp) FindAllStringIndex(s string, n int) [][]int {
	if !re.may(s) {
		return nil
	}
	return re.whole().FindAllStringIndex(s, n)
}

func (re *Regexp) FindAllStringSubmatch(s string, n int) [][]string {
	if !re.may(s) {
		return nil
	}
	return re.whole().FindAllStringSubmatch(s, n)
}

func (re *Regexp) FindAllStringSubmatchIndex(s string, n int) [][]int {
	if !re.may(s) {
		return nil
	}
	return re.whole().FindAllStringSubmatchIndex(s, n)
}

func (re *Regexp) ReplaceAllString(s, by string) string {
	if !re.may(s) {
		return s
	}
	return re.whole().ReplaceAllString(s, by)
}

func (re *Regexp) ReplaceAllStringFunc(s string, by func(string) string) string {
	if !re.may(s) {
		return s
	}
	return re.whole().ReplaceAllStringFunc(s, by)
}

func (re *Regexp) Split(s string, n int) []string {
	if n != 0 && !re.may(s) {
		return []string{s}
	}
	return re.whole().Split(s, n)
}
