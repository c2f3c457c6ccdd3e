package workbook

import (
	"io"
	"slices"
)

// book is what all sheets of one workbook are read with.
type book struct {
	*packed
	main     string // the part that lists the sheets
	sheets   []sheetEntry
	rels     map[string]relation
	styles   []style
	texts    []richText
	date1904 bool
	cells    int   // so far, of all sheets
	text     int64 // bytes of text so far
	sources  map[listSource]bool
}

// sheetEntry is a sheet as the workbook lists it.
type sheetEntry struct{ name, state, id string }

func readXLSX(r io.ReaderAt, size int64, lim Limits) (*Book, error) {
	p, err := openPacked(r, size, lim)
	if err != nil {
		return nil, err
	}
	b, err := openBook(p)
	if err != nil {
		return nil, err
	}
	out := &Book{}
	read := map[string]string{} // by part: the sheet that lies in it
	for _, entry := range b.sheets {
		sheet := Sheet{Name: entry.name, State: entry.state}
		part := b.rels[entry.id].target
		if other, twice := read[part]; twice && part != "" {
			return nil, locate(refuse("it lies in the same part of the file as sheet "+clip(other), saveAgain), "", sheet.Name)
		}
		read[part] = sheet.Name
		if sheet.State == "" {
			sheet.State = "visible"
		}
		if err := b.readSheet(&sheet, b.rels[entry.id]); err != nil {
			return nil, locate(err, "", sheet.Name)
		}
		out.Sheets = append(out.Sheets, sheet)
	}
	if b.cells == 0 {
		return nil, nothing(out)
	}
	return out, b.placeLists(out.Sheets)
}

// nothing says why no cell of a workbook was read.
func nothing(b *Book) *FileError {
	if slices.ContainsFunc(b.Sheets, func(s Sheet) bool { return s.Kind == Worksheet }) {
		return refuse("no sheet of it holds anything", "check that it is the right file")
	}
	return refuse("it has only chart or dialog sheets, which hold no cells", "save it with the sheet that the table stands on")
}

// openBook reads what the sheets share: their list, styles and texts.
func openBook(p *packed) (*book, error) {
	main, err := p.workbookPart()
	if err != nil {
		return nil, err
	}
	b := &book{packed: p, main: main, sources: map[listSource]bool{}}
	if b.rels, err = p.relations(main); err != nil {
		return nil, err
	}
	if err := b.scan(main, b.list); err != nil {
		return nil, err
	}
	if len(b.sheets) == 0 {
		return nil, refuse("it lists no sheets", saveAgain)
	}
	styles, texts := b.related("styles"), b.related("sharedStrings")
	if b.has(styles) { // some writers name styles and have none
		if err := b.readStyles(styles); err != nil {
			return nil, err
		}
	}
	if texts != "" {
		if err := b.readTexts(texts); err != nil {
			return nil, err
		}
	}
	return b, nil
}

// related names the part of a kind that the workbook refers to, "" for none:
// the same one at every run.
func (b *book) related(kind string) string {
	found := ""
	for _, r := range b.rels {
		if r.kind == kind {
			found = max(found, r.target)
		}
	}
	return found
}

// list reads which sheets there are, and from which year dates are counted.
func (b *book) list(s *scanner) error {
	if !s.child(0) {
		return nil
	}
	for s.child(1) {
		switch string(s.name) {
		case "workbookPr":
			b.date1904 = s.attrTrue("date1904")
		case "sheets":
			for s.child(2) {
				if len(b.sheets) == b.lim.Sheets {
					return tooMuch("sheets", b.lim.Sheets)
				}
				b.sheets = append(b.sheets, sheetEntry{s.attrText("name"), s.attrText("state"), s.attrText(":id")})
			}
		}
	}
	return nil
}

// readSheet reads one sheet whole.
func (b *book) readSheet(sheet *Sheet, rel relation) error {
	switch rel.kind {
	case "worksheet":
		sheet.Kind = Worksheet
	case "chartsheet":
		sheet.Kind = Chartsheet
		return nil
	case "":
		return refuse("its part is missing from the file", saveAgain)
	default:
		sheet.Kind = OtherSheet
		return nil
	}
	r := &sheetReader{book: b, sheet: sheet}
	if err := b.scan(rel.target, r.read); err != nil {
		return err
	}
	if err := r.arrange(); err != nil {
		return err
	}
	rels, err := b.relations(rel.target)
	if err != nil {
		return err
	}
	if err := r.comments(rels); err != nil {
		return err
	}
	if err := r.textBoxes(rels); err != nil {
		return err
	}
	return r.fillMerged()
}
