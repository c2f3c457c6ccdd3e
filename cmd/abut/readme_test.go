package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// TestReadme holds the README against the tool: what it shows of the demo is
// what the demo prints, and every command stands in its table.
func TestReadme(t *testing.T) {
	text, err := os.ReadFile(filepath.Join("..", "..", "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	readme := string(text)
	t.Run("demo", func(t *testing.T) {
		_, shown, ok := strings.Cut(readme, "<!-- demo -->\n```\n")
		if !ok {
			t.Fatal("no block of the demo")
		}
		shown, _, _ = strings.Cut(shown, "```")
		t.Chdir(filepath.Join(testdata, "demo"))
		_, out, _ := abut("check", "tern-landing.xlsx")
		rest := string(out)
		for part := range strings.SplitSeq(shown, "...\n") {
			_, after, ok := strings.Cut(rest, part)
			if !ok {
				t.Errorf("the demo does not print, in this order:\n%s", part)
			}
			rest = after
		}
	})
	t.Run("commands", func(t *testing.T) {
		_, help, _ := abut("--help")
		names := regexp.MustCompile(`(?m)^  ([a-z]+) +[A-Z]`).FindAllStringSubmatch(string(help), -1)
		if len(names) < 5 {
			t.Fatalf("%d commands in the help", len(names))
		}
		for _, name := range names {
			if name[1] != "help" && name[1] != "completion" && !strings.Contains(readme, "| `abut "+name[1]) {
				t.Errorf("the table of commands lacks %s", name[1])
			}
		}
	})
}
