package workbook

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// extensions are the endings of files that a folder is searched for.
func extensions() []string { return []string{".xlsx", ".xlsm", ".xltx", ".csv"} }

// Find gives the workbooks that paths stand for, sorted and each once: a file
// is taken as it is named, a folder is searched with all folders in it for
// .xlsx, .xlsm, .xltx and .csv. Lock files (~$...) and whatever begins with a
// dot are passed over. A link or a device is an error, since it could lead
// anywhere, and so is a folder without a workbook.
// A path that fails does not hide the others: the files found come with the
// joined *FileErrors of the rest.
func Find(paths []string) ([]string, error) {
	var files []string
	var failed []error
	for _, p := range paths {
		found, err := find(p)
		files, failed = append(files, found...), append(failed, err)
	}
	return distinct(files), errors.Join(failed...)
}

// find gives the workbooks of one path.
func find(path string) ([]string, error) {
	info, err := os.Lstat(path)
	if err != nil {
		return nil, locate(unreadable(err), path, "")
	}
	if !info.IsDir() {
		if err := regular(info); err != nil {
			return nil, locate(err, path, "")
		}
		return []string{filepath.Clean(path)}, nil
	}
	files, err := walk(path)
	if err == nil && len(files) == 0 {
		err = locate(refuse("there is no workbook in this folder", "name the folder that holds the .xlsx or .csv files"), path, "")
	}
	return files, err
}

// distinct sorts files and drops those that another way of writing names too.
func distinct(files []string) []string {
	slices.Sort(files)
	seen := map[string]bool{}
	return slices.DeleteFunc(files, func(f string) bool {
		key, err := filepath.Abs(f)
		if err != nil {
			key = f
		}
		again := seen[key]
		seen[key] = true
		return again
	})
}

// walk searches one folder, which may begin with a dot: who names it means it.
func walk(root string) ([]string, error) {
	var files []string
	err := filepath.WalkDir(filepath.Clean(root), func(p string, d fs.DirEntry, err error) error {
		clean := filepath.Clean(p)
		if err != nil {
			return locate(unreadable(err), clean, "")
		}
		name := d.Name()
		if hidden := strings.HasPrefix(name, ".") && clean != filepath.Clean(root); hidden && d.IsDir() {
			return fs.SkipDir
		} else if hidden || d.IsDir() || strings.HasPrefix(name, "~$") {
			return nil
		}
		if !slices.Contains(extensions(), strings.ToLower(filepath.Ext(name))) {
			return nil
		}
		if !d.Type().IsRegular() {
			what := "a device or pipe"
			if d.Type()&fs.ModeSymlink != 0 {
				what = "a link"
			}
			return locate(refuse(fmt.Sprintf("it is %s in a folder that is searched", what), "take it out, and name the file itself"), clean, "")
		}
		files = append(files, clean)
		return nil
	})
	return files, err
}
