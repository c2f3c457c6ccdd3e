// Package output writes the report of a run, one file a format.
package output

import (
	"fmt"
	"io"
	"path"
	"slices"
	"strings"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/schedule"
)

// Caution ends every report, once.
const Caution = "This report reads what the schedule says, and nothing else. " + whoDecides

// ruleCaution ends what is told of rules, which is no report.
const ruleCaution = "A rule reads what the schedule says, and nothing else. " + whoDecides

const whoDecides = "The makers' written instructions and compatibility letters, the local code and the licensed " +
	"professional decide. Solvent-borne primers burn: keep them from flame and ventilate."

// Run is all that a report tells of. Findings are in order of file, sheet, row,
// severity and rule.
type Run struct {
	Version  string
	Files    []string // every file that was asked for, in order
	Findings []engine.Finding
	Reading  []Reading
	Rules    []engine.Rule
	Problems []Problem
	Changes  []engine.Change // what an office or the settings have otherwise
	FailAt   string          // the mildest severity that fails: error, warning; "" is error
	Drawn    []Drawn
}

// Drawn is what a report with pictures draws of one file.
type Drawn struct {
	Document *document.Document
	Bare     []engine.Bare
}

// Reading is what was understood of one file.
type Reading struct {
	File    string           `json:"file"`
	Reading schedule.Reading `json:"reading"`
}

// Problem is what could not be read or run; with one, the run is not a pass.
type Problem struct {
	File    string `json:"file"` // "" for the whole run
	Message string `json:"message"`
}

// Line tells the problem in one line that begins with its file.
func (p Problem) Line() string {
	if p.File == "" || strings.HasPrefix(p.Message, p.File+": ") {
		return p.Message
	}
	return p.File + ": " + p.Message
}

// Write writes the run in a format: text, json, sarif, junit or markdown.
func Write(w io.Writer, format string, run Run) error {
	writers := map[string]func(io.Writer, Run) error{
		"text": writeText, "json": writeJSON, "sarif": writeSARIF, "junit": writeJUnit, "markdown": writeMarkdown,
	}
	write, ok := writers[format]
	if !ok {
		return fmt.Errorf("format %q is not known; use %s", format, strings.Join(Formats(), ", "))
	}
	if err := write(w, run); err != nil {
		return fmt.Errorf("write the report as %s: %w", format, err)
	}
	return nil
}

// Formats lists the names that Write takes.
func Formats() []string {
	return []string{"text", "json", "sarif", "junit", "markdown"}
}

// FormatOf gives the format of a file by its ending; "" if there is none. Of
// html and marked, packages of their own write the report.
func FormatOf(file string) string {
	endings := map[string]string{
		".txt": "text", ".json": "json", ".sarif": "sarif", ".xml": "junit", ".md": "markdown", ".html": "html", ".xlsx": "marked", ".xlsm": "marked",
	}
	return endings[strings.ToLower(path.Ext(file))]
}

// fails says whether a finding makes the run fail.
func (r Run) failsOn(f engine.Finding) bool {
	return f.Waived == nil && (f.Severity == "error" || f.Severity == "warning" && r.FailAt == "warning")
}

// Fails says whether a finding at or above the chosen severity is not waived.
func (r Run) Fails() bool {
	return slices.ContainsFunc(r.Findings, r.failsOn)
}
