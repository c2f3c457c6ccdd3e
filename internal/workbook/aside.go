package workbook

import (
	"maps"
	"slices"
	"strings"
)

// Aside is text of a sheet that stands in none of its cells.
type Aside struct {
	What string // text box, header or footer
	Text string
}

// textBoxes gathers what the shapes that lie over a sheet say.
func (r *sheetReader) textBoxes(rels map[string]relation) error {
	for _, id := range slices.Sorted(maps.Keys(rels)) {
		if rels[id].kind != "drawing" || !r.has(rels[id].target) {
			continue
		}
		if err := r.scanKept(rels[id].target, r.shapes); err != nil {
			return err
		}
	}
	return nil
}

func (r *sheetReader) shapes(s *scanner) error {
	if !s.child(0) {
		return nil
	}
	for s.child(1) {
		if err := r.aside("text box", shapeText(s)); err != nil {
			return err
		}
	}
	return nil
}

// shapeText gives the text within the element just started.
func shapeText(s *scanner) string {
	var words []string
	depth := s.depth
	for s.next() && (s.tok != endTag || s.depth >= depth) {
		if s.tok == startTag && string(s.name) == "t" {
			words = append(words, cellText(s.content()))
		}
	}
	return strings.Join(words, " ")
}

// headerFooter gathers the words that are printed above and below a sheet.
func (r *sheetReader) headerFooter() error {
	depth := r.s.depth
	for r.s.child(depth) {
		if err := r.aside("header or footer", printed(cellText(r.s.content()))); err != nil {
			return err
		}
	}
	return nil
}

// printed gives the words of a header or footer without its codes. A third of
// it that counts pages, or names the day or the file, is left out whole.
func printed(code string) string {
	var thirds []string
	var third strings.Builder
	counts := false
	end := func() {
		if !counts {
			thirds = append(thirds, third.String())
		}
		third.Reset()
		counts = false
	}
	for code != "" {
		text, rest, found := strings.Cut(code, "&")
		third.WriteString(text)
		if !found || rest == "" {
			break
		}
		switch c := rest[0]; {
		case c == '&':
			third.WriteByte('&')
		case strings.IndexByte("LCR", c) >= 0:
			end()
		case strings.IndexByte("PNDTFAZ", c) >= 0:
			counts = true
		}
		code = rest[codeLength(rest):]
	}
	end()
	return strings.Join(thirds, " ")
}

// codeLength is the length of a header's code after its sign: a letter, a font
// in quotation marks, a size in digits, or a color.
func codeLength(rest string) int {
	switch c := rest[0]; {
	case c == '"':
		if i := strings.IndexByte(rest[1:], '"'); i >= 0 {
			return i + 2
		}
	case c == 'K':
		return min(len(rest), 7)
	case c >= '0' && c <= '9':
		return len(rest) - len(strings.TrimLeft(rest, "0123456789"))
	}
	return 1
}

// aside keeps a text that stands beside the cells.
func (r *sheetReader) aside(what, text string) error {
	if text = strings.Join(strings.Fields(text), " "); text == "" {
		return nil
	}
	if len(r.sheet.Asides) == r.lim.Comments {
		return tooMuch("texts beside its cells", r.lim.Comments)
	}
	r.sheet.Asides = append(r.sheet.Asides, Aside{what, text})
	if err := r.count(len(text)); err != nil {
		return err
	}
	return nil
}
