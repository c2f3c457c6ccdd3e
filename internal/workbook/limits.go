package workbook

// Limits bound what is read from a file that may come from anyone. What goes
// beyond one is refused; nothing is ever read in part.
type Limits struct {
	FileBytes     int64 // size of the file
	UnpackedBytes int64 // all parts that are read, unpacked
	PartBytes     int64 // a part that is kept (texts, styles, comments), unpacked
	Ratio         int64 // unpacked to packed size, judged from RatioFrom on
	RatioFrom     int64 // unpacked size below which no ratio is judged
	Parts         int   // entries in the package
	Sheets        int
	Rows          int // last row that holds something
	Columns       int // last column that holds something
	Cells         int // cells of the whole book, merged copies counted
	Strings       int // shared texts
	TextBytes     int // all texts together
	CellLength    int // characters in a cell
	Merges        int // merged ranges of a sheet
	Styles        int // cell styles, fonts or number formats
	FormatLength  int // characters of a number format
	Comments      int // comments of a sheet
	Lists         int // ranges that drop-downs take their words from
	Depth         int // nesting of elements in a part
}

// DefaultLimits are far above any schedule and well within a small machine:
// sheets are read as a stream, so only cells that hold something cost memory.
func DefaultLimits() Limits {
	const mb = 1 << 20
	return Limits{
		FileBytes:     64 * mb,
		UnpackedBytes: 512 * mb,
		PartBytes:     64 * mb,
		Ratio:         250,
		RatioFrom:     16 * mb,
		Parts:         10_000,
		Sheets:        256,
		Rows:          200_000,
		Columns:       2_000,
		Cells:         1_000_000,
		Strings:       500_000,
		TextBytes:     128 * mb,
		CellLength:    32_767,
		Merges:        50_000,
		Styles:        65_536,
		FormatLength:  1_000,
		Comments:      20_000,
		Lists:         5_000,
		Depth:         100,
	}
}
