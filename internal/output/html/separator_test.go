package html

import (
	"testing"

	"abut/internal/contact"
	"abut/internal/document"
	"abut/internal/schedule"
)

// TestSeparators draws what parts two materials between them, on either side.
func TestSeparators(t *testing.T) {
	end := func(id, slot, text, class string) contact.End {
		return contact.End{Item: id, Line: "S!5", Slot: slot, Text: text, Family: text, Class: class}
	}
	sheet, angle, slip, brick := end("1", "material", "sheet", "membrane"), end("2", "substrate", "angle", "substrate"),
		end("3", "touches", "slip", "separator"), end("4", "touches", "brick", "masonry")
	item := func(e contact.End) schedule.Item {
		return schedule.Item{ID: e.Item, Slot: e.Slot, Text: e.Text, Family: e.Family, Class: e.Class, Polarity: "yes"}
	}
	clear := 50.8
	doc := &document.Document{
		Lines: []schedule.Line{{ID: "S!5", Sheet: "S", Row: 5, Mark: "W", Items: []schedule.Item{item(sheet), item(angle), item(slip), item(brick)}}},
		Contacts: []contact.Contact{
			{ID: "c1", Line: "S!5", A: sheet, B: angle, Kind: "separated", Separator: &slip},
			{ID: "c2", Line: "S!5", A: sheet, B: slip, Kind: "direct"},
			{ID: "c3", Line: "S!5", A: sheet, B: brick, Kind: "near", ClearMM: &clear},
		},
	}
	k, err := readKinds()
	if err != nil {
		t.Fatal(err)
	}
	b := newBoard(k, "f", doc, nil)
	s := b.detail("r", &doc.Lines[0], nil)
	byText := map[string]part{}
	for _, p := range s.Parts {
		byText[p.Text] = p
	}
	angleBox, slipBox, sheetBox, brickBox := byText["angle"].box, byText["slip"].box, byText["sheet"].box, byText["brick"].box
	if angleBox.x+angleBox.w != slipBox.x || slipBox.x+slipBox.w != sheetBox.x {
		t.Errorf("the slip sheet does not lie between: angle %+v, slip %+v, sheet %+v", angleBox, slipBox, sheetBox)
	}
	if brickBox.x <= sheetBox.x+sheetBox.w {
		t.Errorf("the brick touches the sheet: %+v %+v", sheetBox, brickBox)
	}
	if got := byText["brick"].More; got != "kept clear by 51 mm (2 in)" {
		t.Errorf("the brick is told as %q", got)
	}
}
