package knowledge

import (
	"encoding/json"
	"reflect"
	"strconv"
	"strings"
)

// reader goes through a text of JSON once. Texts that it gives are parts of it.
type reader struct {
	text  string
	at    int
	odd   bool // something that is left to encoding/json
	depth int
	known map[reflect.Type]map[string]int
}

// deepest is how many lists may stand in each other.
const deepest = 100

func (r *reader) space() {
	for r.at < len(r.text) && strings.IndexByte(" \t\r\n", r.text[r.at]) >= 0 {
		r.at++
	}
}

// next is the next character that is no space, 0 at the end.
func (r *reader) next() byte {
	r.space()
	if r.odd || r.at == len(r.text) {
		return 0
	}
	return r.text[r.at]
}

// take passes over a character that must be the next one.
func (r *reader) take(c byte) {
	if r.next() != c {
		r.odd = true
		return
	}
	r.at++
}

// more goes to the next of a list's elements; false after the last.
func (r *reader) more(first bool, end byte) bool {
	switch {
	case r.odd:
		return false
	case r.next() == end:
		r.at++
		return false
	case !first:
		r.take(',')
	}
	return !r.odd
}

// value reads what stands next.
func (r *reader) value(into reflect.Value) {
	switch into.Kind() {
	case reflect.String:
		into.SetString(r.string())
	case reflect.Bool:
		into.SetBool(r.bool())
	case reflect.Int:
		n, err := strconv.Atoi(r.number())
		r.odd = r.odd || err != nil
		into.SetInt(int64(n))
	case reflect.Float64:
		f, err := strconv.ParseFloat(r.number(), 64)
		r.odd = r.odd || err != nil
		into.SetFloat(f)
	case reflect.Pointer:
		into.Set(reflect.New(into.Type().Elem()))
		r.value(into.Elem())
	case reflect.Slice, reflect.Array, reflect.Map, reflect.Struct:
		if r.depth++; r.depth > deepest {
			r.odd = true
			return
		}
		r.composite(into)
		r.depth--
	default:
		r.odd = true
	}
}

func (r *reader) composite(into reflect.Value) {
	switch into.Kind() {
	case reflect.Slice:
		r.list(into)
	case reflect.Array:
		r.array(into)
	case reflect.Map:
		r.mapping(into)
	default:
		r.record(into)
	}
}

var textList = reflect.TypeFor[[]string]()

func (r *reader) list(into reflect.Value) {
	r.take('[')
	if into.Type() == textList {
		texts := make([]string, 0, 4)
		for first := true; r.more(first, ']'); first = false {
			texts = append(texts, r.string())
		}
		into.Set(reflect.ValueOf(texts))
		return
	}
	list := reflect.MakeSlice(into.Type(), 0, 4)
	for first := true; r.more(first, ']'); first = false {
		list = reflect.Append(list, reflect.Zero(into.Type().Elem()))
		r.value(list.Index(list.Len() - 1))
	}
	into.Set(list)
}

// array fills a fixed number of places; what is more is passed over.
func (r *reader) array(into reflect.Value) {
	r.take('[')
	i := 0
	for ; r.more(i == 0, ']'); i++ {
		if i < into.Len() {
			r.value(into.Index(i))
		} else {
			r.skip()
		}
	}
	for ; i < into.Len(); i++ {
		into.Index(i).SetZero()
	}
}

func (r *reader) mapping(into reflect.Value) {
	if into.Type().Key().Kind() != reflect.String || into.Len() > 0 {
		r.odd = true
		return
	}
	into.Set(reflect.MakeMap(into.Type()))
	r.take('{')
	for first := true; r.more(first, '}'); first = false {
		key := r.key()
		v := reflect.New(into.Type().Elem()).Elem()
		r.value(v)
		into.SetMapIndex(reflect.ValueOf(key).Convert(into.Type().Key()), v)
	}
}

func (r *reader) record(into reflect.Value) {
	fields := r.fields(into.Type())
	r.take('{')
	for first := true; r.more(first, '}'); first = false {
		if i := r.field(fields, r.key()); i >= 0 {
			r.value(into.Field(i))
			continue
		}
		r.skip()
	}
}

// field is that of a key, which may be in another case; -1 if there is none.
func (r *reader) field(fields map[string]int, key string) int {
	if i, ok := fields[key]; ok {
		return i
	}
	found := -1
	for name, i := range fields {
		if strings.EqualFold(name, key) {
			r.odd = r.odd || found >= 0 // encoding/json knows which
			found = i
		}
	}
	return found
}

// fields are those of a struct by their keys. What is embedded, or written as a
// text, is left to encoding/json.
func (r *reader) fields(t reflect.Type) map[string]int {
	if known, ok := r.known[t]; ok {
		return known
	}
	fields := map[string]int{}
	for i := range t.NumField() {
		f := t.Field(i)
		name, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		switch {
		case f.Anonymous || strings.Contains(options, "string"):
			r.odd = true
		case !f.IsExported() || name == "-":
			continue
		case name == "":
			name = f.Name
		}
		fields[name] = i
	}
	if r.known == nil {
		r.known = map[reflect.Type]map[string]int{}
	}
	r.known[t] = fields
	return fields
}

func (r *reader) key() string {
	key := r.string()
	r.take(':')
	return key
}

// string has no escapes in it.
func (r *reader) string() string {
	r.take('"')
	if r.odd {
		return ""
	}
	begin := r.at
	for ; r.at < len(r.text); r.at++ {
		switch c := r.text[r.at]; {
		case c == '"':
			r.at++
			return r.text[begin : r.at-1]
		case c == '\\':
			return r.escaped(begin)
		case c < ' ':
			r.odd = true
			return ""
		}
	}
	r.odd = true
	return ""
}

// number is what a number is written with.
func (r *reader) number() string {
	r.next()
	begin := r.at
	for r.at < len(r.text) && strings.IndexByte("+-.eE0123456789", r.text[r.at]) >= 0 {
		r.at++
	}
	text := r.text[begin:r.at]
	r.odd = r.odd || !json.Valid([]byte(text))
	return text
}

func (r *reader) bool() bool {
	r.next()
	for _, word := range []string{"true", "false"} {
		if strings.HasPrefix(r.text[r.at:], word) {
			r.at += len(word)
			return word == "true"
		}
	}
	r.odd = true
	return false
}
