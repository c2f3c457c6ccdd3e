package workbook

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io"
	"path"
	"slices"
	"strings"

	"github.com/xuri/excelize/v2"
)

// book is what all sheets of one workbook are read with.
type book struct {
	*packed
	file     *excelize.File // everything but the sheets' cells
	rels     map[string]relation
	styles   []style
	texts    []richText
	date1904 bool
	cells    int // so far, of all sheets
	text     int // bytes of text so far
	sources  []listSource
}

func readXLSX(r io.ReaderAt, size int64, lim Limits) (*Book, error) {
	p, err := openPacked(r, size, lim)
	if err != nil {
		return nil, err
	}
	b, err := openBook(p)
	if err != nil {
		return nil, err
	}
	defer b.file.Close()
	out := &Book{}
	for _, entry := range b.file.WorkBook.Sheets.Sheet {
		sheet := Sheet{Name: entry.Name, State: entry.State}
		if sheet.State == "" {
			sheet.State = "visible"
		}
		if err := b.readSheet(&sheet, b.rels[entry.ID]); err != nil {
			return nil, locate(err, "", sheet.Name)
		}
		if sheet.Kind != Worksheet {
			out.Notes = append(out.Notes, fmt.Sprintf("sheet %q is a %s sheet and holds no cells", sheet.Name, b.rels[entry.ID].kind))
		}
		out.Sheets = append(out.Sheets, sheet)
	}
	if b.cells == 0 {
		return nil, nothing(out)
	}
	b.placeLists(out.Sheets)
	return out, nil
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
	b := &book{packed: p}
	if b.rels, err = p.relations(main); err != nil {
		return nil, err
	}
	if b.file, err = openLean(p, main, b.rels); err != nil {
		return nil, err
	}
	if b.file.WorkBook == nil || len(b.file.WorkBook.Sheets.Sheet) == 0 {
		return nil, refuse("it lists no sheets", saveAgain)
	}
	if n := len(b.file.WorkBook.Sheets.Sheet); n > p.lim.Sheets {
		return nil, tooMuch("sheets", p.lim.Sheets)
	}
	if pr := b.file.WorkBook.WorkbookPr; pr != nil {
		b.date1904 = pr.Date1904
	}
	b.styles = readStyles(b.file)
	for _, r := range b.rels {
		if r.kind == "sharedStrings" {
			if err := b.readTexts(r.target); err != nil {
				return nil, err
			}
		}
	}
	return b, nil
}

// openLean opens with excelize a copy of the workbook that lacks the bulk:
// cells and shared texts, which it reads many times slower than need be, and
// pictures, macros and caches, which nobody here asks for. Sheets stay in it
// as empty parts, so that it finds their comments.
func openLean(p *packed, main string, rels map[string]relation) (*excelize.File, error) {
	var buf bytes.Buffer
	w := zip.NewWriter(&buf)
	add := func(name string, data []byte) error {
		out, err := w.CreateHeader(&zip.FileHeader{Name: name, Method: zip.Store})
		if err == nil {
			_, err = out.Write(data)
		}
		return err
	}
	for name, source := range leanParts(p, main, rels) {
		var data []byte
		if source != "" {
			var err error
			if data, err = p.read(source); err != nil {
				return nil, err
			}
		}
		if err := add(name, data); err != nil {
			return nil, err
		}
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	limit := p.lim.UnpackedBytes
	f, err := excelize.OpenReader(&buf, excelize.Options{UnzipSizeLimit: limit, UnzipXMLSizeLimit: limit})
	if err != nil {
		return nil, damaged(main, err)
	}
	return f, nil
}

// leanParts maps the name of a part in the lean copy to its name in the
// workbook, "" for an empty part.
func leanParts(p *packed, main string, rels map[string]relation) map[string]string {
	parts := map[string]string{}
	keep := func(name string) {
		if p.has(name) {
			parts[name] = name
		}
	}
	keep("[Content_Types].xml")
	keep("_rels/.rels")
	keep(main)
	keep(path.Join(path.Dir(main), "_rels", path.Base(main)+".rels"))
	for _, r := range rels {
		switch r.kind {
		case "styles":
			if p.has(r.target) {
				parts["xl/styles.xml"] = r.target // excelize looks nowhere else
			}
		case "worksheet":
			parts[r.target] = ""
			keep(path.Join(path.Dir(r.target), "_rels", path.Base(r.target)+".rels"))
		}
	}
	for key, f := range p.parts {
		if strings.HasPrefix(path.Base(key), "comment") && strings.HasSuffix(key, ".xml") {
			keep(strings.TrimPrefix(strings.ReplaceAll(f.Name, "\\", "/"), "/"))
		}
	}
	return parts
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
	if err := r.comments(); err != nil {
		return err
	}
	return r.fillMerged()
}

// comments attaches the notes of a sheet to its cells.
func (r *sheetReader) comments() error {
	list, err := r.file.GetComments(r.sheet.Name)
	if err != nil {
		return &FileError{Problem: fmt.Sprintf("its comments are damaged (%v)", err), Do: saveAgain, cause: err}
	}
	for _, c := range list {
		text := c.Text
		for _, run := range c.Paragraph {
			text += run.Text
		}
		text = strings.TrimSpace(cellText([]byte(text)))
		if text == "" {
			continue
		}
		if err := r.count(len(text)); err != nil {
			return err
		}
		row, col, ok := parseRef([]byte(c.Cell))
		if !ok {
			return refuse(fmt.Sprintf("a comment stands at %q, which is no cell", c.Cell), saveAgain)
		}
		if err := r.comment(row, col, text); err != nil {
			return err
		}
	}
	return nil
}
