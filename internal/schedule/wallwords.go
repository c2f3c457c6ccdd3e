package schedule

import (
	"fmt"
	"io/fs"

	"abut/internal/knowledge"
	"abut/internal/regexp"
)

// wallWords are the words by which lists of walls are known, of policies/knowledge/walls.json.
type wallWords struct {
	Says, Prefix, Skips, Outside, Inside, Outer, Inner, Plain, Thick, Millimeters, Inches, Heads, Framing, Between, More string

	NoLayer    string             `json:"no_layer"`
	NeverThick string             `json:"never_thick"`
	Deep       map[string]float64 `json:"deep"`

	says, noLayer, skips, outside, inside, outer, inner, plain, thick, neverThick, mm, inch, heads, framing, between, more *regexp.Regexp

	code, led, called, numbered, prefixOnly *regexp.Regexp
}

const wallFile = "knowledge/walls.json"

// Codes of walls: letters and a number ("EW-2", "EX.1", "W01"), a number with letters ("2A",
// "01ud"), letters with a dash ("EW-A", "W-EXT-02"); after a word for walls any number or letter.
const (
	wallShape  = `[A-Z]{1,5}[- ./]?\d{1,3}[A-Za-z]?|\d{1,3}[A-Za-z]{1,2}|[A-Z]{1,4}(?:-[A-Z]{1,4})+(?:-\d{1,3})?`
	namedShape = wallShape + `|\d{1,3}|[A-Z]{1,2}`
)

func loadWallWords(fsys fs.FS) (*wallWords, error) {
	var file struct {
		Walls wallWords `json:"walls"`
	}
	if err := knowledge.Read(fsys, "lists of walls", wallFile, &file); err != nil {
		return nil, err
	}
	w := &file.Walls
	prefix := `(?i:` + w.Prefix + `)\s*[:#–-]?\s*`
	for _, one := range []struct {
		pattern string
		into    **regexp.Regexp
	}{
		{"(?i)" + w.Says, &w.says}, {"(?i)" + w.NoLayer, &w.noLayer}, {"(?i)" + w.Skips, &w.skips},
		{"(?i)" + w.Outside, &w.outside}, {"(?i)" + w.Inside, &w.inside}, {"(?i)" + w.Outer, &w.outer}, {"(?i)" + w.Inner, &w.inner},
		{"(?i)" + w.Plain, &w.plain}, {"(?i)" + w.Thick, &w.thick}, {"(?i)" + w.NeverThick, &w.neverThick},
		{"(?i)" + w.Millimeters, &w.mm}, {"(?i)" + w.Inches, &w.inch}, {"(?i)" + w.Heads, &w.heads}, {"(?i)" + w.Framing, &w.framing}, {"(?i)" + w.Between, &w.between}, {"(?i)" + w.More, &w.more},
		{`^\s*(?:` + prefix + `)?(` + wallShape + `)\s*$`, &w.code},
		{`^\s*(?:` + prefix + `)?(` + wallShape + `|\d{1,3}|[A-Z]{1,3})(?:\s*[:)=]|\s+[–—-]\s|\s*\n|\s*\(|\s+(?:\pL{2}|/)|\s*$)`, &w.led},
		{`^\s*(` + prefix + `(` + namedShape + `))(?:\s|[:)=–—-]|$)`, &w.called},
		{`^(?i:` + w.Prefix + `)$`, &w.prefixOnly},
		{`^\s*([A-Z]{1,4}[- ]?\d{1,3}[a-z]?)[-./](\d{1,2}|[a-z])\s*$`, &w.numbered},
	} {
		var err error
		if *one.into, err = regexp.Compile(one.pattern); err != nil {
			return nil, fmt.Errorf("lists of walls %s: %w", wallFile, err)
		}
	}
	return w, nil
}
