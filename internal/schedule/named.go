package schedule

import (
	"fmt"
	"maps"
	"path/filepath"
	"slices"
	"strings"
)

// named gives the slot that the settings name for a heading.
func (r *reader) named(heading string) (string, bool) {
	for h, slot := range r.set.Columns {
		if strings.EqualFold(strings.Join(strings.Fields(h), " "), strings.Join(strings.Fields(heading), " ")) {
			return slot, true
		}
	}
	return "", false
}

// columnsNamed fails where the settings name a heading that no table has, or a
// slot that does not exist; the message lists what there is.
func (r *reader) columnsNamed(path string, all []*table) error {
	found := map[string]bool{}
	for _, t := range all {
		for _, c := range t.cols {
			found[strings.ToLower(c.Heading)] = true
		}
	}
	for _, h := range slices.Sorted(maps.Keys(r.set.Columns)) {
		if slot := r.set.Columns[h]; r.head.bySlot[slot] == nil {
			return fmt.Errorf("settings: columns: %q holds %q, which is none of: %s", h, slot, strings.Join(slices.Sorted(maps.Keys(r.head.bySlot)), ", "))
		}
		if !found[strings.ToLower(strings.Join(strings.Fields(h), " "))] {
			return fmt.Errorf("%s: settings: columns: no heading %q; the headings found are: %s", path, h, strings.Join(headingsFound(all), " | "))
		}
	}
	return nil
}

func headingsFound(all []*table) []string {
	var out []string
	for _, t := range all {
		for _, c := range t.cols {
			if c.Heading != "" && !slices.Contains(out, c.Heading) {
				out = append(out, c.Heading)
			}
		}
	}
	return out
}

// productBooks finds the product tables of the workbooks beside this one;
// their sheets are called by file and sheet.
func (r *reader) productBooks() ([]*table, error) {
	var out []*table
	for _, b := range r.set.Products {
		own := *b // the same book serves other workbooks too
		own.Sheets = slices.Clone(b.Sheets)
		for i := range own.Sheets {
			own.Sheets[i].Name = strings.TrimSuffix(filepath.Base(b.Path)+": "+b.Sheets[i].Name, ": ")
		}
		found, err := r.tables(&own)
		if err != nil {
			return nil, err
		}
		for _, t := range found {
			if t.kind == kindProducts {
				out = append(out, t)
			}
		}
	}
	return out, nil
}
