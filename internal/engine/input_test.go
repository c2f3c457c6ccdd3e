package engine

import (
	"math"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"

	"abut/internal/document"
	"abut/internal/hygro"
	"abut/internal/schedule"
)

// TestInputIsAsByJSON: the rules see what `abut read` prints.
func TestInputIsAsByJSON(t *testing.T) {
	odd := 1e-9
	full := walls(3)
	full.Windows = []document.Window{{Line: "Walls!2", NightFrost: 0.125, MeanMinC: -1e21, Checks: []document.Check{{LimitC: 4.4}}}}
	full.Profiles = []document.Profile{{ID: "W", Result: hygro.Result{SdTotal: &odd}}, {Result: &hygro.Result{Known: true}}, {}}
	full.Lines[0].Figures = map[string]schedule.Figure{"lap_mm": {Min: &odd, Text: "\"½\" <&> \u2028"}}
	full.Products = []schedule.Product{{ID: "M-1", Accepts: []schedule.Acceptance{{Target: schedule.Target{Text: "wood"}, Primer: "none"}}}}
	completed := walls(2)
	document.Complete(completed)
	for name, doc := range map[string]*document.Document{"empty": {}, "full": full, "completed": completed} {
		t.Run(name, func(t *testing.T) {
			want, err := ast.InterfaceToValue(doc)
			if err != nil {
				t.Fatal(err)
			}
			got, err := input(doc)
			if err != nil {
				t.Fatal(err)
			}
			if got.Compare(want) != 0 {
				t.Errorf("got  %v\nwant %v", got, want)
			}
		})
	}
}

func TestInputRefusesWhatJSONCannotHold(t *testing.T) {
	for name, result := range map[string]any{
		"channel": make(chan int), "not a number": math.NaN(), "infinite": math.Inf(1), "key": map[int]int{1: 1},
	} {
		if _, err := input(&document.Document{Profiles: []document.Profile{{Result: result}}}); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func BenchmarkInput(b *testing.B) {
	doc := walls(1000)
	b.Run("direct", func(b *testing.B) {
		for b.Loop() {
			if _, err := input(doc); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("by JSON", func(b *testing.B) {
		for b.Loop() {
			if _, err := ast.InterfaceToValue(doc); err != nil {
				b.Fatal(err)
			}
		}
	})
}
