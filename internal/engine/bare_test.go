package engine

import (
	"context"
	"reflect"
	"testing"

	"abut/internal/document"
	"abut/internal/schedule"
)

// TestBare holds the days of a row against the limit of the row itself.
func TestBare(t *testing.T) {
	sixty := 60.0
	item := schedule.Item{ID: "S!5/1", Slot: "material", Text: "sheet", Class: "membrane", Polarity: "yes", Keys: []string{"asphaltic"}}
	doc := &document.Document{
		Version: document.Version, File: "x.xlsx",
		Lines: []schedule.Line{{
			ID: "S!5", Sheet: "S", Row: 5, Role: "membrane", Items: []schedule.Item{item},
			Figures: map[string]schedule.Figure{"exposure_days": {Min: &sixty, Max: &sixty, Text: "60 days"}},
			Spans:   map[string]schedule.Span{"bare_days": {Min: 77, Max: 77, Last: 77, From: "2026-04-13", To: "2026-06-29"}},
		}},
	}
	e, err := Load(Options{})
	if err != nil {
		t.Fatal(err)
	}
	got, err := e.Bare(context.Background(), doc)
	if err != nil {
		t.Fatal(err)
	}
	want := []Bare{{
		Line: "S!5", Text: "sheet", Min: 77, Max: 77, From: "2026-04-13", To: "2026-06-29",
		Limits: []BareLimit{{Days: 60, By: "the row", Level: "error"}},
	}}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v, want %+v", got, want)
	}
}
