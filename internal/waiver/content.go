package waiver

import (
	"crypto/sha256"
	"encoding/hex"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/schedule"
)

// keyBytes of the digest are plenty for one project, and can be typed.
const keyBytes = 6

// substitution is the topic of findings on what stands in place of another.
const substitution = "substitution"

// spot is a row of the workbook.
type spot struct {
	sheet string
	row   int
}

// places finds what stands at a row of a document.
type places struct {
	lines    map[spot][]*schedule.Line // of each work that a row tells
	products map[spot]*schedule.Product
	byID     map[string]*schedule.Product
	notes    map[spot][]string
	pairs    map[string]document.Pair
	address  *regexp.Regexp
}

func newPlaces(doc *document.Document) *places {
	p := &places{
		lines: map[spot][]*schedule.Line{}, products: map[spot]*schedule.Product{}, byID: map[string]*schedule.Product{},
		notes: map[spot][]string{}, pairs: map[string]document.Pair{}, address: regexp.MustCompile(`\b[A-Z]{1,3}[1-9][0-9]*\b|(?i)\brows? [0-9]+`),
	}
	for i := range doc.Lines {
		l := &doc.Lines[i]
		at := spot{l.Sheet, l.Row}
		p.lines[at] = append(p.lines[at], l)
	}
	for i := range doc.Products {
		product := &doc.Products[i]
		p.products[spot{product.Sheet, product.Row}], p.byID[product.ID] = product, product
	}
	for _, n := range doc.Project.Notes {
		at := spot{n.At.Sheet, n.At.Row}
		p.notes[at] = append(p.notes[at], plain(n.Text))
	}
	if doc.Comparison != nil {
		for _, pair := range doc.Comparison.Pairs {
			p.pairs[pair.Line] = pair
		}
	}
	return p
}

// content is a key of what the rows of a finding say, wherever they stand: the
// words of the row, of the products in it, of the rows and notes that take
// part and, for a substitution, of what was specified. Marks and layer numbers
// are left out, since lines are lettered anew.
func (p *places) content(f engine.Finding) string {
	rows := []spot{{f.Sheet, f.Row}}
	for _, r := range f.Related {
		// What a comparison names beside a finding is left out, so that a check
		// gives the same key; specified rows may stand in another file.
		if r.Cause || f.Topic == substitution {
			continue
		}
		rows = append(rows, spot{r.Sheet, r.Row})
	}
	var parts []string
	for _, at := range rows {
		parts = append(parts, p.words(at, f.Topic)...)
	}
	if len(parts) == 0 || f.Topic == substitution { // the words have the specified figures
		parts = append(parts, plain(p.address.ReplaceAllString(f.Message, "")))
	}
	slices.Sort(parts)
	sum := sha256.Sum256([]byte(strings.Join(slices.Compact(parts), "\x00")))
	return "c" + hex.EncodeToString(sum[:keyBytes])
}

func (p *places) words(at spot, topic string) []string {
	parts := slices.Clone(p.notes[at])
	if product := p.products[at]; product != nil {
		parts = append(parts, texts(product.Texts)...)
	}
	for _, l := range p.lines[at] {
		parts = append(parts, p.wordsOf(l, topic)...)
	}
	return parts
}

func (p *places) wordsOf(l *schedule.Line, topic string) []string {
	parts := texts(l.Texts)
	for _, it := range l.Items {
		parts = append(parts, it.Slot+"\x01"+plain(it.Text))
		if product := p.byID[it.Product]; product != nil {
			parts = append(parts, texts(product.Texts)...)
		}
	}
	if topic == substitution {
		for _, swap := range p.pairs[l.ID].Swaps {
			parts = append(parts, "was\x01"+plain(swap.Was.Text))
		}
	}
	return parts
}

func texts(bySlot map[string]string) []string {
	var parts []string
	for slot, text := range bySlot {
		if slot != "mark" && slot != "order" && slot != "group" && plain(text) != "" {
			parts = append(parts, slot+"\x01"+plain(text))
		}
	}
	return parts
}

// plain leaves case, spaces and punctuation out of words, but not of figures:
// "1.5" is not "15".
func plain(s string) string {
	words := strings.FieldsFunc(strings.ToLower(s), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && !strings.ContainsRune(".-+/°%\"'<>≤≥±", r)
	})
	return strings.Join(words, " ")
}

func inBook(w *schedule.Waiver, f engine.Finding) bool {
	book := w.Texts["workbook"]
	return empty(book) || bookName(book) == bookName(f.File)
}

// bookName is the name of a file without its folder and case, so that a list
// serves on every machine.
func bookName(file string) string { return strings.ToLower(filepath.Base(file)) }

// fits tells whether a finding stands where a waiver says: at the mark or
// place, on the material. What the waiver leaves out does not matter; one that
// gives the content alone fits by that and not here.
func (p *places) fits(w *schedule.Waiver, f engine.Finding) bool {
	if empty(w.Texts["mark"]) && empty(w.Texts["place"]) {
		return false
	}
	lines := p.lines[spot{f.Sheet, f.Row}]
	if len(lines) == 0 {
		lines = []*schedule.Line{{}}
	}
	return slices.ContainsFunc(lines, func(l *schedule.Line) bool { return p.fitsLine(w, f, l) })
}

func (p *places) fitsLine(w *schedule.Waiver, f engine.Finding, l *schedule.Line) bool {
	bare := l.ID == "" && f.Mark == ""
	is := func(slot string, names ...string) bool {
		want := plain(w.Texts[slot])
		if want == "" || slices.ContainsFunc(names, func(n string) bool { return plain(n) == want }) {
			return true
		}
		// a line left out and a note have no row of their own: the words tell
		return bare && strings.Contains(" "+plain(f.Message)+" ", " "+want+" ")
	}
	return is("mark", f.Mark, l.Mark) && is("place", l.Place) && is("material", p.materials(l, f)...)
}

func (p *places) materials(l *schedule.Line, f engine.Finding) []string {
	names := []string{l.Texts["material"], l.Texts["tag"]}
	for _, it := range l.Items {
		names = append(names, it.Text, it.Tag, it.Name)
	}
	if product := p.products[spot{f.Sheet, f.Row}]; product != nil {
		names = append(names, product.Tag, product.Name)
	}
	return names
}
