package html

import (
	"fmt"
	"html/template"
	"path"
	"path/filepath"
	"slices"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/output"
	"abut/internal/schedule"
)

// page is what the template shows. Counts leave waived findings out.
type page struct {
	Policy     string
	CSS        template.CSS
	JS         template.JS
	Title      string
	Version    string
	Counts     []count
	Topics     []topicRow
	Problems   []string
	Otherwise  string
	Aside      string
	Files      []file
	Sheets     []string
	Severities []string
	Key        []kind // of the materials that are drawn
	Caution    string
	Waived     int
	Shown      int // findings that are not waived
}

type count struct {
	Severity string
	Number   int
}

type topicRow struct {
	Topic  string
	Counts []count
	Total  int
}

// file is the part of the page on one workbook.
type file struct {
	ID         string
	Name       string // without its folders
	Path       string
	Project    string
	Place      place
	Counts     []count
	Assemblies []assembly
	More       string // what was left out of the drawings, "" nothing
	Sheets     []sheet
	Waived     []found
	Season     *season
	Bare       *bare
	Reading    reading
	Only       bool // findings and nothing else: no workbook
}

// place says where the job is and which station stands for it.
type place struct {
	Text, Station, Source, Problem string
	Far                            string
}

// newPage makes the page of a run, file by file in the order that was asked.
func newPage(run output.Run) (*page, error) {
	kinds, err := readKinds()
	if err != nil {
		return nil, err
	}
	s := run.Summary()
	p := &page{
		Title: "Material schedule report", Version: s.Version, Caution: s.Caution, Waived: s.Waived, Shown: s.Findings,
		Severities: engine.Severities(), Counts: counts(s.BySeverity), Topics: topics(run.Findings),
	}
	p.Otherwise, p.Aside = s.Otherwise(), output.Plain(s.Aside())
	for _, problem := range s.Problems {
		p.Problems = append(p.Problems, problem.Line())
	}
	d := &desk{kinds: kinds}
	for _, drawn := range run.Drawn {
		p.Files = append(p.Files, d.file(fmt.Sprintf("file%d", len(p.Files)+1), drawn, run.Findings))
	}
	for _, name := range undrawn(run) {
		f := d.file(fmt.Sprintf("file%d", len(p.Files)+1), output.Drawn{Document: &document.Document{File: name}}, run.Findings)
		f.Only = true
		p.Files = append(p.Files, f)
	}
	if len(run.Drawn) == 1 && p.Files[0].Project != "" {
		p.Title += ": " + p.Files[0].Project
	}
	for _, f := range p.Files {
		for _, sh := range f.Sheets {
			if !slices.Contains(p.Sheets, sh.Name) {
				p.Sheets = append(p.Sheets, sh.Name)
			}
		}
	}
	p.Key = kinds.drawn()
	return p, p.dress()
}

// undrawn lists the files that have findings and are no workbook, such as the
// settings with the waivers.
func undrawn(run output.Run) []string {
	var out []string
	for _, f := range run.Findings {
		drawn := slices.ContainsFunc(run.Drawn, func(d output.Drawn) bool { return d.Document.File == f.File })
		if !drawn && !slices.Contains(out, f.File) {
			out = append(out, f.File)
		}
	}
	return out
}

// desk makes the parts of a page and numbers the findings through all files.
type desk struct {
	kinds *kinds
	told  int
}

func (d *desk) file(id string, drawn output.Drawn, all []engine.Finding) file {
	doc := drawn.Document
	f := file{
		ID: id, Name: path.Base(filepath.ToSlash(doc.File)), Path: doc.File, Project: doc.Project.Name, Place: placeOf(doc.Project.Place), Reading: readingOf(doc.Reading),
	}
	var list []found
	bySeverity := map[string]int{}
	for _, one := range all {
		if one.File != doc.File {
			continue
		}
		d.told++
		here := newFound(d.told, one)
		if one.Waived != nil {
			f.Waived = append(f.Waived, here)
			continue
		}
		bySeverity[one.Severity]++
		list = append(list, here)
	}
	f.Counts = counts(bySeverity)
	b := newBoard(d.kinds, id, doc, list)
	f.Assemblies = b.assemblies()
	f.Sheets = b.sheets()
	f.More = b.more()
	f.Season = newSeason(id, doc, b)
	f.Bare = newBare(id, drawn.Bare, b)
	return f
}

func placeOf(in document.Place) place {
	p := place{Text: in.Text, Station: in.Station, Problem: in.Problem}
	if in.Region != "" {
		p.Station += ", " + in.Region
	}
	if in.Period != "" {
		p.Source = "normals " + in.Period + ", " + in.Source
	}
	if in.DistanceKM != nil && *in.DistanceKM >= 0.5 {
		p.Far = fmt.Sprintf("%.0f km away", *in.DistanceKM)
	}
	return p
}

func counts(by map[string]int) []count {
	var out []count
	for _, severity := range engine.Severities() {
		out = append(out, count{severity, by[severity]})
	}
	return out
}

// topics counts the findings that are not waived, by topic and severity.
func topics(findings []engine.Finding) []topicRow {
	by := map[string]map[string]int{}
	for _, f := range findings {
		if f.Waived != nil {
			continue
		}
		if by[f.Topic] == nil {
			by[f.Topic] = map[string]int{}
		}
		by[f.Topic][f.Severity]++
	}
	var out []topicRow
	for _, topic := range engine.Topics() {
		if by[topic] == nil {
			continue
		}
		row := topicRow{Topic: topic, Counts: counts(by[topic])}
		for _, c := range row.Counts {
			row.Total += c.Number
		}
		out = append(out, row)
	}
	return out
}

// reading is what was not understood, and what was left out.
type reading struct {
	Cells, Known, Percent int
	Unread, Skipped       []schedule.Unread
	Left                  int
	Columns               []unknownColumn
}

type unknownColumn struct{ Sheet, Letter, Heading string }

// mostUnread keeps a page of a strange workbook readable; the rest is counted.
const mostUnread = 300

func readingOf(in schedule.Reading) reading {
	r := reading{Cells: in.Cells, Known: in.Known, Percent: 100, Unread: in.Unread, Skipped: in.Skipped}
	if in.Cells > 0 {
		r.Percent = 100 * in.Known / in.Cells
	}
	for _, t := range in.Tables {
		for _, c := range t.Columns {
			if c.Slot == "" {
				r.Columns = append(r.Columns, unknownColumn{t.Sheet, c.Letter, c.Heading})
			}
		}
	}
	for _, list := range []*[]schedule.Unread{&r.Unread, &r.Skipped} {
		if len(*list) > mostUnread {
			r.Left += len(*list) - mostUnread
			*list = (*list)[:mostUnread]
		}
	}
	return r
}
