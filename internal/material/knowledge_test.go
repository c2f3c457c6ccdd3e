package material

import (
	"encoding/json"
	"io/fs"
	"os"
	"slices"
	"testing"

	"abut/policies"
)

type pairRow struct {
	ID         string   `json:"id"`
	A          string   `json:"a"`
	B          string   `json:"b"`
	Exposure   string   `json:"exposure"`
	Order      string   `json:"order"`
	State      string   `json:"state"`
	Verdict    string   `json:"verdict"`
	Mechanism  string   `json:"mechanism"`
	Severity   string   `json:"severity"`
	Silent     bool     `json:"silent"`
	SourceKey  string   `json:"source_key"`
	More       []string `json:"more_sources"`
	Basis      string   `json:"basis"`
	Condition  string   `json:"condition"`
	Remedy     string   `json:"remedy"`
	Work       []string `json:"separators_that_work"`
	Fail       []string `json:"separators_that_do_not"`
	Confidence float64  `json:"confidence"`
}

type judgements struct {
	Families map[string]struct {
		Name, Class, Source string
		Traits, Words       []string
		MadeOf              []string `json:"made_of"`
	}
	Traits     map[string]struct{ Meaning string }
	Pairs      map[string]map[string][]pairRow
	Fits       map[string][]string
	Mechanisms map[string]struct{ Meaning, AfterTwoYears string }
	Separators []struct {
		ID            string
		Stops, Partly []string
		DoesNotStop   []string `json:"does_not_stop"`
		SourceKey     string   `json:"source_key"`
	}
	Sources    map[string]struct{ Ref, Kind string }
	Substrates map[string]struct {
		Families   []string
		SourceKeys []string `json:"source_keys"`
		MinAge     *int     `json:"min_age_days"`
	}
	Galvanic struct {
		Index    map[string]struct{ Families []string }
		Families map[string]string
	}
	Vocabulary struct {
		Terms map[string]struct{ Add, Drop, On, Classes []string }
	}
}

func loadKnowledge(t *testing.T) judgements {
	t.Helper()
	var k judgements
	for _, name := range []string{"families", "traits", "pairs", "mechanisms", "separators", "sources", "substrates", "galvanic", "vocabulary"} {
		raw, err := fs.ReadFile(policies.FS, "knowledge/"+name+".json")
		if err != nil {
			t.Fatal(err)
		}
		if err := json.Unmarshal(raw, &k); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
	}
	return k
}

func (k judgements) known(key string) bool {
	_, family := k.Families[key]
	_, trait := k.Traits[key]
	return family || trait
}

func (k judgements) rows() []pairRow {
	var out []pairRow
	for a, bs := range k.Pairs {
		for b, rows := range bs {
			for _, r := range rows {
				if r.A == a && r.B == b {
					out = append(out, r)
				}
			}
		}
	}
	return out
}

func TestFamiliesAreWhole(t *testing.T) {
	k := loadKnowledge(t)
	if len(k.Families) < 120 {
		t.Errorf("%d families", len(k.Families))
	}
	for id, f := range k.Families {
		if f.Name == "" || f.Class == "" || f.Source == "" || len(f.Words)+len(f.MadeOf) == 0 {
			t.Errorf("%s lacks a name, class, source or words", id)
		}
		for _, tr := range f.Traits {
			if _, ok := k.Traits[tr]; !ok {
				t.Errorf("%s has trait %q, which has no meaning", id, tr)
			}
		}
	}
	classes := map[string]bool{}
	for _, f := range k.Families {
		classes[f.Class] = true
	}
	for id, term := range k.Vocabulary.Terms {
		for _, tr := range slices.Concat(term.Add, term.Drop) {
			if _, ok := k.Traits[tr]; !ok {
				t.Errorf("term %s names trait %q, which has no meaning", id, tr)
			}
		}
		for _, c := range term.Classes {
			if !classes[c] {
				t.Errorf("term %s names class %q, which no family has", id, c)
			}
		}
		for _, on := range term.On {
			if _, ok := k.Traits[on]; !ok && !classes[on] {
				t.Errorf("term %s is on %q, neither class nor trait", id, on)
			}
		}
	}
}

func TestPairsResolve(t *testing.T) {
	k := loadKnowledge(t)
	rows := k.rows()
	if len(rows) < 200 {
		t.Fatalf("%d rows", len(rows))
	}
	seen := map[string]bool{}
	for _, r := range rows {
		if seen[r.ID] {
			t.Errorf("%s stands twice", r.ID)
		}
		seen[r.ID] = true
		if !k.known(r.A) || !k.known(r.B) {
			t.Errorf("%s names no family or trait", r.ID)
		}
		for _, key := range append(r.More, r.SourceKey) {
			if _, ok := k.Sources[key]; !ok {
				t.Errorf("%s: source %q is not listed", r.ID, key)
			}
		}
		if _, ok := k.Mechanisms[r.Mechanism]; !ok {
			t.Errorf("%s: mechanism %q has no meaning", r.ID, r.Mechanism)
		}
		checkRow(t, r)
	}
}

func TestFitsAreTraitsWithoutARow(t *testing.T) {
	k := loadKnowledge(t)
	for a, bs := range k.Fits {
		for _, b := range bs {
			_, okA := k.Traits[a]
			_, okB := k.Traits[b]
			if !okA || !okB {
				t.Errorf("fits: %s and %s are not both traits", a, b)
			}
			for _, r := range append(k.Pairs[a][b], k.Pairs[b][a]...) {
				if r.Exposure == "contact" && r.State == "any" {
					t.Errorf("fits: %s has a row", r.ID)
				}
			}
		}
	}
}

func checkRow(t *testing.T, r pairRow) {
	t.Helper()
	for field, allowed := range map[string][]string{
		r.Verdict:  {"compatible", "compatible-with-condition", "needs-confirmation", "incompatible"},
		r.Severity: {"note", "warning", "error"},
		r.Exposure: {"contact", "near", "runoff"},
		r.State:    {"any", "cured", "uncured"},
		r.Basis:    {"source-read", "common-practice", "from-memory"},
		r.Order:    {"", "a-onto-b", "a-over-b", "b-over-a"},
	} {
		if !slices.Contains(allowed, field) {
			t.Errorf("%s: %q is none of %v", r.ID, field, allowed)
		}
	}
	if r.Condition == "" || r.Remedy == "" && !r.Silent || r.Confidence <= 0 || r.Confidence > 1 {
		t.Errorf("%s lacks a condition, remedy or confidence", r.ID)
	}
	if r.Silent != (r.Verdict == "compatible") {
		t.Errorf("%s: silent does not go with %s", r.ID, r.Verdict)
	}
	if (r.Exposure == "runoff") != (r.Order == "a-onto-b") {
		t.Errorf("%s: only run-off has a direction", r.ID)
	}
}

func TestOtherKnowledgeResolves(t *testing.T) {
	k := loadKnowledge(t)
	for _, s := range k.Separators {
		if _, ok := k.Sources[s.SourceKey]; !ok {
			t.Errorf("separator %s: source %q is not listed", s.ID, s.SourceKey)
		}
		for _, m := range slices.Concat(s.Stops, s.Partly, s.DoesNotStop) {
			if _, ok := k.Mechanisms[m]; !ok {
				t.Errorf("separator %s: mechanism %q has no meaning", s.ID, m)
			}
		}
	}
	if len(k.Substrates) != 42 {
		t.Errorf("%d substrates", len(k.Substrates))
	}
	for id, s := range k.Substrates {
		if s.MinAge == nil || len(s.SourceKeys) == 0 {
			t.Errorf("substrate %s lacks an age or source", id)
		}
		for _, key := range s.SourceKeys {
			if _, ok := k.Sources[key]; !ok {
				t.Errorf("substrate %s: source %q is not listed", id, key)
			}
		}
		for _, f := range s.Families {
			if _, ok := k.Families[f]; !ok {
				t.Errorf("substrate %s: no family %q", id, f)
			}
		}
	}
	for f, key := range k.Galvanic.Families {
		if _, ok := k.Families[f]; !ok || len(k.Galvanic.Index[key].Families) == 0 && f != "lead-coated-copper" {
			t.Errorf("galvanic: %s at %s", f, key)
		}
	}
}

// judge resolves two families as the note of the pairs says.
func (k judgements) judge(a, b, exposure, state string) string {
	keys := func(f string) []string { return append([]string{f}, k.Families[f].Traits...) }
	bad := []string{"compatible", "compatible-with-condition", "needs-confirmation", "incompatible"}
	rank, ordered, worst := -1, false, -1
	consider := func(r pairRow) {
		if r.Exposure != exposure || state != "any" && r.State != "any" && r.State != state {
			return
		}
		_, fa := k.Families[r.A]
		_, fb := k.Families[r.B]
		n, o := 0, r.Order == "a-over-b" || r.Order == "b-over-a"
		if fa {
			n++
		}
		if fb {
			n++
		}
		w := slices.Index(bad, r.Verdict)
		if n > rank || n == rank && (w > worst || w == worst && o && !ordered) {
			rank, worst, ordered = n, w, o
		}
	}
	for _, x := range keys(a) {
		for _, y := range keys(b) {
			for _, r := range k.Pairs[x][y] {
				consider(r)
			}
			if exposure != "runoff" {
				for _, r := range k.Pairs[y][x] {
					consider(r)
				}
			}
		}
	}
	if rank < 0 {
		return "unknown"
	}
	return bad[worst]
}

func TestContactCases(t *testing.T) {
	k := loadKnowledge(t)
	raw, err := os.ReadFile("testdata/contacts.json")
	if err != nil {
		t.Fatal(err)
	}
	var cases []struct{ A, B, Exposure, State, Expect, Note string }
	if err := json.Unmarshal(raw, &cases); err != nil {
		t.Fatal(err)
	}
	if len(cases) < 54 {
		t.Fatalf("%d cases", len(cases))
	}
	for _, c := range cases {
		if got := k.judge(c.A, c.B, c.Exposure, c.State); got != c.Expect {
			t.Errorf("%s %s %s %s: %s, want %s (%s)", c.A, c.B, c.Exposure, c.State, got, c.Expect, c.Note)
		}
	}
}

func TestSettledPairsAreErrors(t *testing.T) {
	k := loadKnowledge(t)
	for _, sheet := range []string{"rubberized-asphalt-membrane", "rubberized-asphalt-flashing-tape", "high-temp-asphalt-underlayment"} {
		for _, foe := range []string{
			"pvc-roof-membrane", "pvc-thru-wall-flashing", "flexible-pvc-gasket", "flexible-vinyl-fin", "pvc-cable",
			"epdm-membrane", "epdm-gasket", "coal-tar-pitch", "creosote-timber",
			"butyl-sealant", "solvent-acrylic-sealant", "acoustical-sealant", "construction-adhesive-solvent",
		} {
			if got := k.judge(sheet, foe, "contact", "any"); got != "incompatible" {
				t.Errorf("%s on %s: %s", foe, sheet, got)
			}
		}
		for _, friend := range []string{"rigid-vinyl-window", "butyl-flashing-tape", "solvent-primer", "water-primer", "silicone-gasket", "asphalt-felt"} {
			if got := k.judge(sheet, friend, "contact", "any"); got == "incompatible" {
				t.Errorf("%s on %s: %s", friend, sheet, got)
			}
		}
	}
}
