package engine

import (
	"context"
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"abut/internal/climate"
	"abut/internal/phrase"
	"abut/policies"
)

const referenceFolder = "../../testdata/reference"

// leastChecks is how many published values the tests have to hold.
const leastChecks = 150

// reference is one published value with its source.
type reference struct {
	ID        string                      `json:"id"`
	What      string                      `json:"what"`
	Inputs    map[string]any              `json:"inputs"`
	Expected  any                         `json:"expected"`
	Tolerance struct{ Abs, Rel *float64 } `json:"tolerance"`
	Source    string                      `json:"source"`
	Status    string                      `json:"status"`
}

func published(t *testing.T, file string) []reference {
	t.Helper()
	var content struct{ Checks []reference }
	readJSON(t, file, &content)
	return content.Checks
}

func readJSON(t *testing.T, file string, into any) {
	t.Helper()
	raw, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(raw, into); err != nil {
		t.Fatalf("%s: %v", file, err)
	}
}

// questions are the look-ups of the policies that published values are held
// against. An input document of one bare line stands for a schedule.
func questions() map[string]string {
	return map[string]string{
		"vapor_class": `data.lib.vaporclass.by_ng(input.ask.ng)`,
		"air_material": `{true: "fail", false: "pass"}[count([1 |
			data.lib.air.excess(input.lines[0], [], "membrane", input.ask.lsm2)]) > 0]`,
		"voc_usual": `{true: "fail", false: "pass"}[
			input.ask.gl > data.performance.voc.usual[input.ask.role].max_gl * (1 + data.performance.voc.share)]`,
		"index":     `data.knowledge.galvanic.index[input.ask.metal].index_v`,
		"gap":       `abs(index[family[input.ask.a]].index_v - index[family[input.ask.b]].index_v)`,
		"threshold": `[e.max_gap_v | some e in data.knowledge.galvanic.thresholds; e.environment == input.ask.environment][0]`,
		"pair":      `data.lib.rows.worst(data.lib.rows.best(contact)).row.verdict`,
		"winter":    `{true: "cold", false: {true: "warm", false: "cool"}[input.ask.c > limits.warm_c]}[input.ask.c <= limits.cold_c]`,
	}
}

// given are names that the questions use.
const given = `
	index := data.knowledge.galvanic.index
	family := data.knowledge.galvanic.families
	limits := data.vapor.climate
	ends := [{"family": f, "keys": array.concat([f], one.traits), "class": one.class} |
		some side in ["a", "b"]
		f := object.get(input.ask, side, "")
		one := data.knowledge.families[f]
	]
	sides := array.concat(ends, [{}, {}])
	contact := {"kind": "direct", "wet": true, "a": sides[0], "b": sides[1]}
	answer := `

// TestReference holds the policies' look-ups and data against published values.
func TestReference(t *testing.T) {
	built, err := readTree(Options{Tree: policies.FS})
	if err != nil {
		t.Fatal(err)
	}
	compiler, problems := compile(built.modules, built.holds)
	if err := problems.asError(); err != nil {
		t.Fatal(err)
	}
	store := inmem.NewFromObject(built.data)
	prepared := map[string]rego.PreparedEvalQuery{}
	for ask, text := range questions() {
		prepared[ask], err = rego.New(rego.Query(given+text), rego.Compiler(compiler), rego.Store(store)).
			PrepareForEval(context.Background())
		if err != nil {
			t.Fatalf("%s: %v", ask, err)
		}
	}
	for _, file := range []string{"limits.json", "metals.json", "zones.json"} {
		for _, c := range published(t, filepath.Join(referenceFolder, file)) {
			t.Run(c.ID, func(t *testing.T) {
				ask, _ := c.Inputs["ask"].(string)
				query, known := prepared[ask]
				if !known {
					t.Fatalf("%q is no question", ask)
				}
				checkAnswer(t, c, answerTo(t, query, withFigures(t, c.Inputs)))
			})
		}
	}
}

// withFigures adds what Go computes: a figure from its text, a place's winter.
func withFigures(t *testing.T, in map[string]any) map[string]any {
	t.Helper()
	if text, ok := in["text"].(string); ok {
		reader, err := phrase.New()
		if err != nil {
			t.Fatal(err)
		}
		in["lsm2"] = *reader.Quantities(text, "")[0].Max
	}
	if place, ok := in["place"].(string); ok {
		in["c"] = winter(t, place)
	}
	return in
}

// winter is the mean of the three coldest months in °C.
func winter(t *testing.T, place string) float64 {
	t.Helper()
	found, err := climate.Locate(place)
	if err != nil {
		t.Fatal(err)
	}
	site, err := found.Site()
	if err != nil {
		t.Fatal(err)
	}
	var means []float64
	for m := range 12 {
		_, _, mean, _ := site.Month(m + 1)
		means = append(means, mean)
	}
	slices.Sort(means)
	return (means[0] + means[1] + means[2]) / 3
}

func answerTo(t *testing.T, query rego.PreparedEvalQuery, ask map[string]any) any {
	t.Helper()
	line := map[string]any{"id": "W!1", "signals": []any{}, "struck": false}
	results, err := query.Eval(context.Background(), rego.EvalInput(map[string]any{
		"ask": ask, "lines": []any{line}, "contacts": []any{}, "products": []any{}, "windows": []any{},
		"project": map[string]any{"limits": []any{}, "signals": []any{}},
	}))
	if err != nil {
		t.Fatal(err)
	}
	if len(results) != 1 {
		t.Fatalf("%d answers to %v", len(results), ask)
	}
	return results[0].Bindings["answer"]
}

func checkAnswer(t *testing.T, c reference, got any) {
	t.Helper()
	want, isNumber := c.Expected.(float64)
	if !isNumber {
		if got != c.Expected {
			t.Errorf("%s: got %v, want %v (%s)", c.What, got, c.Expected, c.Source)
		}
		return
	}
	number, err := got.(json.Number).Float64()
	if err != nil || c.Tolerance.Abs == nil || math.Abs(number-want) > *c.Tolerance.Abs {
		t.Errorf("%s: got %v, want %v (%s)", c.What, got, want, c.Source)
	}
}

// TestReferenceCount wants enough published values in the tests, each with its
// source and with how it is known, and no id twice.
func TestReferenceCount(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(referenceFolder, "*.json"))
	if err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	for _, file := range files {
		for _, c := range published(t, file) {
			if seen[c.ID] || c.What == "" || c.Source == "" || c.Expected == nil {
				t.Errorf("%s: %q stands twice, or lacks what, source or expected", file, c.ID)
			}
			seen[c.ID] = true
			if !slices.Contains([]string{"found", "factor-found", "derived", "from-memory"}, c.Status) {
				t.Errorf("%s: %q has the status %q", file, c.ID, c.Status)
			}
		}
	}
	if n := len(seen); n < leastChecks {
		t.Errorf("%d published values, want %d", n, leastChecks)
	}
}
