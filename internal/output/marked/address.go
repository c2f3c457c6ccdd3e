package marked

import (
	"strconv"
	"strings"

	"abut/internal/workbook"
)

func ref(row, col int) string { return workbook.Ref(row, col) }

// place reads an address such as "F12".
func place(text string) (row, col int, ok bool) {
	i := 0
	for ; i < len(text) && text[i] >= 'A' && text[i] <= 'Z' && i < 4; i++ {
		col = col*26 + int(text[i]-'A') + 1
	}
	row, err := strconv.Atoi(text[i:])
	return row, col, err == nil && col > 0 && row > 0
}

// appendBlock reads "B2:D4", or one cell.
func appendBlock(list []block, text string) []block {
	from, to, more := strings.Cut(text, ":")
	if !more {
		to = from
	}
	top, left, ok := place(from)
	bottom, right, alsoOK := place(to)
	if !ok || !alsoOK {
		return list
	}
	return append(list, block{top, left, bottom, right})
}

// location writes a link's target within the workbook.
func location(sheet, cell string) string {
	return "'" + strings.ReplaceAll(sheet, "'", "''") + "'!" + cell
}
