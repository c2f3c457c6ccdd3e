package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"abut/internal/output"
)

// TestSameBytes runs the demo in each format thrice, with one and with several
// processors.
func TestSameBytes(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(0))
	demo := filepath.Join(testdata, "demo", "tern-landing.xlsx")
	once := map[string]string{}
	for _, n := range []int{1, 4, 4} {
		runtime.GOMAXPROCS(n)
		args := []string{"check", demo}
		dir := t.TempDir()
		for _, ending := range []string{"txt", "json", "sarif", "xml", "md", "html"} {
			args = append(args, "-o", filepath.Join(dir, "report."+ending))
		}
		if code, _, errs := abut(args...); code != 1 {
			t.Fatalf("exit %d: %s", code, errs)
		}
		files, err := os.ReadDir(dir)
		if err != nil || len(files) != len(output.Formats())+1 {
			t.Fatalf("%d files, %v", len(files), err)
		}
		for _, f := range files {
			text, err := os.ReadFile(filepath.Join(dir, f.Name()))
			if err != nil {
				t.Fatal(err)
			}
			if first, ok := once[f.Name()]; ok && first != string(text) {
				t.Errorf("%s with %d processors differs", f.Name(), n)
			}
			once[f.Name()] = string(text)
		}
	}
}

// sarif is what is read back of a check's SARIF.
type sarif struct {
	Runs []struct {
		Tool struct {
			Driver struct {
				Rules []struct {
					ID   string `json:"id"`
					Help struct {
						Text string `json:"text"`
					} `json:"help"`
				} `json:"rules"`
			} `json:"driver"`
		} `json:"tool"`
		Results []struct {
			Level     string            `json:"level"`
			Marks     map[string]string `json:"partialFingerprints"`
			Locations []struct {
				Physical struct {
					Artifact struct {
						URI string `json:"uri"`
					} `json:"artifactLocation"`
				} `json:"physicalLocation"`
				Logical []struct {
					Full string `json:"fullyQualifiedName"`
				} `json:"logicalLocations"`
			} `json:"locations"`
			Suppressions []struct {
				Justification string `json:"justification"`
			} `json:"suppressions"`
		} `json:"results"`
	} `json:"runs"`
}

func checkSARIF(t *testing.T, compiled *jsonschema.Schema, file string) sarif {
	t.Helper()
	code, out, errs := abut("check", "--format", "sarif", file)
	if code > 1 {
		t.Fatalf("%s: exit %d: %s", file, code, errs)
	}
	value, err := jsonschema.UnmarshalJSON(strings.NewReader(string(out)))
	if err != nil {
		t.Fatal(err)
	}
	if err := compiled.Validate(value); err != nil {
		t.Errorf("%s: %v", file, err)
	}
	var log sarif
	if err := json.Unmarshal(out, &log); err != nil {
		t.Fatal(err)
	}
	return log
}

// sarifSchema is the schema of OASIS for SARIF 2.1.0.
func sarifSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	c := jsonschema.NewCompiler()
	c.AssertFormat()
	compiled, err := c.Compile(filepath.Join(testdata, "reference", "sarif-2.1.0.schema.json"))
	if err != nil {
		t.Fatal(err)
	}
	return compiled
}

// TestSARIF: the reports of all workbooks at hand follow the schema; each rule
// has its help, and each finding of a sheet its cell.
func TestSARIF(t *testing.T) {
	compiled := sarifSchema(t)
	results, suppressed := 0, 0
	for _, file := range append(books(t), offered(t)) {
		run := checkSARIF(t, compiled, file).Runs[0]
		for _, rule := range run.Tool.Driver.Rules {
			if !strings.Contains(rule.Help.Text, "What to do: ") {
				t.Errorf("rule %s has no help", rule.ID)
			}
		}
		for _, r := range run.Results {
			results, suppressed = results+1, suppressed+len(r.Suppressions)
			if uri := r.Locations[0].Physical.Artifact.URI; !strings.HasSuffix(uri, filepath.Base(file)) {
				t.Errorf("%s is at %s", file, uri)
			}
			if len(r.Locations[0].Logical) == 0 && r.Level == "error" {
				t.Errorf("%s: an error without a cell", file)
			}
		}
	}
	if results == 0 || suppressed == 0 {
		t.Errorf("%d results, %d suppressions: nothing was tried", results, suppressed)
	}
}

// TestFingerprintsOutliveRows: rows added above and rows in another order leave
// each error and warning its fingerprint.
func TestFingerprintsOutliveRows(t *testing.T) {
	compiled := sarifSchema(t)
	heading := "Item,Membrane,Substrate,Primer,Touches,Installed,Covered\n"
	rows := []string{
		"W1,Self-adhered SBS-modified asphalt sheet,CMU,solvent-borne rubber primer,plasticized PVC sheet,2026-09-14,2026-09-30\n",
		"W2,Self-adhered SBS-modified asphalt sheet,CMU,solvent-borne rubber primer,EPDM gasket,2026-09-14,2026-09-30\n",
		"W3,Self-adhered butyl sheet,CMU,solvent-borne rubber primer,PVC window flange,2026-09-14,2027-09-30\n",
	}
	marks := func(text string) []string {
		file := filepath.Join(t.TempDir(), "walls.csv")
		if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		t.Chdir(filepath.Dir(file))
		var list []string
		for _, r := range checkSARIF(t, compiled, "walls.csv").Runs[0].Results {
			if r.Level != "note" { // a note told once for the job stands at the first row that it holds for
				list = append(list, r.Marks["abutRowWords/v1"])
			}
		}
		slices.Sort(list)
		return list
	}
	want := marks(heading + strings.Join(rows, ""))
	if len(want) < 2 {
		t.Fatalf("%d findings: nothing to move", len(want))
	}
	for name, text := range map[string]string{
		"rows above":    "Tern Landing,,,,,,\n,,,,,,\n" + heading + strings.Join(rows, ""),
		"another order": heading + rows[2] + rows[0] + rows[1],
	} {
		if got := marks(text); !slices.Equal(got, want) {
			t.Errorf("%s: got %v, want %v", name, got, want)
		}
	}
}
