package html

import (
	"fmt"
	"slices"
	"strings"

	"abut/internal/contact"
)

// Columns of a detail, left to right, in the units of the picture.
const (
	detailTop   = 30.0
	leftX       = 12.0
	leftWide    = 148.0
	primerWide  = 12.0
	filmWide    = 18.0
	mainWide    = 44.0
	betweenWide = 34.0
	rightWide   = 200.0
	leastHigh   = 46.0
	detailHigh  = 190.0
	rowGap      = 5.0
)

// layOut places the parts of a detail in columns and draws them.
func (s *section) layOut(g *gather) {
	var under, film, right []int
	for i := 1; i < len(s.Parts); i++ {
		switch p := s.Parts[i]; {
		case p.slot == "primer":
			film = append(film, i)
		case p.slot == "substrate" || p.slot == "behind":
			under = append(under, i)
		default:
			right = append(right, i)
		}
	}
	rows := float64(max(len(under), len(right), len(film)))
	high := max(detailHigh, rows*(leastHigh+rowGap))
	s.Picture.H = detailTop + high + 14
	x := leftX
	var between []int
	if len(under) > 0 {
		s.stack(under, x, leftWide, high, 0)
		between, right = s.bed(under, right, g)
		x += leftWide
	}
	if len(film) > 0 {
		s.stack(film, x, primerWide, high, 0)
		x += primerWide
	}
	s.Parts[0].box = box{x, detailTop, mainWide, high}
	x += mainWide
	s.stack(right, x, rightWide, high, rowGap)
	s.bridge(right, g)
	s.Picture.W = x + rightWide + leftX
	for k, i := range slices.Concat(under, between, film, []int{0}, right) {
		s.Parts[i].Letter = letterOf(k)
		s.paint(s.Parts[i])
	}
	s.Picture.text(leftX, detailTop-12, "label", "under")
	s.Picture.text(x+4, detailTop-12, "label", "over and beside")
}

// stack shares the height of a column among parts.
func (s *section) stack(list []int, x, wide, high, gap float64) {
	each := (high - gap*float64(max(0, len(list)-1))) / float64(max(1, len(list)))
	for k, i := range list {
		s.Parts[i].box = box{x, detailTop + float64(k)*(each+gap), wide, each}
	}
}

// bed draws what parts the material from what lies under it. Where that is a
// part of its own, it moves there from the others.
func (s *section) bed(under, others []int, g *gather) (between, rest []int) {
	for _, i := range under {
		c := g.meets[i]
		if c == nil || c.Separator == nil {
			continue
		}
		p := &s.Parts[i]
		p.More = "parted by " + c.Separator.Text
		p.box.w -= filmWide
		film := box{p.box.x + p.box.w, p.box.y, filmWide, p.box.h}
		if k := partOf(s.Parts, *c.Separator); slices.Contains(others, k) {
			s.Parts[k].box = film
			between = append(between, k)
			others = slices.DeleteFunc(others, func(o int) bool { return o == k })
			continue
		}
		s.Picture.rect(film.x, film.y, film.w, film.h, "m m-"+g.kinds.of(c.Separator.Class, c.Separator.Keys))
	}
	return between, others
}

// bridge moves the parts that do not touch the material off it, and draws what
// keeps the two apart.
func (s *section) bridge(right []int, g *gather) {
	for _, i := range right {
		p, c := &s.Parts[i], g.meets[i]
		if c != nil && c.Kind == "direct" {
			continue
		}
		from := p.box
		p.box.x, p.box.w = from.x+betweenWide, from.w-betweenWide
		gap := box{from.x, from.y, betweenWide, from.h}
		switch {
		case c == nil:
			p.More = "not said to touch the material"
			s.Picture.rect(gap.x, gap.y, gap.w, gap.h, "gap")
		case c.Separator != nil:
			p.More = "parted by " + c.Separator.Text
			s.Picture.rect(gap.x, gap.y, gap.w, gap.h, "m m-"+g.kinds.of(c.Separator.Class, c.Separator.Keys))
		case c.Kind == "runoff":
			p.More = "in the run-off"
			s.runoff(gap)
		default:
			p.More = clear(c)
			s.Picture.rect(gap.x, gap.y, gap.w, gap.h, "gap")
			s.Picture.path("measure", false, point{gap.x + 2, gap.y + gap.h/2}, point{gap.x + gap.w - 2, gap.y + gap.h/2})
		}
	}
}

// runoff draws drops that fall.
func (s *section) runoff(b box) {
	for k := range 3 {
		x := b.x + float64(k+1)*b.w/4
		s.Picture.path("drop", false, point{x, b.y + 6}, point{x, b.y + b.h - 6})
	}
}

func clear(c *contact.Contact) string {
	if c.ClearMM != nil {
		return "kept clear by " + length(*c.ClearMM)
	}
	return "near, not in contact"
}

// paint draws a part with its letter.
func (s *section) paint(p part) {
	s.Picture.rect(p.box.x, p.box.y, p.box.w, p.box.h, "m m-"+p.kind)
	x, room := p.box.x+6, p.box.w-12
	if p.slot != "substrate" && p.slot != "behind" { // leaves the marked edge free
		x, room = x+20, room-20
	}
	if words := fit(p.Text, room-plate); words != "" {
		s.Picture.label(x, p.box.y+6, p.Letter, words)
		return
	}
	s.Picture.letter(p.box.x+p.box.w/2, p.box.y+15, p.Letter)
}

// fit shortens words to a width; "" where hardly any would be left.
func fit(words string, room float64) string {
	const least = 30.0
	if room < least {
		return ""
	}
	if wide(words) <= room {
		return words
	}
	r := []rune(words)
	for len(r) > 0 && wide(string(r)+"…") > room {
		r = r[:len(r)-1]
	}
	return strings.TrimSpace(string(r)) + "…"
}

// describe says the picture in a sentence.
func (s *section) describe() string {
	var parts, marks []string
	for _, p := range s.Parts {
		text := fmt.Sprintf("%s %s", p.Letter, p.Text)
		if p.More != "" {
			text += ", " + p.More
		}
		parts = append(parts, text)
	}
	for _, f := range s.Faults {
		if m := fmt.Sprintf("finding %d at %s", f.Number, f.On); !slices.Contains(marks, m) {
			marks = append(marks, m)
		}
	}
	text := "Not to scale. Parts: " + strings.Join(parts, "; ") + "."
	if len(marks) > 0 {
		text += " Marked: " + strings.Join(marks, "; ") + "."
	}
	return text
}

// length writes millimeters with the unit of the trade beside it.
func length(mm float64) string {
	const inch, thin = 25.4, 3.2
	if mm < thin {
		return fmt.Sprintf("%.2g mm (%.0f mil)", mm, mm/inch*1000)
	}
	return fmt.Sprintf("%.0f mm (%s in)", mm, number(float64(int(mm/inch*10+0.5))/10))
}
