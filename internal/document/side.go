package document

import (
	"fmt"
	"io/fs"
	"slices"
	"strconv"
	"strings"

	"abut/internal/knowledge"
	"abut/internal/regexp"
	"abut/internal/schedule"
)

// The sides that the first layer of a list can lie on; "" is not known.
const (
	roomFirst    = "room"
	outsideFirst = "outside"
)

// sides are the words and materials that tell which side a list of layers
// begins at. It is read-only once loaded.
type sides struct {
	told     map[string]*regexp.Regexp // by the side of the first layer listed
	numbered map[string]*regexp.Regexp // by the side of the layer numbered one
	lists    *regexp.Regexp
	rank     map[string]int // by family, rising from the room outward
	noLayers []string

	framing    *regexp.Regexp // lumber that stands between insulation
	trims      *regexp.Regexp // pieces of metal that are no skin of a wall
	noMaterial *regexp.Regexp // what takes a row among layers and is none
}

// sidesFile is where the words lie in the policy tree.
const sidesFile = "knowledge/sides.json"

func loadSides(fsys fs.FS) (*sides, error) {
	var file struct {
		Sides struct {
			Words    map[string]string   `json:"words"`
			Told     map[string][]string `json:"told"`
			Numbered map[string][]string `json:"numbered"`
			Lists    string              `json:"lists"`
			Ranks    [][]string          `json:"ranks"`
			NoLayers []string            `json:"no_layers"`

			Framing    string `json:"framing"`
			NoMaterial string `json:"no_material"`
			Trims      string `json:"trims"`
		} `json:"sides"`
	}
	err := knowledge.Read(fsys, "sides of assemblies", sidesFile, &file)
	if err != nil {
		return nil, err
	}
	in := file.Sides
	out := &sides{rank: map[string]int{}, noLayers: in.NoLayers, told: map[string]*regexp.Regexp{}, numbered: map[string]*regexp.Regexp{}}
	if out.framing, err = regexp.Compile(in.Framing); err != nil {
		return nil, fmt.Errorf("%s: framing: %w", sidesFile, err)
	}
	if out.noMaterial, err = regexp.Compile(in.NoMaterial); err != nil {
		return nil, fmt.Errorf("%s: no_material: %w", sidesFile, err)
	}
	if out.trims, err = regexp.Compile(in.Trims); err != nil {
		return nil, fmt.Errorf("%s: trims: %w", sidesFile, err)
	}
	for rank, families := range in.Ranks {
		for _, f := range families {
			out.rank[f] = rank
		}
	}
	for _, side := range []string{roomFirst, outsideFirst} {
		if out.told[side], err = anyOf(in.Told[side], in.Words); err != nil {
			return nil, err
		}
		if out.numbered[side], err = anyOf(in.Numbered[side], in.Words); err != nil {
			return nil, err
		}
	}
	out.lists, err = anyOf([]string{in.Lists}, nil)
	return out, err
}

// anyOf puts the words in the places that patterns name in capitals, and makes
// one pattern of all.
func anyOf(patterns []string, words map[string]string) (*regexp.Regexp, error) {
	all := "(?i)(?:" + strings.Join(patterns, "|") + ")"
	for name, w := range words {
		all = strings.ReplaceAll(all, name, w)
	}
	re, err := regexp.Compile(all)
	if err != nil {
		return nil, fmt.Errorf("sides of assemblies %s: %w", sidesFile, err)
	}
	return re, nil
}

// tells lists the sides that a text tells to be first: as listed, and by number.
func (s *sides) tells(text string) (t telling) {
	for _, side := range []string{roomFirst, outsideFirst} {
		if s.told[side].MatchString(text) {
			t.listed = append(t.listed, side)
		}
		if s.numbered[side].MatchString(text) {
			t.numbered = append(t.numbered, side)
		}
	}
	return t
}

type telling struct{ listed, numbered []string }

func (t telling) nothing() bool { return len(t.listed)+len(t.numbered) == 0 }

// sideFinder finds the first side of each assembly of one document.
type sideFinder struct {
	*sides
	lines    map[string]*schedule.Line
	headings map[string][]string // by table, those over the layers
	notes    []schedule.Fact     // those that tell of a side
	heard    map[string]telling
}

func (s *sides) finder(doc *Document) *sideFinder {
	f := &sideFinder{sides: s, lines: map[string]*schedule.Line{}, headings: map[string][]string{}, heard: map[string]telling{}}
	for i := range doc.Lines {
		f.lines[doc.Lines[i].ID] = &doc.Lines[i]
	}
	for _, t := range doc.Reading.Tables {
		for _, c := range t.Columns {
			if slices.Contains([]string{"order", "layers", "material"}, c.Slot) {
				f.headings[t.ID] = append(f.headings[t.ID], c.Heading)
			}
		}
	}
	for _, n := range doc.Project.Notes {
		if s.lists.MatchString(n.Text) && !f.hear(n.Text).nothing() {
			f.notes = append(f.notes, n)
		}
	}
	return f
}

// hear remembers what a text tells, since marks and headings stand over many rows.
func (f *sideFinder) hear(text string) telling {
	t, known := f.heard[text]
	if !known {
		t = f.tells(text)
		f.heard[text] = t
	}
	return t
}

// first tells on which side the first layer lies: by the words nearest to the
// layers, else by the materials themselves.
func (f *sideFinder) first(p *Profile) string {
	line := f.lines[p.Lines[0]]
	own := append([]string{line.Mark, line.Group, line.Texts["section"], line.Texts["layers"]}, f.headings[line.Table]...)
	var near, far []string
	for _, n := range f.notes {
		if n.At.Sheet == line.Sheet {
			near = append(near, n.Text)
		} else {
			far = append(far, n.Text)
		}
	}
	for _, texts := range [][]string{own, near, far} {
		switch said := f.said(texts, f.falls(p)); len(said) {
		case 1:
			return said[0]
		case 2:
			return "" // told both ways
		}
	}
	return f.byMaterials(p)
}

// said collects the sides that texts tell; falling numbers turn what is said of
// the first one.
func (f *sideFinder) said(texts []string, falling bool) []string {
	var out []string
	for _, text := range texts {
		t := f.hear(text)
		out = append(out, t.listed...)
		for _, side := range t.numbered {
			if falling {
				side = otherSide(side)
			}
			out = append(out, side)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

func otherSide(side string) string {
	if side == roomFirst {
		return outsideFirst
	}
	return roomFirst
}

// falls holds where the number of the last layer is less than that of the first.
func (f *sideFinder) falls(p *Profile) bool {
	return number(f.lines[p.Lines[len(p.Lines)-1]].Order) < number(f.lines[p.Lines[0]].Order)
}

// number is the last number of a text: 4 of "M1.4"; 0 where there is none.
func number(text string) int {
	words := strings.FieldsFunc(text, func(r rune) bool { return r < '0' || r > '9' })
	if len(words) == 0 {
		return 0
	}
	n, err := strconv.Atoi(words[len(words)-1])
	if err != nil {
		return 0
	}
	return n
}

// byMaterials lets each pair of layers vote; two of three must agree.
func (f *sideFinder) byMaterials(p *Profile) string {
	outward, inward := 0, 0
	ranks := f.ranks(p)
	for i, a := range ranks {
		for _, b := range ranks[i+1:] {
			if b > a {
				outward++
			} else if b < a {
				inward++
			}
		}
	}
	switch {
	case outward > 2*inward:
		return roomFirst
	case inward > 2*outward:
		return outsideFirst
	}
	return ""
}

// ranks gives how far out the layers usually lie, for those that tell; strips at
// edges tell nothing.
func (f *sideFinder) ranks(p *Profile) []int {
	var out []int
	for i := range p.Layers {
		rank, known := f.rank[p.Layers[i].Family]
		strip := len(p.Lines) > 1 && slices.Contains(f.noLayers, f.lines[p.Layers[i].Line].Role)
		if known && !strip {
			out = append(out, rank)
		}
	}
	return out
}
