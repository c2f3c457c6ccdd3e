// Package settings reads abut.yaml, the settings of a project, from the working
// folder upward.
package settings

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"abut/schema"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/santhosh-tekuri/jsonschema/v6/kind"
	"golang.org/x/text/language"
	"golang.org/x/text/message"
)

// Name is the file that holds the settings of a project.
const Name = "abut.yaml"

// Settings are what a project says of its workbooks. Paths in it are made
// absolute by Find and Load.
type Settings struct {
	File     string            `yaml:"-"` // where they were read, "" for none
	Place    string            `yaml:"place"`
	Country  string            `yaml:"country"`
	Climate  string            `yaml:"climate"`
	Hours    string            `yaml:"hours"`
	FailAt   string            `yaml:"fail_at"`
	Columns  map[string]string `yaml:"columns"`
	Policies []string          `yaml:"policies"`
	Replace  []string          `yaml:"replace"`
	Off      []string          `yaml:"off"`
	Severity map[string]string `yaml:"severity"`
	Products []string          `yaml:"products"`
	Waivers  []any             `yaml:"waivers"` // see Accepted
	Lines    map[string]int    `yaml:"-"`       // line of each key that is given
	Limits   map[string]int    `yaml:"limits"`
}

// Find reads the nearest abut.yaml from a folder upward; none is no error.
func Find(dir string) (Settings, error) {
	dir, err := filepath.Abs(dir)
	if err != nil {
		return Settings{}, fmt.Errorf("find %s: %w", Name, err)
	}
	for {
		path := filepath.Join(dir, Name)
		if _, err := os.Lstat(path); err == nil {
			return Load(path)
		} else if !errors.Is(err, fs.ErrNotExist) {
			return Settings{}, fmt.Errorf("read %s: %w", path, err)
		}
		up := filepath.Dir(dir)
		if up == dir {
			return Settings{}, nil
		}
		dir = up
	}
}

// Load reads one settings file. An error names the file, the line and the key.
func Load(path string) (Settings, error) {
	raw, err := ReadFile(path, maxBytes)
	if err != nil {
		return Settings{}, fmt.Errorf("read settings: %w", err)
	}
	s, err := inTime(longest, func() (Settings, error) { return parse(raw) })
	if err != nil {
		return Settings{}, fmt.Errorf("%s: %w", path, err)
	}
	s.File = path
	s.resolve(filepath.Dir(path))
	return s, nil
}

// maxBytes is far above any settings file; one may come with a stranger's change.
const maxBytes = 1 << 20

// ReadFile reads a file that a stranger's change may bring: links and devices
// are refused before they are opened, and so is what is larger than may be.
func ReadFile(path string, most int64) ([]byte, error) {
	info, err := os.Lstat(path)
	switch {
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, fmt.Errorf("%s: it is a link, folder or device, not a file", path)
	case info.Size() > most:
		return nil, fmt.Errorf("%s: it has more than %d bytes", path, most)
	}
	return os.ReadFile(path)
}

func parse(raw []byte) (Settings, error) {
	var s Settings
	if len(bytes.TrimSpace(raw)) == 0 {
		return s, nil
	}
	if err := validate(raw); err != nil {
		return s, err
	}
	if err := yaml.Unmarshal(raw, &s); err != nil {
		return s, errors.New(firstLine(yaml.FormatError(err, false, false)))
	}
	s.Lines = map[string]int{}
	for _, entry := range entriesOf(bodyOf(raw)) {
		s.Lines[entry.Key.GetToken().Value] = entry.Key.GetToken().Position.Line
	}
	return s, nil
}

// bodyOf is the first document of a file that has been read before, nil for
// one of comments alone.
func bodyOf(raw []byte) ast.Node {
	file, err := parser.ParseBytes(raw, 0)
	if err != nil || len(file.Docs) == 0 {
		return nil
	}
	return file.Docs[0].Body
}

// validate holds the file against the schema and turns a failure into the line
// and key it belongs to.
func validate(raw []byte) error {
	if !utf8.Valid(raw) {
		return errors.New("its text is not valid UTF-8; save it again in UTF-8")
	}
	if err := plain(raw); err != nil {
		return err
	}
	text, err := yaml.YAMLToJSON(raw)
	if err != nil {
		return errors.New(firstLine(yaml.FormatError(err, false, false)))
	}
	value, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil || value == nil {
		return err // nil: comments only
	}
	compiled, err := schema.Compile("settings.schema.json")
	if err != nil {
		return err
	}
	var wrong *jsonschema.ValidationError
	if err := compiled.Validate(value); errors.As(err, &wrong) {
		for len(wrong.Causes) > 0 {
			wrong = wrong.Causes[0]
		}
		return located(raw, wrong)
	} else if err != nil {
		return fmt.Errorf("check settings: %w", err)
	}
	return nil
}

// located puts the line of the key before the schema's words.
func located(raw []byte, e *jsonschema.ValidationError) error {
	words := e.ErrorKind.LocalizedString(message.NewPrinter(language.AmericanEnglish))
	path := strings.Join(e.InstanceLocation, ".")
	key := path
	if unknown, ok := e.ErrorKind.(*kind.AdditionalProperties); ok && len(unknown.Properties) > 0 {
		key = unknown.Properties[0]
		words = "no such setting; see schema/settings.schema.json"
	}
	at := e.InstanceLocation
	if key != path {
		at = append(slices.Clone(at), key)
	}
	if line := lineOf(bodyOf(raw), at); line > 0 {
		return fmt.Errorf("line %d: %s: %s", line, key, words)
	}
	return fmt.Errorf("%s: %s", key, words)
}

// lineOf gives the line of what a path of keys and places in lists leads to, as
// far as it leads; 0 for nowhere.
func lineOf(node ast.Node, path []string) int {
	line := 0
	for _, step := range path {
		var next ast.Node
		if list, ok := node.(*ast.SequenceNode); ok {
			if i, err := strconv.Atoi(step); err == nil && i < len(list.Values) {
				next = list.Values[i]
				line = next.GetToken().Position.Line
			}
		}
		for _, entry := range entriesOf(node) {
			if entry.Key.GetToken().Value == step {
				next, line = entry.Value, entry.Key.GetToken().Position.Line
			}
		}
		if next == nil {
			break
		}
		node = next
	}
	return line
}

func (s *Settings) resolve(dir string) {
	for _, list := range [][]string{s.Policies, s.Products} {
		for i, p := range list {
			list[i] = absolute(dir, p)
		}
	}
	if s.Climate != "" {
		s.Climate = absolute(dir, s.Climate)
	}
}

func absolute(dir, p string) string {
	if filepath.IsAbs(p) {
		return p
	}
	return filepath.Join(dir, p)
}

func firstLine(s string) string {
	first, _, _ := strings.Cut(strings.TrimSpace(s), "\n")
	return first
}
