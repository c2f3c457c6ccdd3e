package html

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// TestContrast computes the contrast of the palette after WCAG 2.2: 4.5 to 1
// for text, 3 to 1 for lines and marks that carry a meaning.
func TestContrast(t *testing.T) {
	css, err := files.ReadFile("page.css")
	if err != nil {
		t.Fatal(err)
	}
	light, rest, ok := strings.Cut(string(css), "@media screen and (prefers-color-scheme: dark)")
	dark, _, ok2 := strings.Cut(rest, "\n}\n")
	if !ok || !ok2 {
		t.Fatal("page.css has no dark palette")
	}
	text := [][2]string{
		{"ink", "page"}, {"ink", "paper"}, {"quiet", "page"}, {"quiet", "paper"}, {"link", "page"}, {"link", "paper"},
		{"on", "error"}, {"on", "warning"}, {"on", "note"}, {"on", "waived"}, {"ink", "warning-wash"}, {"ink", "note-wash"},
		{"quiet", "note-wash"}, {"error", "error-wash"}, {"warning", "warning-wash"}, {"note", "note-wash"}, {"quiet", "band"},
	}
	marks := [][2]string{
		{"error", "paper"}, {"warning", "paper"}, {"note", "paper"}, {"plain-bar", "paper"}, {"plain-bar", "band"},
		{"band-edge", "paper"}, {"edge", "paper"}, {"error", "band"}, {"warning", "band"}, {"note", "band"}, {"quiet", "page"},
	}
	for scheme, palette := range map[string]map[string]string{"light": colors(light), "dark": colors(dark)} {
		for least, pairs := range map[float64][][2]string{4.5: text, 3: marks} {
			for _, p := range pairs {
				if c := contrast(t, palette[p[0]], palette[p[1]]); c < least {
					t.Errorf("%s: %s on %s has %.2f to 1, less than %.1f", scheme, p[0], p[1], c, least)
				}
			}
		}
	}
}

func colors(css string) map[string]string {
	out := map[string]string{}
	for _, m := range regexp.MustCompile(`--([a-z-]+): #([0-9a-f]{6});`).FindAllStringSubmatch(css, -1) {
		out[m[1]] = m[2]
	}
	return out
}

func contrast(t *testing.T, a, b string) float64 {
	t.Helper()
	x, y := luminance(t, a), luminance(t, b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

func luminance(t *testing.T, color string) float64 {
	t.Helper()
	if len(color) != 6 {
		t.Fatalf("color %q", color)
	}
	sum := 0.0
	for i, share := range []float64{0.2126, 0.7152, 0.0722} {
		n, err := strconv.ParseUint(color[2*i:2*i+2], 16, 8)
		if err != nil {
			t.Fatal(err)
		}
		c := float64(n) / 255
		if c <= 0.04045 {
			c /= 12.92
		} else {
			c = math.Pow((c+0.055)/1.055, 2.4)
		}
		sum += share * c
	}
	return sum
}
