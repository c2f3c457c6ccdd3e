package cli

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
)

// writeFile writes a file whole or not at all: into a file beside it, which
// then takes its name. What was there before stays until then.
func writeFile(path string, write func(io.Writer) error) error {
	return place(path, write, os.Rename)
}

// createFile writes a new file whole or not at all, and never over one that is
// there.
func createFile(path string, write func(io.Writer) error) error {
	err := place(path, write, linkNew)
	if errors.Is(err, fs.ErrExist) {
		return fmt.Errorf("%s: it is there already and is left as it is; choose another name", path)
	}
	return err
}

// linkNew gives a file a second name that must be new; where the disk knows no
// second names, it is renamed if the name is free.
func linkNew(from, to string) error {
	err := os.Link(from, to)
	if err == nil || errors.Is(err, fs.ErrExist) {
		return err
	}
	if _, taken := os.Lstat(to); taken == nil {
		return fs.ErrExist
	}
	return os.Rename(from, to)
}

// place writes beside the path and moves what is written to it. Whatever goes
// wrong, nothing of it stays behind.
func place(path string, write func(io.Writer) error, move func(from, to string) error) error {
	err := placed(filepath.Dir(path), write, func(tmp string) error { return move(tmp, path) })
	if err != nil {
		return fmt.Errorf("write %s: %w", path, err)
	}
	return nil
}

func placed(dir string, write func(io.Writer) error, move func(tmp string) error) error {
	temporary := filepath.Join(dir, fmt.Sprintf(".abut-%016x", rand.Uint64()))
	tmp, err := unnamed(dir)
	named := err != nil
	if named {
		tmp, err = os.OpenFile(temporary, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
	}
	if err != nil {
		return err
	}
	defer os.Remove(temporary) // gone already where it was renamed
	if err := errors.Join(write(tmp), tmp.Chmod(0o644), tmp.Sync()); err != nil {
		return errors.Join(err, tmp.Close())
	}
	if !named {
		err = name(tmp, temporary)
	}
	if err := errors.Join(err, tmp.Close()); err != nil {
		return err
	}
	return move(temporary)
}

// writable refuses files to write that are there and are no plain file, are
// among those that are read, or are named twice.
func writable(outputs, inputs []string) error {
	var read []fs.FileInfo
	for _, in := range inputs {
		if info, err := os.Stat(in); err == nil { // what cannot be read is told elsewhere
			read = append(read, info)
		}
	}
	seen := map[string]bool{}
	for _, out := range outputs {
		key, err := filepath.Abs(out)
		if err != nil {
			return fmt.Errorf("-o %s: %w", out, err)
		}
		if seen[key] {
			return fmt.Errorf("-o %s: it is named twice", out)
		}
		seen[key] = true
		info, err := os.Lstat(out)
		if err != nil {
			continue // most likely not there yet
		}
		if !info.Mode().IsRegular() {
			return fmt.Errorf("-o %s: it is a link, folder or device, not a file; choose another name", out)
		}
		for _, in := range read {
			if os.SameFile(info, in) {
				return fmt.Errorf("-o %s: it is read in this run and is never written over; choose another name", out)
			}
		}
	}
	return nil
}
