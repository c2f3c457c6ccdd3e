// Package knowledge reads the files of a policy tree that hold words and
// figures. A start reads a megabyte of them, so it has a quick way for JSON as
// they are written; whatever that does not take is left to encoding/json.
package knowledge

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"reflect"
	"unicode/utf8"
)

// Read reads a file into the empty value that into points at; what says in an
// error what it holds.
func Read(fsys fs.FS, what, name string, into any) error {
	raw, err := fs.ReadFile(fsys, name)
	if err != nil {
		return fmt.Errorf("%s: %w", what, err)
	}
	if err := Parse(raw, into); err != nil {
		return fmt.Errorf("%s %s: %w", what, name, err)
	}
	return nil
}

// Parse reads JSON into the empty value that into points at.
func Parse(raw []byte, into any) error {
	if quick(raw, into) {
		return nil
	}
	reflect.ValueOf(into).Elem().SetZero()
	return json.Unmarshal(raw, into)
}

// quick does as encoding/json does, or gives false for what is unusual: then
// the value may be half filled.
func quick(raw []byte, into any) bool {
	if !utf8.Valid(raw) {
		return false
	}
	r := reader{text: string(raw)}
	r.value(reflect.ValueOf(into).Elem())
	r.space()
	return !r.odd && r.at == len(r.text)
}
