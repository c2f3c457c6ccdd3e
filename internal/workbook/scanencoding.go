package workbook

import (
	"bytes"
	"fmt"
	"io"
	"strings"

	"golang.org/x/text/encoding/htmlindex"
	"golang.org/x/text/encoding/unicode"
	"golang.org/x/text/transform"
)

// recode puts a converter before the stream if it is not written in UTF-8.
func (s *scanner) recode() error {
	head := s.buf[:s.end]
	if bytes.HasPrefix(head, []byte("\xef\xbb\xbf")) {
		s.pos = 3
		return nil
	}
	var t transform.Transformer
	if bytes.HasPrefix(head, []byte("\xff\xfe")) || bytes.HasPrefix(head, []byte("\xfe\xff")) {
		t = unicode.UTF16(unicode.LittleEndian, unicode.ExpectBOM).NewDecoder()
	} else if label := declaredEncoding(head); label != "" && !strings.EqualFold(label, "utf-8") {
		enc, err := htmlindex.Get(label)
		if err != nil {
			return fmt.Errorf("unknown encoding %q", label)
		}
		t = enc.NewDecoder()
	}
	if t != nil {
		read := bytes.Clone(head)
		s.src = transform.NewReader(io.MultiReader(bytes.NewReader(read), s.src), t)
		s.end = 0
	}
	return nil
}

func declaredEncoding(head []byte) string {
	if !bytes.HasPrefix(head, []byte("<?xml")) {
		return ""
	}
	decl, _, _ := bytes.Cut(head, []byte("?>"))
	_, after, ok := bytes.Cut(decl, []byte("encoding="))
	if !ok || len(after) < 2 {
		return ""
	}
	label, _, _ := bytes.Cut(after[1:], after[:1])
	return string(label)
}
