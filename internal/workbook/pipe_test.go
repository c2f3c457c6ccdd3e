//go:build unix

package workbook

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"
)

// TestPipe must end: to open a pipe without a writer waits for ever.
func TestPipe(t *testing.T) {
	dir := t.TempDir()
	pipe := filepath.Join(dir, "pipe.csv")
	if err := syscall.Mkfifo(pipe, 0o600); err != nil {
		t.Skip(err)
	}
	book, err := Open(pipe, DefaultLimits())
	refused(t, book, err, pipe+": it is a device or pipe")
	if _, err := Find([]string{dir}); err == nil || err.Error() != pipe+": it is a device or pipe in a folder that is searched; take it out, and name the file itself" {
		t.Error(err)
	}
	if _, err := Find([]string{pipe}); err == nil {
		t.Error("a pipe is found as a file")
	}
	if os.Getuid() == 0 {
		t.Skip("everything may be read by root")
	}
	locked := filepath.Join(dir, "locked.csv")
	if err := os.WriteFile(locked, []byte("a,b"), 0); err != nil {
		t.Fatal(err)
	}
	book, err = Open(locked, DefaultLimits())
	refused(t, book, err, locked+": it may not be read")
}
