package output

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"regexp"
	"strings"

	"abut/internal/engine"
)

// fingerprints tell findings of two runs to be the same one though rows were
// added above: they are made of the rule, file, sheet, mark, columns and the
// words, without row numbers. Equal ones are numbered in order.
func fingerprints(findings []engine.Finding) []string {
	address := regexp.MustCompile(`\b([A-Z]{1,3})[1-9][0-9]*\b|(?i)(\brows?) [0-9]+`)
	seen := map[string]int{}
	marks := make([]string, len(findings))
	for i, f := range findings {
		parts := []string{f.Rule, f.File, f.Sheet, f.Mark, address.ReplaceAllString(f.Message, "$1$2")}
		for _, cell := range f.Cells {
			parts = append(parts, strings.TrimRight(cell, "0123456789"))
		}
		sum := sha256.Sum256([]byte(strings.Join(parts, "\x00")))
		mark := hex.EncodeToString(sum[:16])
		seen[mark]++
		marks[i] = fmt.Sprintf("%s:%d", mark, seen[mark])
	}
	return marks
}
