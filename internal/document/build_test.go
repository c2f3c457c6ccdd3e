package document_test

import (
	"strings"
	"sync"
	"testing"

	"abut/internal/document"
	"abut/internal/workbook"
	"abut/policies"
)

var newBuilder = sync.OnceValues(func() (*document.Builder, error) { return document.NewBuilder(policies.FS) })

func builder(t testing.TB) *document.Builder {
	t.Helper()
	b, err := newBuilder()
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// build reads a csv text whose cells are parted by bars.
func build(t testing.TB, grid string, set document.Settings) *document.Document {
	t.Helper()
	book, err := workbook.Read("wall.csv", []byte(strings.TrimLeft(grid, "\n")), workbook.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	doc, err := builder(t).Build(book, set)
	if err != nil {
		t.Fatal(err)
	}
	return doc
}
