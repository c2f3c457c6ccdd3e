package main

import (
	"bytes"
	"context"
	"encoding/json"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"abut/internal/cli"
	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/output"
	"abut/internal/workbook"
	"abut/schema"
)

// report is what is read back of a check's JSON.
type report struct {
	text     []byte
	Findings []engine.Finding `json:"findings"`
	Summary  output.Summary   `json:"summary"`
}

// abut runs the tool in memory.
func abut(args ...string) (code int, out, errs []byte) {
	var o, e bytes.Buffer
	code = cli.Main(context.Background(), args, cli.Streams{In: strings.NewReader(""), Out: &o, Err: &e})
	return code, o.Bytes(), e.Bytes()
}

// check gives the report of one workbook, which must be readable.
func check(t *testing.T, file string) report {
	t.Helper()
	code, out, errs := abut("check", "--format", "json", file)
	if code > 1 {
		t.Fatalf("%s: exit %d: %s", file, code, errs)
	}
	r := report{text: out}
	if err := json.Unmarshal(out, &r); err != nil {
		t.Fatalf("%s: %v", file, err)
	}
	return r
}

// books are all workbooks of testdata, and those of the folder that ABUT_SAMPLES
// names.
func books(t *testing.T) []string {
	t.Helper()
	folders := []string{testdata}
	if more := os.Getenv("ABUT_SAMPLES"); more != "" {
		folders = append(folders, more)
	} else {
		t.Log("ABUT_SAMPLES names no folder; only the workbooks of testdata are tried")
	}
	files, err := workbook.Find(folders)
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// findingsSchema is the schema of the JSON report, compiled.
func findingsSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	compiler := jsonschema.NewCompiler()
	files, err := fs.Glob(schema.FS, "*.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range files {
		text, err := schema.FS.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		value, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		if err := compiler.AddResource(name, value); err != nil {
			t.Fatal(err)
		}
	}
	compiled, err := compiler.Compile("findings.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return compiled
}

// TestSchemas holds document and report of every workbook at hand against
// their schemas.
func TestSchemas(t *testing.T) {
	findings := findingsSchema(t)
	for _, file := range books(t) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			code, out, errs := abut("read", file)
			if code != 0 {
				t.Fatalf("exit %d: %s", code, errs)
			}
			if err := document.ValidateJSON(out); err != nil {
				t.Errorf("document: %v", err)
			}
			value, err := jsonschema.UnmarshalJSON(bytes.NewReader(check(t, file).text))
			if err != nil {
				t.Fatal(err)
			}
			if err := findings.Validate(value); err != nil {
				t.Errorf("report: %v", err)
			}
		})
	}
}
