package settings

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"time"
)

// Overlay gives a policy tree in which the data of an office's folders lies over
// the tree's own: a key of the office beats the same key, objects merge, lists
// replace. Rules are not touched; they are loaded with the engine.
func Overlay(base fs.FS, folders []string) (fs.FS, error) {
	if len(folders) == 0 {
		return base, nil
	}
	o := &overlay{base: base, over: map[string][]map[string]any{}}
	for _, folder := range folders {
		if err := o.add(folder); err != nil {
			return nil, err
		}
	}
	return o, nil
}

// overlay holds, for each folder of the tree, the objects that lie over its data.
type overlay struct {
	base fs.FS
	over map[string][]map[string]any
}

func (o *overlay) add(folder string) error {
	files, err := filepath.Glob(filepath.Join(folder, "*", "*.json"))
	if err != nil {
		return fmt.Errorf("policies %s: %w", folder, err)
	}
	for _, file := range files {
		raw, err := os.ReadFile(file)
		if err != nil {
			return fmt.Errorf("policies: %w", err)
		}
		var data map[string]any
		if err := json.Unmarshal(raw, &data); err != nil {
			return fmt.Errorf("%s:%d: not JSON data: %w", file, lineOf(raw, err), err)
		}
		dir := filepath.Base(filepath.Dir(file))
		o.over[dir] = append(o.over[dir], data)
	}
	return nil
}

// lineOf finds the line that a JSON error points at.
func lineOf(raw []byte, err error) int {
	var at *json.SyntaxError
	if e, ok := err.(*json.SyntaxError); ok {
		at = e
		return 1 + bytes.Count(raw[:min(int(at.Offset), len(raw))], []byte("\n"))
	}
	return 1
}

// Open implements fs.FS.
func (o *overlay) Open(name string) (fs.File, error) {
	raw, err := o.ReadFile(name)
	if err != nil || path.Ext(name) != ".json" {
		return o.base.Open(name)
	}
	return &memory{name: path.Base(name), Reader: bytes.NewReader(raw), size: int64(len(raw))}, nil
}

// ReadFile implements fs.ReadFileFS.
func (o *overlay) ReadFile(name string) ([]byte, error) {
	raw, err := fs.ReadFile(o.base, name)
	over := o.over[path.Dir(name)]
	if err != nil || len(over) == 0 || path.Ext(name) != ".json" {
		return raw, err
	}
	var data map[string]any
	if err := json.Unmarshal(raw, &data); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	for _, o := range over {
		for key, value := range o {
			if have, ok := data[key]; ok { // the same folder's files share no key
				data[key] = merged(have, value)
			}
		}
	}
	return json.Marshal(data)
}

func merged(a, b any) any {
	x, ok := a.(map[string]any)
	y, ok2 := b.(map[string]any)
	if !ok || !ok2 {
		return b
	}
	for k, v := range y {
		if have, ok := x[k]; ok {
			v = merged(have, v)
		}
		x[k] = v
	}
	return x
}

// memory is a file held in memory.
type memory struct {
	*bytes.Reader
	name string
	size int64
}

func (m *memory) Stat() (fs.FileInfo, error) { return m, nil }
func (m *memory) Close() error               { return nil }
func (m *memory) Name() string               { return m.name }
func (m *memory) Size() int64                { return m.size }
func (m *memory) Mode() fs.FileMode          { return 0o444 }
func (m *memory) ModTime() time.Time         { return time.Time{} }
func (m *memory) IsDir() bool                { return false }
func (m *memory) Sys() any                   { return nil }

var _ io.Reader = (*memory)(nil)
