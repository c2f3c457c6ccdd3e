package engine

import (
	"bytes"
	"reflect"
	"testing"

	"abut/internal/document"
	"abut/internal/plan/build"
	"abut/policies"
)

// TestPlanIsOfTheRules: with a stale plan the tool is right, and slow.
func TestPlanIsOfTheRules(t *testing.T) {
	want, err := Renew(policies.FS, build.Program)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(want, policies.Plan) {
		t.Error("the rules have changed since they were compiled: run go generate ./policies and commit policies/rules.plan")
	}
}

// TestPlanSaysWhatOPASays judges the same documents by the plan and by OPA.
func TestPlanSaysWhatOPASays(t *testing.T) {
	planned := load(t, Options{})
	if planned.plan == nil {
		t.Skip("the plan is stale, which another test tells")
	}
	opa := *planned
	opa.plan = nil
	var err error
	if opa.own, err = planned.all(); err != nil {
		t.Fatal(err)
	}
	for name, doc := range testDocuments(t, 1) {
		t.Run(name, func(t *testing.T) {
			for _, c := range []*cases{nil, planned.shared.Held.cases(doc, true, 0)} {
				got, want := judged(t, planned, doc, c), judged(t, &opa, doc, c)
				if !reflect.DeepEqual(got, want) {
					t.Errorf("with cases: %v", c != nil)
					compareFindings(t, want, got)
				}
			}
			compareLookUps(t, planned, &opa, doc)
		})
	}
}

func compareLookUps(t *testing.T, planned, opa *Engine, doc *document.Document) {
	t.Helper()
	look := func(e *Engine) []any {
		fine, err := e.Fine(t.Context(), doc)
		if err != nil {
			t.Fatal(err)
		}
		bare, err := e.Bare(t.Context(), doc)
		if err != nil {
			t.Fatal(err)
		}
		return []any{fine, bare}
	}
	if got, want := look(planned), look(opa); !reflect.DeepEqual(got, want) {
		t.Errorf("looked up by the plan %v\nby OPA %v", got, want)
	}
}
