package output

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"reflect"
	"strings"
	"unicode/utf16"
	"unicode/utf8"

	"abut/internal/plan/value"
)

// jsonWriter writes values as encoding/json indents them.
type jsonWriter struct {
	out    *bufio.Writer // which keeps the first error for the end
	indent string
	fields map[reflect.Type][]value.Field
	single bytes.Buffer
}

// WriteJSON writes a value as JSON text. Characters that steer a terminal or
// turn the reading direction are escaped: the same data, and safe to show. The
// text goes out part by part, since it can be many times as large as the value.
func WriteJSON(w io.Writer, indent string, v any) error {
	j := &jsonWriter{out: bufio.NewWriter(w), indent: indent, fields: map[reflect.Type][]value.Field{}}
	if err := j.write(reflect.ValueOf(v), "\n"); err != nil {
		return err
	}
	j.out.WriteByte('\n')
	return j.out.Flush()
}

// write takes structs and lists apart and leaves all else to encoding/json; line
// is what a line begins with at this depth, the end of the one before included.
func (j *jsonWriter) write(v reflect.Value, line string) error {
	switch kind := v.Kind(); {
	case (kind == reflect.Pointer || kind == reflect.Interface) && !v.IsNil():
		return j.write(v.Elem(), line)
	case kind == reflect.Struct:
		return j.object(v, line)
	case kind == reflect.Slice && v.Len() > 0:
		inner := line + j.indent
		for i := range v.Len() {
			j.next('[', i, inner)
			if err := j.write(v.Index(i), inner); err != nil {
				return err
			}
		}
		return j.end(']', line)
	case kind == reflect.String && isPlainText(v.String()):
		j.out.WriteByte('"')
		j.out.WriteString(v.String())
		return j.out.WriteByte('"')
	}
	return j.encode(v, line)
}

func (j *jsonWriter) object(v reflect.Value, line string) error {
	t := v.Type()
	if j.fields[t] == nil {
		j.fields[t] = value.Fields(t)
	}
	n, inner := 0, line+j.indent
	for _, f := range j.fields[t] {
		one := v.FieldByIndex(f.Index)
		if f.OmitEmpty && value.IsEmpty(one) {
			continue
		}
		j.next('{', n, inner)
		n++
		j.out.WriteByte('"')
		j.out.WriteString(f.Name)
		j.out.WriteString(`": `)
		if err := j.write(one, inner); err != nil {
			return err
		}
	}
	if n == 0 {
		j.out.WriteByte('{')
		line = ""
	}
	return j.end('}', line)
}

// next begins the part of that number on a line of its own.
func (j *jsonWriter) next(open byte, n int, line string) {
	if n > 0 {
		open = ','
	}
	j.out.WriteByte(open)
	j.out.WriteString(line)
}

func (j *jsonWriter) end(shut byte, line string) error {
	j.out.WriteString(line)
	return j.out.WriteByte(shut)
}

func (j *jsonWriter) encode(v reflect.Value, line string) error {
	var what any
	if v.IsValid() {
		what = v.Interface()
	}
	j.single.Reset()
	e := json.NewEncoder(&j.single)
	e.SetEscapeHTML(false)
	e.SetIndent(strings.TrimPrefix(line, "\n"), j.indent)
	if err := e.Encode(what); err != nil {
		return err
	}
	_, err := j.out.Write(tame(bytes.TrimSuffix(j.single.Bytes(), []byte("\n"))))
	return err
}

// isPlainText holds for a text that JSON writes as it is.
func isPlainText(s string) bool {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c >= 0x7f || c == '"' || c == '\\' {
			return false
		}
	}
	return true
}

// tame escapes what stands in the strings of a JSON text; outside them it has
// line ends alone.
func tame(text []byte) []byte {
	steers := func(r rune) bool { return r != '\n' && Steers(r) }
	if !bytes.ContainsFunc(text, steers) {
		return text
	}
	out := make([]byte, 0, len(text)+64)
	for _, r := range string(text) {
		switch {
		case !steers(r):
			out = utf8.AppendRune(out, r)
		case r > 0xffff:
			high, low := utf16.EncodeRune(r)
			out = fmt.Appendf(out, `\u%04x\u%04x`, high, low)
		default:
			out = fmt.Appendf(out, `\u%04x`, r)
		}
	}
	return out
}
