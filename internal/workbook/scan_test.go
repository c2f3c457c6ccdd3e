package workbook

import (
	"encoding/xml"
	"fmt"
	"io"
	"slices"
	"strings"
	"testing"
	"testing/iotest"
)

// trace writes the tokens of the scanner, one a line.
func trace(r io.Reader, lim Limits) (string, error) {
	s, err := newScanner(r, lim)
	if err != nil {
		return "", err
	}
	var b strings.Builder
	for s.next() {
		switch s.tok {
		case startTag:
			fmt.Fprintf(&b, "<%s %s\n", s.name, s.attrText("r"))
		case endTag:
			fmt.Fprintf(&b, ">%s\n", s.name)
		case chars:
			fmt.Fprintf(&b, "%s", strings.ReplaceAll(string(s.decode(nil, s.chars, s.literal)), "\r", ""))
		}
	}
	return b.String(), s.err
}

// traceStandard writes the same with the standard decoder.
func traceStandard(text string) (string, error) {
	var b strings.Builder
	d := xml.NewDecoder(strings.NewReader(text))
	for depth := 0; ; {
		tok, err := d.Token()
		if err == io.EOF {
			return b.String(), nil
		} else if err != nil {
			return "", err
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			r := ""
			for _, a := range slices.Backward(tok.Attr) { // of two with one name, the first
				if a.Name.Local == "r" && a.Name.Space == "" {
					r = a.Value
				}
			}
			fmt.Fprintf(&b, "<%s %s\n", tok.Name.Local, r)
			depth++
		case xml.EndElement:
			depth--
			fmt.Fprintf(&b, ">%s\n", tok.Name.Local)
		case xml.CharData:
			if depth > 0 { // outside stands only space, which the scanner passes over
				b.Write(tok)
			}
		}
	}
}

func scanSeeds() []string {
	return []string{
		`<a r="1"/>`, `<?xml version="1.0"?><a><b r='x&amp;y'>t &lt; u</b><!-- c --><c/></a>`,
		`<a><![CDATA[ <x> & ]]>z</a>`, `<x:a xmlns:x="u" r = "2" ><x:b/></x:a >`, `<a r="1>2">&#65;&#x42;</a>`,
		`<a`, `<a>`, `</a>`, `<a></b>`, `<a/><b/>`, ``, `text`, `<a>&nope;</a>`, `<a b></a>`, `<a><!-- x`, `<a r="1"`,
	}
}

func TestScanLikeStandard(t *testing.T) {
	lim := DefaultLimits()
	for _, text := range scanSeeds() {
		got, err := trace(strings.NewReader(text), lim)
		slow, slowErr := trace(iotest.OneByteReader(strings.NewReader(text)), lim)
		if slow != got || (err == nil) != (slowErr == nil) {
			t.Errorf("%s: byte by byte %q, %v; at once %q, %v", text, slow, slowErr, got, err)
		}
		want, wantErr := traceStandard(text)
		if err == nil && wantErr == nil && got != want {
			t.Errorf("%s: got %q, want %q", text, got, want)
		}
		if err == nil && wantErr != nil && text != `<a b></a>` { // attributes are looked at when asked for
			t.Errorf("%s passes and must not: %v", text, wantErr)
		}
	}
}

func TestScanAcrossBuffers(t *testing.T) {
	// Elements of every length around the size of the buffer.
	var b strings.Builder
	b.WriteString("<a>")
	for i := range 3000 {
		fmt.Fprintf(&b, `<b r="%d">%s&amp;<![CDATA[%d]]></b><!-- %s -->`, i, strings.Repeat("x", i%97), i, strings.Repeat("-x", i%31))
	}
	fmt.Fprintf(&b, "%s</a>", strings.Repeat("y", 150_000))
	want, err := traceStandard(b.String())
	if err != nil {
		t.Fatal(err)
	}
	for name, r := range map[string]io.Reader{"whole": strings.NewReader(b.String()), "halves": iotest.HalfReader(strings.NewReader(b.String())), "last with error": iotest.DataErrReader(strings.NewReader(b.String()))} {
		if got, err := trace(r, DefaultLimits()); err != nil || got != want {
			t.Errorf("%s: %v, %d bytes of trace, want %d", name, err, len(got), len(want))
		}
	}
}

// FuzzScan holds the scanner against the standard decoder: what both accept
// they must read alike.
func FuzzScan(f *testing.F) {
	for _, seed := range scanSeeds() {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if strings.ContainsAny(text, "\r") || strings.HasPrefix(text, "\xef\xbb\xbf") {
			return // line ends and marks are dealt with elsewhere
		}
		got, err := trace(strings.NewReader(text), DefaultLimits())
		want, wantErr := traceStandard(text)
		if err == nil && wantErr == nil && got != want && !strings.Contains(text, "encoding") {
			t.Errorf("got %q, want %q", got, want)
		}
	})
}
