package main

import (
	"path/filepath"
	"strings"
	"testing"
)

// TestMarkedAgain: a marked copy is found to be as its original, since what an
// earlier run said is not read as what the author says.
func TestMarkedAgain(t *testing.T) {
	for _, file := range books(t) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			copied := filepath.Join(t.TempDir(), strings.TrimSuffix(filepath.Base(file), filepath.Ext(file))+".xlsx")
			if code, _, errs := abut("check", file, "-o", copied); code > 1 {
				t.Fatalf("exit %d: %s", code, errs)
			}
			before, after := check(t, file).Findings, check(t, copied).Findings
			if len(before) != len(after) {
				t.Fatalf("%d findings, %d in the marked copy", len(before), len(after))
			}
			for i := range before {
				if before[i].Rule != after[i].Rule || before[i].Row != after[i].Row || before[i].Message != after[i].Message {
					t.Errorf("row %d: %s: %s\nin the marked copy row %d: %s: %s",
						before[i].Row, before[i].Rule, before[i].Message, after[i].Row, after[i].Rule, after[i].Message)
				}
			}
		})
	}
}
