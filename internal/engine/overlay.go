package engine

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"time"
)

// Overlay gives the policy tree with the data of an office's folders over it,
// merged as for the rules, so that the readers of words and units go by the
// same data as the rules do. Without folders it is the tree itself.
func Overlay(files fs.FS, folders []string) (fs.FS, error) {
	if len(folders) == 0 {
		return files, nil
	}
	t, err := readFiles(Options{Tree: files, Folders: folders}, isData)
	if err != nil {
		return nil, err
	}
	return &overlay{base: files, data: t.data}, nil
}

// overlay writes the files of a tree with the values of merged data.
type overlay struct {
	base fs.FS
	data map[string]any
}

// Open implements fs.FS.
func (o *overlay) Open(name string) (fs.File, error) {
	if !isData(name) {
		return o.base.Open(name)
	}
	text, err := o.ReadFile(name)
	if err != nil {
		return nil, err
	}
	return &memory{Reader: bytes.NewReader(text), name: path.Base(name)}, nil
}

// ReadFile implements fs.ReadFileFS: a data file keeps its keys and gets the
// merged value of each.
func (o *overlay) ReadFile(name string) ([]byte, error) {
	text, err := fs.ReadFile(o.base, name)
	if err != nil || !isData(name) {
		return text, err
	}
	content, err := decode(text)
	if err != nil {
		return nil, fmt.Errorf("read policies %s: %w", name, err)
	}
	here, _ := o.data[path.Dir(name)].(map[string]any)
	for key := range content {
		if merged, ok := here[key]; ok {
			content[key] = merged
		}
	}
	return json.Marshal(content)
}

// memory is a file held in memory.
type memory struct {
	*bytes.Reader
	name string
}

func (m *memory) Stat() (fs.FileInfo, error) { return m, nil }
func (m *memory) Close() error               { return nil }
func (m *memory) Name() string               { return m.name }
func (m *memory) Mode() fs.FileMode          { return 0o444 }
func (m *memory) ModTime() time.Time         { return time.Time{} }
func (m *memory) IsDir() bool                { return false }
func (m *memory) Sys() any                   { return nil }
