package engine

import (
	"context"
	"slices"
	"testing"

	"abut/internal/document"
	"abut/internal/workbook"
	"abut/policies"
)

// schedules are short ones of several layouts.
var schedules = []string{
	"Mark|Membrane|Substrate|Primer|Touches|Lap|Installed|Covered\nD1|SBS sheet|CMU|none|plasticized PVC|1 in.|3/4/2026|9/4/2026\n",
	"Duluth, Minnesota\n\nItem|Wall|Layer|Material|Substrate|Min. lap|Cover by\n1|W1|1|R-1|CMU|3 in.|2-4 Mar 2026\n2|W1|2|XPS|R-1|w/ layer 1|TBD\n\nTag|Type|Min apply F|Substrates and primers\nR-1|asphalt sheet|40|CMU (PR-1), R-1/02\nPR-1|primer|(|as R-1\n",
	"Item|Specified|Submitted|Substrate|Primer|Touches\n1|M-1|butyl sheet|CMU|P-1|EPDM gasket\n",
	"Notes\n1. Rooms kept at 21 C and 50% RH. Primers 250 g/L max.\nItem,Membrane,Substrate,Perms,Thickness\n1,same as 1,ditto,0.05,40 mil (4 mm)\n",
	"Item,Wall,Layer,Material,Thickness,Permeance,Installed\n1,W1,1,Vinyl wallcovering,,0.3 perms,3/4/2026\n2,W1,2,Gypsum board,5/8 in,,3/4/2026\n3,W1,3,XPS,2 in,,3/4/2026\n4,W1,4,SBS sheet,40 mil,0.05 perms,3/4/2026\n5,W1,5,Brick veneer,,,TBD\n",
}

// FuzzJudge reads any bytes as a csv file down to the findings: every rule can
// be run on every document, and the findings are the same the second time.
func FuzzJudge(f *testing.F) {
	for _, s := range schedules {
		f.Add([]byte(s))
	}
	builder, err := document.NewBuilder(policies.FS)
	if err != nil {
		f.Fatal(err)
	}
	rules, err := Load(Options{})
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		book, err := workbook.Read("f.csv", data, workbook.DefaultLimits())
		if err != nil {
			return
		}
		doc, err := builder.Build(book, document.Settings{})
		if err != nil {
			return
		}
		findings, err := rules.Judge(context.Background(), doc)
		if err != nil {
			t.Fatal(err)
		}
		again, err := rules.Judge(context.Background(), doc)
		if err != nil {
			t.Fatal(err)
		}
		if !slices.EqualFunc(findings, again, func(a, b Finding) bool { return a.Message == b.Message && a.Row == b.Row }) {
			t.Fatal("a second judging differs")
		}
	})
}
