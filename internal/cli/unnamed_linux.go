package cli

import (
	"errors"
	"fmt"
	"os"

	"golang.org/x/sys/unix"
)

// unnamed opens a new file in a folder that has no name until it is whole, so
// that nothing is left of it even by a run that is killed. It fails where the
// disk knows no such files.
func unnamed(dir string) (*os.File, error) {
	fd, err := unix.Open(dir, unix.O_TMPFILE|unix.O_RDWR|unix.O_CLOEXEC, 0o600)
	if err != nil {
		return nil, err
	}
	f := os.NewFile(uintptr(fd), dir)
	if _, err := os.Stat(descriptor(f)); err != nil {
		return nil, errors.Join(err, f.Close())
	}
	return f, nil
}

// name gives it one, which must be new.
func name(f *os.File, path string) error {
	return unix.Linkat(unix.AT_FDCWD, descriptor(f), unix.AT_FDCWD, path, unix.AT_SYMLINK_FOLLOW)
}

func descriptor(f *os.File) string { return fmt.Sprintf("/proc/self/fd/%d", f.Fd()) }
