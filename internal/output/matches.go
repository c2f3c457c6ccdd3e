package output

import (
	"fmt"
	"io"
	"strings"

	"abut/internal/document"
)

// WriteMatches lists which submitted line stands for which specified one, and
// how surely, then the lines without a match.
func WriteMatches(w io.Writer, doc *document.Document) error {
	var b strings.Builder
	c := doc.Comparison
	fmt.Fprintf(&b, "Lines of %s matched with %s\n", plain(doc.File), plain(c.Specified))
	for _, p := range c.Pairs {
		how := "sure"
		if !p.Sure {
			how = "not certain"
		}
		if p.Split {
			how += ", split or joined"
		}
		fmt.Fprintf(&b, "%s <- %s (%s): %.0f%% alike, next best %.0f%%, %s\n",
			plain(p.Line), plain(p.Was.Line), plain(p.Was.Mark), 100*p.Score, 100*p.Next, how)
	}
	for _, r := range c.Removed {
		fmt.Fprintf(&b, "no submitted line for %s (%s)\n", plain(r.Line), plain(r.Mark))
	}
	for _, a := range c.Added {
		fmt.Fprintf(&b, "no specified line for %s (%s)\n", plain(a.Line), plain(a.Mark))
	}
	_, err := io.WriteString(w, b.String())
	return err
}
