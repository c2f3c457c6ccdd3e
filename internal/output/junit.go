package output

import (
	"encoding/xml"
	"io"
	"strings"

	"abut/internal/engine"
)

type junitReport struct {
	XMLName  xml.Name     `xml:"testsuites"`
	Name     string       `xml:"name,attr"`
	Tests    int          `xml:"tests,attr"`
	Failures int          `xml:"failures,attr"`
	Errors   int          `xml:"errors,attr"`
	Suites   []junitSuite `xml:"testsuite"`
}

type junitSuite struct {
	Name     string      `xml:"name,attr"`
	Tests    int         `xml:"tests,attr"`
	Failures int         `xml:"failures,attr"`
	Errors   int         `xml:"errors,attr"`
	Skipped  int         `xml:"skipped,attr"`
	Cases    []junitCase `xml:"testcase"`
	Out      string      `xml:"system-out,omitempty"`
}

type junitCase struct {
	Class   string      `xml:"classname,attr"`
	Name    string      `xml:"name,attr"`
	Failure *junitFault `xml:"failure"`
	Error   *junitFault `xml:"error"`
	Skipped *junitFault `xml:"skipped"`
	Out     string      `xml:"system-out,omitempty"`
}

type junitFault struct {
	Type    string `xml:"type,attr,omitempty"`
	Message string `xml:"message,attr"`
	Text    string `xml:",chardata"`
}

// writeJUnit makes a suite of each file and a case of each finding. Only what
// makes the run fail is a failure; milder findings pass, with their text.
func writeJUnit(w io.Writer, run Run) error {
	report := junitReport{Name: "abut"}
	for _, file := range run.Files {
		report.Suites = append(report.Suites, junitFile(run, file))
	}
	if suite := junitProblems(run, ""); suite.Errors > 0 {
		suite.Name = "run"
		report.Suites = append(report.Suites, suite)
	}
	for _, s := range report.Suites {
		report.Tests += s.Tests
		report.Failures += s.Failures
		report.Errors += s.Errors
	}
	report.Suites = append(report.Suites, junitSuite{Name: "caution", Out: strings.TrimSpace(plain(run.Summary().Otherwise()) + "\n" + Caution)})
	if _, err := io.WriteString(w, xml.Header); err != nil {
		return err
	}
	e := xml.NewEncoder(w)
	e.Indent("", "  ")
	if err := e.Encode(report); err != nil {
		return err
	}
	_, err := io.WriteString(w, "\n")
	return err
}

func junitFile(run Run, file string) junitSuite {
	suite := junitProblems(run, file)
	for _, f := range run.Findings {
		if f.File == file {
			suite.add(junitFinding(run, f))
		}
	}
	if suite.Tests == 0 { // a suite without a case is taken for a run that never was
		suite.add(junitCase{Class: plain(file), Name: "no findings"})
	}
	return suite
}

func junitProblems(run Run, file string) junitSuite {
	suite := junitSuite{Name: plain(file)}
	for _, p := range run.Problems {
		if p.File == file {
			suite.add(junitCase{Class: plain(file), Name: "read and run", Error: &junitFault{Message: plain(p.Message)}})
		}
	}
	return suite
}

func junitFinding(run Run, f engine.Finding) junitCase {
	c := junitCase{
		Class: strings.Trim(plain(f.File)+"."+plain(f.Sheet), "."),
		Name:  strings.Trim(strings.Join([]string{where(f.Row, f.Cells), plain(f.Mark), f.Rule}, " "), " "),
	}
	text := plain(f.Message) + "\nDo: " + plain(f.Remedy) + "\nWhy: " + plain(f.Reason) + "\nSource: " + plain(f.Source)
	switch {
	case f.Waived != nil:
		c.Skipped = &junitFault{Message: plain(waiver(*f.Waived))}
	case run.failsOn(f):
		c.Failure = &junitFault{Type: f.Severity, Message: plain(f.Message), Text: text}
	default:
		c.Out = f.Severity + ": " + text
	}
	return c
}

func (s *junitSuite) add(c junitCase) {
	s.Cases = append(s.Cases, c)
	s.Tests++
	switch {
	case c.Failure != nil:
		s.Failures++
	case c.Error != nil:
		s.Errors++
	case c.Skipped != nil:
		s.Skipped++
	}
}
