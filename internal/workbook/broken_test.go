package workbook

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
)

// TestBroken breaks sound workbooks in many ways: each is read, or refused in
// one line.
func TestBroken(t *testing.T) {
	sound := rawBook(inRow(`<c r="A1" t="s"><v>0</v></c>`) + `<mergeCells><mergeCell ref="A1:B1"/></mergeCells>`)
	try := func(name string, data []byte) { checkRead(t, name, data, DefaultLimits()) }
	for _, whole := range [][]byte{sound.zip(t), generated(t, 20, 6)} {
		for n := 0; n < len(whole); n += 10 {
			try("a.xlsx", whole[:n])
			bad := bytes.Clone(whole)
			bad[n] ^= 1 << (n / 10 % 8)
			try("a.xlsx", bad)
		}
	}
	for name, text := range sound {
		try("a.xlsx", sound.with(parts{name: ""}).zip(t))
		for n := 0; n < len(text); n += 10 {
			try("a.xlsx", sound.with(parts{name: text[:n] + " "}).zip(t))
		}
		for _, target := range []string{"../../../../etc/passwd", "/etc/passwd", "file:///etc/passwd", "http://example.test/x.xml", `..\..\x`, "", ".", "/xl/workbook.xml", strings.Repeat("../", 5000)} {
			try("a.xlsx", sound.with(parts{name: strings.NewReplacer("styles.xml", target, "worksheets/sheet1.xml", target, "xl/workbook.xml", target).Replace(text)}).zip(t))
		}
	}
	for _, types := range []string{"<Types/>", "no xml", `<Types><Default Extension="xml" ContentType="text/html"/></Types>`, `<Types><Override PartName="/xl/workbook.xml" ContentType="application/x-msdownload"/></Types>`} {
		mustRead(t, sound.with(parts{"[Content_Types].xml": types}).zip(t))
	}
}

// TestBrokenCSV does so with text tables.
func TestBrokenCSV(t *testing.T) {
	const rows = "Item,Membrane,Lap\n1,\"butyl \"\"x\"\" sheet\",3 in.\r\n2,sheet,2\"\n"
	for n := range len(rows) + 1 {
		for _, junk := range []string{"", "\x00", `"`, `"""`, "\r", "\xff", "\xef\xbb\xbf", "\u2028", ",,,,"} {
			checkRead(t, "a.csv", []byte(rows[:n]+junk+rows[n:]), DefaultLimits())
		}
	}
	for _, long := range []string{strings.Repeat("x", 10<<20), strings.Repeat("x,", 5<<20), strings.Repeat(`"`, 10<<20), strings.Repeat(`"x""`, 2<<20), "\"" + strings.Repeat("a\n", 5<<20), strings.Repeat("\n", 10<<20) + "x"} {
		checkRead(t, "a.csv", []byte("Item,Membrane\n1,"+long), DefaultLimits())
	}
	checkRead(t, "a.csv", fmt.Appendf(nil, "\xff\xfe%s", strings.Repeat("\x00,", 1000)), DefaultLimits())
}
