package workbook

import (
	"bytes"
	"path/filepath"
	"slices"
	"strings"
)

// form is what a file is read as.
type form int

const (
	zipForm form = iota
	textForm
)

// signature is how the first bytes of a format that is not read give it away.
type signature struct{ prefix, problem, do string }

func signatures() []signature {
	return []signature{
		{"%PDF", "it is a PDF document, not a workbook", "ask for the workbook it was printed from"},
		{"{\\rtf", "it is a rich text document, not a workbook", saveAsXLSX},
		{"\x1f\x8b", "it is a gzip archive, not a workbook", "unpack it first"},
		{"7z\xbc\xaf\x27\x1c", "it is a 7-Zip archive, not a workbook", "unpack it first"},
		{"Rar!", "it is a RAR archive, not a workbook", "unpack it first"},
		{"\x89PNG", "it is a picture, not a workbook", "ask for the workbook it shows"},
		{"\xff\xd8\xff", "it is a picture, not a workbook", "ask for the workbook it shows"},
		{"GIF8", "it is a picture, not a workbook", "ask for the workbook it shows"},
		{"\x7fELF", "it is a program, not a workbook", "give the workbook itself"},
		{"MZ\x90", "it is a program, not a workbook", "give the workbook itself"},
	}
}

const oleMagic = "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"

// sniff decides by the bytes, and only for plain text by the name, what a file
// is; an error says what it looks like instead of a workbook.
func sniff(name string, head []byte) (form, error) {
	if bytes.HasPrefix(head, []byte("PK\x03\x04")) || bytes.HasPrefix(head, []byte("PK\x05\x06")) {
		return zipForm, nil
	}
	for _, s := range signatures() {
		if bytes.HasPrefix(head, []byte(s.prefix)) {
			return 0, refuse(s.problem, s.do)
		}
	}
	start := strings.ToLower(string(bytes.TrimLeft(bytes.TrimPrefix(head, []byte("\xef\xbb\xbf")), " \t\r\n")))
	if len(start) > 1024 {
		start = start[:1024]
	}
	switch {
	case strings.Contains(start, "urn:schemas-microsoft-com:office:spreadsheet") && strings.HasPrefix(start, "<"):
		return 0, refuse("it is an XML spreadsheet of 2003, not a workbook", saveAgain)
	case hasAnyPrefix(start, "<!doctype html", "<html", "<head", "<table", "<meta", "<body"):
		return 0, refuse("it is a web page (HTML) saved under a workbook's name", saveAgain)
	case strings.HasPrefix(start, "<?xml"):
		return 0, refuse("it is an XML file, not a workbook", saveAsXLSX)
	}
	switch ext := strings.ToLower(filepath.Ext(name)); {
	case slices.Contains([]string{".csv", ".tsv", ".txt", ""}, ext):
		return textForm, nil
	case slices.Contains(extensions(), ext) || strings.HasPrefix(ext, ".xl"):
		return 0, refuse("it is not a workbook, whatever its name says", "save it as .xlsx, or name it .csv if it is plain text")
	default:
		return 0, refuse("it is no kind of file that is read here", "give a .xlsx, .xlsm, .xltx or .csv file")
	}
}

// sniffOLE says what a file in the old compound format is, from the names of
// the streams in its directory, which are written in UTF-16.
func sniffOLE(data []byte) *FileError {
	has := func(stream string) bool {
		wide := make([]byte, 0, 2*len(stream))
		for i := range len(stream) {
			wide = append(wide, stream[i], 0)
		}
		return bytes.Contains(data, wide)
	}
	switch {
	case has("EncryptedPackage"):
		return refuse("it is protected by a password", "take the password off and save it again")
	case has("WordDocument"):
		return refuse("it is an old Word document (.doc), not a workbook", saveAsXLSX)
	case has("Workbook"), has("Book"):
		return refuse("it is an old workbook (.xls)", saveAsXLSX)
	}
	return refuse("it is a compound document of an old program, not a workbook", saveAsXLSX)
}

// sniffZip says what an archive is that lacks a workbook's parts.
func sniffZip(p *packed) *FileError {
	switch {
	case p.has("xl/workbook.bin"):
		return refuse("it is a binary workbook (.xlsb)", saveAsXLSX)
	case p.has("content.xml") && p.has("mimetype"):
		return refuse("it is an OpenDocument file (.ods)", saveAsXLSX)
	case p.has("Index/Document.iwa") || p.has("Index.zip"):
		return refuse("it is a Numbers document", "export it as .xlsx or .csv")
	case p.has("word/document.xml"):
		return refuse("it is a Word document (.docx), not a workbook", saveAsXLSX)
	case p.has("ppt/presentation.xml"):
		return refuse("it is a presentation (.pptx), not a workbook", saveAsXLSX)
	case p.has("[Content_Types].xml") || p.has("_rels/.rels"):
		return refuse("its workbook part is missing", saveAgain)
	}
	return refuse("it is a zip archive, not a workbook", "unpack it and give the workbook inside")
}

func hasAnyPrefix(s string, prefixes ...string) bool {
	return slices.ContainsFunc(prefixes, func(p string) bool { return strings.HasPrefix(s, p) })
}
