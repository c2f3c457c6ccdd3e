package output

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"unicode/utf16"
	"unicode/utf8"

	"abut/internal/engine"
)

// jsonReport follows schema/findings.schema.json.
type jsonReport struct {
	Findings []engine.Finding `json:"findings"`
	Reading  struct {
		Files []Reading `json:"files"`
	} `json:"reading"`
	Summary Summary `json:"summary"`
}

func writeJSON(w io.Writer, run Run) error {
	report := jsonReport{Findings: append([]engine.Finding{}, run.Findings...), Summary: run.Summary()}
	report.Reading.Files = append([]Reading{}, run.Reading...)
	return writeIndented(w, report)
}

func writeIndented(w io.Writer, value any) error { return WriteJSON(w, "  ", value) }

// WriteJSON writes a value as JSON text. Characters that steer a terminal or
// turn the reading direction are escaped: the same data, and safe to show.
func WriteJSON(w io.Writer, indent string, value any) error {
	var text bytes.Buffer
	e := json.NewEncoder(&text)
	e.SetEscapeHTML(false)
	e.SetIndent("", indent)
	if err := e.Encode(value); err != nil {
		return err
	}
	_, err := w.Write(tame(text.Bytes()))
	return err
}

// tame escapes what stands in the strings of a JSON text; outside them it has
// line ends alone.
func tame(text []byte) []byte {
	steers := func(r rune) bool { return r != '\n' && Steers(r) }
	if !bytes.ContainsFunc(text, steers) {
		return text
	}
	out := make([]byte, 0, len(text)+64)
	for _, r := range string(text) {
		switch {
		case !steers(r):
			out = utf8.AppendRune(out, r)
		case r > 0xffff:
			high, low := utf16.EncodeRune(r)
			out = fmt.Appendf(out, `\u%04x\u%04x`, high, low)
		default:
			out = fmt.Appendf(out, `\u%04x`, r)
		}
	}
	return out
}
