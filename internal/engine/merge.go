package engine

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"path"
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

// mergeInto adds what src holds to dst: objects are merged, anything else is
// replaced, but never an object by something else or the reverse.
func mergeInto(dst, src map[string]any, l layer, file string) Problems {
	return mergeAt("data", dst, src, l, file)
}

func mergeAt(at string, dst, src map[string]any, l layer, file string) Problems {
	var problems Problems
	for _, key := range sortedKeys(src) {
		here := at + "." + key
		old, exists := dst[key]
		oldObject, oldIs := old.(map[string]any)
		newObject, newIs := src[key].(map[string]any)
		switch {
		case !exists:
			dst[key] = src[key]
		case oldIs && newIs:
			problems = append(problems, mergeAt(here, oldObject, newObject, l, file)...)
		case l == sameLayer:
			problems = append(problems, Problem{File: file, Message: here + " is given by another file too"})
		case !sameShape(old, src[key]):
			problems = append(problems, Problem{File: file, Message: fmt.Sprintf("%s is %s, not %s", here, shape(old), shape(src[key]))})
		default:
			dst[key] = src[key]
		}
	}
	return problems
}

// sameShape: null stands for "none" and fits everywhere but in place of an object.
func sameShape(a, b any) bool {
	return shape(a) == shape(b) || shape(b) == "null" && shape(a) != "an object" || shape(a) == "null"
}

func shape(v any) string {
	switch v.(type) {
	case nil:
		return "null"
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
