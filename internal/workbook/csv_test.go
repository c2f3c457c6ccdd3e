package workbook

import (
	"errors"
	"strings"
	"testing"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/unicode"
)

// grid writes a sheet as "A1=x" in order, to be compared as a whole.
func grid(s *Sheet) string {
	var cells []string
	for _, row := range s.Rows {
		for _, c := range row.Cells {
			cells = append(cells, c.Ref()+"="+c.Value)
		}
	}
	return strings.Join(cells, " ")
}

func TestCSV(t *testing.T) {
	tests := []struct{ name, text, delim, want string }{
		{"comma", "a,b\n1,2\n", ",", "A1=a B1=b A2=1 B2=2"},
		{"no end of line", "a,b\n1,2", ",", "A1=a B1=b A2=1 B2=2"},
		{"semicolon, decimal commas", "a;b\n1,0;2,5\n3,1;4\n", ";", "A1=a B1=b A2=1,0 B2=2,5 A3=3,1 B3=4"},
		{"tab", "a\tb, c\n1\t2\n", "\t", "A1=a B1=b, c A2=1 B2=2"},
		{"pipe", "a|b\n1|2\n", "|", "A1=a B1=b A2=1 B2=2"},
		{"title rows of one field", "Schedule, rev 2\n\na;b;c\n1;2;3\n", ";", "A1=Schedule, rev 2 A3=a B3=b C3=c A4=1 B4=2 C4=3"},
		{"one column", "a\nb\n", ",", "A1=a A2=b"},
		{"said in the first line", "sep=|\na|b,c\nd,e|f\n", "|", "A1=a B1=b,c A2=d,e B2=f"},
		{"empty lines are rows", "a,b\n\n\n1,2\n", ",", "A1=a B1=b A4=1 B4=2"},
		{"line in a field is no row", "a,\"two\nlines\"\nb,c\n", ",", "A1=a B1=two\nlines A2=b B2=c"},
		{"carriage returns", "a,b\r\n1,\"x\r\ny\"\r\n3,4\r\n", ",", "A1=a B1=b A2=1 B2=x\ny A3=3 B3=4"},
		{"quoted before a carriage return", "a,\"b\"\r\n\"c\",d\r\n", ",", "A1=a B1=b A2=c B2=d"},
		{"old line ends", "a,b\r1,2\r", ",", "A1=a B1=b A2=1 B2=2"},
		{"doubled quotation marks", "a,\"say \"\"no\"\"\"\n", ",", `A1=a B1=say "no"`},
		{"inches", "a,lap 6\" min\nb,1/2\"\n", ",", `A1=a B1=lap 6" min A2=b B2=1/2"`},
		{"inches inside quotation marks", "a,\"lap 6\" min, 4\" max\"\nb,c\n", ",", `A1=a B1=lap 6" min, 4" max A2=b B2=c`},
		{"space after a quotation mark", "\"a\" ,b\n", ",", "A1=a B1=b"},
		{"delimiter in quotation marks", "\"a;x\",b\n\"c;y\",d\n", ",", "A1=a;x B1=b A2=c;y B2=d"},
		{"empty fields hold nothing", "a,, ,b\n", ",", "A1=a D1=b"},
		{"values stay as they are", "007,1.50, x \n", ",", "A1=007 B1=1.50 C1= x "},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			book, err := Read("a.csv", []byte(tt.text), DefaultLimits())
			if err != nil {
				t.Fatal(err)
			}
			if got := grid(&book.Sheets[0]); got != tt.want {
				t.Errorf("got  %s\nwant %s", got, tt.want)
			}
			if book.Delimiter != tt.delim {
				t.Errorf("delimiter %q, want %q", book.Delimiter, tt.delim)
			}
			if s := book.Sheets[0]; s.Name != "" || s.Kind != Worksheet || s.State != "visible" {
				t.Errorf("sheet %+v", s)
			}
		})
	}
}

func TestCSVEncodings(t *testing.T) {
	const text = "Mark;Température\nW1;-5 °C, prêt\nW2;“à froid” – café\n"
	const ascii = "Mark;Temp\nW1;5 C\nW2;6 C\n"
	wide := func(order unicode.Endianness, bom unicode.BOMPolicy) encoding.Encoding {
		return unicode.UTF16(order, bom)
	}
	tests := []struct {
		name, text string
		enc        encoding.Encoding
		want       string
	}{
		{"plain", text, unicode.UTF8, "utf-8"},
		{"mark", text, unicode.UTF8BOM, "utf-8"},
		{"little", text, wide(unicode.LittleEndian, unicode.UseBOM), "utf-16le"},
		{"big", text, wide(unicode.BigEndian, unicode.UseBOM), "utf-16be"},
		{"little, no mark", ascii, wide(unicode.LittleEndian, unicode.IgnoreBOM), "utf-16le"},
		{"big, no mark", ascii, wide(unicode.BigEndian, unicode.IgnoreBOM), "utf-16be"},
		{"western", text, charmap.Windows1252, "windows-1252"},
		{"mac", text, charmap.Macintosh, "mac-roman"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			data, err := tt.enc.NewEncoder().Bytes([]byte(tt.text))
			if err != nil {
				t.Fatal(err)
			}
			book, err := Read("a.csv", data, DefaultLimits())
			if err != nil {
				t.Fatal(err)
			}
			want, err := Read("b.csv", []byte(tt.text), DefaultLimits())
			if err != nil {
				t.Fatal(err)
			}
			if got := grid(&book.Sheets[0]); got != grid(&want.Sheets[0]) || book.Encoding != tt.want {
				t.Errorf("%s: %s", book.Encoding, got)
			}
		})
	}
}

// TestRuledLine: a line of signs that are drawn, in text of two bytes, is text.
func TestRuledLine(t *testing.T) {
	text := "a,b\n" + strings.Repeat("═", 40) + "\n日本語の材料表です。これは長い文章ですから、二十四文字より長いです\n"
	if patched(text) {
		t.Error("it passes for text of two kinds")
	}
}

func TestCSVRefused(t *testing.T) {
	for name, tt := range map[string]struct{ text, want string }{
		"NUL":               {"a,b\n1,\x002\n", "a.csv: A2: it holds bytes that are no text"},
		"control bytes":     {"a\x01\x02\x03\x04\n", "a.csv: A1: it holds bytes that are no text"},
		"open quotation":    {"a,b\nc,\"d\ne,f\n", "a.csv: B2: a quotation mark opens here, and it is not clear where it closes"},
		"stray quotation":   {"a,b\nc,\"d\ne,f\ng,\"held 2\"\" clear\"\n", "a.csv: B2: a quotation mark opens here, and it is not clear where it closes"},
		"two encodings":     {"\xff\xfea\x00,\x00b\x00\n\x00Item,Membrane,Substrate\n1,butyl sheets,concrete\n", "a.csv: only a part of it is UTF-16 text"},
		"too much text":     {"a\n" + strings.Repeat(strings.Repeat("x", 30_000)+"\n", 600), "a.csv: A561: it has more than 16 MB of text"},
		"nothing":           {"\n , \n\n", "a.csv: no row of it holds anything"},
		"empty":             {"", "a.csv: it is empty"},
		"too many fields":   {strings.Repeat(",", lastCol+5), "a.csv: XFE1: the row has too many fields"},
		"false mark":        {"\xef\xbb\xbfa,\xff\n", "a.csv: it says it is UTF-8 and is not"},
		"half a character":  {"\xff\xfea\x00,", "a.csv: it is cut short"},
		"web page":          {"<!DOCTYPE html><table>", "a.csv: it is a web page"},
		"beyond last row":   {strings.Repeat("\n", 200_000) + "x\n", "a.csv: A200001: it lies below row 200000"},
		"beyond last field": {strings.Repeat(",", 2000) + "x\n", "a.csv: BXY1: it lies beyond column BXX"},
	} {
		t.Run(name, func(t *testing.T) {
			book, err := Read("a.csv", []byte(tt.text), DefaultLimits())
			refused(t, book, err, tt.want)
		})
	}
}

// refused holds an error against the beginning it must have; it must be one
// line, say what to do, and come with no book.
func refused(t *testing.T, book *Book, err error, want string) {
	t.Helper()
	var fe *FileError
	if !errors.As(err, &fe) || book != nil {
		t.Fatalf("not refused: %v, %v", book, err)
	}
	if got := err.Error(); !strings.HasPrefix(got, want) || strings.ContainsAny(got, "\n\r") || fe.Do == "" || !strings.HasSuffix(got, "; "+fe.Do) {
		t.Errorf("got  %s\nwant %s...; what to do", got, want)
	}
}
