package waiver

import (
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"path/filepath"
	"strings"
	"time"

	"github.com/goccy/go-yaml"

	"abut/internal/engine"
)

// standing is a waiver of a finding that is accepted as a starting point. The
// order of the fields is that of the file.
type standing struct {
	Rule     string `yaml:"rule"`
	Workbook string `yaml:"workbook"`
	Mark     string `yaml:"mark,omitempty"`
	Content  string `yaml:"content"`
	Reason   string `yaml:"reason"`
	By       string `yaml:"by"`
	Until    string `yaml:"until"`
	message  string
}

// note keeps a finding that counts, for Write. A note of the schedule never
// fails and needs no waiver.
func (s *Set) note(at *places, f engine.Finding) {
	if !s.options.Keep || f.Waived != nil || f.Severity == "note" {
		return
	}
	content := at.content(f)
	key := f.Rule + "\x00" + filepath.Base(f.File) + "\x00" + content
	if s.seen[key] {
		return
	}
	s.seen[key] = true
	s.standing = append(s.standing, standing{
		Rule: f.Rule, Workbook: filepath.Base(f.File), Mark: f.Mark, Content: content, message: f.Message,
	})
}

// Write writes waivers of all that was found and not waived, as a list that
// the settings can name, and gives their number. Each holds to the content of
// its line and for the days that the policies give.
func (s *Set) Write(w io.Writer, fsys fs.FS) (int, error) {
	raw, err := fs.ReadFile(fsys, "data/standing.json")
	if err != nil {
		return 0, fmt.Errorf("words of standing waivers: %w", err)
	}
	var words struct {
		Standing struct {
			Days   int    `json:"days"`
			Reason string `json:"reason"`
			By     string `json:"by"`
		} `json:"standing"`
	}
	if err := json.Unmarshal(raw, &words); err != nil {
		return 0, fmt.Errorf("words of standing waivers data/standing.json: %w", err)
	}
	on := s.options.On.Format(time.DateOnly)
	until := s.options.On.AddDate(0, 0, words.Standing.Days).Format(time.DateOnly)
	var b strings.Builder
	fmt.Fprintf(&b, "# Findings that stood on %s. Each still wants a person's reason and role.\nwaivers:\n", on)
	for _, one := range s.standing {
		one.By, one.Until = words.Standing.By, until
		one.Reason = strings.ReplaceAll(words.Standing.Reason, "%s", on)
		text, err := yaml.Marshal([]standing{one})
		if err != nil {
			return 0, fmt.Errorf("write a waiver of %s: %w", one.Rule, err)
		}
		fmt.Fprintf(&b, "# %s\n%s", comment(one.message), text)
	}
	if len(s.standing) == 0 {
		b.WriteString("[]\n")
	}
	_, err = io.WriteString(w, b.String())
	return len(s.standing), err
}

// comment is a text that cannot leave its line.
func comment(text string) string {
	return strings.Join(strings.FieldsFunc(text, func(r rune) bool { return r < ' ' || r == 0x7f || r == 0x85 || r == 0x2028 || r == 0x2029 }), " ")
}
