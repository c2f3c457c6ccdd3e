package knowledge

import (
	"encoding/json"
	"io/fs"
	"reflect"
	"strings"
	"testing"
	"testing/fstest"

	"abut/policies"
)

type sample struct {
	Families map[string]struct {
		Name    string   `json:"name"`
		Traits  []string `json:"traits"`
		Generic bool     `json:"generic"`
	} `json:"families"`
	Vocabulary struct {
		Spelling map[string]string `json:"spelling"`
		Near     float64           `json:"near_at"`
		Length   int               `json:"fuzzy_length"`
	} `json:"vocabulary"`
	Lists struct {
		Ranks [][]string       `json:"ranks"`
		Of    map[string]*part `json:"of"`
		Pair  [2]float64       `json:"pair"`
	} `json:"lists"`
	hidden bool //lint:ignore U1000 a field that no file may set
}

type part struct{ Size float64 }

// All files of the tree are read the quick way, and those that fit the sample
// as encoding/json reads them.
func TestTree(t *testing.T) {
	err := fs.WalkDir(policies.FS, ".", func(name string, _ fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(name, ".json") {
			return err
		}
		raw, err := fs.ReadFile(policies.FS, name)
		if err != nil {
			return err
		}
		if !quick(raw, &struct{}{}) {
			t.Errorf("%s is left to encoding/json", name)
		}
		if !same(t, raw) && json.Unmarshal(raw, &sample{}) == nil {
			t.Errorf("%s fits the sample and is left to encoding/json", name)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

// same holds the quick way against encoding/json, and says whether it was taken.
func same(t *testing.T, raw []byte) bool {
	t.Helper()
	var got, want sample
	took := quick(raw, &got)
	err := json.Unmarshal(raw, &want)
	if took && (err != nil || !reflect.DeepEqual(got, want)) {
		t.Errorf("%.200s: gives %+v, not %+v (%v)", raw, got, want, err)
	}
	return took
}

func FuzzQuick(f *testing.F) {
	for _, text := range []string{
		`{"families": {"a": {"name": "x\u00e4\"", "traits": ["b", "c"], "generic": true, "note": {"a": [1, null, -2.5]}}}}`,
		`{"vocabulary": {"spelling": {"a": "b", "a": "c"}, "near_at": 0.7, "fuzzy_length": 5}}`,
		`{"lists": {"ranks": [["a"], []], "of": {"m": {"Size": 1}, "n": null}}}`,
		`{"FAMILIES": {}}`, `{"families": {}} x`, `{"families": {},}`, `{"families" {}}`, `{"lists": {"of": {"m": {"Size": 01}}}}`,
		`{"lists": {"of": {"m": {"Size": 1e3}}}}`, `{"lists": {"of": {"m": {"Size": 1.}}}}`, `{"families": null}`, `{"x": "\x"}`, "{\"x\": \"\n\"}", `{`, ``, `{"x": nul`, `[`,
		`{"lists": {"of": {"m": {"size": 1, "Size": 2, "SIZE": 3}}, "Pair": [1]}}`, `{"lists": {"pair": [1, 2, 3]}}`, `{"lists": {"pair": [1, 2], "pair": []}}`,
		`{"vocabulary": {"fuzzy_length": 1.5}}`, `{"hidden": true}`, `{"families": {"a": {"traits": [] }}, "families": {"b": {}}}`, strings.Repeat(`[`, 200), `{"x": ` + strings.Repeat(`[`, 200) + strings.Repeat(`]`, 200) + `}`,
	} {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, raw []byte) { same(t, raw) })
}

// What is wrong is told as encoding/json tells it, and leaves nothing behind.
func TestRead(t *testing.T) {
	tree := fstest.MapFS{
		"good.json": {Data: []byte(`{"families": {"a": {"name": "n"}}}`)},
		"odd.json":  {Data: []byte(`{"families": {"a": {"name": "n"}}, "vocabulary": {"\u006eear_at": 7e-1, "NEAR_AT": 0.7}}`)},
		"bad.json":  {Data: []byte(`{"families": {"a": {"name": 7}}}`)},
	}
	for _, name := range []string{"good.json", "odd.json"} {
		var s sample
		if err := Read(tree, "words", name, &s); err != nil || s.Families["a"].Name != "n" || name == "odd.json" && s.Vocabulary.Near != 0.7 {
			t.Errorf("%s: %v, %+v", name, err, s)
		}
	}
	var s sample
	for i, told := range []string{
		"words bad.json: json: cannot unmarshal number into Go struct field .families.name of type string",
		"words: open none.json: file does not exist",
	} {
		if err := Read(tree, "words", []string{"bad.json", "none.json"}[i], &s); err == nil || err.Error() != told {
			t.Errorf("%v, not %s", err, told)
		}
	}
}
