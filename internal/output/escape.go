package output

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// plain makes a text from a workbook safe to show: one line, and characters
// that steer a terminal or turn the reading direction shown as \u escapes.
func plain(text string) string {
	var b strings.Builder
	for _, r := range strings.Join(strings.Fields(text), " ") {
		if Steers(r) {
			fmt.Fprintf(&b, `\u%04x`, r)
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
}

// Steers says whether a character is a control, turns the reading direction or
// has no agreed look.
func Steers(r rune) bool {
	if r < utf8.RuneSelf { // nearly all of a report
		return r < ' ' || r == 0x7f
	}
	return unicode.In(r, unicode.Cc, unicode.Cf, unicode.Co)
}

// where names the place of a finding within its file: "row 12, cells E12 F12".
func where(row int, cells []string) string {
	var parts []string
	if row > 0 {
		parts = append(parts, fmt.Sprintf("row %d", row))
	}
	switch len(cells) {
	case 0:
	case 1:
		parts = append(parts, "cell "+cells[0])
	default:
		parts = append(parts, "cells "+strings.Join(cells, " "))
	}
	return strings.Join(parts, ", ")
}

// markdown keeps a text from being read as Markdown, HTML, a mention or a link.
func markdown(text string) string {
	pairs := []string{
		"&", "&amp;", "<", "&lt;", ">", "&gt;", "@", "&#64;", "://", "&#58;//", "www.", "www&#46;", "WWW.", "WWW&#46;",
	}
	for _, mark := range "\\`*_{}[]#|~!" {
		pairs = append(pairs, string(mark), `\`+string(mark))
	}
	return strings.NewReplacer(pairs...).Replace(plain(text))
}
