package hygro_test

import (
	"encoding/json"
	"io/fs"
	"testing"
	"testing/fstest"

	"abut/internal/hygro"
	"abut/policies"
)

// Every figure of the table names a source that is spelled out, and every
// material can be used or says why not.
func TestTableIsWhole(t *testing.T) {
	raw, err := fs.ReadFile(policies.FS, "knowledge/hygro.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Sources   map[string]string `json:"figure_sources"`
		Materials []hygro.Material
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		t.Fatal(err)
	}
	if len(file.Materials) < 50 {
		t.Fatalf("only %d materials", len(file.Materials))
	}
	used := map[string]bool{}
	for _, m := range file.Materials {
		for _, f := range []*hygro.Figure{m.Lambda, m.R, m.Mu, m.SdM, m.PermeanceNG, m.UsualMM} {
			if f == nil {
				continue
			}
			used[f.Source] = true
			if file.Sources[f.Source] == "" || f.Value < 0 {
				t.Errorf("%s: figure %+v has no source or is below zero", m.ID, *f)
			}
		}
		checkUsable(t, m)
	}
	for key := range file.Sources {
		if !used[key] && key != "iso13788" {
			t.Errorf("source %q is not used", key)
		}
	}
}

func checkUsable(t *testing.T, m hygro.Material) {
	t.Helper()
	vapor := 0
	for _, f := range []*hygro.Figure{m.Mu, m.SdM, m.PermeanceNG} {
		if f != nil {
			vapor++
		}
	}
	heat := m.Lambda != nil || m.R != nil
	silent := m.Skip != "" || m.Vented
	switch {
	case vapor > 1:
		t.Errorf("%s has %d vapor figures, of which one must win", m.ID, vapor)
	case silent && (vapor > 0 || heat):
		t.Errorf("%s is not counted, yet has figures", m.ID)
	case !silent && !heat:
		t.Errorf("%s has no thermal figure", m.ID)
	case !silent && (vapor == 1) == (m.WhyUnknown != ""):
		t.Errorf("%s: a vapor figure or a reason for none, not %d and %q", m.ID, vapor, m.WhyUnknown)
	case vapor == 1 && m.Set == "":
		t.Errorf("%s does not tell its set", m.ID)
	}
}

func TestLoadErrors(t *testing.T) {
	for name, text := range map[string]string{
		"no file":   "",
		"not JSON":  "{",
		"twice":     `{"materials":[{"id":"a"},{"id":"a"}]}`,
		"no method": `{}`,
	} {
		t.Run(name, func(t *testing.T) {
			tree := fstest.MapFS{}
			if text != "" {
				tree["knowledge/hygro.json"] = &fstest.MapFile{Data: []byte(text)}
			}
			if _, err := hygro.Load(tree); err == nil {
				t.Error("no error")
			}
		})
	}
}
