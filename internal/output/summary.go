package output

import (
	"fmt"
	"strings"

	"abut/internal/engine"
)

// Summary counts a run. Waived findings are counted apart.
type Summary struct {
	Version    string          `json:"version"`
	Files      []string        `json:"files"`
	Findings   int             `json:"findings"`
	Waived     int             `json:"waived"`
	BySeverity map[string]int  `json:"by_severity"`
	ByTopic    map[string]int  `json:"by_topic"` // topics without a finding are left out
	Cells      int             `json:"cells"`    // of schedule tables, not empty
	Understood int             `json:"understood"`
	Unread     int             `json:"unread"` // cells and rows listed as not understood
	Problems   []Problem       `json:"problems"`
	Changes    []engine.Change `json:"changes,omitempty"` // what an office or the settings have otherwise than built in
	Caution    string          `json:"caution"`
	aside      []string        // sheets without a table, and what was made of them
}

// Summary counts the run.
func (r Run) Summary() Summary {
	s := Summary{
		Version: r.Version, Files: append([]string{}, r.Files...), Problems: append([]Problem{}, r.Problems...),
		Changes:    r.Changes,
		BySeverity: map[string]int{}, ByTopic: map[string]int{}, Caution: Caution,
	}
	for _, severity := range engine.Severities() {
		s.BySeverity[severity] = 0
	}
	for _, f := range r.Findings {
		if f.Waived != nil {
			s.Waived++
			continue
		}
		s.Findings++
		s.BySeverity[f.Severity]++
		s.ByTopic[f.Topic]++
	}
	for _, read := range r.Reading {
		s.Cells += read.Reading.Cells
		s.Understood += read.Reading.Known
		s.Unread += len(read.Reading.Unread)
		s.aside = append(s.aside, r.sheetsAside(read)...)
	}
	return s
}

// bySeverity writes "2 errors, 1 warning, no notes".
func (s Summary) bySeverity() string {
	var parts []string
	for _, severity := range engine.Severities() {
		parts = append(parts, counted(s.BySeverity[severity], severity))
	}
	return strings.Join(parts, ", ")
}

// byTopic writes "contact 2, data 1" in the order of the topics.
func (s Summary) byTopic() string {
	var parts []string
	for _, topic := range engine.Topics() {
		if n := s.ByTopic[topic]; n > 0 {
			parts = append(parts, fmt.Sprintf("%s %d", topic, n))
		}
	}
	return strings.Join(parts, ", ")
}

// notUnderstood tells how much was not understood, "" if all was.
func (s Summary) notUnderstood() string {
	if s.Unread == 0 && s.Understood >= s.Cells {
		return ""
	}
	return fmt.Sprintf("Not understood: %s listed, %d of %s in schedules; `abut read --why FILE` shows them.",
		counted(s.Unread, "text"), s.Cells-s.Understood, counted(s.Cells, "cell"))
}

// sheetsAside names the sheets of a file that gave no table though they hold
// something, so that nobody takes them for checked.
func (r Run) sheetsAside(read Reading) []string {
	as := map[string]string{"notes": "read as notes", "words": "not read: words of drop-downs", "chartsheet": "not read: a chart", "other": "not read: a macro or dialog sheet"}
	var out []string
	for _, sheet := range read.Reading.Sheets {
		what, ok := as[sheet.As]
		if !ok {
			continue
		}
		name := fmt.Sprintf("\"%s\" (%s)", sheet.Name, what)
		if len(r.Files) > 1 {
			name = read.File + " " + name
		}
		out = append(out, name)
	}
	return out
}

// Aside names the sheets that gave no table, "" if all did.
func (s Summary) Aside() string {
	if len(s.aside) == 0 {
		return ""
	}
	return "No table on " + most(s.aside) + "."
}

// most lists the first of many texts.
func most(list []string) string {
	const most = 6
	if more := len(list) - most; more > 0 {
		list = append(list[:most:most], fmt.Sprintf("and %d more", more))
	}
	return strings.Join(list, ", ")
}

// Otherwise tells what is not as it is built in, "" if all is; of many changes
// of a kind it names the first.
func (s Summary) Otherwise() string {
	var kinds []string
	names := map[string][]string{}
	for _, c := range s.Changes {
		if names[c.What] == nil {
			kinds = append(kinds, c.What)
		}
		names[c.What] = append(names[c.What], fmt.Sprintf("%s (%s)", c.Name, c.By))
	}
	for i, kind := range kinds {
		kinds[i] = kind + ": " + most(names[kind])
	}
	if len(kinds) == 0 {
		return ""
	}
	return "Not as built in: " + strings.Join(kinds, "; ") + "."
}

func counted(n int, word string) string {
	switch n {
	case 0:
		return "no " + word + "s"
	case 1:
		return "1 " + word
	}
	return fmt.Sprintf("%d %ss", n, word)
}
