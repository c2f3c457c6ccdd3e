package main

import (
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// TestLicenses holds the list in DEVELOPERS.md against the license files of the
// modules that the program is built from. UPDATE=1 writes it anew.
func TestLicenses(t *testing.T) {
	out, err := exec.Command("go", "list", "-deps", "-f", "{{with .Module}}{{if not .Main}}{{.Path}}\t{{.Dir}}{{end}}{{end}}", ".").Output()
	if err != nil {
		t.Fatalf("go list: %v", err)
	}
	modules := map[string][]string{} // by license
	seen := map[string]bool{}
	for line := range strings.Lines(string(out)) {
		module, dir, ok := strings.Cut(strings.TrimSpace(line), "\t")
		if !ok || seen[module] {
			continue
		}
		seen[module] = true
		license := licenseIn(t, dir)
		modules[license] = append(modules[license], "`"+module+"`")
	}
	var table strings.Builder
	table.WriteString("| license | modules |\n|---|---|\n")
	for _, license := range slices.Sorted(maps.Keys(modules)) {
		slices.Sort(modules[license])
		fmt.Fprintf(&table, "| %s | %s |\n", license, strings.Join(modules[license], ", "))
	}
	const begin, end = "<!-- licenses -->\n", "<!-- end -->"
	file := filepath.Join("..", "..", "DEVELOPERS.md")
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	before, rest, ok := strings.Cut(string(text), begin)
	listed, after, ended := strings.Cut(rest, end)
	if !ok || !ended {
		t.Fatal("DEVELOPERS.md has no list of licenses")
	}
	if os.Getenv("UPDATE") != "" {
		if err := os.WriteFile(file, []byte(before+begin+table.String()+end+after), 0o644); err != nil {
			t.Fatal(err)
		}
	} else if listed != table.String() {
		t.Errorf("DEVELOPERS.md lists other licenses; UPDATE=1 writes them anew:\n%s", table.String())
	}
}

// licenseIn tells the license of a module by words that no other has.
func licenseIn(t *testing.T, dir string) string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(dir, "[Ll][Ii][Cc][Ee][Nn][CcSs][Ee]*"))
	if err != nil || len(files) == 0 {
		t.Fatalf("%s has no license: %v", dir, err)
	}
	raw, err := os.ReadFile(files[0])
	if err != nil {
		t.Fatal(err)
	}
	text := strings.ToLower(strings.Join(strings.Fields(string(raw)), " "))
	for _, known := range []struct{ words, license string }{
		{"apache license", "Apache-2.0"},
		{"permission is hereby granted, free of charge", "MIT"},
		{"neither the name", "BSD-3-Clause"},
		{"redistribution and use in source and binary forms", "BSD-2-Clause"},
	} {
		if strings.Contains(text, known.words) {
			return known.license
		}
	}
	t.Fatalf("%s has a license that is not known here; read it before the module is used", files[0])
	return ""
}
