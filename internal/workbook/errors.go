package workbook

import (
	"errors"
	"fmt"
	"strings"
	"unicode"
)

// FileError says in one line which file, sheet and cell cannot be read, why,
// and what to do about it.
type FileError struct {
	Path    string
	Sheet   string // "" where the whole file is meant
	Cell    string // "" where no cell is meant
	Problem string
	Do      string
	cause   error
}

// Error is "file: sheet!cell: problem; do", in one line of bearable length
// whatever the names and values hold: they are a stranger's text.
func (e *FileError) Error() string {
	var b strings.Builder
	if e.Path != "" {
		b.WriteString(e.Path + ": ")
	}
	sheet := clip(e.Sheet)
	switch {
	case e.Sheet != "" && e.Cell != "":
		b.WriteString(sheet + "!" + e.Cell + ": ")
	case e.Sheet != "" || e.Cell != "":
		b.WriteString(sheet + e.Cell + ": ")
	}
	b.WriteString(clip(e.Problem))
	if e.Do != "" {
		b.WriteString("; " + e.Do)
	}
	return strings.Map(printable, b.String())
}

// Unwrap gives the cause, if the system or a library reported one.
func (e *FileError) Unwrap() error { return e.cause }

// clip cuts a text that is too long for a message.
func clip(text string) string {
	const most = 300
	if n := 0; len(text) > most {
		for i := range text {
			if n++; n > most {
				return text[:i] + "…"
			}
		}
	}
	return text
}

func printable(r rune) rune {
	if unicode.IsControl(r) || unicode.Is(unicode.Cf, r) || r == '\u2028' || r == '\u2029' {
		return ' '
	}
	return r
}

const (
	saveAgain  = "open it in a spreadsheet program and save it again as .xlsx"
	saveAsXLSX = "save it as .xlsx or .csv"
	saveUTF8   = "save it again as .csv in UTF-8"
	splitFile  = "delete what is not part of the schedule or split the file"
)

func refuse(problem, do string) *FileError { return &FileError{Problem: problem, Do: do} }

func damaged(part string, err error) *FileError {
	return &FileError{Problem: fmt.Sprintf("its part %s is damaged (%v)", part, err), Do: saveAgain, cause: err}
}

func tooMuch(what string, limit any) *FileError {
	return refuse(fmt.Sprintf("it has more than %v %s", limit, what), splitFile)
}

// size writes a number of bytes as the settings have it.
func size(bytes int64) string {
	if bytes < megabyte {
		return fmt.Sprintf("%d bytes", bytes)
	}
	return fmt.Sprintf("%d MB", bytes/megabyte)
}

// tooLarge is tooMuch for a size.
func tooLarge(what string, limit int64) *FileError {
	return refuse("it has more than "+size(limit)+what, splitFile)
}

// locate fills in what the place of the failure did not know, and makes any
// other error a FileError.
func locate(err error, path, sheet string) error {
	if err == nil {
		return nil
	}
	var fe *FileError
	if !errors.As(err, &fe) {
		fe = &FileError{Problem: err.Error(), Do: saveAgain, cause: err}
	}
	if fe.Path == "" {
		fe.Path = path
	}
	if fe.Sheet == "" {
		fe.Sheet = sheet
	}
	return fe
}
