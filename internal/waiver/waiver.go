// Package waiver holds findings against those that were accepted: which are
// waived, and which waivers do not hold.
package waiver

import (
	"slices"
	"strings"
	"time"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/schedule"
)

// States of a waiver once all findings were held against it.
const (
	held    = "held"
	loose   = "loose" // holds, whatever the line says
	changed = "changed"
	expired = "expired"
	unused  = "unused"
	bad     = "bad"
)

// Options are what a run says of its waivers.
type Options struct {
	On    time.Time // the day on which they are judged
	Rules []engine.Rule
	// Keep has findings that count kept for Write.
	Keep bool
	// About says which topics are judged in this run, nil for all: a waiver of
	// another topic is not said to be unused.
	About func(topic string) bool
}

// Set is the waivers of one run. It is not safe for concurrent use.
type Set struct {
	options Options
	topics  map[string]string // of rules
	sources []*source

	checked  map[string]bool // names of the workbooks of the run
	standing []standing      // what Write writes
	seen     map[string]bool
}

// source is a file with waivers: the settings, or a workbook for itself.
type source struct {
	file    string
	all     bool // holds for every workbook
	waivers []*schedule.Waiver
}

// New starts a run.
func New(o Options) *Set {
	s := &Set{options: o, topics: map[string]string{}, seen: map[string]bool{}, checked: map[string]bool{}}
	for _, r := range o.Rules {
		s.topics[r.ID] = r.Topic
	}
	return s
}

// Add takes the waivers that a settings file holds for every workbook.
func (s *Set) Add(file string, list []schedule.Waiver) {
	s.add(file, true, list)
}

func (s *Set) add(file string, all bool, list []schedule.Waiver) *source {
	i := slices.IndexFunc(s.sources, func(src *source) bool { return src.file == file && src.all == all })
	if i < 0 {
		i = len(s.sources)
		s.sources = append(s.sources, &source{file: file, all: all})
	}
	for _, w := range list {
		s.judge(&w, all)
		s.sources[i].waivers = append(s.sources[i].waivers, &w)
	}
	return s.sources[i]
}

// Apply marks the findings on a document that a waiver accepts. Own are the
// waivers that a workbook holds for them alone, written in the file given. It
// gives what became of those, as a document for the rules on waivers; nil if
// there is nothing to judge.
func (s *Set) Apply(doc *document.Document, findings []engine.Finding, file string, own []schedule.Waiver) *document.Document {
	s.checked[bookName(doc.File)] = true
	mine := &source{file: file}
	if len(own) > 0 {
		mine = s.add(file, false, own)
	}
	at := newPlaces(doc)
	for i := range findings {
		for _, src := range s.sources {
			if src.all || src == mine {
				s.hold(at, &findings[i], src)
			}
		}
		s.note(at, findings[i])
	}
	if len(own) == 0 {
		return nil
	}
	return s.told(mine)
}

// Rest gives what became of the waivers of the settings, one document a file,
// once every workbook was judged.
func (s *Set) Rest() []*document.Document {
	var out []*document.Document
	for _, src := range s.sources {
		if doc := s.told(src); src.all && doc != nil {
			out = append(out, doc)
		}
	}
	return out
}

// hold lets the waivers of a source accept a finding. Each that fits counts as
// used, the first is named in the report.
func (s *Set) hold(at *places, f *engine.Finding, src *source) {
	for _, w := range src.waivers {
		if w.State == bad || w.Texts["rule"] != f.Rule || !inBook(w, *f) {
			continue
		}
		content := at.content(*f)
		if w.Texts["content"] != content && !at.fits(w, *f) {
			continue
		}
		if !slices.Contains(w.Now, content) {
			w.Now = append(w.Now, content)
		}
		if w.State == expired {
			continue
		}
		if key := w.Texts["content"]; key != "" && key != content {
			if w.State == "" {
				w.State = changed
			}
			continue
		}
		w.State = held
		if w.Texts["content"] == "" {
			w.State = loose
		}
		if f.Waived == nil {
			f.Waived = &engine.Waived{
				Reason: w.Texts["reason"], Reference: w.Texts["reference"], By: w.Texts["by"], Until: w.Until, At: written(src.file, w.At),
			}
		}
	}
}

// told is the document that the rules on waivers judge.
func (s *Set) told(src *source) *document.Document {
	doc := &document.Document{Version: document.Version, File: src.file}
	for _, w := range src.waivers {
		if w.State == "" && s.judgedHere(w) {
			w.State = unused
		}
		if w.State != held && w.State != "" && (w.State == bad || s.concerns(w)) {
			doc.Waivers = append(doc.Waivers, *w)
		}
	}
	if len(doc.Waivers) == 0 {
		return nil
	}
	document.Complete(doc)
	return doc
}

// concerns tells whether the workbook that a waiver is for was checked.
func (s *Set) concerns(w *schedule.Waiver) bool {
	book := w.Texts["workbook"]
	return empty(book) || s.checked[bookName(book)]
}

func (s *Set) judgedHere(w *schedule.Waiver) bool {
	return s.options.About == nil || s.options.About(s.topics[w.Texts["rule"]])
}

// Of picks the findings of the rules on waivers.
func Of(findings []engine.Finding) []engine.Finding {
	return slices.DeleteFunc(findings, func(f engine.Finding) bool { return !strings.HasPrefix(f.Rule, "data-waiver-") })
}
