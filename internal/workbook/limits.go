package workbook

// Limits bound what is read from a file that may come from anyone. What goes
// beyond one is refused; nothing is ever read in part.
type Limits struct {
	FileBytes     int64 // size of the file
	UnpackedBytes int64 // all parts that are read, unpacked
	PartBytes     int64 // a part that is kept (texts, styles, comments), unpacked
	TextBytes     int64 // all texts together
	Ratio         int64 // unpacked to packed size, judged from RatioFrom on
	RatioFrom     int64 // unpacked size below which no ratio is judged
	Parts         int   // entries in the package
	Sheets        int
	Rows          int // last row that holds something
	Columns       int // last column that holds something
	Cells         int // cells of the whole book, merged copies counted
	Strings       int // shared texts
	CellLength    int // characters in a cell
	Merges        int // merged ranges of a sheet
	Styles        int // cell styles, fonts or number formats
	FormatLength  int // characters of a number format
	Comments      int // comments of a sheet
	Lists         int // ranges that drop-downs take their words from
	Depth         int // nesting of elements in a part
}

const megabyte = 1 << 20

// DefaultLimits are far above any schedule and well within a small machine:
// sheets are read as a stream, so only cells that hold something cost memory.
func DefaultLimits() Limits {
	return Limits{
		FileBytes:     64 * megabyte,
		UnpackedBytes: 512 * megabyte,
		PartBytes:     64 * megabyte,
		TextBytes:     16 * megabyte,
		Ratio:         250,
		RatioFrom:     16 * megabyte,
		Parts:         10_000,
		Sheets:        256,
		Rows:          200_000,
		Columns:       2_000,
		Cells:         1_000_000,
		Strings:       500_000,
		CellLength:    32_767,
		Merges:        50_000,
		Styles:        65_536,
		FormatLength:  255,
		Comments:      20_000,
		Lists:         5_000,
		Depth:         100,
	}
}

// With gives the limits with some of them set by the names that the settings
// have for them; sizes are in megabytes. A name that is not known is left to
// the schema of the settings.
func (l Limits) With(own map[string]int) Limits {
	for name, size := range map[string]*int64{
		"file_mb": &l.FileBytes, "unpacked_mb": &l.UnpackedBytes, "part_mb": &l.PartBytes, "text_mb": &l.TextBytes,
	} {
		if n, ok := own[name]; ok {
			*size = int64(n) * megabyte
		}
	}
	if n, ok := own["ratio"]; ok {
		l.Ratio = int64(n)
	}
	for name, count := range map[string]*int{
		"parts": &l.Parts, "sheets": &l.Sheets, "rows": &l.Rows, "columns": &l.Columns, "cells": &l.Cells,
		"shared_texts": &l.Strings, "cell_length": &l.CellLength, "merged_ranges": &l.Merges, "styles": &l.Styles,
		"format_length": &l.FormatLength, "comments": &l.Comments, "drop_downs": &l.Lists, "depth": &l.Depth,
	} {
		if n, ok := own[name]; ok {
			*count = n
		}
	}
	return l
}
