package workbook

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
)

// Open reads the workbook at path whole. Every error is a *FileError.
func Open(path string, lim Limits) (*Book, error) {
	book, err := open(path, lim)
	if err != nil {
		return nil, locate(err, path, "")
	}
	return book, nil
}

// Read reads a workbook from memory; name tells csv from what is no table and
// stands in errors. Every error is a *FileError.
func Read(name string, data []byte, lim Limits) (*Book, error) {
	book, err := read(name, bytes.NewReader(data), int64(len(data)), lim)
	if err != nil {
		return nil, locate(err, name, "")
	}
	return book, nil
}

func open(path string, lim Limits) (*Book, error) {
	// Before opening: to open a pipe would wait for its writer.
	named, err := os.Lstat(path)
	if err != nil {
		return nil, unreadable(err)
	}
	if err := regular(named); err != nil {
		return nil, err
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, unreadable(err)
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return nil, unreadable(err)
	}
	if !os.SameFile(named, info) {
		return nil, refuse("it was replaced while it was opened", "try again when nobody is saving it")
	}
	return read(path, f, info.Size(), lim)
}

// regular refuses what is no file of its own: a link could lead anywhere.
func regular(info fs.FileInfo) error {
	switch {
	case info.Mode()&fs.ModeSymlink != 0:
		return refuse("it is a link", "name the file or folder that it leads to")
	case info.IsDir():
		return refuse("it is a folder", "name a workbook in it")
	case !info.Mode().IsRegular():
		return refuse("it is a device or pipe, not a file", "name a workbook")
	}
	return nil
}

func unreadable(err error) *FileError {
	fe := &FileError{Problem: "it cannot be read", Do: "check that the disk or network share is there", cause: err}
	var pe *fs.PathError
	switch {
	case errors.Is(err, fs.ErrNotExist):
		fe.Problem, fe.Do = "there is no such file", "check its name and folder"
	case errors.Is(err, fs.ErrPermission):
		fe.Problem, fe.Do = "it may not be read", "ask for the right to read it"
	case errors.As(err, &pe):
		fe.Problem += fmt.Sprintf(" (%v)", pe.Err)
	}
	return fe
}

func read(name string, r io.ReaderAt, size int64, lim Limits) (book *Book, err error) {
	// excelize and archive/zip are written for well-formed files and index into
	// what they read; a crafted file must end in an error line all the same.
	defer func() {
		if p := recover(); p != nil {
			book, err = nil, refuse(fmt.Sprintf("it is damaged in a way that stopped the reader (%v)", p), saveAgain)
		}
	}()
	if size == 0 {
		return nil, refuse("it is empty", "save the workbook again")
	}
	if size > lim.FileBytes {
		return nil, tooLarge("", lim.FileBytes)
	}
	head := make([]byte, min(size, 4096))
	if _, err := r.ReadAt(head, 0); err != nil && err != io.EOF {
		return nil, unreadable(err)
	}
	if bytes.HasPrefix(head, []byte(oleMagic)) {
		data, err := readAll(r, size)
		if err != nil {
			return nil, err
		}
		return nil, sniffOLE(data)
	}
	kind, err := sniff(name, head)
	if err != nil {
		return nil, err
	}
	if kind == zipForm {
		book, err = readXLSX(r, size, lim)
	} else {
		book, err = readCSV(r, size, lim)
	}
	if err == nil {
		book.Path = name
	}
	return book, err
}

func readAll(r io.ReaderAt, size int64) ([]byte, error) {
	data, err := io.ReadAll(io.NewSectionReader(r, 0, size))
	if err != nil {
		return nil, unreadable(err)
	}
	if int64(len(data)) < size {
		return nil, refuse("it became shorter while it was read", "try again when nobody is saving it")
	}
	return data, nil
}
