package document_test

import (
	"testing"

	"abut/internal/document"
	"abut/internal/workbook"
)

// BenchmarkBuild reads the demo project, about forty lines, down to the document.
func BenchmarkBuild(b *testing.B) {
	book, err := workbook.Open("../../testdata/demo/tern-landing.xlsx", workbook.DefaultLimits())
	if err != nil {
		b.Fatal(err)
	}
	build := builder(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := build.Build(book, document.Settings{}); err != nil {
			b.Fatal(err)
		}
	}
}
