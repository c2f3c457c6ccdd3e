package marked

import (
	"fmt"
	"path"
	"slices"
	"strconv"
	"strings"
)

const (
	mainSpace = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
	relsSpace = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
	strict    = "http://purl.oclc.org/ooxml/"
	bareRels  = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>`
	formatType = "application/vnd.openxmlformats-officedocument.spreadsheetml."
)

// book is the workbook's main part, and what hangs on it.
type book struct {
	*parcel
	name    string // of the main part
	space   string // of the format: strict files have another
	sheets  []sheetEntry
	shut    int // where the list of sheets ends
	start   node
	root    node
	defined node // names of ranges
	definedEnd,
	slot int
}

type sheetEntry struct {
	name, part string
	id         int
	hidden     bool
}

func openBook(data []byte) (*book, error) {
	p, err := openParcel(data)
	if err != nil {
		return nil, err
	}
	b := &book{parcel: p, space: relsSpace, slot: -1}
	top, err := b.relations("")
	if err != nil {
		return nil, err
	}
	for _, r := range top {
		if r.kind == "officeDocument" && b.has(r.target) {
			b.name = r.target
			if strings.HasPrefix(r.full, strict) {
				b.space = strict + "officeDocument/relationships"
			}
		}
	}
	if b.name == "" {
		return nil, fmt.Errorf("its workbook part is missing")
	}
	return b, b.inside("read", b.name, b.readSheets)
}

// mainSpace is the space of names that the parts of the workbook are in.
func (b *book) mainSpace() string {
	if strings.HasPrefix(b.space, strict) {
		return strict + "spreadsheetml/main"
	}
	return mainSpace
}

// inside names the part in what goes wrong with it.
func (b *book) inside(doing, part string, do func() error) error {
	if err := do(); err != nil {
		return fmt.Errorf("%s part %s: %w", doing, part, err)
	}
	return nil
}

func (b *book) readSheets() error {
	data, err := b.read(b.name)
	if err != nil {
		return err
	}
	rels, err := b.relations(b.name)
	if err != nil {
		return err
	}
	before := []string{
		"calcPr", "oleSize", "customWorkbookViews", "pivotCaches", "smartTagPr", "smartTagTypes", "webPublishing",
		"fileRecoveryPr", "webPublishObjects", "extLst",
	}
	return walk(data, func(n node) error {
		switch {
		case n.depth == 0 && n.start:
			b.root = n
		case n.name == "sheets" && n.depth == 1 && n.start:
			b.start = n
		case n.name == "sheets" && n.depth == 1:
			b.shut = n.from
		case n.name == "definedNames" && n.depth == 1 && n.start:
			b.defined = n
		case n.name == "definedNames" && n.depth == 1:
			b.definedEnd = n.from
		case n.name == "sheet" && n.parent == "sheets" && n.start:
			state := n.value("state")
			b.sheets = append(b.sheets, sheetEntry{
				name: n.value("name"), part: rels[relID(n)].target, id: number(n.value("sheetId")), hidden: state != "" && state != "visible",
			})
		case b.slot < 0 && (n.depth == 0 || n.depth == 1 && b.start.start && n.start && slices.Contains(before, n.name)):
			b.slot = n.from
		}
		return nil
	})
}

// relID gives a relation's id, which bears the same local name as other ids.
func relID(n node) string {
	for _, a := range n.attr {
		if a.Name.Local == "id" && a.Name.Space != "" {
			return a.Value
		}
	}
	return ""
}

// addSheet puts a sheet after all others, so that what counts sheets by their
// place stays right, with its heading row printed on every page.
func (b *book) addSheet(name string, part []byte, heading int) error {
	dir := path.Dir(b.name)
	file := b.free(path.Join(dir, "worksheets"), "findings", ".xml")
	b.put(file, part)
	id, err := b.relate(b.name, "worksheet", file)
	if err != nil {
		return err
	}
	most := 0
	for _, s := range b.sheets {
		most = max(most, s.id)
	}
	data, err := b.read(b.name)
	if err != nil {
		return err
	}
	var e edits
	e.into(data, b.start, b.shut, fmt.Sprintf(`<%s name="%s" sheetId="%d" r:id="%s" xmlns:r="%s"/>`,
		b.start.tagged("sheet"), escaped(name), most+1, id, b.space))
	tag := b.root.tagged("definedName")
	title := fmt.Sprintf(`<%s name="_xlnm.Print_Titles" localSheetId="%d">%s</%[1]s>`, tag, len(b.sheets),
		escaped(fmt.Sprintf("%s:$%d", location(name, "$"+strconv.Itoa(heading)), heading)))
	if b.defined.start {
		e.into(data, b.defined, b.definedEnd, title)
	} else {
		list := b.root.tagged("definedNames")
		e.insert(b.slot, "<"+list+">"+title+"</"+list+">")
	}
	b.put(b.name, e.apply(data))
	return b.declare(file, formatType+"worksheet+xml")
}

// freeName gives the name of the new sheet: no sheet of the author's is
// written over, and names differ by more than case.
func (b *book) freeName() string {
	for n := 1; ; n++ {
		name := "Findings"
		if n > 1 {
			name += " " + strconv.Itoa(n)
		}
		if !slices.ContainsFunc(b.sheets, func(s sheetEntry) bool { return strings.EqualFold(s.name, name) }) {
			return name
		}
	}
}

// relation is what a part says of another it refers to.
type relation struct{ id, kind, full, target string }

func relsOf(part string) string {
	dir, base := path.Split(part)
	return dir + "_rels/" + base + ".rels"
}

// relations gives what a part refers to within the workbook, by id.
func (b *book) relations(part string) (map[string]relation, error) {
	out := map[string]relation{}
	if !b.has(relsOf(part)) {
		return out, nil
	}
	data, err := b.read(relsOf(part))
	if err != nil {
		return nil, err
	}
	err = walk(data, func(n node) error {
		if !n.start || n.name != "Relationship" || n.value("TargetMode") == "External" {
			return nil
		}
		target := strings.ReplaceAll(n.value("Target"), "\\", "/")
		if !strings.HasPrefix(target, "/") {
			target = path.Join("/", path.Dir("/"+part), target)
		}
		full := n.value("Type")
		out[n.value("Id")] = relation{n.value("Id"), path.Base(full), full, strings.TrimPrefix(target, "/")}
		return nil
	})
	return out, err
}

// relate has a part refer to another and gives the id of that.
func (b *book) relate(part, kind, target string) (string, error) {
	data := []byte(bareRels)
	if b.has(relsOf(part)) {
		var err error
		if data, err = b.read(relsOf(part)); err != nil {
			return "", err
		}
	}
	id := ""
	for n := 1; id == "" || strings.Contains(string(data), `"`+id+`"`) || strings.Contains(string(data), `'`+id+`'`); n++ {
		id = fmt.Sprintf("rIdFindings%d", n)
	}
	data, err := appended(data, func(root node) string {
		return fmt.Sprintf(`<%s Id="%s" Type="%s/%s" Target="/%s"/>`, root.tagged("Relationship"), id, b.space, kind, escaped(target))
	})
	if err == nil {
		b.put(relsOf(part), data)
	}
	return id, err
}

// declare tells the type of a new part.
func (b *book) declare(part, kind string) error {
	const name = "[Content_Types].xml"
	data, err := b.read(name)
	if err != nil {
		return err
	}
	data, err = appended(data, func(root node) string {
		return fmt.Sprintf(`<%s PartName="/%s" ContentType="%s"/>`, root.tagged("Override"), escaped(part), kind)
	})
	if err == nil {
		b.put(name, data)
	}
	return err
}

// appended puts text at the end of the root element.
func appended(data []byte, text func(root node) string) ([]byte, error) {
	var e edits
	var root node
	err := walk(data, func(n node) error {
		if n.depth == 0 && n.start {
			root = n
		}
		if n.depth == 0 && !n.start {
			e.into(data, root, n.from, text(root))
		}
		return nil
	})
	return e.apply(data), err
}

// untemplated makes a workbook of a template: a copy bears an ending that no
// template has.
func (b *book) untemplated() error {
	data, err := b.read("[Content_Types].xml")
	if err != nil {
		return err
	}
	text := strings.ReplaceAll(string(data), formatType+"template.main+xml", formatType+"sheet.main+xml")
	if text != string(data) {
		b.put("[Content_Types].xml", []byte(text))
	}
	return nil
}
