package plan

import (
	"fmt"
	"math/big"
	"slices"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"abut/internal/plan/value"
)

// native is a built-in function that needs no values of OPA's. It gives nil for
// arguments that are better left to OPA, the wrong ones first of all, and keeps
// no hold of the list of them.
type native func(args []value.Value) value.Value

// natives are those that rules call most.
func natives() map[string]native {
	order := func(holds func(int) bool) native {
		return func(a []value.Value) value.Value { return ast.Boolean(holds(value.Compare(a[0], a[1]))) }
	}
	return map[string]native{
		ast.Count.Name:         func(a []value.Value) value.Value { return count(a[0]) },
		ast.Member.Name:        func(a []value.Value) value.Value { return ast.Boolean(member(a[0], a[1])) },
		ast.Equal.Name:         order(func(n int) bool { return n == 0 }),
		ast.NotEqual.Name:      order(func(n int) bool { return n != 0 }),
		ast.LessThan.Name:      order(func(n int) bool { return n < 0 }),
		ast.LessThanEq.Name:    order(func(n int) bool { return n <= 0 }),
		ast.GreaterThan.Name:   order(func(n int) bool { return n > 0 }),
		ast.GreaterThanEq.Name: order(func(n int) bool { return n >= 0 }),
		ast.ArrayConcat.Name:   arrayConcat,
		ast.ArraySlice.Name:    arraySlice,
		ast.ObjectGet.Name:     objectGet,
		ast.ObjectUnion.Name:   objectUnion,
		ast.ObjectKeys.Name:    objectKeys,
		ast.Concat.Name:        concat,
		ast.Sprintf.Name:       sprintf,
		ast.Sort.Name:          sorted,
		ast.Max.Name:           largest,
		ast.And.Name:           both,
		ast.Substring.Name:     substring,
		ast.Lower.Name:         words(strings.ToLower),
		ast.Upper.Name:         words(strings.ToUpper),
		ast.TrimSpace.Name:     words(strings.TrimSpace),
	}
}

// words is a function of a text.
func words(change func(string) string) native {
	return func(args []value.Value) value.Value {
		text, ok := args[0].(ast.String)
		if !ok {
			return nil
		}
		changed := change(string(text))
		if changed == string(text) {
			return args[0]
		}
		return ast.String(changed)
	}
}

func count(v value.Value) value.Value {
	switch v := v.(type) {
	case *value.Array:
		return index(v.Len())
	case *value.Object:
		return index(v.Len())
	case *value.Set:
		return index(v.Len())
	case ast.String:
		return index(len([]rune(string(v))))
	}
	return nil
}

func member(v, in value.Value) bool {
	if set, ok := in.(*value.Set); ok {
		return set.Has(v)
	}
	_, values := pairs(in)
	if text, ok := v.(ast.String); ok {
		for _, other := range values {
			if other, ok := other.(ast.String); ok && other == text {
				return true
			}
		}
		return false
	}
	return slices.ContainsFunc(values, func(other value.Value) bool { return value.Equal(v, other) })
}

func arrayConcat(args []value.Value) value.Value {
	a, isArray := args[0].(*value.Array)
	b, both := args[1].(*value.Array)
	switch {
	case !isArray || !both:
		return nil
	case a.Len() == 0:
		return b
	case b.Len() == 0:
		return a
	}
	return value.NewArray(slices.Concat(a.Elems(), b.Elems())...)
}

func arraySlice(args []value.Value) value.Value {
	a, isArray := args[0].(*value.Array)
	from, to := whole(args[1]), whole(args[2])
	if !isArray || from == nil || to == nil {
		return nil
	}
	end := min(max(*to, 0), a.Len())
	begin := min(max(*from, 0), end)
	if begin == 0 && end == a.Len() {
		return a
	}
	return value.NewArray(a.Elems()[begin:end:end]...)
}

func whole(v value.Value) *int {
	if n, ok := v.(ast.Number); ok {
		if i, ok := n.Int(); ok {
			return &i
		}
	}
	return nil
}

// objectGet takes a key, or an array of keys, one in the other.
func objectGet(args []value.Value) value.Value {
	here := args[0]
	if _, ok := here.(*value.Object); !ok {
		return nil
	}
	path, ok := args[1].(*value.Array)
	if !ok {
		path = value.NewArray(args[1])
	}
	for _, key := range path.Elems() {
		if here = value.Get(here, key); here == nil {
			return args[2]
		}
	}
	return here
}

func objectUnion(args []value.Value) value.Value {
	a, isObject := args[0].(*value.Object)
	b, both := args[1].(*value.Object)
	switch {
	case !isObject || !both:
		return nil
	case a.Len() == 0:
		return b
	case b.Len() == 0:
		return a
	}
	return value.Merge(a, b)
}

func objectKeys(args []value.Value) value.Value {
	object, ok := args[0].(*value.Object)
	if !ok {
		return nil
	}
	keys, _ := object.Pairs()
	return value.NewSet(keys...)
}

func concat(args []value.Value) value.Value {
	between, ok := args[0].(ast.String)
	if _, isObject := args[1].(*value.Object); !ok || isObject {
		return nil
	}
	keys, values := pairs(args[1])
	if keys == nil && values == nil {
		return nil
	}
	parts := make([]string, len(values))
	for i, v := range values {
		text, ok := v.(ast.String)
		if !ok {
			return nil
		}
		parts[i] = string(text)
	}
	return ast.String(strings.Join(parts, string(between)))
}

func sprintf(args []value.Value) value.Value {
	format, ok := args[0].(ast.String)
	list, both := args[1].(*value.Array)
	if !ok || !both {
		return nil
	}
	parts := make([]any, list.Len())
	for i, v := range list.Elems() {
		switch v := v.(type) {
		case ast.String:
			parts[i] = string(v)
		case ast.Number:
			parts[i] = number(string(v))
		default:
			parts[i] = value.OPA(v).String()
		}
	}
	return ast.String(fmt.Sprintf(string(format), parts...))
}

// number is what OPA prints: a float, an integer, or a text that is neither.
func number(text string) any {
	if strings.ContainsAny(text, ".eE") {
		if f, err := strconv.ParseFloat(text, 64); err == nil {
			return f
		}
		return text
	}
	if n, err := strconv.ParseInt(text, 10, 64); err == nil {
		return n
	}
	if b, ok := new(big.Int).SetString(text, 10); ok {
		return b
	}
	return text
}

// sorted leaves arrays of other things than texts to OPA, which has an order for
// equal numbers.
func sorted(args []value.Value) value.Value {
	var list []value.Value
	switch v := args[0].(type) {
	case *value.Set:
		list = v.Elems()
	case *value.Array:
		list = v.Elems()
		if slices.ContainsFunc(list, func(v value.Value) bool { _, ok := v.(ast.String); return !ok }) {
			return nil
		}
	default:
		return nil
	}
	list = slices.Clone(list)
	slices.SortFunc(list, value.Compare)
	return value.NewArray(list...)
}

// largest is the last of the greatest, as with OPA.
func largest(args []value.Value) (most value.Value) {
	if _, isObject := args[0].(*value.Object); isObject {
		return nil
	}
	_, values := pairs(args[0])
	for _, v := range values {
		if most == nil || value.Compare(most, v) <= 0 {
			most = v
		}
	}
	return most
}

func both(args []value.Value) value.Value {
	a, isSet := args[0].(*value.Set)
	b, both := args[1].(*value.Set)
	if !isSet || !both {
		return nil
	}
	if b.Len() < a.Len() {
		a, b = b, a
	}
	out := value.NewSet()
	for _, v := range a.Elems() {
		if b.Has(v) {
			out.Add(v)
		}
	}
	return out
}

// substring begins at a character of the text; a length below 0 goes to its end.
func substring(args []value.Value) value.Value {
	text, ok := args[0].(ast.String)
	from, length := whole(args[1]), whole(args[2])
	if !ok || from == nil || length == nil || *from < 0 {
		return nil
	}
	runes := []rune(string(text))
	rest := runes[min(*from, len(runes)):]
	if *length >= 0 {
		rest = rest[:min(*length, len(rest))]
	}
	return ast.String(rest)
}
