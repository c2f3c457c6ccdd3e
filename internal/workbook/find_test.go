package workbook

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// tree makes empty files under a new folder and gives the folder.
func tree(t *testing.T, names ...string) string {
	t.Helper()
	root := t.TempDir()
	for _, name := range names {
		path := filepath.Join(root, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, nil, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	return root
}

func TestFind(t *testing.T) {
	root := tree(t, "b.xlsx", "a.CSV", "sub/deep/c.xlsm", "sub/d.xltx", "sub/~$d.xlsx", ".git/e.csv", ".f.csv", "notes.txt", "old.xls", "named.dat")
	join := func(name string) string { return filepath.Join(root, filepath.FromSlash(name)) }
	tests := []struct{ name, paths, want string }{
		{"folder", ".", "a.CSV b.xlsx sub/d.xltx sub/deep/c.xlsm"},
		{"file of any name", "named.dat", "named.dat"},
		{"each once", "b.xlsx . sub b.xlsx sub/../b.xlsx", "a.CSV b.xlsx sub/d.xltx sub/deep/c.xlsm"},
		{"a named dot folder", ".git", ".git/e.csv"},
		{"a named lock file", "sub/~$d.xlsx", "sub/~$d.xlsx"},
		{"nothing named", "", ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var paths, want []string
			for _, p := range strings.Fields(tt.paths) {
				paths = append(paths, root+"/"+p)
			}
			for _, p := range strings.Fields(tt.want) {
				want = append(want, join(p))
			}
			got, err := Find(paths)
			if err != nil || !slices.Equal(got, want) {
				t.Errorf("got %q, %v; want %q", got, err, want)
			}
		})
	}
}

func TestFindHere(t *testing.T) {
	t.Chdir(tree(t, "b.csv", "sub/a.csv"))
	abs, err := filepath.Abs("b.csv")
	if err != nil {
		t.Fatal(err)
	}
	got, err := Find([]string{".", "./b.csv", abs})
	if err != nil || len(got) != 2 || !slices.Contains(got, filepath.FromSlash("sub/a.csv")) {
		t.Errorf("%q, %v", got, err)
	}
}

func TestFindRefuses(t *testing.T) {
	root := tree(t, "real/a.csv")
	missing := filepath.Join(root, "none")
	if got, err := Find([]string{missing, root}); err == nil || len(got) != 1 {
		t.Errorf("a missing path hides the others: %q, %v", got, err)
	}
	bare := tree(t, "notes.txt")
	if _, err := Find([]string{bare}); err == nil || !strings.HasPrefix(err.Error(), bare+": there is no workbook in this folder; ") {
		t.Error(err)
	}
	if _, err := Find([]string{missing}); err == nil || !strings.HasPrefix(err.Error(), missing+": there is no such file; ") {
		t.Error(err)
	}
	link := filepath.Join(root, "real", "link.csv")
	if err := os.Symlink("a.csv", link); err != nil {
		t.Skip(err)
	}
	if _, err := Find([]string{root}); err == nil || err.Error() != link+": it is a link in a folder that is searched; take it out, and name the file itself" {
		t.Error(err)
	}
	isLink := ": it is a link; name the file or folder that it leads to"
	if got, err := Find([]string{link}); err == nil || err.Error() != link+isLink {
		t.Errorf("a link that is named: %q, %v", got, err)
	}
	book, err := Open(link, DefaultLimits())
	refused(t, book, err, link+isLink[:len(": it is a link")])
	if err := os.Remove(link); err != nil {
		t.Fatal(err)
	}
	other := filepath.Join(root, "other")
	if err := os.Symlink("real", other); err != nil {
		t.Fatal(err)
	}
	if got, err := Find([]string{other}); err == nil || err.Error() != other+isLink {
		t.Errorf("a folder named by a link: %q, %v", got, err)
	}
	if got, err := Find([]string{root}); err != nil || len(got) != 1 {
		t.Errorf("a link to a folder is followed: %q, %v", got, err)
	}
}
