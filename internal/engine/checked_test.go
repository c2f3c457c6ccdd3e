package engine

import (
	"reflect"
	"testing"

	"abut/internal/document"
	"abut/internal/workbook"
	"abut/policies"
)

// TestBuiltInIsChecked compiles the built-in tree with the checks that a plain
// start leaves out, and wants the same findings from both.
func TestBuiltInIsChecked(t *testing.T) {
	checked, err := Load(Options{Tree: policies.FS})
	if err != nil {
		t.Fatal(err)
	}
	plain, err := Load(Options{})
	if err != nil {
		t.Fatal(err)
	}
	doc := demo(t)
	want, err := checked.Judge(t.Context(), doc)
	if err != nil {
		t.Fatal(err)
	}
	got, err := plain.Judge(t.Context(), doc)
	if err != nil {
		t.Fatal(err)
	}
	if len(want) == 0 || !reflect.DeepEqual(got, want) {
		t.Errorf("%d findings, checked %d, or they differ", len(got), len(want))
	}
}

func demo(t *testing.T) *document.Document {
	t.Helper()
	book, err := workbook.Open("../../testdata/demo/tern-landing.xlsx", workbook.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	builder, err := document.NewBuilder(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := builder.Build(book, document.Settings{})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}
