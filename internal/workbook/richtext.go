package workbook

import "strings"

// strike says whether a run of text is struck out.
type strike int

const (
	inherited strike = iota // as the cell's style says
	current
	struck
)

type run struct {
	text   string
	strike strike
}

// richText is a text as one string or, if its runs differ in what matters, as
// runs.
type richText struct {
	text string
	runs []run
}

func (t richText) isEmpty() bool { return t.text == "" && len(t.runs) == 0 }

// split parts what is current from what is struck out. cellStruck is what the
// cell's style says for the runs that say nothing themselves.
func (t richText) split(cellStruck bool) (now, old string) {
	if t.runs == nil {
		if cellStruck {
			return "", t.text
		}
		return t.text, ""
	}
	var kept, gone strings.Builder
	cut := false // something was taken out just here
	for _, r := range t.runs {
		if r.strike == struck || r.strike == inherited && cellStruck {
			if !cut && gone.Len() > 0 && !strings.HasSuffix(gone.String(), " ") {
				gone.WriteByte(' ')
			}
			gone.WriteString(r.text)
			cut = true
			continue
		}
		text := r.text
		if cut && (kept.Len() == 0 || strings.HasSuffix(kept.String(), " ")) {
			text = strings.TrimLeft(text, " ") // no gap where the old text was
		}
		kept.WriteString(text)
		cut = false
	}
	if gone.Len() == 0 {
		return kept.String(), ""
	}
	return strings.TrimSpace(kept.String()), strings.TrimSpace(gone.String())
}

// readRich reads the text of the element just started, a shared or an inline
// string. Phonetic readings beside the text are no part of it.
func readRich(s *scanner) richText {
	var runs []run
	depth, size := s.depth, 0
	for s.child(depth) {
		var r run
		switch string(s.name) {
		case "t":
			r.text = cellText(s.content())
		case "r":
			r = readRun(s)
		}
		if size += len(r.text); size > s.max {
			s.fail(errTooLong)
		}
		if r.text != "" {
			runs = append(runs, r)
		}
	}
	return joined(runs)
}

func readRun(s *scanner) run {
	var r run
	var text strings.Builder
	depth := s.depth
	for s.child(depth) {
		switch string(s.name) {
		case "t":
			if text.WriteString(cellText(s.content())); text.Len() > s.max {
				s.fail(errTooLong)
			}
		case "rPr": // a run with properties has its own, all of them
			if r.strike = current; readStrike(s) {
				r.strike = struck
			}
		}
	}
	r.text = text.String()
	return r
}

// joined makes runs that are struck alike one.
func joined(runs []run) richText {
	var out []run
	for i := 0; i < len(runs); {
		var text strings.Builder // a text may be cut into a run a character
		first := runs[i]
		for ; i < len(runs) && runs[i].strike == first.strike; i++ {
			text.WriteString(runs[i].text)
		}
		out = append(out, run{text: text.String(), strike: first.strike})
	}
	switch {
	case len(out) == 0:
		return richText{}
	case len(out) == 1 && out[0].strike == inherited:
		return richText{text: out[0].text}
	}
	return richText{runs: out}
}

func (t richText) size() int {
	n := len(t.text)
	for _, r := range t.runs {
		n += len(r.text)
	}
	return n
}

// readTexts reads the workbook's shared texts.
func (b *book) readTexts(part string) error {
	return b.scanKept(part, func(s *scanner) error {
		if !s.child(0) {
			return nil
		}
		for s.child(1) {
			if string(s.name) != "si" {
				continue
			}
			if len(b.texts) == b.lim.Strings {
				return tooMuch("shared texts", b.lim.Strings)
			}
			t := readRich(s)
			if err := b.count(t.size()); err != nil {
				return err
			}
			b.texts = append(b.texts, t)
		}
		return nil
	})
}

// count adds a text to what the book holds so far.
func (b *book) count(bytes int) *FileError {
	if b.text += int64(bytes); b.text > b.lim.TextBytes {
		return tooLarge(" of text", b.lim.TextBytes)
	}
	return nil
}
