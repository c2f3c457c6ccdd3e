package settings

import (
	"bytes"
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
)

// Waiver is an accepted finding as it is written, right or not: whether it
// holds is not for the settings to say.
type Waiver struct {
	File  string
	Line  int
	Texts map[string]string
	Lines map[string]int // line of each key
}

// Accepted reads the waivers of a settings file, and those of the files that it
// names among them. None is no error.
func (s Settings) Accepted() ([]Waiver, error) {
	if s.File == "" {
		return nil, nil
	}
	list, files, err := readWaivers(s.File)
	if err != nil {
		return nil, err
	}
	for _, file := range files {
		more, within, err := readWaivers(absolute(filepath.Dir(s.File), file))
		if err != nil {
			return nil, err
		}
		if len(within) > 0 {
			return nil, fmt.Errorf("%s: waivers: names the file %s; only %s may name files", file, within[0], Name)
		}
		if len(more) == 0 {
			return nil, fmt.Errorf("%s: holds no list under waivers; take it out of %s", file, s.File)
		}
		list = append(list, more...)
	}
	return list, nil
}

// readWaivers gives the waivers of one file and the names of files that stand
// among them.
func readWaivers(path string) (list []Waiver, files []string, err error) {
	raw, err := ReadFile(path, maxBytes)
	if err != nil {
		return nil, nil, fmt.Errorf("read waivers: %w", err)
	}
	found, err := inTime(longest, func() (waiverFile, error) { return parseWaivers(path, raw) })
	if err != nil {
		return nil, nil, fmt.Errorf("%s: %w", path, err)
	}
	return found.list, found.files, nil
}

// waiverFile is what stands in the list of one file.
type waiverFile struct {
	list  []Waiver
	files []string
}

func parseWaivers(path string, raw []byte) (found waiverFile, err error) {
	if len(bytes.TrimSpace(raw)) == 0 {
		return found, nil
	}
	if err := validate(raw); err != nil {
		return found, err
	}
	file, err := parser.ParseBytes(raw, 0)
	if err != nil {
		return found, errors.New(firstLine(yaml.FormatError(err, false, false)))
	}
	for _, doc := range file.Docs {
		for _, node := range itemsOf(doc.Body) {
			if name, ok := node.(*ast.StringNode); ok {
				found.files = append(found.files, name.Value)
				continue
			}
			found.list = append(found.list, waiverOf(path, node))
		}
	}
	return found, nil
}

// itemsOf gives the list under the key waivers.
func itemsOf(body ast.Node) []ast.Node {
	for _, entry := range entriesOf(body) {
		if seq, ok := entry.Value.(*ast.SequenceNode); ok && entry.Key.String() == "waivers" {
			return seq.Values
		}
	}
	return nil
}

func entriesOf(node ast.Node) []*ast.MappingValueNode {
	switch n := node.(type) {
	case *ast.MappingNode:
		return n.Values
	case *ast.MappingValueNode: // a mapping of one key
		return []*ast.MappingValueNode{n}
	}
	return nil
}

func waiverOf(path string, node ast.Node) Waiver {
	w := Waiver{File: path, Line: node.GetToken().Position.Line, Texts: map[string]string{}, Lines: map[string]int{}}
	for i, entry := range entriesOf(node) {
		key := entry.Key.String()
		at := entry.Key.GetToken().Position.Line
		if i == 0 {
			w.Line = at
		}
		w.Texts[key], w.Lines[key] = scalar(entry.Value), at
	}
	return w
}

func scalar(node ast.Node) string {
	switch n := node.(type) {
	case *ast.StringNode:
		return n.Value
	case *ast.LiteralNode:
		return strings.TrimSpace(n.Value.Value)
	case *ast.NullNode:
		return ""
	}
	return node.GetToken().Value
}
