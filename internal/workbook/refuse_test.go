package workbook

import (
	"bytes"
	"encoding/binary"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"
)

func ole(stream string) string {
	var b strings.Builder
	b.WriteString(oleMagic + strings.Repeat("\x00", 504))
	for _, c := range stream {
		b.WriteString(string(c) + "\x00")
	}
	return b.String()
}

func TestNotAWorkbook(t *testing.T) {
	for name, tt := range map[string]struct{ file, data, want string }{
		"old workbook": {"a.xls", ole("Workbook"), "a.xls: it is an old workbook (.xls)"},
		"password":     {"a.xlsx", ole("EncryptedPackage"), "a.xlsx: it is protected by a password"},
		"old document": {"a.xlsx", ole("WordDocument"), "a.xlsx: it is an old Word document"},
		"compound":     {"a.xlsx", ole("Other"), "a.xlsx: it is a compound document"},
		"pdf":          {"a.xlsx", "%PDF-1.7\n...", "a.xlsx: it is a PDF document"},
		"web page":     {"a.xls", "\n<html><body><table>", "a.xls: it is a web page"},
		"xml 2003":     {"a.xls", `<?xml version="1.0"?><Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet">`, "a.xls: it is an XML spreadsheet of 2003"},
		"other xml":    {"a.csv", `<?xml version="1.0"?><a/>`, "a.csv: it is an XML file"},
		"gzip":         {"a.xlsx", "\x1f\x8b\x08", "a.xlsx: it is a gzip archive"},
		"text":         {"a.xlsx", "a,b\n", "a.xlsx: it is not a workbook, whatever its name says"},
		"other ending": {"a.docm", "a,b\n", "a.docm: it is no kind of file that is read here"},
		"ods":          {"a.ods", string(parts{"mimetype": "x", "content.xml": "y"}.zip(t)), "a.ods: it is an OpenDocument file"},
		"numbers":      {"a.numbers", string(parts{"Index/Document.iwa": "x"}.zip(t)), "a.numbers: it is a Numbers document"},
		"binary":       {"a.xlsb", string(parts{"xl/workbook.bin": "x"}.zip(t)), "a.xlsb: it is a binary workbook"},
		"document":     {"a.xlsx", string(parts{"word/document.xml": "x"}.zip(t)), "a.xlsx: it is a Word document"},
		"slides":       {"a.xlsx", string(parts{"ppt/presentation.xml": "x"}.zip(t)), "a.xlsx: it is a presentation"},
		"archive":      {"a.zip", string(parts{"b.xlsx": "x"}.zip(t)), "a.zip: it is a zip archive"},
		"no workbook":  {"a.xlsx", string(parts{"[Content_Types].xml": "x"}.zip(t)), "a.xlsx: its workbook part is missing"},
	} {
		t.Run(name, func(t *testing.T) {
			book, err := Read(tt.file, []byte(tt.data), DefaultLimits())
			refused(t, book, err, tt.want)
		})
	}
}

func TestPasswordByLibrary(t *testing.T) {
	f := excelize.NewFile()
	defer f.Close()
	path := filepath.Join(t.TempDir(), "locked.xlsx")
	if err := f.SaveAs(path, excelize.Options{Password: "x"}); err != nil {
		t.Fatal(err)
	}
	book, err := Open(path, DefaultLimits())
	refused(t, book, err, path+": it is protected by a password")
}

func TestDamaged(t *testing.T) {
	sheet := rawBook(inRow(`<c r="A1" t="s"><v>0</v></c>`))
	part := "xl/worksheets/sheet1.xml"
	rels := sheet["xl/_rels/workbook.xml.rels"]
	in := func(inside string) parts { return rawBook(inside).with(nil) }
	for name, tt := range map[string]struct {
		book parts
		want string
	}{
		"no sheet part":      {sheet.with(parts{part: ""}), "a.xlsx: S: its part xl/worksheets/sheet1.xml is missing"},
		"one part twice":     {sheet.with(parts{"xl/workbook.xml": strings.Replace(sheet["xl/workbook.xml"], "</sheets>", `<sheet name="T" sheetId="2" r:id="rId1"/></sheets>`, 1)}), "a.xlsx: T: it lies in the same part of the file as sheet S"},
		"no relation":        {sheet.with(parts{"xl/_rels/workbook.xml.rels": strings.Replace(rels, `"rId1"`, `"rId9"`, 1)}), "a.xlsx: S: its part is missing"},
		"no texts":           {sheet.with(parts{"xl/sharedStrings.xml": ""}), "a.xlsx: its part xl/sharedStrings.xml is missing"},
		"no sheets":          {sheet.with(parts{"xl/workbook.xml": `<workbook ` + mainNS + `><sheets/></workbook>`}), "a.xlsx: it lists no sheets"},
		"workbook cut short": {sheet.with(parts{"xl/workbook.xml": `<workbook ` + mainNS + `><sheets>`}), "a.xlsx: its part xl/workbook.xml is damaged"},
		"styles cut short":   {sheet.with(parts{"xl/styles.xml": `<styleSheet ` + mainNS + `><cellXfs>`}), "a.xlsx: its part xl/styles.xml is damaged (it ends too early)"},
		"texts cut short":    {sheet.with(parts{"xl/sharedStrings.xml": `<sst><si><t>a</t>`}), "a.xlsx: its part xl/sharedStrings.xml is damaged (it ends too early)"},
		"sheet cut short":    {sheet.with(parts{part: `<worksheet><sheetData><row r="1"><c r="A1" t="s"><v>0`}), "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (it ends too early)"},
		"no text":            {in(inRow(`<c r="B7" t="s"><v>9</v></c>`)), "a.xlsx: S: a cell in row 1 is addressed \"B7\""},
		"text number":        {in(inRow(`<c r="B1" t="s"><v>9</v></c>`)), "a.xlsx: S!B1: its text number \"9\" is not in the file"},
		"style number":       {in(inRow(`<c r="B1" s="44"><v>9</v></c>`)), "a.xlsx: S!B1: its style \"44\" is not in the file"},
		"bad number":         {in(inRow(`<c r="C1"><v>4O</v></c>`)), "a.xlsx: S!C1: its number \"4O\" cannot be read"},
		"infinite":           {in(inRow(`<c r="C1"><v>Inf</v></c>`)), "a.xlsx: S!C1: its number \"Inf\" cannot be read"},
		"bad date":           {in(inRow(`<c r="C1" t="d"><v>soon</v></c>`)), "a.xlsx: S!C1: its date \"soon\" cannot be read"},
		"bad kind":           {in(inRow(`<c r="C1" t="zz"><v>1</v></c>`)), "a.xlsx: S!C1: it holds a value of unknown kind \"zz\""},
		"no kind":            {in(inRow(`<c r="C1" t=""><v>1</v></c>`)), "a.xlsx: S!C1: it holds a value of unknown kind \"\""},
		"unmarked text":      {in(inRow(`<c r="C1"><is><t>plywood</t></is></c>`)), "a.xlsx: S!C1: it holds a text and is marked as \"n\""},
		"mismarked text":     {in(inRow(`<c r="C1" t="zz"><is><t>plywood</t></is></c>`)), "a.xlsx: S!C1: it holds a text and is marked as \"zz\""},
		"no styles":          {rawBook(inRow(`<c r="C1" s="1"><v>46000</v></c>`)).with(parts{"xl/styles.xml": ""}), "a.xlsx: S!C1: its style \"1\" is not in the file"},
		"name not UTF-8":     {sheet.with(parts{"xl/workbook.xml": strings.Replace(sheet["xl/workbook.xml"], `"S"`, "\"\xc3(\"", 1)}), "a.xlsx: its part xl/workbook.xml is damaged (its text is not valid UTF-8)"},
		"bad row":            {in(`<sheetData><row r="0"/></sheetData>`), "a.xlsx: S: it has a row numbered \"0\""},
		"bad merge":          {in(`<mergeCells><mergeCell ref="B2:A1"/></mergeCells>`), "a.xlsx: S: it merges \"B2:A1\""},
		"merges overlap":     {in(`<mergeCells><mergeCell ref="A9:A9"/><mergeCell ref="B2:D4"/><mergeCell ref="A1:C3"/></mergeCells>`), "a.xlsx: S: its merged ranges A1:C3 and B2:D4 overlap"},
		"merges cross":       {in(`<mergeCells><mergeCell ref="C1:C9"/><mergeCell ref="F1:F2"/><mergeCell ref="A5:F5"/></mergeCells>`), "a.xlsx: S: its merged ranges C1:C9 and A5:F5 overlap"},
		"merge within":       {in(`<mergeCells><mergeCell ref="A1:Z99"/><mergeCell ref="D4"/></mergeCells>`), "a.xlsx: S: its merged ranges A1:Z99 and D4:D4 overlap"},
		"bad columns":        {in(`<cols><col min="3" max="1"/></cols>`), "a.xlsx: S: the width of a column is given for no column"},
		"twice":              {in(inRow(`<c r="A1"><v>1</v></c><c r="A1"><v>2</v></c>`)), "a.xlsx: S!A1: it stands in the file twice"},
		"mismatched tags":    {in(`<sheetData></sheetdata>`), "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (malformed markup)"},
		"document type":      {sheet.with(parts{part: `<!DOCTYPE a [<!ENTITY b "c">]><worksheet/>`}), "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (it declares a document type)"},
		"unknown entity":     {in(inRow(`<c r="A1" t="inlineStr"><is><t>&b;</t></is></c>`)), "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (malformed markup)"},
		"not UTF-8":          {in(inRow("<c r=\"A1\" t=\"inlineStr\"><is><t>\xff</t></is></c>")), "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged (its text is not valid UTF-8)"},
		"text after the end": {sheet.with(parts{part: sheet[part] + "<again/>"}), "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged"},
		"other part":         {sheet.with(parts{part: `<chartsheet/>`}), "a.xlsx: S: its part is a chartsheet and no worksheet"},
		"only a chart":       {sheet.with(parts{part: `<chartsheet/>`, "xl/_rels/workbook.xml.rels": strings.Replace(rels, "relationships/worksheet", "relationships/chartsheet", 1)}), "a.xlsx: it has only chart or dialog sheets"},
		"empty workbook":     {in(`<sheetData/>`), "a.xlsx: no sheet of it holds anything"},
	} {
		t.Run(name, func(t *testing.T) {
			book, err := Read("a.xlsx", tt.book.zip(t), DefaultLimits())
			refused(t, book, err, tt.want)
		})
	}
}

func TestDamagedArchive(t *testing.T) {
	whole := rawBook(inRow(`<c r="A1" t="s"><v>0</v></c>`)).zip(t)
	for _, keep := range []int{4, len(whole) / 2, len(whole) - 1} {
		book, err := Read("a.xlsx", whole[:keep], DefaultLimits())
		refused(t, book, err, "a.xlsx: it is cut short or damaged")
	}
	// No flip of a byte may crash the reader or, where the data of a part is
	// hit, pass unnoticed.
	want := grid(&mustRead(t, whole).Sheets[0])
	for i := range whole {
		bad := append([]byte(nil), whole...)
		bad[i] ^= 0x41
		if book, err := Read("a.xlsx", bad, DefaultLimits()); err == nil && grid(&book.Sheets[0]) != want {
			t.Errorf("a flip of byte %d gives %q", i, grid(&book.Sheets[0]))
		}
	}
}

// TestStatedSizeIsKept writes a part that unpacks to more than the archive
// says: the stream must stop there, whatever the limits made of the statement.
func TestStatedSizeIsKept(t *testing.T) {
	data := rawBook(inRow(`<c r="A1" t="inlineStr"><is><t>` + strings.Repeat("x", 9000) + `</t></is></c>`)).zip(t)
	name := []byte("xl/worksheets/sheet1.xml")
	i := strings.LastIndex(string(data), string(name)) // in the directory, 46 bytes in
	binary.LittleEndian.PutUint32(data[i-46+24:], 100)
	book, err := Read("a.xlsx", data, DefaultLimits())
	refused(t, book, err, "a.xlsx: S: its part xl/worksheets/sheet1.xml is damaged")
}

func TestOpen(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "a.csv")
	if err := os.WriteFile(path, []byte("a,b\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	if book, err := Open(path, DefaultLimits()); err != nil || book.Path != path {
		t.Errorf("%v, %v", book, err)
	}
	missing := filepath.Join(dir, "b.xlsx")
	book, err := Open(missing, DefaultLimits())
	refused(t, book, err, missing+": there is no such file")
	if !errors.Is(err, fs.ErrNotExist) {
		t.Error("the cause is lost")
	}
	book, err = Open(dir, DefaultLimits())
	refused(t, book, err, dir+": it is a folder")
	book, err = Open(os.DevNull, DefaultLimits())
	refused(t, book, err, os.DevNull+": it is a device or pipe")
}

// readerFunc is a file that behaves as a test wants.
type readerFunc func(p []byte, off int64) (int, error)

func (f readerFunc) ReadAt(p []byte, off int64) (int, error) { return f(p, off) }

func TestFileChangesWhileRead(t *testing.T) {
	whole := rawBook(inRow(`<c r="A1" t="s"><v>0</v></c>`)).zip(t)
	gone := errors.New("stale handle")
	for name, tt := range map[string]struct {
		file string
		r    io.ReaderAt
		want string
	}{
		"csv shrinks":  {"a.csv", strings.NewReader("a,b\n"), "it became shorter while it was read"},
		"xlsx shrinks": {"a.xlsx", bytes.NewReader(whole[:700]), "it is cut short or damaged"},
		"vanishes":     {"a.csv", readerFunc(func([]byte, int64) (int, error) { return 0, gone }), "it cannot be read"},
		"vanishes later": {"a.xlsx", readerFunc(func(p []byte, off int64) (int, error) {
			if off > 0 && off < 200 {
				return 0, gone
			}
			return bytes.NewReader(whole).ReadAt(p, off)
		}), "its part "},
		"reader panics": {"a.xlsx", readerFunc(func([]byte, int64) (int, error) { panic("index out of range") }), "it is damaged in a way that stopped the reader"},
	} {
		t.Run(name, func(t *testing.T) {
			book, err := read(tt.file, tt.r, int64(len(whole)), DefaultLimits())
			refused(t, book, err, tt.want)
		})
	}
}

func TestErrorIsOneLine(t *testing.T) {
	err := &FileError{Path: "a\nb.xlsx", Sheet: "S\x1b[31m\u202e", Cell: "A1", Problem: "p", Do: "d"}
	if got := err.Error(); got != "a b.xlsx: S [31m !A1: p; d" {
		t.Errorf("%q", got)
	}
}
