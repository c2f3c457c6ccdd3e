package document

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"golang.org/x/text/language"
	"golang.org/x/text/message"

	"abut/schema"
)

const schemaName = "document.schema.json"

// Validate holds a document against schema/document.schema.json, and wants
// every id of a line, product and contact to be unique. An error means that a
// reader of this program is wrong, not that the workbook is.
func Validate(doc *Document) error {
	text, err := json.Marshal(doc)
	if err != nil {
		return fmt.Errorf("document of %s: %w", doc.File, err)
	}
	if err := ValidateJSON(text); err != nil {
		return fmt.Errorf("document of %s: %w", doc.File, err)
	}
	if id := repeatedID(doc); id != "" {
		return fmt.Errorf("document of %s: id %s stands twice", doc.File, id)
	}
	return nil
}

// ValidateJSON holds the JSON text of a document against the schema.
func ValidateJSON(text []byte) error {
	compiled, err := schema.Compile(schemaName)
	if err != nil {
		return err
	}
	value, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		return fmt.Errorf("read the JSON: %w", err)
	}
	var invalid *jsonschema.ValidationError
	if err := compiled.Validate(value); errors.As(err, &invalid) {
		return firstCause(invalid)
	} else if err != nil {
		return err
	}
	return nil
}

// firstCause tells the innermost mistake: where it is and what it is.
func firstCause(err *jsonschema.ValidationError) error {
	for len(err.Causes) > 0 {
		err = err.Causes[0]
	}
	words := err.ErrorKind.LocalizedString(message.NewPrinter(language.English))
	return fmt.Errorf("at /%s: %s", strings.Join(err.InstanceLocation, "/"), words)
}

func repeatedID(doc *Document) string {
	seen := map[string]bool{}
	repeated := ""
	note := func(kind, id string) {
		if seen[kind+id] && repeated == "" {
			repeated = id
		}
		seen[kind+id] = true
	}
	for _, l := range doc.Lines {
		note("line ", l.ID)
	}
	for _, p := range doc.Products {
		note("product ", p.ID)
	}
	for _, c := range doc.Contacts {
		note("contact ", c.ID)
	}
	return repeated
}
