package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"abut/internal/engine"
)

var testdata = filepath.Join("..", "..", "testdata")

// demoKey says which rows of the demo hold a mistake; testdata/demo writes it.
type demoKey struct {
	Workbook string  `json:"workbook"`
	Rows     []where `json:"schedule_rows"`
	Mistakes []struct {
		ID    string `json:"id"`
		Sheet string `json:"sheet"`
		Row   int    `json:"row"`
		Topic string `json:"topic"`
		What  string `json:"what"`
	} `json:"defects"`
	Near []struct {
		Sheet string `json:"sheet"`
		Row   int    `json:"row"`
		Why   string `json:"why_clean"`
	} `json:"near_misses"`
}

// where is a sheet and a row.
type where struct {
	Sheet string
	Row   int
}

func (w *where) UnmarshalJSON(text []byte) error {
	return json.Unmarshal(text, &[]any{&w.Sheet, &w.Row})
}

func readDemoKey(t *testing.T) demoKey {
	t.Helper()
	var key demoKey
	text, err := os.ReadFile(filepath.Join(testdata, "demo", "tern-landing.key.json"))
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(text, &key); err != nil {
		t.Fatal(err)
	}
	return key
}

// TestDemo holds the findings of the demo against its key: every mistake is
// found at its row under its topic, and no row without one draws an error or
// a warning.
func TestDemo(t *testing.T) {
	key := readDemoKey(t)
	found := map[where][]engine.Finding{}
	for _, f := range check(t, filepath.Join(testdata, "demo", key.Workbook)).Findings {
		if f.Severity != "note" {
			at := where{f.Sheet, f.Row}
			found[at] = append(found[at], f)
		}
	}
	mistaken := map[where]bool{}
	for _, m := range key.Mistakes {
		at := where{m.Sheet, m.Row}
		mistaken[at] = true
		if !slices.ContainsFunc(found[at], func(f engine.Finding) bool { return f.Topic == m.Topic }) {
			t.Errorf("%s row %d: no finding of topic %s: %s", m.Sheet, m.Row, m.Topic, m.What)
		}
	}
	for at, list := range found {
		if !mistaken[at] {
			t.Errorf("%s row %d holds no mistake: %s", at.Sheet, at.Row, list[0].Message)
		}
	}
}

// TestDemoShape keeps the demo worth reading: long enough, most of it right,
// with mistakes of the four main topics and rows that look wrong and are not.
func TestDemoShape(t *testing.T) {
	key := readDemoKey(t)
	rows := len(key.Rows)
	topics := map[string]int{}
	wrong := map[where]bool{}
	for _, m := range key.Mistakes {
		topics[m.Topic]++
		if slices.Contains(key.Rows, where{m.Sheet, m.Row}) {
			wrong[where{m.Sheet, m.Row}] = true
		}
	}
	if rows < 30 || rows > 60 || len(wrong)*100 > rows*40 {
		t.Errorf("%d of %d rows are wrong", len(wrong), rows)
	}
	for _, topic := range []string{"contact", "pairing", "temperature", "exposure"} {
		if topics[topic] == 0 {
			t.Errorf("no mistake of topic %s", topic)
		}
	}
	if len(key.Near) < len(key.Mistakes)/2 {
		t.Errorf("%d mistakes, and only %d rows that look wrong and are right", len(key.Mistakes), len(key.Near))
	}
}
