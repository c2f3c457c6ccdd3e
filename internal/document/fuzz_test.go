package document_test

import (
	"bytes"
	"encoding/json"
	"testing"

	"abut/internal/document"
	"abut/internal/workbook"
)

// FuzzBuild reads any bytes as a csv file down to the document: no panic, and
// what comes out keeps to the schema and is the same the second time.
func FuzzBuild(f *testing.F) {
	for _, s := range []string{
		"Mark|Membrane|Substrate|Primer|Install date\nD1|butyl sheet|plywood|none|3/4/2026\n",
		"Duluth, Minnesota\n\nItem|Wall|Layer|Material|Substrate|Min. lap|Cover by\n1|W1|1|R-1|CMU|3 in.|2-4 Mar 2026\n2|W1|2|XPS|R-1|w/ layer 1|TBD\n\nTag|Type|Min apply F|Substrates and primers\nR-1|asphalt sheet|40|CMU (PR-1), R-1/02\nPR-1|primer|(|as R-1\n",
		"Mark|Build-up|Material|Substrate\nA|gypsum board, stud, wool, brick|(|\"as A\"\n",
		"Notes\n1. Rooms kept at 21 C and 50% RH. Primers 250 g/L max.\nItem,Membrane,Substrate\n1,same as 1,ditto\n",
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		book, err := workbook.Read("f.csv", data, workbook.DefaultLimits())
		if err != nil {
			return
		}
		doc, err := builder(t).Build(book, document.Settings{})
		if err != nil {
			return
		}
		first, err := json.Marshal(doc)
		if err != nil {
			t.Fatal(err)
		}
		if err := document.ValidateJSON(first); err != nil {
			t.Fatal(err)
		}
		again, err := builder(t).Build(book, document.Settings{})
		if err != nil {
			t.Fatal(err)
		}
		second, err := json.Marshal(again)
		if err != nil || !bytes.Equal(first, second) {
			t.Fatalf("a second reading differs: %v", err)
		}
	})
}
