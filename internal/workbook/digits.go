package workbook

import (
	"fmt"
	"math"
	"strings"

	"github.com/xuri/nfp"
)

// scaled divides by a thousand for each comma that ends the placeholders: such
// a format shows 1200 as 1.2, mostly with a word for the thousand.
func scaled(x float64, items []nfp.Token) float64 {
	for i := len(items) - 1; i >= 0 && !isPlaceholder(items[i]); i-- {
		if items[i].TType == nfp.TokenTypeThousandsSeparator {
			x /= math.Pow(1000, float64(strings.Count(items[i].TValue, ",")))
		}
	}
	return x
}

// padded writes a number with the leading zeros its format asks for, as marks
// such as W-01 are often made.
func padded(x float64, items []nfp.Token) string {
	digits := plain(x)
	if x == 0 && !has(items, nfp.TokenTypeZeroPlaceHolder) && !has(items, nfp.TokenTypeGeneral) {
		return "" // the other placeholders show no zero, as in "-"??
	}
	width := 0
	for _, it := range items {
		if it.TType == nfp.TokenTypeDecimalPoint || it.TType == nfp.TokenTypeExponential {
			break
		}
		if it.TType == nfp.TokenTypeZeroPlaceHolder {
			width += len(it.TValue)
		}
	}
	whole, rest, pointed := strings.Cut(strings.TrimPrefix(digits, "-"), ".")
	if missing := width - len(whole); missing > 0 && !strings.Contains(digits, "E") {
		whole = strings.Repeat("0", min(missing, 15)) + whole
		if pointed {
			whole += "." + rest
		}
		if x < 0 {
			whole = "-" + whole
		}
		return whole
	}
	return digits
}

// fraction writes a number as a format such as # ?/8 shows it, or in decimals
// if that would round it by more than one part in two hundred.
func fraction(x float64, items []nfp.Token) string {
	fixed, places, mixed, bar := 0, 0, false, false
	for _, it := range items {
		switch {
		case it.TType == nfp.TokenTypeFraction:
			bar = true
		case !bar && it.TType == nfp.TokenTypeLiteral:
			mixed = true // a space parts the whole from the fraction
		case bar && it.TType == nfp.TokenTypeDenominator:
			_, _ = fmt.Sscanf(it.TValue, "%d", &fixed)
		case bar && isPlaceholder(it):
			places += len(it.TValue)
		}
	}
	size := math.Abs(x)
	whole, part := math.Modf(size)
	num, den := nearest(part, fixed, places)
	if whole > 1e9 || math.Abs(whole+float64(num)/float64(den)-size) > size/200 {
		return plain(x)
	}
	sign := ""
	if x < 0 {
		sign = "-"
	}
	switch {
	case num == 0:
		return plain(x)
	case num == den:
		return fmt.Sprintf("%s%.0f", sign, whole+1)
	case !mixed:
		return fmt.Sprintf("%s%d/%d", sign, int(whole)*den+num, den)
	case whole > 0:
		return fmt.Sprintf("%s%.0f %d/%d", sign, whole, num, den)
	}
	return fmt.Sprintf("%s%d/%d", sign, num, den)
}

// nearest gives the fraction nearest to part (0 to 1) with a fixed denominator
// or, if that is 0, one of at most so many digits.
func nearest(part float64, fixed, places int) (num, den int) {
	if fixed > 0 {
		return int(math.Round(part * float64(fixed))), fixed
	}
	limit := int(math.Pow10(min(max(places, 1), 3))) - 1
	den, best := 1, math.Inf(1)
	for d := 1; d <= limit; d++ {
		n := math.Round(part * float64(d))
		if miss := math.Abs(part - n/float64(d)); miss < best-1e-12 {
			num, den, best = int(n), d, miss
		}
	}
	return num, den
}

// clock writes a time of day or an elapsed time, in days, as hours and minutes.
func clock(days float64) string {
	if math.IsNaN(days) || math.Abs(days) > 1e7 {
		return plain(days)
	}
	seconds := int64(math.Round(math.Abs(days) * 86400))
	sign := ""
	if days < 0 {
		sign = "-"
	}
	text := fmt.Sprintf("%s%d:%02d", sign, seconds/3600, seconds/60%60)
	if s := seconds % 60; s != 0 {
		text += fmt.Sprintf(":%02d", s)
	}
	return text
}
