package workbook

import (
	"bytes"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	utf16 "golang.org/x/text/encoding/unicode"
)

// decodeText makes UTF-8 of a text file and names its encoding. A byte-order
// mark decides; without one, text that is valid UTF-8 is that, text with a NUL
// at every other place is UTF-16, and the rest is a single-byte code page.
func decodeText(data []byte) (text, name string, err error) {
	switch {
	case bytes.HasPrefix(data, []byte("\xef\xbb\xbf")):
		data = data[3:]
		if !utf8.Valid(data) {
			return "", "", refuse("it says it is UTF-8 and is not", saveUTF8)
		}
		return string(data), "utf-8", nil
	case bytes.HasPrefix(data, []byte("\xff\xfe")), zeros(data, 1) > zeros(data, 0) && mostlyZero(data, 1):
		return decodeWide(data, utf16.LittleEndian, "utf-16le")
	case bytes.HasPrefix(data, []byte("\xfe\xff")), mostlyZero(data, 0):
		return decodeWide(data, utf16.BigEndian, "utf-16be")
	case utf8.Valid(data):
		return string(data), "utf-8", nil
	}
	return decodeBytes(data)
}

func decodeWide(data []byte, order utf16.Endianness, name string) (string, string, error) {
	if len(data)%2 != 0 {
		return "", "", refuse("it is cut short in the middle of a character", "copy it again")
	}
	out, err := utf16.UTF16(order, utf16.UseBOM).NewDecoder().Bytes(data)
	if err != nil {
		return "", "", &FileError{Problem: "it is not the UTF-16 text it looks like", Do: saveUTF8, cause: err}
	}
	if patched(string(out)) {
		return "", "", refuse("only a part of it is UTF-16 text", saveUTF8)
	}
	return string(out), name, nil
}

// patched finds text of one byte a character within text of two: so many
// characters in a row of which both bytes are plain signs stand in no language.
func patched(text string) bool {
	const many = 24
	plain := func(b rune) bool { return b >= ' ' && b <= '~' || b == '\n' || b == '\r' || b == '\t' }
	run, last := 0, rune(0)
	for _, r := range text {
		if run++; !plain(r>>8) || !plain(r&0xff) || r == last { // a ruled line is no such text
			run = 0
		}
		last = r
		if run == many {
			return true
		}
	}
	return false
}

// zeros counts the NUL bytes at even (0) or odd (1) places near the start.
func zeros(data []byte, offset int) int {
	n := 0
	for i := offset; i < min(len(data), 4096); i += 2 {
		if data[i] == 0 {
			n++
		}
	}
	return n
}

func mostlyZero(data []byte, offset int) bool {
	half := min(len(data), 4096) / 2
	return half > 1 && zeros(data, offset) > half/2 && zeros(data, 1-offset) < half/10+1
}

// decodeBytes chooses between the code pages that spreadsheet programs write:
// the one in which the characters beyond ASCII make more sense. Latin-1 is
// read as Windows-1252, which holds all of its printing characters.
func decodeBytes(data []byte) (string, string, error) {
	western, err := single(charmap.Windows1252, data)
	if err != nil {
		return "", "", err
	}
	mac, err := single(charmap.Macintosh, data)
	if err != nil {
		return "", "", err
	}
	if sense(mac) > sense(western) {
		return mac, "mac-roman", nil
	}
	return western, "windows-1252", nil
}

func single(enc encoding.Encoding, data []byte) (string, error) {
	out, err := enc.NewDecoder().Bytes(data)
	return string(out), err
}

// sense weighs the characters beyond ASCII: letters inside words and the signs
// that schedules use count for the decoding, stray signs and letters against.
func sense(text string) int {
	score := 0
	before := ' '
	for i, r := range text {
		if r >= utf8.RuneSelf {
			after, _ := utf8.DecodeRuneInString(text[i+utf8.RuneLen(r):])
			switch {
			case r == utf8.RuneError:
				score -= 2
			case strings.ContainsRune("°±²³µ·×½¼¾–—‘’“”•…™®©«»≤≥Ø\u00a0", r):
				score++
			case unicode.IsLetter(r) && (unicode.IsLetter(before) || unicode.IsLetter(after)) && unicode.IsLower(r):
				score++
			default:
				score--
			}
		}
		before = r
	}
	return score
}
