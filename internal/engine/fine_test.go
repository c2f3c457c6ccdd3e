package engine

import (
	"context"
	"slices"
	"testing"

	"abut/internal/contact"
	"abut/internal/document"
	"abut/internal/schedule"
)

// TestFine asks for the good contacts of a row: silicone on brick is one, EPDM
// on an asphaltic sheet is none.
func TestFine(t *testing.T) {
	sheet := contact.End{Item: "a", Text: "AB-1", Family: "rubberized-asphalt-membrane", Class: "membrane", Keys: []string{"rubberized-asphalt-membrane", "asphaltic"}}
	gasket := contact.End{Item: "b", Text: "gasket", Family: "epdm-gasket", Class: "gasket", Keys: []string{"epdm-gasket", "epdm"}}
	apart := contact.End{Item: "c", Text: "conduit", Family: "rigid-pvc-product", Class: "other", Keys: []string{"rigid-pvc-product", "pvc-rigid"}}
	doc := &document.Document{
		Version: document.Version, File: "x.xlsx",
		Lines: []schedule.Line{{ID: "S!5", Sheet: "S", Row: 5, Role: "membrane"}},
		Contacts: []contact.Contact{
			{ID: "c1", Line: "S!5", A: sheet, B: gasket, Kind: "direct", From: "touches"},
			{ID: "c2", Line: "S!5", A: sheet, B: apart, Kind: "apart", From: "touches"},
		},
	}
	e, err := Load(Options{})
	if err != nil {
		t.Fatal(err)
	}
	fine, err := e.Fine(context.Background(), doc)
	if err != nil {
		t.Fatal(err)
	}
	has := func(id string) bool {
		return slices.ContainsFunc(fine, func(f FineContact) bool { return f.Contact.ID == id && f.Why != "" })
	}
	if has("c1") || !has("c2") {
		t.Errorf("fine: %+v", fine)
	}
}
