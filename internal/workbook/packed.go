package workbook

import (
	"archive/zip"
	"fmt"
	"io"
	"path"
	"strings"
)

// packed is the zip archive of a workbook: its parts by name, read one by one
// and counted against the limits.
type packed struct {
	lim      Limits
	parts    map[string]*zip.File // by lower-case name: writers differ
	unpacked int64                // bytes handed out so far
}

func openPacked(r io.ReaderAt, size int64, lim Limits) (*packed, error) {
	zr, err := zip.NewReader(r, size)
	if err != nil {
		return nil, &FileError{Problem: "it is cut short or damaged", Do: "copy or download it again", cause: err}
	}
	if len(zr.File) > lim.Parts {
		return nil, tooMuch("parts", lim.Parts)
	}
	p := &packed{lim: lim, parts: make(map[string]*zip.File, len(zr.File))}
	for _, f := range zr.File {
		key := partKey(f.Name)
		if _, twice := p.parts[key]; twice {
			return nil, refuse(fmt.Sprintf("it holds the part %s twice", key), saveAgain)
		}
		p.parts[key] = f
	}
	return p, nil
}

func partKey(name string) string {
	return strings.ToLower(strings.TrimPrefix(strings.ReplaceAll(name, "\\", "/"), "/"))
}

func (p *packed) has(name string) bool { return p.parts[partKey(name)] != nil }

// open gives a part as a stream that fails at its end if the archive is
// damaged; the limits are judged first, by the sizes the archive states, which
// the stream then holds it to.
func (p *packed) open(name string) (io.ReadCloser, error) {
	f := p.parts[partKey(name)]
	if f == nil {
		return nil, refuse(fmt.Sprintf("its part %s is missing", name), saveAgain)
	}
	if f.Flags&1 != 0 {
		return nil, refuse("it is protected by a password", "take the password off and save it again")
	}
	size, packedSize := f.UncompressedSize64, max(f.CompressedSize64, 1)
	if size > uint64(p.lim.UnpackedBytes-p.unpacked) {
		return nil, tooLarge(" when unpacked", p.lim.UnpackedBytes)
	}
	if size > uint64(p.lim.RatioFrom) && size/packedSize > uint64(p.lim.Ratio) {
		return nil, refuse(fmt.Sprintf("its part %s unpacks to %d times its size", name, size/packedSize),
			"check where it comes from; "+saveAgain)
	}
	p.unpacked += int64(size)
	rc, err := f.Open()
	if err != nil {
		return nil, damaged(name, err)
	}
	return rc, nil
}

// scanKept scans a part most of which is kept in memory.
func (p *packed) scanKept(name string, read func(*scanner) error) error {
	if f := p.parts[partKey(name)]; f != nil && f.UncompressedSize64 > uint64(p.lim.PartBytes) {
		return tooLarge(" in its part "+name, p.lim.PartBytes)
	}
	return p.scan(name, read)
}

// scan reads a part as XML to its end with the given function.
func (p *packed) scan(name string, read func(*scanner) error) error {
	rc, err := p.open(name)
	if err != nil {
		return err
	}
	defer rc.Close()
	s, err := newScanner(rc, p.lim)
	if err != nil {
		return damaged(name, err)
	}
	if err := read(s); err != nil {
		return err
	}
	for s.next() { // to the end: only there does the archive's checksum speak
	}
	if s.err != nil {
		return damaged(name, s.err)
	}
	return nil
}

// relation is what a part says of another it refers to.
type relation struct{ kind, target string } // kind: last word of the type

// relations gives what a part refers to, by id, with full names; none if it
// has no list of relations.
func (p *packed) relations(name string) (map[string]relation, error) {
	dir, base := path.Split(name)
	list := dir + "_rels/" + base + ".rels"
	rels := map[string]relation{}
	if !p.has(list) {
		return rels, nil
	}
	err := p.scan(list, func(s *scanner) error {
		if !s.child(0) {
			return nil
		}
		for s.child(1) {
			if string(s.attr("TargetMode")) == "External" {
				continue // a link: nothing outside the file is ever read
			}
			if len(rels) == p.lim.Parts {
				return tooMuch("relations in its part "+list, p.lim.Parts)
			}
			target := strings.ReplaceAll(s.attrText("Target"), "\\", "/")
			if !strings.HasPrefix(target, "/") {
				target = path.Join("/"+dir, target)
			}
			rels[s.attrText("Id")] = relation{path.Base(s.attrText("Type")), strings.TrimPrefix(target, "/")}
		}
		return nil
	})
	return rels, err
}

// workbookPart finds the part all others hang on.
func (p *packed) workbookPart() (string, error) {
	rels, err := p.relations("")
	if err != nil {
		return "", err
	}
	found := ""
	for _, r := range rels {
		if r.kind == "officeDocument" && strings.HasSuffix(r.target, ".xml") &&
			!hasAnyPrefix(r.target, "word/", "ppt/") && p.has(r.target) {
			found = max(found, r.target) // the same one at every run
		}
	}
	if found == "" {
		return "", sniffZip(p)
	}
	return found, nil
}
