package output

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"github.com/mattn/go-runewidth"

	"abut/internal/engine"
)

func TestWrap(t *testing.T) {
	for text, want := range map[string][]string{
		"one two three four":           {"one two", "three four"},
		"外壁の防水シート 目地":                  {"外壁の防水", "シート", "目地"},
		"see https://example.org/long": {"see", "https://example.org/long"},
		"e\u0301e\u0301e\u0301e\u0301 e\u0301e\u0301e\u0301e\u0301e\u0301 x": {"e\u0301e\u0301e\u0301e\u0301 e\u0301e\u0301e\u0301e\u0301e\u0301", "x"},
		"غشاء مطاطي على":                                                     {"غشاء مطاطي", "على"},
		"":                                                                   {""},
	} {
		if got := Wrap(text, 10); !slices.Equal(got, want) {
			t.Errorf("Wrap %q: %q, want %q", text, got, want)
		}
	}
}

// TestNarrow: whatever the script, no line of the report is wider than a
// terminal of 80 columns, but for a word that cannot be broken.
func TestNarrow(t *testing.T) {
	for _, text := range []string{
		strings.Repeat("防水シート", 40), strings.Repeat("कोना जोड़ ", 40), strings.Repeat("غشاء مطاطي ", 40), strings.Repeat("é 🏗 ", 60), strings.Repeat("join ", 60),
	} {
		f := engine.Finding{
			Rule: "a-rule", Severity: "error", File: "a.xlsx", Sheet: text, Row: 7, Cells: []string{"B7"}, Mark: text,
			Message: text, Reason: text, Remedy: text, Source: text, Related: []engine.Related{{Row: 2, What: text}},
		}
		var b bytes.Buffer
		if err := Write(&b, "text", Run{Files: []string{"a.xlsx"}, Findings: []engine.Finding{f}}); err != nil {
			t.Fatal(err)
		}
		for line := range strings.Lines(b.String()) {
			if w := runewidth.StringWidth(strings.TrimSuffix(line, "\n")); w > 80 {
				t.Errorf("%d columns: %s", w, line)
			}
		}
		if strings.Contains(b.String(), "\x1b") {
			t.Error("color where no terminal asks for it")
		}
	}
}
