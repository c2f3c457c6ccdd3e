package workbook

import (
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"
)

// TestFilesOfModules reads every workbook and text table that the modules at
// hand ship in their own tests, broken ones among them.
func TestFilesOfModules(t *testing.T) {
	out, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", "all").Output()
	if err != nil {
		t.Skipf("the modules cannot be listed: %v", err)
	}
	tried := 0
	for _, dir := range strings.Fields(string(out)) {
		err := filepath.WalkDir(dir, func(path string, entry fs.DirEntry, err error) error {
			ending := strings.ToLower(filepath.Ext(path))
			if err != nil || !entry.Type().IsRegular() || !slices.Contains([]string{".xlsx", ".xlsm", ".xltx", ".xltm", ".csv"}, ending) {
				return err
			}
			data, err := os.ReadFile(path)
			if err != nil {
				return err
			}
			tried++
			start := time.Now()
			checkRead(t, path, data, DefaultLimits())
			if took := time.Since(start); took > 10*time.Second {
				t.Errorf("%s took %v", path, took)
			}
			return nil
		})
		if err != nil {
			t.Error(err)
		}
	}
	if tried < 5 {
		t.Errorf("%d files: the modules are not there", tried)
	}
	t.Logf("%d files", tried)
}
