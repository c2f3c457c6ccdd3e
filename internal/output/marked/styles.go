package marked

import (
	"fmt"
	"strconv"
	"strings"
)

// group is a list in the styles part (fonts, fills, cell formats) to which
// items are added at the end.
type group struct {
	start   node
	endFrom int
	items   [][2]int
	added   []string
}

func (g *group) add(item string) int {
	g.added = append(g.added, item)
	return len(g.items) + len(g.added) - 1
}

// styles is the styles part with what is added to it. Formats that are there
// stay as they are; a cell at fault gets a copy of its own with another fill.
type styles struct {
	data   []byte
	groups map[string]*group
	byWish map[string]int // format added before, by what was wished
	fills  map[string]int
	dark   map[int]int // fonts by the light font each stands for
}

// bareStyles is what a workbook without styles is taken to have.
const bareStyles = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<styleSheet xmlns="` + mainSpace + `"><fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts>` +
	`<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>` +
	`<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>` +
	`<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>` +
	`<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs></styleSheet>`

func readStyles(data []byte) (*styles, error) {
	s := &styles{
		data: data, byWish: map[string]int{}, fills: map[string]int{}, dark: map[int]int{},
		groups: map[string]*group{"fonts": {}, "fills": {}, "borders": {}, "cellXfs": {}},
	}
	begun := 0
	err := walk(data, func(n node) error {
		if g := s.groups[n.name]; g != nil && n.depth == 1 {
			if n.start {
				g.start = n
			}
			g.endFrom = n.from
		}
		if g := s.groups[n.parent]; g != nil && n.depth == 2 {
			if n.start {
				begun = n.from
				return nil
			}
			g.items = append(g.items, [2]int{begun, n.to})
		}
		return nil
	})
	for name, g := range s.groups {
		if err == nil && len(g.items) == 0 {
			return nil, fmt.Errorf("it has no %s; open it in a spreadsheet program and save it again", name)
		}
	}
	return s, err
}

// item gives the bytes of an item and its start tag; of the first where there
// is no such item.
func (s *styles) item(list string, i int) (whole, tag string) {
	g := s.groups[list]
	if i < 0 || i >= len(g.items) {
		i = 0
	}
	whole = string(s.data[g.items[i][0]:g.items[i][1]])
	return whole, whole[:strings.IndexByte(whole, '>')+1]
}

// marked gives the format for a cell at fault: its own, with the fill of a label.
func (s *styles) marked(old int, label string) int {
	wish := fmt.Sprintf("mark %d %s", old, label)
	if n, ok := s.byWish[wish]; ok {
		return n
	}
	whole, tag := s.item("cellXfs", old)
	own := withAttr(withAttr(tag, "fillId", strconv.Itoa(s.fill(label))), "applyFill", "1")
	if font := number(attr(tag, "fontId")); s.light(font) {
		own = withAttr(withAttr(own, "fontId", strconv.Itoa(s.darkened(font))), "applyFont", "1")
	}
	s.byWish[wish] = s.groups["cellXfs"].add(own + whole[len(tag):])
	return s.byWish[wish]
}

// wraps says whether a format breaks long texts into lines.
func (s *styles) wraps(format int) bool {
	whole, _ := s.item("cellXfs", format)
	return strings.Contains(whole, `wrapText="1"`) || strings.Contains(whole, `wrapText="true"`)
}

// fill gives the fill of a label. A waived finding is hatched, so that it is
// told from the others on a black and white print too.
func (s *styles) fill(label string) int {
	if n, ok := s.fills[label]; ok {
		return n
	}
	g := s.groups["fills"]
	front, back := `rgb="FF`+fillColor(label)+`"`, `indexed="64"`
	pattern := "solid"
	if label == "waived" {
		pattern, back = "lightUp", `rgb="FFFFFFFF"`
	}
	s.fills[label] = g.add(elements(g.start, fmt.Sprintf(
		`<fill><patternFill patternType="%s"><fgColor %s/><bgColor %s/></patternFill></fill>`, pattern, front, back)))
	return s.fills[label]
}

// fillColor is the paper of a label: the report's, a step stronger, since a
// sheet has colors of its own around it.
func fillColor(label string) string {
	return map[string]string{"error": "F4BFB6", "warning": "F8DF9C", "note": "C4DDF2", "waived": "8D9096"}[label]
}

// light says whether a font is meant for a dark fill, on which the fill of a
// finding would make it unreadable.
func (s *styles) light(font int) bool {
	whole, _ := s.item("fonts", font)
	tag := colorTag(whole)
	if rgb := attr(tag, "rgb"); len(rgb) >= 6 {
		n, err := strconv.ParseUint(rgb[len(rgb)-6:], 16, 32)
		return err == nil && (299*(n>>16&255)+587*(n>>8&255)+114*(n&255))/1000 > 150
	}
	theme, indexed := attr(tag, "theme"), attr(tag, "indexed")
	return theme == "0" || theme == "2" || indexed == "1" || indexed == "9"
}

// darkened gives the same font in ink.
func (s *styles) darkened(font int) int {
	if n, ok := s.dark[font]; ok {
		return n
	}
	whole, _ := s.item("fonts", font)
	tag := colorTag(whole)
	name, _, _ := strings.Cut(strings.Trim(tag, "</>"), " ")
	ink := "<" + name + ` rgb="FF1F2328">`
	if strings.HasSuffix(tag, "/>") {
		ink = strings.TrimSuffix(ink, ">") + "/>"
	}
	s.dark[font] = s.groups["fonts"].add(strings.Replace(whole, tag, ink, 1))
	return s.dark[font]
}

// colorTag is the start tag of the color in a font, "" if it has none.
func colorTag(font string) string {
	i := strings.Index(font, "color ")
	if i < 0 {
		return ""
	}
	from, to := strings.LastIndexByte(font[:i], '<'), strings.IndexByte(font[i:], '>')
	return font[max(from, 0) : i+to+1]
}

// own gives a format of the Findings sheet.
func (s *styles) own(font, alignment, label string) int {
	wish := font + alignment + label
	if n, ok := s.byWish[wish]; ok {
		return n
	}
	fonts := s.groups["fonts"]
	fontID, ok := s.byWish["font"+font]
	if !ok {
		fontID = fonts.add(elements(fonts.start, "<font>"+font+`<name val="Calibri"/><family val="2"/></font>`))
		s.byWish["font"+font] = fontID
	}
	fill := 0
	if label != "" {
		fill = s.fill(label)
	}
	g := s.groups["cellXfs"]
	s.byWish[wish] = g.add(elements(g.start, fmt.Sprintf(
		`<xf numFmtId="0" fontId="%d" fillId="%d" borderId="%d" xfId="0" applyFont="1" applyFill="1" applyBorder="1" applyAlignment="1"><alignment %s/></xf>`,
		fontID, fill, s.rule(alignment == wrapped), alignment)))
	return s.byWish[wish]
}

// rule gives a line under a row of a table, or none.
func (s *styles) rule(ruled bool) int {
	wish := fmt.Sprintf("rule %t", ruled)
	if n, ok := s.byWish[wish]; ok {
		return n
	}
	under := "<bottom/>"
	if ruled {
		under = `<bottom style="thin"><color rgb="FFCBC6BA"/></bottom>`
	}
	g := s.groups["borders"]
	s.byWish[wish] = g.add(elements(g.start, "<border><left/><right/><top/>"+under+"<diagonal/></border>"))
	return s.byWish[wish]
}

// bytes gives the part with all that was added.
func (s *styles) bytes() []byte {
	var e edits
	for _, name := range []string{"fonts", "fills", "borders", "cellXfs"} {
		g := s.groups[name]
		if len(g.added) == 0 {
			continue
		}
		tag := string(s.data[g.start.from:g.start.to])
		e.replace(g.start.from, g.start.to, withAttr(tag, "count", strconv.Itoa(len(g.items)+len(g.added))))
		e.insert(g.endFrom, strings.Join(g.added, ""))
	}
	return e.apply(s.data)
}

// attr reads an attribute from a start tag.
func attr(tag, name string) string {
	from, to := attrSpan(tag, name)
	if from < 0 {
		return ""
	}
	_, value, _ := strings.Cut(tag[from:to], "=")
	return strings.Trim(strings.TrimSpace(value), `"'`)
}

func number(text string) int {
	n, err := strconv.Atoi(text)
	if err != nil {
		return 0
	}
	return n
}

// elements gives the tags of a piece of XML the prefix of the part it goes into.
func elements(like node, text string) string {
	if like.prefix == "" {
		return text
	}
	open := strings.NewReplacer("</", "</"+like.prefix+":", "<", "<"+like.prefix+":")
	return open.Replace(text)
}
