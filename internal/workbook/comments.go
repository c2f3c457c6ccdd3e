package workbook

import (
	"fmt"
	"strings"
)

// comments attaches the notes of a sheet to its cells; a note may stand where
// nothing else does.
func (r *sheetReader) comments(rels map[string]relation) error {
	added := map[int][]Cell{} // by row
	for _, rel := range rels {
		if rel.kind != "comments" {
			continue
		}
		if err := r.scanKept(rel.target, func(s *scanner) error { return r.commentList(s, added) }); err != nil {
			return err
		}
	}
	r.lay(added)
	return nil
}

func (r *sheetReader) commentList(s *scanner, added map[int][]Cell) error {
	if !s.child(0) {
		return nil
	}
	count := 0
	for s.child(1) {
		if string(s.name) != "commentList" {
			continue
		}
		for s.child(2) {
			if count++; count > r.lim.Comments {
				return tooMuch("comments", r.lim.Comments)
			}
			if err := r.comment(s, added); err != nil {
				return err
			}
		}
	}
	return nil
}

// comment reads the comment just started.
func (r *sheetReader) comment(s *scanner, added map[int][]Cell) error {
	ref, text := s.attrText("ref"), ""
	depth := s.depth
	for s.child(depth) {
		if string(s.name) == "text" {
			text, _ = readRich(s).split(false)
		}
	}
	if text = strings.TrimSpace(text); text == "" {
		return nil
	}
	if err := r.count(len(text)); err != nil {
		return err
	}
	row, col, ok := ParseRef([]byte(ref))
	if !ok {
		return refuse(fmt.Sprintf("a comment stands at %q, which is no cell", ref), saveAgain)
	}
	if i, ok := r.sheet.find(row); ok {
		if j, ok := findCell(r.sheet.Rows[i].Cells, col); ok {
			r.sheet.Rows[i].Cells[j].Comment = text
			return nil
		}
	}
	if err := r.admit(row, col); err != nil {
		return err
	}
	hidden := r.sheet.RowHidden(row) || r.sheet.ColHidden(col)
	added[row] = append(added[row], Cell{Row: row, Col: col, Hidden: hidden, Comment: text})
	return nil
}
