package marked

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io"
	"path"
	"strings"
)

// mostBytes is the size above which a part that must be changed is refused: it
// is held in memory whole.
const mostBytes = 64 << 20

// parcel is a workbook as the archive it is. Parts that are not changed are
// copied as they lie packed, byte for byte.
type parcel struct {
	zip     *zip.Reader
	byKey   map[string]*zip.File
	changed map[string][]byte // by key
	added   []string          // names in order
}

func openParcel(data []byte) (*parcel, error) {
	r, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return nil, fmt.Errorf("open the workbook: %w", err)
	}
	p := &parcel{zip: r, byKey: map[string]*zip.File{}, changed: map[string][]byte{}}
	for _, f := range r.File {
		p.byKey[key(f.Name)] = f
	}
	return p, nil
}

// key is how a part is found: writers differ in case, slashes and a first one.
func key(name string) string {
	return strings.ToLower(strings.TrimPrefix(strings.ReplaceAll(name, "\\", "/"), "/"))
}

func (p *parcel) has(name string) bool {
	return p.byKey[key(name)] != nil || p.changed[key(name)] != nil
}

// read gives a part as it now is.
func (p *parcel) read(name string) ([]byte, error) {
	if data, ok := p.changed[key(name)]; ok {
		return data, nil
	}
	f := p.byKey[key(name)]
	if f == nil {
		return nil, fmt.Errorf("part %s is missing", name)
	}
	if f.UncompressedSize64 > mostBytes {
		return nil, fmt.Errorf("part %s is too big to be marked; delete what is no part of the schedule", name)
	}
	rc, err := f.Open()
	if err != nil {
		return nil, fmt.Errorf("part %s: %w", name, err)
	}
	defer rc.Close()
	data, err := io.ReadAll(io.LimitReader(rc, mostBytes+1))
	if err != nil {
		return nil, fmt.Errorf("part %s: %w", name, err)
	}
	return data, nil
}

// put changes a part, or adds it.
func (p *parcel) put(name string, data []byte) {
	if !p.has(name) {
		p.added = append(p.added, strings.TrimPrefix(name, "/"))
	}
	p.changed[key(name)] = data
}

// free gives a name that no part has yet.
func (p *parcel) free(dir, base, ext string) string {
	for n := 1; ; n++ {
		if name := path.Join(dir, fmt.Sprintf("%s%d%s", base, n, ext)); !p.has(name) {
			return name
		}
	}
}

// write packs the parts in their order, and the new ones after them.
func (p *parcel) write(w io.Writer) error {
	out := zip.NewWriter(w)
	for _, f := range p.zip.File {
		data, ok := p.changed[key(f.Name)]
		if !ok {
			if err := out.Copy(f); err != nil {
				return fmt.Errorf("copy part %s: %w", f.Name, err)
			}
			continue
		}
		if err := pack(out, zip.FileHeader{Name: f.Name, Method: zip.Deflate, Modified: f.Modified}, data); err != nil {
			return err
		}
	}
	for _, name := range p.added {
		if err := pack(out, zip.FileHeader{Name: name, Method: zip.Deflate, Modified: p.zip.File[0].Modified}, p.changed[key(name)]); err != nil {
			return err
		}
	}
	return out.Close()
}

func pack(out *zip.Writer, h zip.FileHeader, data []byte) error {
	w, err := out.CreateHeader(&h)
	if err != nil {
		return fmt.Errorf("write part %s: %w", h.Name, err)
	}
	if _, err := w.Write(data); err != nil {
		return fmt.Errorf("write part %s: %w", h.Name, err)
	}
	return nil
}
