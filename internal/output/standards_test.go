package output

import (
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"abut/internal/engine"
)

// sarifSchema is the schema of OASIS for SARIF 2.1.0 (errata 01), as the module
// github.com/owenrumney/go-sarif/v3 v3.3.1 carries it.
func sarifSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	file, err := os.Open(filepath.Join("..", "..", "testdata", "reference", "sarif-2.1.0.schema.json"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	value, err := jsonschema.UnmarshalJSON(file)
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.AssertFormat()
	const name = "sarif-2.1.0.schema.json"
	if err := c.AddResource(name, value); err != nil {
		t.Fatal(err)
	}
	compiled, err := c.Compile(name)
	if err != nil {
		t.Fatal(err)
	}
	return compiled
}

func TestSARIFFollowsSchema(t *testing.T) {
	compiled := sarifSchema(t)
	first := func(m map[string]any) map[string]any { return m["runs"].([]any)[0].(map[string]any) }
	result := func(m map[string]any) map[string]any { return first(m)["results"].([]any)[0].(map[string]any) }
	place := func(m map[string]any) map[string]any {
		at := result(m)["locations"].([]any)[0].(map[string]any)
		return at["physicalLocation"].(map[string]any)["artifactLocation"].(map[string]any)
	}
	tests := map[string]struct {
		run    Run
		change func(map[string]any)
		valid  bool
	}{
		"as written":    {sampleRun(), func(map[string]any) {}, true},
		"clean":         {Run{Files: []string{"walls.xlsx"}}, func(map[string]any) {}, true},
		"unknown key":   {sampleRun(), func(m map[string]any) { result(m)["more"] = 1 }, false},
		"unknown level": {sampleRun(), func(m map[string]any) { result(m)["level"] = "grave" }, false},
		"no message":    {sampleRun(), func(m map[string]any) { delete(result(m), "message") }, false},
		"no driver":     {sampleRun(), func(m map[string]any) { first(m)["tool"] = map[string]any{} }, false},
		"no URI":        {sampleRun(), func(m map[string]any) { place(m)["uri"] = "a b%.xlsx" }, false},
	}
	for name, tc := range tests {
		t.Run(name, func(t *testing.T) {
			value, err := jsonschema.UnmarshalJSON(strings.NewReader(written(t, "sarif", tc.run)))
			if err != nil {
				t.Fatal(err)
			}
			tc.change(value.(map[string]any))
			if err := compiled.Validate(value); (err == nil) != tc.valid {
				t.Errorf("valid is %v, want %v: %v", err == nil, tc.valid, err)
			}
		})
	}
}

// junitParts are the elements that readers of JUnit XML agree on: their
// attributes, those with * required, and what may stand in them.
func junitParts() map[string]struct{ attributes, within []string } {
	fault := struct{ attributes, within []string }{[]string{"type", "message"}, nil}
	return map[string]struct{ attributes, within []string }{
		"testsuites": {[]string{"name", "time", "tests", "failures", "errors"}, []string{"testsuite"}},
		"testsuite": {
			[]string{"name*", "tests*", "failures*", "errors*", "skipped", "time", "timestamp", "hostname", "id", "package"},
			[]string{"properties", "testcase", "system-out", "system-err"},
		},
		"testcase":   {[]string{"name*", "classname", "time"}, []string{"skipped", "error", "failure", "system-out", "system-err"}},
		"failure":    fault,
		"error":      fault,
		"skipped":    fault,
		"system-out": {},
		"system-err": {},
	}
}

func TestJUnitShape(t *testing.T) {
	for name, text := range map[string]string{
		"full": written(t, "junit", sampleRun()), "clean": written(t, "junit", Run{Files: []string{"a.csv"}}),
	} {
		if err := junitShape(text); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	for name, text := range map[string]string{
		"no root":           `<testsuite name="a" tests="0" failures="0" errors="0"/>`,
		"unknown element":   `<testsuites><testsuite name="a" tests="0" failures="0" errors="0"><note/></testsuite></testsuites>`,
		"unknown attribute": `<testsuites><testsuite name="a" tests="0" failures="0" errors="0" mark="1"/></testsuites>`,
		"no count":          `<testsuites><testsuite name="a" tests="0" failures="0"/></testsuites>`,
		"wrong count":       `<testsuites><testsuite name="a" tests="2" failures="0" errors="0"><testcase name="b"/></testsuite></testsuites>`,
		"wrong place":       `<testsuites><testcase name="a"/></testsuites>`,
	} {
		if junitShape(text) == nil {
			t.Errorf("%s: passes", name)
		}
	}
}

// junitShape holds a report against junitParts and its own counts.
func junitShape(text string) error {
	parts := junitParts()
	var open []string
	counts := map[string]int{}
	var want map[string]string
	d := xml.NewDecoder(strings.NewReader(text))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return nil
		} else if err != nil {
			return err
		}
		switch e := token.(type) {
		case xml.StartElement:
			name := e.Name.Local
			if len(open) == 0 && name != "testsuites" || len(open) > 0 && !slices.Contains(parts[open[len(open)-1]].within, name) {
				return errors.New(name + " stands where it may not: " + strings.Join(open, "/"))
			}
			given, err := junitAttributes(e, parts[name].attributes)
			if err != nil {
				return err
			}
			if name == "testsuite" {
				want, counts = given, map[string]int{}
			}
			counts[name]++
			open = append(open, name)
		case xml.EndElement:
			open = open[:len(open)-1]
			if e.Name.Local == "testsuite" && (want["tests"] != strconv.Itoa(counts["testcase"]) ||
				want["failures"] != strconv.Itoa(counts["failure"]) || want["errors"] != strconv.Itoa(counts["error"])) {
				return errors.New("suite " + want["name"] + " counts wrongly")
			}
		}
	}
}

func junitAttributes(e xml.StartElement, known []string) (map[string]string, error) {
	given := map[string]string{}
	for _, a := range e.Attr {
		if !slices.Contains(known, a.Name.Local) && !slices.Contains(known, a.Name.Local+"*") {
			return nil, errors.New(e.Name.Local + " has an attribute " + a.Name.Local)
		}
		given[a.Name.Local] = a.Value
	}
	for _, k := range known {
		name, required := strings.CutSuffix(k, "*")
		if _, ok := given[name]; required && !ok {
			return nil, errors.New(e.Name.Local + " lacks " + name)
		}
	}
	return given, nil
}

// many is a run with so many findings that a comment of a host cannot hold it.
func many(n int) Run {
	run := sampleRun()
	bad := run.Findings[2]
	for i := range n {
		f := bad
		f.Row, f.Severity = 20+i, engine.Severities()[i%len(engine.Severities())]
		run.Findings = append(run.Findings, f)
	}
	return run
}

// TestMarkdownFits: a comment keeps within what hosts take, whole rows, the
// caution, and says how much is left out; errors are the last to go.
func TestMarkdownFits(t *testing.T) {
	for _, n := range []int{0, 100, 400, 3000} {
		run := many(n)
		got := written(t, "markdown", run)
		if len([]rune(got)) > markdownLimit {
			t.Errorf("%d findings: %d characters", n, len([]rune(got)))
		}
		rows := strings.Count(got, "\n| ") - 2*strings.Count(got, "\n## ") + 2*strings.Count(got, "\n## Why")
		left := len(run.Findings) - rows
		if said := "Left out here to fit a comment: " + counted(left, "finding"); (left > 0) != strings.Contains(got, said) {
			t.Errorf("%d findings: %d rows, and it does not say %q", n, rows, said)
		}
		if strings.Count(got, Caution) != 1 || !strings.HasSuffix(got, Caution+"\n") {
			t.Errorf("%d findings: the caution is not at the end, once", n)
		}
		errs := strings.Count(written(t, "json", run), `"severity": "error"`) - 1 // one is waived
		if told := strings.Count(got, "| error |"); told != min(errs, rows) {
			t.Errorf("%d findings: %d of %d errors in %d rows", n, told, errs, rows)
		}
	}
	if !strings.Contains(written(t, "markdown", many(3000)), "Left out here") {
		t.Error("3000 findings fit, so nothing was tried")
	}
}

// TestSameBytes: however many processors there are.
func TestSameBytes(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(1))
	for _, format := range Formats() {
		runtime.GOMAXPROCS(1)
		once := written(t, format, many(50))
		runtime.GOMAXPROCS(4)
		if written(t, format, many(50)) != once {
			t.Errorf("%s differs", format)
		}
	}
}
