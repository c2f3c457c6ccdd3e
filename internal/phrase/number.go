package phrase

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"
)

// figure is one number as written: its value, the size of its last printed
// place, and the token after it.
type figure struct {
	value float64
	step  float64
	start int
	end   int
	next  int
	word  bool // written as a word
}

// figureAt reads the number that starts at token i.
func (r *Reader) figureAt(text string, toks []token, i int, comma bool) (figure, bool) {
	neg, at := signAt(toks, i)
	if at >= len(toks) {
		return figure{}, false
	}
	t := toks[at]
	f := figure{start: toks[i].Start, end: t.End, next: at + 1}
	switch t.kind {
	case number:
		value, step, ok := parseNumber(t.low, comma)
		if !ok {
			return figure{}, false
		}
		f.value, f.step = value, step
		f = addFraction(toks, f, at)
	case fraction:
		v, _ := utf8.DecodeRuneInString(t.low)
		f.value, f.step = vulgar(v), 1./8
	case word:
		v, ok := r.numbers[t.low]
		if !ok {
			return figure{}, false
		}
		f.value, f.step, f.word = v, 1, true
		f = r.addUnits(toks, f, at)
	default:
		return figure{}, false
	}
	if neg {
		f.value = -f.value
	}
	return f, true
}

// addUnits reads the second word of "twenty-eight".
func (r *Reader) addUnits(toks []token, f figure, at int) figure {
	if f.value < 20 || at+2 >= len(toks) || toks[at+1].low != "-" || !toks[at+1].glued || !toks[at+2].glued {
		return f
	}
	if v, ok := r.numbers[toks[at+2].low]; ok && v >= 1 && v < 10 {
		f.value, f.end, f.next = f.value+v, toks[at+2].End, at+3
	}
	return f
}

// signAt reads a plus or minus that belongs to the number after it.
func signAt(toks []token, i int) (neg bool, at int) {
	t := toks[i]
	if t.kind == word && t.low == "minus" {
		return true, i + 1
	}
	if t.kind != sign || t.low != "-" && t.low != "+" || i+1 >= len(toks) || !toks[i+1].glued {
		return false, i
	}
	if t.low == "-" && i > 1 && toks[i-1].low == "/" && toks[i-2].low == "+" {
		return false, i // "+/-50%" is either way
	}
	if t.glued && i > 0 && (toks[i-1].kind != sign || toks[i-1].low == ")" || toks[i-1].low == "'") {
		return false, i
	}
	return t.low == "-", i + 1
}

// parseNumber reads digits. A comma is decimal where the column says so, where
// a zero leads, or where not just three digits follow; else it parts thousands.
func parseNumber(s string, comma bool) (value, step float64, ok bool) {
	s = strings.Map(func(r rune) rune {
		if r >= utf8.RuneSelf {
			return -1
		}
		return r
	}, s)
	if strings.Count(s, ".") > 1 || len(s) > 40 {
		return 0, 0, false
	}
	if i := strings.IndexByte(s, ','); i >= 0 {
		last := strings.LastIndexByte(s, ',')
		decimal := i == last && !strings.Contains(s, ".") && (comma || s[0] == '0' || len(s)-i-1 != 3 || i > 3)
		if decimal {
			s = strings.Replace(s, ",", ".", 1)
		} else {
			s = strings.ReplaceAll(s, ",", "")
		}
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return 0, 0, false
	}
	step = 1
	if i := strings.IndexByte(s, '.'); i >= 0 {
		step = math.Pow10(-(len(s) - i - 1))
	}
	return v, step, true
}

// addFraction adds an exponent or a fraction: 2e-4, 5/8, 7 5/8, 7-5/8, 2½.
func addFraction(toks []token, f figure, at int) figure {
	if e, next, ok := exponent(toks, at+1); ok {
		f.value, f.step = f.value*math.Pow10(e), f.step*math.Pow10(e)
		f.end, f.next = toks[next-1].End, next
		return f
	}
	if v, den, ok := tapeFraction(toks, at); ok {
		f.value, f.step = v, 1/den
		f.end, f.next = toks[at+2].End, at+3
		return f
	}
	if f.step != 1 || f.value >= 1000 || at+1 >= len(toks) {
		return f
	}
	if t := toks[at+1]; t.kind == fraction {
		v, _ := utf8.DecodeRuneInString(t.low)
		f.value, f.step, f.end, f.next = f.value+vulgar(v), 1./8, t.End, at+2
		return f
	}
	j := at + 1
	if toks[j].low == "-" && toks[j].glued {
		j++
	}
	if j < len(toks) {
		if v, den, ok := tapeFraction(toks, j); ok && v < 1 && (j > at+1 || !toks[j].glued) {
			f.value, f.step, f.end, f.next = f.value+v, 1/den, toks[j+2].End, j+3
		}
	}
	return f
}

func exponent(toks []token, i int) (e, next int, ok bool) {
	if i >= len(toks) || !toks[i].glued || toks[i].kind != word || toks[i].low[0] != 'e' {
		return 0, 0, false
	}
	digits, neg, next := toks[i].low[1:], false, i+1
	if digits == "" {
		if i+2 >= len(toks) || !toks[i+1].glued || !toks[i+2].glued || toks[i+2].kind != number {
			return 0, 0, false
		}
		neg = toks[i+1].low == "-"
		if !neg && toks[i+1].low != "+" {
			return 0, 0, false
		}
		digits, next = toks[i+2].low, i+3
	}
	e, err := strconv.Atoi(digits)
	if err != nil || e > 30 {
		return 0, 0, false
	}
	if neg {
		e = -e
	}
	return e, next, true
}

// tapeFraction reads a rule-and-tape fraction such as 5/8 at token i.
func tapeFraction(toks []token, i int) (v, den float64, ok bool) {
	if i+2 >= len(toks) || toks[i].kind != number || toks[i+1].low != "/" || !toks[i+1].glued ||
		toks[i+2].kind != number || !toks[i+2].glued {
		return 0, 0, false
	}
	if i+4 < len(toks) && toks[i+3].low == "/" && toks[i+3].glued && toks[i+4].kind == number {
		return 0, 0, false
	}
	num, err := strconv.Atoi(toks[i].low)
	low, err2 := strconv.Atoi(toks[i+2].low)
	if err != nil || err2 != nil || num <= 0 || num >= low {
		return 0, 0, false
	}
	switch low {
	case 2, 3, 4, 5, 8, 10, 16, 32, 64:
		return float64(num) / float64(low), float64(low), true
	}
	return 0, 0, false
}
