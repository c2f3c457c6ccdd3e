package compare

import (
	"fmt"
	"os"
	"path/filepath"

	"abut/internal/workbook"
)

// FilePair is a specified workbook and the submitted one held against it.
type FilePair struct{ Specified, Submitted string }

// Files pairs two workbooks, or the workbooks of two folders by their names
// below the folder. Lone lists those without a partner.
func Files(specified, submitted string) (pairs []FilePair, lone []string, err error) {
	folder, err := isFolder(specified)
	if err != nil {
		return nil, nil, err
	}
	other, err := isFolder(submitted)
	if err != nil {
		return nil, nil, err
	}
	if folder != other {
		return nil, nil, fmt.Errorf("%s and %s: give two workbooks or two folders, not one of each", specified, submitted)
	}
	if !folder {
		return []FilePair{{specified, submitted}}, nil, nil
	}
	return pairFolders(specified, submitted)
}

func pairFolders(specified, submitted string) (pairs []FilePair, lone []string, err error) {
	was, err := workbook.Find([]string{specified})
	if err != nil {
		return nil, nil, err
	}
	now, err := workbook.Find([]string{submitted})
	if err != nil {
		return nil, nil, err
	}
	byName := map[string]string{}
	for _, f := range was {
		byName[below(specified, f)] = f
	}
	for _, f := range now {
		name := below(submitted, f)
		if old, ok := byName[name]; ok {
			pairs = append(pairs, FilePair{old, f})
			delete(byName, name)
			continue
		}
		lone = append(lone, f)
	}
	for _, f := range was {
		if _, left := byName[below(specified, f)]; left {
			lone = append(lone, f)
		}
	}
	return pairs, lone, nil
}

func isFolder(path string) (bool, error) {
	info, err := os.Stat(path)
	if err != nil {
		return false, fmt.Errorf("%s: cannot be read: %w", path, err)
	}
	return info.IsDir(), nil
}

func below(folder, file string) string {
	name, err := filepath.Rel(folder, file)
	if err != nil {
		return file
	}
	return name
}
