package engine

import (
	"context"
	"fmt"
	"testing"

	"abut/internal/contact"
	"abut/internal/document"
	"abut/internal/schedule"
)

// BenchmarkLoad is what every start of the program pays.
func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		if _, err := Load(Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkJudge shows that time grows with the rows and not with their square.
func BenchmarkJudge(b *testing.B) {
	e, err := Load(Options{})
	if err != nil {
		b.Fatal(err)
	}
	for _, rows := range []int{10, 1000, 4000} {
		doc := walls(rows)
		b.Run(fmt.Sprintf("rows=%d", rows), func(b *testing.B) {
			for b.Loop() {
				if _, err := e.Judge(context.Background(), doc); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// walls has rows of a membrane on concrete, primed and sealed at the edge.
func walls(rows int) *document.Document {
	doc := &document.Document{File: "walls.xlsx"}
	for row := range rows {
		line := schedule.Line{
			ID: fmt.Sprintf("Walls!%d", row+2), Sheet: "Walls", Row: row + 2, Mark: fmt.Sprintf("W-%d", row), Role: "membrane",
			Texts: map[string]string{}, Cells: map[string]string{},
		}
		for i, slot := range []string{"material", "substrate", "primer", "edge", "touches"} {
			address := fmt.Sprintf("%c%d", 'C'+i, line.Row)
			line.Cells[slot], line.Texts[slot] = address, slot+" in words"
			line.Items = append(line.Items, schedule.Item{
				ID: fmt.Sprintf("%s/%d", line.ID, i), Slot: slot, Text: slot + " in words", Family: "family-" + slot,
				Keys: []string{"family-" + slot, "asphaltic", "plasticized", "porous-masonry"}, Polarity: "yes",
				At: schedule.At{Sheet: "Walls", Row: line.Row, Cell: address},
			})
		}
		for i, other := range line.Items[1:] {
			doc.Contacts = append(doc.Contacts, contact.Contact{
				ID: fmt.Sprintf("%s~%d", line.ID, i), Line: line.ID, A: end(line, line.Items[0]), B: end(line, other),
				Kind: "direct", From: other.Slot, At: other.At,
			})
		}
		doc.Lines = append(doc.Lines, line)
	}
	return doc
}

func end(line schedule.Line, item schedule.Item) contact.End {
	return contact.End{
		Item: item.ID, Line: line.ID, Slot: item.Slot, Text: item.Text, Family: item.Family, Keys: item.Keys, At: item.At,
	}
}
