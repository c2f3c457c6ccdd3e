// Package html writes the report of a run as one page that fetches nothing:
// summary, findings by sheet and row, drawn sections, season, days in the sun,
// vapor profiles, and what was not understood.
package html

import (
	"bufio"
	"crypto/sha256"
	"embed"
	"encoding/base64"
	"fmt"
	"html/template"
	"io"
	"strconv"
	"strings"

	"abut/internal/output"
)

//go:embed page.css page.js page.tmpl parts.tmpl kinds.json
var files embed.FS

// Write writes the run as HTML. Nothing from a workbook reaches the page but
// through the template's escaping, and the page's own policy bars every fetch.
func Write(w io.Writer, run output.Run) error {
	p, err := newPage(run)
	if err != nil {
		return fmt.Errorf("write the report as html: %w", err)
	}
	t, err := template.New("").Funcs(template.FuncMap{"n": number}).ParseFS(files, "*.tmpl")
	if err != nil {
		return fmt.Errorf("write the report as html: %w", err)
	}
	out := bufio.NewWriter(w)
	if err := t.ExecuteTemplate(showing{out}, "page", p); err != nil {
		return fmt.Errorf("write the report as html: %w", err)
	}
	return out.Flush()
}

// showing writes what it is given as it is shown. The templates write no
// character in two pieces.
type showing struct{ to *bufio.Writer }

func (s showing) Write(text []byte) (int, error) {
	_, err := s.to.WriteString(shown(string(text)))
	return len(text), err
}

// shown writes out the characters that turn the reading direction or steer a
// terminal. The page's own text has none, so all of them come from cells.
func shown(text string) string {
	var b strings.Builder
	for _, r := range text {
		if r != '\n' && r != '\t' && output.Steers(r) {
			fmt.Fprintf(&b, `\u%04x`, r)
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
}

// number writes a coordinate, short and the same on every machine.
func number(x float64) string {
	text := strconv.FormatFloat(x, 'f', 1, 64)
	return strings.TrimSuffix(text, ".0")
}

// dress reads the page's own style and script, and names both by their hash in
// the policy that bars everything else.
func (p *page) dress() error {
	css, err := files.ReadFile("page.css")
	if err != nil {
		return err
	}
	js, err := files.ReadFile("page.js")
	if err != nil {
		return err
	}
	p.CSS, p.JS = template.CSS(css), template.JS(js) // both are part of this package
	p.Policy = fmt.Sprintf("default-src 'none'; style-src '%s'; script-src '%s'; base-uri 'none'; form-action 'none'",
		hash(css), hash(js))
	return nil
}

func hash(b []byte) string {
	sum := sha256.Sum256(b)
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}
