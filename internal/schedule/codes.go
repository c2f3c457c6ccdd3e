package schedule

import (
	"cmp"
	"slices"
	"strings"
	"unicode"

	"abut/internal/regexp"
)

// codeShaped is the shape of the codes that offices call their materials by: "SM-2",
// "27-A", "K12", "7.3", "B-2a", "07-27-01", "A".
var codeShaped = regexp.MustCompile(`^#?\pL{0,5}\d{0,6}\pL{0,2}(?:[-./_ ]?\pL{0,5}\d{1,5}\pL{0,2}|[-./_ ]\pL{1,3}){0,3}$`)

// isCode holds for a text that may be the code of a material: one of that shape, with
// a digit or in capitals, which is no word of the trade ("EPDM").
func (r *reader) isCode(text string) bool {
	if text == "" || len(text) > longestCode || !codeShaped.MatchString(text) {
		return false
	}
	return strings.ContainsFunc(text, unicode.IsDigit) || text == strings.ToUpper(text) && !r.isTradeWord(text)
}

// longestCode is how long the key of a product is at most.
const longestCode = 12

// enclosed is a text in brackets of any kind, with nothing else.
var enclosed = regexp.MustCompile(`^(?:\[([^\[\]]+)\]|\(([^()]+)\)|\{([^{}]+)\}|<([^<>]+)>)$`)

// withoutBrackets takes the brackets off a code.
func withoutBrackets(text string) string {
	text = strings.TrimSpace(text)
	if m := enclosed.FindStringSubmatch(text); m != nil {
		return strings.TrimSpace(cmp.Or(m[1:]...))
	}
	return text
}

// isWeak holds for a code that reads as a figure or a word too ("7.3", "A"), and so is
// one only where it cannot be that.
func isWeak(code string) bool {
	return figureLike.MatchString(code) || loneLetter.MatchString(code)
}

var (
	figureLike = regexp.MustCompile(`^\d+(?:[-./]\d+)?$`)
	wholeLike  = regexp.MustCompile(`^\d+$`)
	loneLetter = regexp.MustCompile(`^\pL$`)
	codeWord   = regexp.MustCompile(`[^\s,;:()\[\]{}<>+&|]+`)
	unitAfter  = regexp.MustCompile(`^\s*(?:/\d|(?:in|mm|cm|m|mils?|ft|kg|g|d|days?|h|hrs?|hours?|no|pcs|oz|lb)\b|["'%°×x])`)
	goesOn     = regexp.MustCompile(`^[-.][\pL\d]`) // "7.3" in "7.3.1"
	comesFrom  = regexp.MustCompile(`[\pL\d][-.]$`)
	joiners    = regexp.MustCompile(`^(?i:on|over|to|and|with|w|or|under|then|plus|/|-|–|—)$`)
)

// boxed is a code that stands alone or in square brackets.
var boxed = regexp.MustCompile(`^\s*([^\s\[\]]+)\s*$|\[([^\s\[\]]+)\]`)

// box is a pair of brackets that offices set around codes; round ones are an aside after
// a word.
var box = regexp.MustCompile(`\[[^\[\]]*\]|\{[^{}]*\}|<[^<>]*>|(?:^|[,;+/&])\s*\([^()]*\)`)

// unboxed blanks out the brackets around tags, which part no words: "laps 50 over [27-A]".
func (l *lexicon) unboxed(text string) string {
	return box.ReplaceAllStringFunc(text, func(in string) string {
		from := strings.IndexAny(in, "[{<(")
		inner := in[from+1 : len(in)-1]
		if strings.Trim(mask(inner, l.findTags(inner)), "|,;/+& ") != "" {
			return in
		}
		return in[:from] + " " + inner + " "
	})
}

// codeLead is what a code of numbers has before its last part: "27-" of "27-H",
// "07-27-" of "07-27-01"; "" for others.
func codeLead(code string) string {
	at := strings.LastIndexAny(code, "-./")
	if at < 1 || at+1 == len(code) || len(code) > longestCode || !codeShaped.MatchString(code) || isWeak(code) || !unicode.IsDigit(rune(code[0])) {
		return ""
	}
	return strings.ToUpper(code[:at+1])
}

// standsAsCode holds for a place of a text in which a weak code is one: alone, in
// brackets, in a list of nothing but codes, or at the head of a cell whose words do not
// go on with it.
func standsAsCode(text string, start, end int) bool {
	code, before, after := text[start:end], strings.TrimSpace(text[:start]), text[end:]
	inside := before != "" && after != "" && strings.ContainsRune("[({<", rune(before[len(before)-1])) && strings.ContainsRune("])}>", rune(strings.TrimSpace(after)[:1][0]))
	switch {
	case before == "" && strings.TrimSpace(after) == "":
		return true
	case loneLetter.MatchString(code) && code != strings.ToUpper(code), unitAfter.MatchString(after), goesOn.MatchString(after), comesFrom.MatchString(before):
		return false
	case inside:
		return !wholeLike.MatchString(code) || before[len(before)-1] == '['
	case wholeLike.MatchString(code):
		return false
	case listsCodes(text):
		return true
	}
	return before == "" && (after[0] != ' ' && !partOfWord(after[0]) && after[0] != '.' || figureLike.MatchString(code) && after[0] == ' ')
}

// listsCodes holds for a text of nothing but codes and what stands between them.
func listsCodes(text string) bool {
	words := codeWord.FindAllString(text, -1)
	return !slices.ContainsFunc(words, func(w string) bool {
		return !joiners.MatchString(w) && !slices.ContainsFunc(strings.Split(w, "/"), func(part string) bool {
			return isWeak(part) && part == strings.ToUpper(part) || strings.ContainsFunc(part, unicode.IsDigit) && strings.ContainsFunc(part, unicode.IsLetter)
		})
	})
}

// codesIn lists the words of a cell that may be codes, folded, each with the parts of
// those that a stroke parts and with the word after it ("SM 2").
func codesIn(text string) []string {
	var out []string
	add := func(from, to int) {
		if code := text[from:to]; !isWeak(code) || standsAsCode(text, from, to) {
			out = append(out, fold(code))
		}
	}
	words := codeWord.FindAllStringIndex(text, -1)
	for i, w := range words {
		to := w[0] + len(strings.TrimRight(text[w[0]:w[1]], ".'\""))
		if to == w[0] {
			continue
		}
		add(w[0], to)
		if i+1 < len(words) && words[i+1][0] == w[1]+1 && text[w[1]] == ' ' {
			add(w[0], words[i+1][1])
		}
		for from := w[0]; strings.Contains(text[w[0]:to], "/") && from < to; {
			end := from + strings.IndexByte(text[from:to]+"/", '/')
			if end > from {
				add(from, end)
			}
			from = end + 1
		}
	}
	return out
}
