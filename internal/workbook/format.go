package workbook

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"github.com/xuri/nfp"
)

// numFormat is a number format code, parsed once for all cells that have it.
type numFormat struct {
	code     string
	isDate   bool // shows a day, month or year
	sections []nfp.Section
	text     *nfp.Section // how texts are shown, nil: as they are
}

// parseFormat gives nil for a code that shows numbers and texts as they are.
func parseFormat(code string) *numFormat {
	if code == "" || strings.EqualFold(code, "general") || code == "@" {
		return nil
	}
	f := &numFormat{code: code}
	parser := nfp.NumberFormatParser()
	for _, s := range parser.Parse(code) {
		if s.Type == nfp.TokenSectionText {
			f.text = &s
		} else {
			f.sections = append(f.sections, s)
		}
	}
	f.isDate = len(f.sections) > 0 && showsDate(f.sections[0].Items)
	return f
}

// showsDate says whether a section shows a calendar date: a year, day, era or
// month. An m beside hours or seconds means minutes, and an elapsed time such
// as [h]:mm is a quantity.
func showsDate(items []nfp.Token) bool {
	var units []string
	for _, it := range items {
		switch it.TType {
		case nfp.TokenTypeElapsedDateTimes:
			return false
		case nfp.TokenTypeDateTimes:
			if u := strings.ToLower(it.TValue); !strings.HasPrefix(u, "a") {
				units = append(units, u)
			}
		}
	}
	for i, u := range units {
		switch u[0] {
		case 'y', 'd', 'e', 'g', 'b':
			return true
		case 'm':
			minutes := i > 0 && u[0] == 'm' && units[i-1][0] == 'h' || i+1 < len(units) && units[i+1][0] == 's'
			if len(u) > 2 || !minutes {
				return true
			}
		}
	}
	return false
}

// show writes a number as a reader of the sheet sees it, but for digits: they
// are never rounded to the format's decimals, since a thickness of 0.375 shown
// as 0.4 is still 0.375. Words, percent and fraction come from the format.
func (f *numFormat) show(x float64) string {
	if f == nil || len(f.sections) == 0 {
		return plain(x)
	}
	section, x := f.pick(x)
	var digits string
	switch {
	case has(section.Items, nfp.TokenTypeElapsedDateTimes):
		return clock(x)
	case has(section.Items, nfp.TokenTypeDateTimes):
		return clock(x - math.Floor(x)) // the time of day
	case has(section.Items, nfp.TokenTypePercent):
		digits = plain(x * 100)
	case has(section.Items, nfp.TokenTypeFraction):
		digits = fraction(x, section.Items)
	default:
		digits = padded(scaled(x, section.Items), section.Items)
	}
	return strings.TrimSpace(assemble(section.Items, digits))
}

// showText writes a text through the format's text section, such as "Type "@.
func (f *numFormat) showText(t string) string {
	if f == nil || f.text == nil || t == "" {
		return t
	}
	var b strings.Builder
	for _, it := range f.text.Items {
		switch it.TType {
		case nfp.TokenTypeTextPlaceHolder:
			b.WriteString(t)
		case nfp.TokenTypeLiteral:
			b.WriteString(it.TValue)
		}
	}
	return b.String()
}

// pick gives the section for a number, and the number without the sign if the
// section writes a sign itself.
func (f *numFormat) pick(x float64) (nfp.Section, float64) {
	s := f.sections
	if slices.ContainsFunc(s, func(s nfp.Section) bool { return has(s.Items, nfp.TokenTypeCondition) }) {
		for _, section := range s {
			if holds(section.Items, x) {
				return section, x
			}
		}
		return s[len(s)-1], x
	}
	switch {
	case x < 0 && len(s) > 1:
		if slices.ContainsFunc(s[1].Items, writesSign) {
			return s[1], -x
		}
		return s[1], x
	case x == 0 && len(s) > 2:
		return s[2], x
	}
	return s[0], x
}

func writesSign(it nfp.Token) bool {
	return it.TType == nfp.TokenTypeLiteral && strings.ContainsAny(it.TValue, "-(−")
}

func holds(items []nfp.Token, x float64) bool {
	for _, it := range items {
		if it.TType != nfp.TokenTypeCondition {
			continue
		}
		operand := strings.TrimLeft(it.TValue, "<>=")
		limit, err := strconv.ParseFloat(operand, 64)
		if err != nil {
			return false
		}
		switch strings.TrimSuffix(it.TValue, operand) {
		case "<":
			return x < limit
		case "<=":
			return x <= limit
		case ">":
			return x > limit
		case ">=":
			return x >= limit
		case "=":
			return x == limit
		case "<>":
			return x != limit
		}
	}
	return true
}

func has(items []nfp.Token, kind string) bool {
	return slices.ContainsFunc(items, func(it nfp.Token) bool { return it.TType == kind })
}

// assemble puts the digits where the section's first placeholder stands, with
// the section's words around them.
func assemble(items []nfp.Token, digits string) string {
	first := slices.IndexFunc(items, isPlaceholder)
	last := first
	for i, it := range items {
		if isPlaceholder(it) {
			last = i
		}
	}
	var b strings.Builder
	for i, it := range items {
		switch {
		case i == first:
			b.WriteString(digits)
		case i > first && i < last:
		case it.TType == nfp.TokenTypeLiteral:
			b.WriteString(it.TValue)
		case it.TType == nfp.TokenTypePercent:
			b.WriteString("%")
		case it.TType == nfp.TokenTypeCurrencyLanguage:
			symbol, _, _ := strings.Cut(strings.Trim(strings.TrimPrefix(it.TValue, "[$"), "]"), "-")
			b.WriteString(symbol)
		}
	}
	return b.String()
}

func isPlaceholder(it nfp.Token) bool {
	switch it.TType {
	case nfp.TokenTypeZeroPlaceHolder, nfp.TokenTypeHashPlaceHolder, nfp.TokenTypeDigitalPlaceHolder,
		nfp.TokenTypeGeneral, nfp.TokenTypeDenominator, nfp.TokenTypeTextPlaceHolder:
		return true
	}
	return false
}

// plain writes a number with the 15 digits a sheet keeps, so that
// 0.0005999999999999999 is 0.0006 again.
func plain(x float64) string {
	if math.IsInf(x, 0) || math.IsNaN(x) {
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	if x == math.Trunc(x) && math.Abs(x) < 1e15 {
		return strconv.FormatInt(int64(x), 10)
	}
	var digits [32]byte
	rounded, _ := strconv.ParseFloat(string(strconv.AppendFloat(digits[:0], x, 'g', 15, 64)), 64)
	if size := math.Abs(rounded); size != 0 && (size < 1e-9 || size >= 1e15) {
		return strconv.FormatFloat(rounded, 'E', -1, 64)
	}
	return strconv.FormatFloat(rounded, 'f', -1, 64)
}
