package html

import (
	"fmt"
	"strings"
	"unicode"
)

// drawing is a picture with the words that stand for it. The template writes
// it as SVG; the look of each class is in page.css.
type drawing struct {
	ID, Title, Desc string
	W, H            float64
	Shapes          []shape
}

// shape is a rectangle, a path where D is there, or a text.
type shape struct {
	X, Y, W, H float64
	D          string
	Text       string
	Class      string
}

func (d *drawing) rect(x, y, w, h float64, class string) {
	d.Shapes = append(d.Shapes, shape{X: x, Y: y, W: w, H: h, Class: class})
}

func (d *drawing) text(x, y float64, class, text string) {
	d.Shapes = append(d.Shapes, shape{X: x, Y: y, Class: class, Text: text})
}

// path draws through points; closed joins the last with the first.
func (d *drawing) path(class string, closed bool, points ...point) {
	var b strings.Builder
	for i, p := range points {
		b.WriteString(map[bool]string{true: "M", false: "L"}[i == 0])
		b.WriteString(number(p.x) + " " + number(p.y))
	}
	if closed {
		b.WriteString("Z")
	}
	d.Shapes = append(d.Shapes, shape{D: b.String(), Class: class})
}

type point struct{ x, y float64 }

// letter is the tag of a part, which the table beside the picture explains.
func (d *drawing) letter(x, y float64, text string) {
	const half = 9.0
	d.rect(x-half, y-half, 2*half, 2*half, "tag")
	d.text(x, y+4.5, "tag-text", text)
}

// label is the tag of a part with its words, on a plate that hides the hatch.
func (d *drawing) label(x, y float64, letter, words string) {
	d.rect(x, y, plate+wide(words), 19, "tag")
	d.text(x+9, y+14, "tag-text", letter)
	d.text(x+20, y+14, "tag-words", words)
}

// plate is the width of a label without its words.
const plate = 28.0

// wide is about the width of words in the type of the picture.
func wide(words string) float64 {
	const small, big = 6.6, 9.4
	w := 0.0
	for _, r := range words {
		switch {
		case r < unicode.MaxASCII && !unicode.IsUpper(r):
			w += small
		default:
			w += big
		}
	}
	return w
}

// mark is the number of a finding in the shape of its severity: a diamond for
// an error, a triangle for a warning, a circle for a note.
func (d *drawing) mark(x, y float64, severity string, n int) {
	const r = 12.0
	class := "mark " + severity
	switch severity {
	case "error":
		const wide = r + 3
		d.path(class, true, point{x, y - wide}, point{x + wide, y}, point{x, y + wide}, point{x - wide, y})
	case "warning":
		d.path(class, true, point{x, y - r - 4}, point{x + r + 4, y + r}, point{x - r - 4, y + r})
		y += 3
	default:
		round := fmt.Sprintf("M%s %sa%[3]s %[3]s 0 1 0 %[4]s 0a%[3]s %[3]s 0 1 0 -%[4]s 0Z", number(x-r), number(y), number(r), number(2*r))
		d.Shapes = append(d.Shapes, shape{D: round, Class: class})
	}
	d.text(x, y+4, "mark-text", fmt.Sprint(n))
}

// letterOf counts A to Z, then AA and on.
func letterOf(i int) string {
	if i < 26 {
		return string(rune('A' + i))
	}
	return letterOf(i/26-1) + letterOf(i%26)
}
