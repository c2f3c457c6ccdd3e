package engine

import (
	"context"
	"errors"
	"io/fs"
	"reflect"
	"testing"
	"testing/fstest"

	"abut/internal/document"
	"abut/internal/plan"
	"abut/internal/plan/value"
	"abut/policies"
)

// same wants the findings that all rules by OPA give.
func same(t *testing.T, e *Engine, opts Options, doc *document.Document) {
	t.Helper()
	opa, err := loadTree(opts)
	if err != nil {
		t.Fatal(err)
	}
	got, want := judged(t, e, doc, e.cases(doc)), judged(t, opa, doc, opa.cases(doc))
	if len(want) == 0 || !reflect.DeepEqual(got, want) {
		compareFindings(t, want, got)
		t.Errorf("%d findings, by OPA %d", len(got), len(want))
	}
	if !reflect.DeepEqual(e.Rules(), opa.Rules()) || !reflect.DeepEqual(e.Changes(), opa.Changes()) {
		t.Error("the rules or the changes are told otherwise")
	}
}

// TestRulesOfAnOfficeBesideThePlan: built-in rules keep their plan, and only the
// office's own are compiled.
func TestRulesOfAnOfficeBesideThePlan(t *testing.T) {
	opts := Options{Folders: []string{"../../testdata/office/house"}}
	e := load(t, opts)
	if e.plan == nil || len(e.own.queries) != 1 {
		t.Errorf("the plan is %v, and OPA has %d queries", e.plan != nil, len(e.own.queries))
	}
	same(t, e, opts, demo(t))
}

func TestDataOfAnOfficeWithThePlan(t *testing.T) {
	files := map[string]string{"sequence/lap.json": `{"lap": {"usual_mm": 500, "source": "this office"}}`}
	opts := Options{Folders: []string{folder(t, files)}}
	e := load(t, opts)
	if e.plan == nil || len(e.own.queries) != 0 || len(e.Changes()) == 0 {
		t.Errorf("the plan is %v, OPA has %d queries, changes %v", e.plan != nil, len(e.own.queries), e.Changes())
	}
	same(t, e, opts, demo(t))
}

func TestSettingsWithThePlan(t *testing.T) {
	opts := Options{
		Off:      []string{"contact-epdm-on-asphalt"},
		Severity: map[string]string{"exposure-over-limit": "note"},
	}
	same(t, load(t, opts), opts, demo(t))
	if _, err := Load(Options{Off: []string{"contact-nothing"}}); err == nil {
		t.Error("a rule that does not exist is switched off")
	}
}

func TestReplacedRuleLeavesThePlan(t *testing.T) {
	text, err := fs.ReadFile(policies.FS, "contact/epdm.rego")
	if err != nil {
		t.Fatal(err)
	}
	root := folder(t, map[string]string{"contact/epdm.rego": string(text)})
	if e := load(t, Options{Folders: []string{root}, Replace: []string{"contact.epdm"}}); e.plan != nil {
		t.Error("a rule was replaced, and the plan is still asked")
	}
}

// TestFailingPlan: OPA is asked, which knows what is wrong and where.
func TestFailingPlan(t *testing.T) {
	e := load(t, Options{})
	e.plan = &planned{program: &plan.Program{}, data: map[string]any{}}
	same(t, e, Options{}, demo(t))
	if fine, err := e.Fine(t.Context(), demo(t)); err != nil || len(fine) == 0 {
		t.Errorf("%d contacts are fine, %v", len(fine), err)
	}
}

func TestEndOfTimeWithThePlan(t *testing.T) {
	ctx, stop := context.WithCancel(t.Context())
	stop()
	if _, err := load(t, Options{}).Judge(ctx, demo(t)); !errors.Is(err, context.Canceled) {
		t.Errorf("got %v", err)
	}
}

// TestStalePlan: any change of a rule is seen; data alone is read anew.
func TestStalePlan(t *testing.T) {
	tree := fstest.MapFS{}
	for name, text := range regoFiles(t, policies.FS) {
		tree[name] = &fstest.MapFile{Data: []byte(text)}
	}
	data, err := fs.Glob(policies.FS, "*/*.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range data {
		text, err := fs.ReadFile(policies.FS, name)
		if err != nil {
			t.Fatal(err)
		}
		tree[name] = &fstest.MapFile{Data: text}
	}
	kept, err := readPlan(tree, policies.Plan)
	if err != nil {
		t.Fatal(err)
	}
	if _, packed := kept.data.(value.Packed); !packed {
		t.Error("nothing has changed, and the data is read anew")
	}
	tree["sequence/own.json"] = &fstest.MapFile{Data: []byte(`{"own": 7}`)}
	if kept, err = readPlan(tree, policies.Plan); err != nil {
		t.Fatal(err)
	}
	all, _ := kept.data.(map[string]any)
	if sequence, _ := all["sequence"].(map[string]any); sequence["own"] == nil {
		t.Error("data was added, and is not there")
	}
	tree["contact/own_test.rego"] = &fstest.MapFile{Data: []byte("package contact.own_test\n")}
	if _, err := readPlan(tree, policies.Plan); err != nil {
		t.Errorf("a test was added: %v", err)
	}
	tree["lib/own.rego"] = &fstest.MapFile{Data: []byte("package lib.own\n")}
	if _, err := readPlan(tree, policies.Plan); !errors.Is(err, errStale) {
		t.Errorf("a module was added: %v", err)
	}
}

func TestDamagedPlan(t *testing.T) {
	for _, size := range []int{0, 1, 100, 1000, len(policies.Plan) / 2, len(policies.Plan) - 1} {
		if _, err := readPlan(policies.FS, policies.Plan[:size]); err == nil {
			t.Errorf("%d bytes of the plan are taken for all", size)
		}
	}
}
