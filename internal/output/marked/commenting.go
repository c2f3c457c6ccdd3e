package marked

import (
	"fmt"
	"path"
	"slices"
	"strings"
)

// comment writes the comments of a sheet and the boxes they are shown in.
func (m *marking) comment(s sheetEntry, l *layout, spots []*spot, sheet *edits) error {
	rels, err := m.relations(s.part)
	if err != nil {
		return err
	}
	spots, err = m.withoutTalk(s, rels, spots)
	if err != nil || len(spots) == 0 {
		return err
	}
	part, err := m.hung(s, rels, "comments", "", strings.Replace(bareComments, mainSpace, m.mainSpace(), 1), formatType+"comments+xml")
	if err != nil {
		return err
	}
	data, err := m.read(part)
	if err != nil {
		return err
	}
	var fresh []*spot
	err = m.inside("read", part, func() error {
		c, err := readComments(data)
		if err == nil {
			data, fresh = c.add(spots)
		}
		return err
	})
	if err != nil {
		return err
	}
	m.put(part, data)
	if len(fresh) == 0 {
		return nil
	}
	return m.drawn(s, rels, l, fresh, sheet)
}

// drawn adds the boxes of new comments.
func (m *marking) drawn(s sheetEntry, rels map[string]relation, l *layout, fresh []*spot, sheet *edits) error {
	before := l.legacy
	part, err := m.hung(s, rels, "vmlDrawing", before, bareDrawing, "application/vnd.openxmlformats-officedocument.vmlDrawing")
	if err != nil {
		return err
	}
	data, err := m.read(part)
	if err != nil {
		return err
	}
	err = m.inside("read", part, func() error {
		data, err = draw(data, l, fresh)
		return err
	})
	if err != nil {
		return err
	}
	m.put(part, data)
	if before != "" {
		return nil
	}
	rels, err = m.relations(s.part)
	for _, r := range rels {
		if r.target == part {
			sheet.insert(l.slots["legacyDrawing"], fmt.Sprintf(`<%s xmlns:r="%s" r:id="%s"/>`, l.root.tagged("legacyDrawing"), m.space, r.id))
		}
	}
	return err
}

// hung gives the part of a kind that hangs on a sheet, by the id of its
// relation where that matters, or hangs a bare one on it.
func (m *marking) hung(s sheetEntry, rels map[string]relation, kind, id, bare, contentType string) (string, error) {
	for _, r := range rels {
		// A sheet may have two drawings of this kind; the other is of its page header.
		if r.kind == kind && m.has(r.target) && (r.id == id || kind == "comments") {
			return r.target, nil
		}
	}
	if id != "" {
		return "", fmt.Errorf("its drawing of comments is missing; open it in a spreadsheet program and save it again")
	}
	ext := map[string]string{"comments": ".xml", "vmlDrawing": ".vml"}[kind]
	part := m.free(path.Dir(path.Dir(s.part))+"/findings", kind, ext)
	m.put(part, []byte(bare))
	if err := m.declare(part, contentType); err != nil {
		return "", err
	}
	_, err := m.relate(s.part, kind, part)
	return part, err
}

// withoutTalk leaves out cells with a conversation: programs that know them
// show nothing else, so the Findings sheet says that it alone tells.
func (m *marking) withoutTalk(s sheetEntry, rels map[string]relation, spots []*spot) ([]*spot, error) {
	talk := map[string]bool{}
	for _, r := range rels {
		if r.kind != "threadedComment" || !m.has(r.target) {
			continue
		}
		data, err := m.read(r.target)
		if err != nil {
			return nil, err
		}
		err = walk(data, func(n node) error {
			if n.start && n.name == "threadedComment" {
				talk[n.value("ref")] = true
			}
			return nil
		})
		if err != nil {
			return nil, fmt.Errorf("part %s: %w", r.target, err)
		}
	}
	var out []*spot
	for _, one := range spots {
		if !talk[ref(one.row, one.col)] {
			out = append(out, one)
			continue
		}
		m.list.asides = append(m.list.asides, fmt.Sprintf(
			"%s of sheet %s holds a conversation, which is left as it is; what was found there stands on this sheet only.", ref(one.row, one.col), s.name))
	}
	return slices.Clip(out), nil
}
