//go:build linux && !race

package main

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"strings"
	"syscall"
	"testing"
)

// mostMemory is what the README promises for any input under the limits.
const mostMemory = 1 << 30

// TestMemory runs the tool on what fills the memory, and wants one line and 2,
// or a report, and a peak below the promise.
func TestMemory(t *testing.T) {
	if testing.Short() {
		t.Skip("filling the memory is left out of short tests")
	}
	check := []string{"check", "--format", "json"}
	for name, tc := range map[string]struct {
		args []string
		make func() []byte
	}{
		"long.csv":    {check, func() []byte { return longSchedule(30_000) }},
		"parts.xlsx":  {check, func() []byte { return manyParts(t, 400_000) }},
		"cells.xlsx":  {check, func() []byte { return manyCells(t, 90_000, 10) }},
		"hidden.xlsx": {check, func() []byte { return hiddenRows(t, 40) }},
		"merged.xlsx": {check, func() []byte { return mergedRanges(t, 200, 50_000) }},
		"wide.csv":    {[]string{"read"}, func() []byte { return wideSchedule(20_000) }},
	} {
		t.Run(name, func(t *testing.T) {
			file := filepath.Join(t.TempDir(), name)
			if err := os.WriteFile(file, tc.make(), 0o600); err != nil {
				t.Fatal(err)
			}
			debug.FreeOSMemory() // a new process counts that of its parent until it begins
			cmd, _ := process(t, append(tc.args, file)...)
			err := cmd.Run()
			errs := cmd.Stderr.(*bytes.Buffer)
			var exit *exec.ExitError
			if errors.As(err, &exit) && exit.ExitCode() == 2 {
				if n := strings.Count(errs.String(), "\n"); n != 1 || !strings.Contains(errs.String(), name+": ") {
					t.Errorf("%d lines: %s", n, errs.String())
				}
			} else if err != nil && (exit == nil || exit.ExitCode() != 1) {
				t.Fatalf("%v: %s", err, errs.String())
			}
			usage, ok := cmd.ProcessState.SysUsage().(*syscall.Rusage)
			if peak := usage.Maxrss << 10; !ok || peak > mostMemory {
				t.Errorf("it took %d MB", peak>>20)
			} else {
				t.Logf("%d MB; %s", peak>>20, errs.String())
			}
		})
	}
}

// wideSchedule has rows that name many materials, so that the document is long.
func wideSchedule(rows int) []byte {
	var b bytes.Buffer
	b.WriteString("Item,Wall,Membrane,Substrate,Primer,Sealant,Touches,Left,Right,Top,Behind,Edge,Installed,Covered,Remarks\n")
	for i := range rows {
		fmt.Fprintf(&b, "%d,W%d,Self-adhered SBS-modified asphalt sheet,CMU,Rubber primer,Silicone sealant,XPS board,EPDM gasket,Steel angle,"+
			"PVC waterstop,Gypsum sheathing,Bead of silicone sealant,2026-09-01,2026-10-01,Butyl tape at laps\n", i, i/6)
	}
	return b.Bytes()
}

func manyParts(t *testing.T, n int) []byte {
	return zipped(t, func(w *zip.Writer) error {
		for i := range n {
			if _, err := w.CreateRaw(&zip.FileHeader{Name: fmt.Sprint(i)}); err != nil {
				return err
			}
		}
		return nil
	})
}

// sheets makes a workbook whose sheets all hold the same.
func sheets(t *testing.T, n int, inside string) []byte {
	const types, rel = "http://schemas.openxmlformats.org/officeDocument/2006/relationships", "<Relationship Id=%q Type=%q Target=%q/>"
	var list, rels strings.Builder
	for i := range n {
		fmt.Fprintf(&list, `<sheet name="S%d" sheetId="%d" r:id="r%[1]d"/>`, i, i+1)
		fmt.Fprintf(&rels, rel, fmt.Sprint("r", i), types+"/worksheet", fmt.Sprintf("s%d.xml", i))
	}
	parts := map[string]string{
		"_rels/.rels":                "<Relationships>" + fmt.Sprintf(rel, "r", types+"/officeDocument", "xl/workbook.xml") + "</Relationships>",
		"xl/workbook.xml":            "<workbook><sheets>" + list.String() + "</sheets></workbook>",
		"xl/_rels/workbook.xml.rels": "<Relationships>" + rels.String() + "</Relationships>",
	}
	for i := range n {
		parts[fmt.Sprintf("xl/s%d.xml", i)] = "<worksheet><sheetData>" + inside + "</sheetData></worksheet>"
	}
	return packed(t, parts)
}

func manyCells(t *testing.T, rows, columns int) []byte {
	var b strings.Builder
	for row := range rows {
		b.WriteString("<row>")
		for column := range columns {
			fmt.Fprintf(&b, `<c t="inlineStr"><is><t>sheet %d by %d</t></is></c>`, row, column)
		}
		b.WriteString("</row>")
	}
	return sheets(t, 1, b.String())
}

// hiddenRows hides every other row of many sheets.
func hiddenRows(t *testing.T, n int) []byte {
	var b strings.Builder
	for row := 1; row < 500_000; row += 2 {
		fmt.Fprintf(&b, `<row r="%d" hidden="1"/>`, row)
	}
	return sheets(t, n, b.String())
}

// mergedRanges merges as much as it may on each of many sheets.
func mergedRanges(t *testing.T, n, ranges int) []byte {
	var b strings.Builder
	b.WriteString("<row><c><v>1</v></c></row></sheetData><mergeCells>")
	for row := range ranges {
		fmt.Fprintf(&b, `<mergeCell ref="A%d:B%[1]d"/>`, row+2)
	}
	b.WriteString("</mergeCells><sheetData>")
	return sheets(t, n, b.String())
}
