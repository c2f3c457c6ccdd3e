package output

import (
	"fmt"
	"io"
	"strings"
)

// Setting is one setting in force: its value and where that comes from.
type Setting struct{ Key, Value, From string }

// WriteSettings lists settings, each with where it comes from under it.
func WriteSettings(w io.Writer, list []Setting) error {
	width := 0
	for _, s := range list {
		width = max(width, len(s.Key))
	}
	var b strings.Builder
	for _, s := range list {
		fmt.Fprintf(&b, "%-*s  %s\n%-*s    from %s\n", width, s.Key, plain(s.Value), width, "", plain(s.From))
	}
	_, err := io.WriteString(w, b.String())
	return err
}
