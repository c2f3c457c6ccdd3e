package main

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/xuri/excelize/v2"

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

// offered is a workbook that names what was specified beside what is offered,
// so that its document holds a comparison.
func offered(t *testing.T) string {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	for sheet, text := range map[string]string{
		"Submittal": `Item,Specified,Submitted,Substrate,Primer,Touches
1,M-1,M-1,CMU,P-1,mineral wool board
2,M-1,M-2,CMU,P-1,EPDM gasket
`,
		"Products": `Tag,Generic description,Thickness,Min. application temperature,Max. days open to sun
M-1,Self-adhered SBS-modified asphalt sheet,40 mil,40 F,60
M-2,Self-adhered butyl flashing strip,30 mil,25 F,90
P-1,"Primer, synthetic rubber in solvent",-,25 F,-
`,
		"Waivers": `Rule,Mark,Reason,Accepted by,Until
substitution-worse,2,letter 12,reviewer,31 Dec 2099
contact-epdm-on-asphalt,2,letter 12,,31 Dec 2099
`,
	} {
		if err := addSheet(f, sheet, text); err != nil {
			t.Fatal(err)
		}
	}
	file := filepath.Join(t.TempDir(), "offered.xlsx")
	if err := f.SaveAs(file); err != nil {
		t.Fatal(err)
	}
	return file
}

// findingsSchema is the schema of the JSON report, compiled.
func findingsSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	compiled, err := schema.Compile("findings.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return compiled
}

// TestSchemas holds document and report of every workbook at hand against
// their schemas.
func TestSchemas(t *testing.T) {
	findings := findingsSchema(t)
	for _, file := range append(books(t), offered(t)) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			code, out, errs := abut("read", file)
			if code != 0 {
				t.Fatalf("exit %d: %s", code, errs)
			}
			if strings.HasSuffix(file, "offered.xlsx") && !bytes.Contains(out, []byte(`"comparison"`)) {
				t.Error("no comparison in it")
			}
			if strings.HasSuffix(file, "offered.xlsx") && !bytes.Contains(out, []byte(`"waivers"`)) {
				t.Error("no waivers in it")
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
