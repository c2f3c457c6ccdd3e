package contact_test

import (
	"encoding/json"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"abut/internal/contact"
	"abut/internal/schedule"
	"abut/policies"
)

// known is one line as it should be read back.
type known struct {
	mark, group                          string
	material, substrate, primer, touches string // families, parted by spaces
	thick, lap                           float64
	install, cover                       time.Time
	words                                map[string]string // slot -> what the cell says
}

// wording are ways to name the families that the property draws from.
func wording() map[string]map[string][]string {
	return map[string]map[string][]string{
		"material": {
			"rubberized-asphalt-membrane": {"rubberized asphalt membrane", "SBS-modified self-adhered membrane", "self-adhered rubberised asphalt sheet"},
			"butyl-flashing-tape":         {"butyl tape", "butyl flashing tape", "self-adhered butyl flashing"},
			"epdm-membrane":               {"EPDM membrane", "EPDM sheet"},
		},
		"substrate": {
			"concrete-masonry":           {"CMU", "concrete block", "concrete masonry"},
			"osb-plywood-sheathing":      {"plywood", "plywood sheathing", "OSB sheathing"},
			"glass-mat-gypsum-sheathing": {"glass-mat gypsum sheathing", "glass mat sheathing"},
			"galvanized-sheet":           {"galvanized steel sheet", "galv. sheet metal"},
		},
		"primer": {
			"solvent-primer": {"solvent-borne primer", "solvent-based primer"},
			"water-primer":   {"water-based primer", "acrylic water-borne primer"},
			"":               {"none", "-", ""},
		},
		"touches": {
			"epdm-gasket":          {"EPDM gasket", "EPDM glazing gasket"},
			"xps":                  {"XPS", "extruded polystyrene", "XPS insulation"},
			"clay-brick":           {"clay brick", "brick veneer"},
			"polyurethane-sealant": {"polyurethane sealant", "urethane sealant"},
			"":                     {"-", "n/a", ""},
		},
	}
}

// headingWords gives the words of columns.json that stand for one slot alone and
// give no unit.
func headingWords(t *testing.T) map[string][]string {
	t.Helper()
	raw, err := policies.FS.ReadFile("knowledge/columns.json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		Columns struct {
			Slots map[string]struct {
				Words []string `json:"words"`
			} `json:"slots"`
		} `json:"columns"`
	}
	if err := json.Unmarshal(raw, &file); err != nil {
		t.Fatal(err)
	}
	count := map[string]int{}
	for _, s := range file.Columns.Slots {
		for _, w := range s.Words {
			count[w]++
		}
	}
	out := map[string][]string{}
	for name, s := range file.Columns.Slots {
		for _, w := range s.Words {
			if count[w] == 1 && !givesUnit.MatchString(w) {
				out[name] = append(out[name], w)
			}
		}
		slices.Sort(out[name])
	}
	return out
}

// givesUnit is a heading that has a unit in its words: "thickness mm", "mils found".
var givesUnit = regexp.MustCompile(`mm$|mils$| in$|^mils |\binch(?:es)?\b`)

// draw picks the lines of a schedule.
func draw(t *rapid.T) []known {
	words := wording()
	pick := func(slot, label string) (family, word string) {
		var families []string
		for f := range words[slot] {
			families = append(families, f)
		}
		slices.Sort(families)
		family = rapid.SampledFrom(families).Draw(t, label)
		return family, rapid.SampledFrom(words[slot][family]).Draw(t, label+" words")
	}
	var out []known
	group := 1
	for i := range rapid.IntRange(2, 12).Draw(t, "lines") {
		k := known{mark: fmt.Sprintf("D-%02d", i+1), words: map[string]string{}}
		k.material, k.words["material"] = pick("material", "material")
		k.substrate, k.words["substrate"] = pick("substrate", "substrate")
		k.primer, k.words["primer"] = pick("primer", "primer")
		k.touches, k.words["touches"] = pick("touches", "touches")
		if more, word := pick("touches", "touches too"); k.touches != "" && more != "" && more != k.touches {
			k.touches += " " + more
			k.words["touches"] += rapid.SampledFrom([]string{", ", "; ", "\n", " and ", " + ", " & "}).Draw(t, "joined") + word
		}
		k.thick = float64(rapid.IntRange(6, 40).Draw(t, "thickness")) / 10
		k.lap = float64(rapid.IntRange(50, 200).Draw(t, "lap"))
		k.install = time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC).AddDate(0, 0, rapid.IntRange(0, 330).Draw(t, "day"))
		k.cover = k.install.AddDate(0, 0, rapid.IntRange(1, 60).Draw(t, "days open"))
		if i > 0 && rapid.IntRange(0, 3).Draw(t, "next wall") == 0 {
			group++
		}
		k.group = fmt.Sprintf("W%d", group)
		out = append(out, k)
	}
	return out
}

// TestLayouts: whatever the layout, the same lines and contacts are read back.
func TestLayouts(t *testing.T) {
	headings := headingWords(t)
	r, err := newReader()
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		want := draw(t)
		l := drawLayout(t, headings)
		s, err := r.Read(l.sheet(want), schedule.Settings{Country: l.country})
		if err != nil {
			t.Fatal(err)
		}
		if len(s.Lines) != len(want) {
			t.Fatalf("%d lines, want %d: %+v", len(s.Lines), len(want), s.Reading.Tables)
		}
		found := contact.Find(s)
		for i, k := range want {
			got := &s.Lines[i]
			if bad := k.differs(got, l); bad != "" {
				t.Fatalf("line %d: %s\ncolumns %+v", i+1, bad, s.Reading.Tables[0].Columns)
			}
			if bad := k.untold(told(found, got.ID)); bad != "" {
				t.Fatalf("line %d: %s", i+1, bad)
			}
		}
	})
}

// differs tells the first thing that was read otherwise than written.
func (k known) differs(l *schedule.Line, lay layout) string {
	for slot, want := range map[string]string{"material": k.material, "substrate": k.substrate, "primer": k.primer, "touches": k.touches} {
		var got []string
		for _, it := range l.Items {
			if it.Slot == slot {
				got = append(got, it.Family)
			}
		}
		if strings.Join(got, " ") != want {
			return fmt.Sprintf("%s %q read as %q, want %q", slot, k.words[slot], got, want)
		}
	}
	group := k.group
	switch lay.group {
	case "divider":
		group = "Wall " + k.group
	case "none":
		group = ""
	}
	if l.Mark != k.mark || l.Group != group {
		return fmt.Sprintf("mark %q of %q, want %q of %q", l.Mark, l.Group, k.mark, group)
	}
	for slot, want := range map[string]time.Time{"install": k.install, "cover": k.cover} {
		if got := l.Dates[slot]; got.From != want.Format(time.DateOnly) || got.To != got.From {
			return fmt.Sprintf("%s %+v, want %s", slot, got, want.Format(time.DateOnly))
		}
	}
	for key, want := range map[string]float64{"thickness_mm": k.thick, "lap_mm": k.lap} {
		if got := l.Figures[key].Min; got == nil || math.Abs(*got-want) > 0.01*want {
			return fmt.Sprintf("%s %+v, want %g", key, l.Figures[key], want)
		}
	}
	return ""
}

// untold tells the first contact that is missing or too many.
func (k known) untold(got []string) string {
	want := []string{k.material + "|" + k.substrate + " direct"}
	if k.primer != "" {
		want = append(want, k.material+"|"+k.primer+" direct", k.primer+"|"+k.substrate+" direct")
	}
	for _, f := range strings.Fields(k.touches) {
		want = append(want, k.material+"|"+f+" direct")
	}
	slices.Sort(want)
	if !slices.Equal(got, want) {
		return fmt.Sprintf("contacts %q, want %q", got, want)
	}
	return ""
}
