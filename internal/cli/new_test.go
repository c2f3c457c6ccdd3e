package cli

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"abut/internal/document"
	"abut/internal/material"
	"abut/policies"
)

// run runs a command line in memory.
func run(args ...string) (code int, out, errs string) {
	var o, e bytes.Buffer
	code = Main(context.Background(), args, Streams{In: strings.NewReader(""), Out: &o, Err: &e})
	return code, o.String(), e.String()
}

// TestNewReadsBack wants a blank workbook to be read whole: every column known,
// every cell understood, every product known, and nothing found wrong.
func TestNewReadsBack(t *testing.T) {
	file := filepath.Join(t.TempDir(), "blank.xlsx")
	if code, _, errs := run("new", "--place", "Duluth, Minnesota", file); code != 0 {
		t.Fatal(errs)
	}
	code, out, errs := run("read", file)
	if code != 0 {
		t.Fatal(errs)
	}
	var doc document.Document
	if err := json.Unmarshal([]byte(out), &doc); err != nil {
		t.Fatal(err)
	}
	if doc.Reading.Cells == 0 || doc.Reading.Known != doc.Reading.Cells || len(doc.Reading.Unread) > 0 {
		t.Errorf("%d of %d cells understood, not %v", doc.Reading.Known, doc.Reading.Cells, doc.Reading.Unread)
	}
	for _, table := range doc.Reading.Tables {
		for _, c := range table.Columns {
			if c.Slot == "" || c.Confidence < 0.9 {
				t.Errorf("%s: column %q is taken for %q, %.0f %% sure", table.Sheet, c.Heading, c.Slot, 100*c.Confidence)
			}
		}
	}
	for _, p := range doc.Products {
		if p.Family == "" {
			t.Errorf("product %s %q is of no known family", p.Tag, p.Name)
		}
	}
	if len(doc.Lines) != 1 || len(doc.Products) == 0 || len(doc.Project.Limits) == 0 || len(doc.Project.Indoor) == 0 {
		t.Errorf("%d lines, %d products, %d limits, %d rooms", len(doc.Lines), len(doc.Products), len(doc.Project.Limits), len(doc.Project.Indoor))
	}
	if code, out, _ := run("check", "--fail-at", "warning", file); code != 0 {
		t.Errorf("the example line does not pass:\n%s", out)
	}
}

// TestNewPlace wants the place that was named to be the one that is read.
func TestNewPlace(t *testing.T) {
	file := filepath.Join(t.TempDir(), "blank.xlsx")
	run("new", "--place", "Duluth, Minnesota", file)
	_, out, _ := run("read", "--why", file)
	if !strings.Contains(out, "Place: Duluth") {
		t.Errorf("%.300s", out)
	}
}

// TestNewRefuses wants a file that is there to stay as it is.
func TestNewRefuses(t *testing.T) {
	file := filepath.Join(t.TempDir(), "mine.xlsx")
	if err := os.WriteFile(file, []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	for name, tt := range map[string]struct {
		args []string
		want string
	}{
		"there already": {[]string{"new", file}, "mine.xlsx: it is there already"},
		"ending":        {[]string{"new", "schedule.csv"}, "give it that ending"},
		"no name":       {[]string{"new"}, "new needs the name"},
		"no folder":     {[]string{"new", filepath.Join(file, "a.xlsx")}, "a.xlsx"},
	} {
		t.Run(name, func(t *testing.T) {
			code, out, errs := run(tt.args...)
			if code != 2 || out != "" || strings.Count(errs, "\n") != 1 || !strings.Contains(errs, tt.want) {
				t.Errorf("exit %d, %q, %q", code, out, errs)
			}
		})
	}
	if text, err := os.ReadFile(file); err != nil || string(text) != "mine" {
		t.Errorf("the file was touched: %q, %v", text, err)
	}
}

// TestNewSameBytes wants two runs to write the same workbook.
func TestNewSameBytes(t *testing.T) {
	folder := t.TempDir()
	var books [][]byte
	for _, name := range []string{"a.xlsx", "b.xlsx"} {
		run("new", filepath.Join(folder, name))
		book, err := os.ReadFile(filepath.Join(folder, name))
		if err != nil {
			t.Fatal(err)
		}
		books = append(books, book)
	}
	if !bytes.Equal(books[0], books[1]) {
		t.Error("two runs differ")
	}
}

// TestNewOffersKnownWords wants every word that a drop-down offers to be read
// as the family it stands for.
func TestNewOffersKnownWords(t *testing.T) {
	var data struct {
		Blank struct {
			Words struct {
				Lists map[string]struct {
					Offer map[string]string `json:"offer"`
				} `json:"lists"`
			} `json:"words"`
		} `json:"blank"`
	}
	raw, err := policies.FS.ReadFile("knowledge/blank.json")
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(raw, &data); err != nil {
		t.Fatal(err)
	}
	vocab, err := material.Load(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	if len(data.Blank.Words.Lists) == 0 {
		t.Fatal("no lists")
	}
	for list, l := range data.Blank.Words.Lists {
		for word, family := range l.Offer {
			found := vocab.Find(word)
			if family != "" && !slices.ContainsFunc(found, func(m material.Material) bool { return m.Family == family }) || family != "" && len(found) != 1 {
				t.Errorf("%s: %q is read as %v, not %s", list, word, found, family)
			}
		}
	}
}
