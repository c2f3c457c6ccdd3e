package engine

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"path"
	"reflect"
	"slices"
	"strings"
)

// layer says whether data may be given twice: within one tree it may not, a
// later tree goes over the earlier ones.
type layer bool

const (
	sameLayer layer = false
	newLayer  layer = true
)

// readData puts the object of a file where its folder is in the tree, as OPA
// does for a folder: contact/limits.json goes under data.contact.
func readData(s source) (map[string]any, Problems) {
	content, err := decode(s.text)
	if err != nil {
		return nil, Problems{{File: s.name, Line: lineOf(s.text, err), Message: err.Error()}}
	}
	if folder := path.Dir(s.path); folder != "." {
		parts := strings.Split(folder, "/")
		for i := len(parts) - 1; i >= 0; i-- {
			content = map[string]any{parts[i]: content}
		}
	}
	return content, nil
}

func decode(text []byte) (map[string]any, error) {
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	var content map[string]any
	if err := d.Decode(&content); err != nil {
		return nil, err
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return nil, errors.New("text after the end of the JSON object")
	}
	if content == nil {
		return nil, errors.New("want a JSON object")
	}
	return content, nil
}

// mergeInto adds the data of a file to dst: objects are merged, anything else
// is replaced, but never an object by something else or the reverse. In a later
// tree the key "words+" adds to the list "words" instead of replacing it.
func mergeInto(dst map[string]any, s source, l layer) Problems {
	return merger{layer: l, file: s}.merge(nil, dst, s.data)
}

// merger puts the data of one file into a tree. Objects are copied, so that no
// two trees share one.
type merger struct {
	layer   layer
	file    source
	changed func(key string) // told of what is changed or added below an object, nil: nobody asks
}

func (m merger) merge(at []string, dst, src map[string]any) Problems {
	var problems Problems
	for _, key := range sortedKeys(src) {
		here := append(slices.Clone(at), key)
		if name, more := strings.CutSuffix(key, "+"); more && m.layer == newLayer {
			problems = append(problems, m.extend(here, dst, name, src[key])...)
			continue
		}
		problems = append(problems, m.put(here, dst, src[key])...)
	}
	return problems
}

func (m merger) put(here []string, dst map[string]any, value any) Problems {
	key := here[len(here)-1]
	old, exists := dst[key]
	object, isObject := value.(map[string]any)
	if isObject && !exists {
		if len(here) > 2 {
			m.tell(here)
			m.changed = nil // once is enough for all that is in it
		}
		old = map[string]any{}
		dst[key] = old
	}
	oldObject, wasObject := old.(map[string]any)
	switch {
	case isObject && wasObject:
		return m.merge(here, oldObject, object)
	case exists && m.layer == sameLayer:
		return m.problem(here, "is given by another file too")
	case exists && !sameShape(old, value):
		return m.problem(here, fmt.Sprintf("is %s, not %s", shape(old), shape(value)))
	}
	if depth := len(here); exists && !reflect.DeepEqual(old, value) || !exists && depth > 2 {
		m.tell(here)
	}
	dst[key] = value
	return nil
}

func (m merger) tell(here []string) {
	if m.changed != nil {
		m.changed(strings.Join(here, "."))
	}
}

// extend adds to the list of that name what it does not hold yet.
func (m merger) extend(here []string, dst map[string]any, name string, value any) Problems {
	have, isList := dst[name].([]any)
	more, areMore := value.([]any)
	if !isList || !areMore {
		return m.problem(here, fmt.Sprintf("adds %s to %s; it adds a list to a list", shape(value), shape(dst[name])))
	}
	all := slices.Clone(have)
	for _, v := range more {
		if len(have) > 0 && shape(v) != shape(have[0]) {
			return m.problem(here, fmt.Sprintf("adds %s to a list of which each is %s", shape(v), shape(have[0])))
		}
		if !slices.ContainsFunc(all, func(w any) bool { return reflect.DeepEqual(v, w) }) {
			all = append(all, v)
		}
	}
	if len(all) > len(have) {
		m.tell(here)
	}
	dst[name] = all
	return nil
}

func (m merger) problem(here []string, words string) Problems {
	return Problems{{
		File: m.file.name, Line: m.file.lineOfKey(here),
		Message: "data." + strings.Join(here, ".") + " " + words,
	}}
}

// lineOfKey finds the line of a key of the data: each key of the path is
// looked for behind the one before it. 0 if it is not found.
func (s source) lineOfKey(keys []string) int {
	if folder := path.Dir(s.path); folder != "." {
		keys = keys[min(len(keys), 1+strings.Count(folder, "/")):]
	}
	at := 0
	for _, key := range keys {
		quoted, err := json.Marshal(key)
		i := bytes.Index(s.text[at:], quoted)
		if err == nil && i >= 0 { // places in a list have no key
			at += i + len(quoted)
		}
	}
	if at == 0 {
		return 0
	}
	return 1 + bytes.Count(s.text[:at], []byte("\n"))
}

// sameShape: null stands for "none" and fits everywhere but in place of an object.
func sameShape(a, b any) bool {
	return shape(a) == shape(b) || shape(b) == "nothing" && shape(a) != "an object" || shape(a) == "nothing"
}

func shape(v any) string {
	switch v.(type) {
	case nil:
		return "nothing"
	case map[string]any:
		return "an object"
	case []any:
		return "a list"
	case string:
		return "a text"
	case bool:
		return "true or false"
	}
	return "a number"
}

// lineOf finds the line of a mistake in JSON, 0 if it is not known.
func lineOf(text []byte, err error) int {
	var offset int64
	var syntax *json.SyntaxError
	var kind *json.UnmarshalTypeError
	switch {
	case errors.As(err, &syntax):
		offset = syntax.Offset
	case errors.As(err, &kind):
		offset = kind.Offset
	default:
		return 0
	}
	return 1 + bytes.Count(text[:min(int(offset), len(text))], []byte("\n"))
}
