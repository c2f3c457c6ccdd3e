package workbook

import "testing"

func TestShowNumber(t *testing.T) {
	tests := []struct {
		code string
		x    float64
		want string
	}{
		{"", 40, "40"},
		{"General", 0.0005999999999999999, "0.0006"},
		{"", 0.1 + 0.2, "0.3"},
		{"", -7, "-7"},
		{"", 0, "0"},
		{"", 1234567.891, "1234567.891"},
		{"", 1e-12, "1E-12"},
		{"", 1.5e20, "1.5E+20"},
		{"0", 12.4, "12.4"}, // digits are never rounded away
		{"0.00", 12.5, "12.5"},
		{"#,##0", 12500, "12500"},
		{"0%", 0.07, "7%"},
		{"0.00%", 0.075, "7.5%"},
		{"# ?/?", 0.5, "1/2"},
		{"# ??/??", 1.25, "1 1/4"},
		{"# ?/8", 0.625, "5/8"},
		{"# ?/8", 3, "3"},
		{"# ?/?", 0.015, "0.015"}, // would be shown as 0
		{"?/?", 1.5, "3/2"},
		{"# ?/?", -2.5, "-2 1/2"},
		{`0" mil"`, 40, "40 mil"},
		{`0.0\ "mm"`, 1.2, "1.2 mm"},
		{`0°C`, -5, "-5°C"},
		{`General" perm"`, 0.1, "0.1 perm"},
		{`"W-"00`, 1, "W-01"},
		{`"W-"00`, 12, "W-12"},
		{`0.0E+00`, 0.00012, "0.00012"},
		{`[>=100]0" days";0" d"`, 120, "120 days"},
		{`[>=100]0" days";0" d"`, 20, "20 d"},
		{`[Red]-0;[Blue]0`, -3, "-3"}, // a color alone is no sign
		{`0;(0)`, -3, "(3)"},
		{`_(* #,##0.00_);_(* (#,##0.00);_(* "-"??_)`, 0, "-"},
		{`0;-0;;@`, 0, ""},
		{`;;;`, 5, ""},
		{`[$$-409]#,##0.00`, 12.5, "$12.5"},
		{`0.0,"k"`, 1200, "1.2k"},
		{"h:mm", 0.3125, "7:30"},
		{"h:mm", 45000.3125, "7:30"},
		{"[h]:mm", 1.25, "30:00"},
		{"mm:ss", 0.0007523148148148148, "0:01:05"},
	}
	for _, tt := range tests {
		if got := parseFormat(tt.code).show(tt.x); got != tt.want {
			t.Errorf("%s shows %v as %q, want %q", tt.code, tt.x, got, tt.want)
		}
	}
}

func TestWhichFormatsAreDates(t *testing.T) {
	for code, want := range map[string]bool{
		"yyyy-mm-dd": true, "d.m.yy": true, "mmm": true, "mmm-yy": true, "m/d/yy h:mm": true,
		`[$-409]d\-mmm\-yy;@`: true, `[$-F800]dddd\,\ mmmm\ dd\,\ yyyy`: true, `yyyy"年"m"月"d"日"`: true,
		"[Red]dd/mm/yyyy": true, "m": true,
		"General": false, "0": false, `0" days"`: false, `0.0 "mm"`: false, `"dry"0`: false, "0%": false,
		"h:mm": false, "h:mm:ss AM/PM": false, "[h]:mm": false, "[mm]:ss": false, "mm:ss.0": false, `#,##0\d`: false,
		"[$CAD-1009]0": false, "@": false, "": false,
	} {
		f := parseFormat(code)
		if got := f != nil && f.isDate; got != want {
			t.Errorf("%s is a date: %v", code, got)
		}
	}
	for id := range 60 {
		want := id >= 14 && id <= 17 || id == 22 || id >= 27 && id <= 31 || id == 36 || id >= 50 && id <= 54 || id == 57 || id == 58
		f := parseFormat(builtinFormat(id))
		if got := f != nil && f.isDate; got != want {
			t.Errorf("number format %d is a date: %v", id, got)
		}
	}
}

func TestShowText(t *testing.T) {
	for code, want := range map[string]string{"": "A", "@": "A", `"Type "@`: "Type A", "0": "A", `0;0;0;@" mm"`: "A mm"} {
		if got := parseFormat(code).showText("A"); got != want {
			t.Errorf("%s shows A as %q, want %q", code, got, want)
		}
	}
}

func TestDatesOutOfRange(t *testing.T) {
	f := parseFormat("yyyy-mm-dd")
	for x, want := range map[float64]string{-1: "-1", 1e9: "1000000000", 46112.5: "2026-03-31 12:00", 2_958_465: "9999-12-31"} {
		var c Cell
		c.setNumber(x, f, false)
		if c.Value != want || c.Number != x {
			t.Errorf("%v: %+v", x, c)
		}
	}
}

func TestColumnNames(t *testing.T) {
	for col, want := range map[int]string{1: "A", 26: "Z", 27: "AA", 702: "ZZ", 703: "AAA", lastCol: "XFD", 0: "", -3: ""} {
		if got := ColumnName(col); got != want {
			t.Errorf("column %d is %q, want %q", col, got, want)
		}
		if _, back, ok := ParseRef([]byte(want + "7")); ok && back != col {
			t.Errorf("%s is column %d", want, back)
		}
	}
	for _, bad := range []string{"", "A", "7", "XFE1", "A0", "A1048577", "A1B", "1A", "A-1", "A99999999999"} {
		if _, _, ok := ParseRef([]byte(bad)); ok {
			t.Errorf("%q is taken for an address", bad)
		}
	}
}
