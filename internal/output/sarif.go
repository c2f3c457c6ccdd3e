package output

import (
	"io"
	"net/url"
	"path/filepath"
	"strings"

	"abut/internal/engine"
)

// The parts of SARIF 2.1.0 that a report needs.
type sarifLog struct {
	Schema  string     `json:"$schema"`
	Version string     `json:"version"`
	Runs    []sarifRun `json:"runs"`
}

type sarifRun struct {
	Tool struct {
		Driver sarifDriver `json:"driver"`
	} `json:"tool"`
	Invocations []sarifInvocation `json:"invocations"`
	Results     []sarifResult     `json:"results"`
	Properties  map[string]string `json:"properties"`
}

type sarifDriver struct {
	Name    string      `json:"name"`
	Version string      `json:"version,omitempty"`
	Rules   []sarifRule `json:"rules"`
}

type sarifRule struct {
	ID       string            `json:"id"`
	Short    sarifText         `json:"shortDescription"`
	Full     sarifText         `json:"fullDescription"`
	Help     sarifText         `json:"help"`
	Default  map[string]string `json:"defaultConfiguration"`
	Property map[string]any    `json:"properties"`
}

type sarifText struct {
	Text string `json:"text"`
}

type sarifInvocation struct {
	Successful    bool        `json:"executionSuccessful"`
	Notifications []sarifNote `json:"toolExecutionNotifications,omitempty"`
}

type sarifNote struct {
	Level   string    `json:"level"`
	Message sarifText `json:"message"`
}

type sarifResult struct {
	Rule         string             `json:"ruleId"`
	Index        *int               `json:"ruleIndex,omitempty"`
	Level        string             `json:"level"`
	Message      sarifText          `json:"message"`
	Locations    []sarifLocation    `json:"locations"`
	Related      []sarifLocation    `json:"relatedLocations,omitempty"`
	Fingerprints map[string]string  `json:"partialFingerprints"`
	Suppressions []sarifSuppression `json:"suppressions,omitempty"`
}

type sarifSuppression struct {
	Kind          string `json:"kind"`
	Status        string `json:"status"`
	Justification string `json:"justification"`
}

type sarifLocation struct {
	ID       *int           `json:"id,omitempty"`
	Physical sarifPhysical  `json:"physicalLocation"`
	Logical  []sarifLogical `json:"logicalLocations,omitempty"`
	Message  *sarifText     `json:"message,omitempty"`
}

type sarifPhysical struct {
	Artifact struct {
		URI string `json:"uri"`
	} `json:"artifactLocation"`
	Region *sarifRegion `json:"region,omitempty"`
}

type sarifRegion struct {
	Line int `json:"startLine"`
}

type sarifLogical struct {
	Name string `json:"name"`
	Full string `json:"fullyQualifiedName"`
	Kind string `json:"kind"`
}

func writeSARIF(w io.Writer, run Run) error {
	out := sarifRun{Results: []sarifResult{}, Properties: map[string]string{"caution": Caution}}
	if text := run.Summary().Otherwise(); text != "" {
		out.Properties["changes"] = plain(text)
	}
	out.Tool.Driver = sarifDriver{Name: "abut", Version: run.Version, Rules: []sarifRule{}}
	index := map[string]int{}
	for i, r := range run.Rules {
		index[r.ID] = i
		out.Tool.Driver.Rules = append(out.Tool.Driver.Rules, sarifRuleOf(r))
	}
	invocation := sarifInvocation{Successful: len(run.Problems) == 0}
	for _, p := range run.Problems {
		invocation.Notifications = append(invocation.Notifications, sarifNote{"error", sarifText{plain(p.Line())}})
	}
	out.Invocations = []sarifInvocation{invocation}
	marks := fingerprints(run.Findings)
	for i, f := range run.Findings {
		out.Results = append(out.Results, sarifResultOf(f, index, marks[i]))
	}
	return writeIndented(w, sarifLog{
		Schema:  "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
		Version: "2.1.0", Runs: []sarifRun{out},
	})
}

func sarifRuleOf(r engine.Rule) sarifRule {
	return sarifRule{
		ID: r.ID, Short: sarifText{r.Title}, Full: sarifText{r.Description},
		Help:     sarifText{r.Description + "\n\nWhy: " + r.Reason + "\nWhat to do: " + r.Remedy + "\nSource: " + r.Source},
		Default:  map[string]string{"level": r.Severity},
		Property: map[string]any{"tags": []string{r.Topic}},
	}
}

func sarifResultOf(f engine.Finding, index map[string]int, mark string) sarifResult {
	result := sarifResult{
		Rule: f.Rule, Level: f.Severity, Message: sarifText{plain(f.Message) + "\n" + plain(f.Remedy)},
		Locations:    []sarifLocation{sarifPlace(f.File, f.Sheet, f.Row, f.Cells)},
		Fingerprints: map[string]string{"abutRowWords/v1": mark},
	}
	if i, ok := index[f.Rule]; ok {
		result.Index = &i
	}
	for i, r := range f.Related {
		at := sarifPlace(f.File, r.Sheet, r.Row, r.Cells)
		at.ID, at.Message = &i, &sarifText{plain(r.What)}
		result.Related = append(result.Related, at)
	}
	if f.Waived != nil {
		result.Suppressions = []sarifSuppression{{"external", "accepted", plain(waiver(*f.Waived))}}
	}
	return result
}

// sarifPlace gives the file and the row as its line, which is right for csv and
// lets a viewer tell rows of a workbook apart; sheet and cells are logical.
func sarifPlace(file, sheet string, row int, cells []string) sarifLocation {
	var at sarifLocation
	at.Physical.Artifact.URI = uri(file)
	if row > 0 {
		at.Physical.Region = &sarifRegion{Line: row}
	}
	if sheet != "" && len(cells) == 0 {
		at.Logical = append(at.Logical, sarifLogical{plain(sheet), plain(sheet), "sheet"})
	}
	for _, cell := range cells {
		at.Logical = append(at.Logical, sarifLogical{cell, strings.TrimPrefix(plain(sheet)+"!"+cell, "!"), "cell"})
	}
	return at
}

func uri(file string) string {
	u := url.URL{Path: filepath.ToSlash(file)}
	if filepath.IsAbs(file) {
		u.Scheme, u.Path = "file", "/"+strings.TrimPrefix(u.Path, "/") // a drive of Windows has no slash before it
	}
	return u.String()
}
