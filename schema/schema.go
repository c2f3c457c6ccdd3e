// Package schema embeds the JSON Schemas (2020-12) of what abut reads and
// writes. A schema refers to another by its file name.
package schema

import (
	"embed"
	"fmt"
	"path"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// FS holds document.schema.json (what the policies judge), findings.schema.json
// (what a check writes as JSON) and others beside them.
//
//go:embed *.schema.json
var FS embed.FS

// Compile makes the schema of a file name of FS ready to validate with, with
// those that it refers to.
func Compile(name string) (*jsonschema.Schema, error) {
	compiler := jsonschema.NewCompiler()
	compiler.UseLoader(embedded{})
	return compiler.Compile(name)
}

// embedded loads schemas from FS, whatever folder the compiler resolved their
// names against.
type embedded struct{}

// Load reads the schema that a URL ends with.
func (embedded) Load(url string) (any, error) {
	name := path.Base(url)
	file, err := FS.Open(name)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	value, err := jsonschema.UnmarshalJSON(file)
	if err != nil {
		return nil, fmt.Errorf("read %s: %w", name, err)
	}
	return value, nil
}
