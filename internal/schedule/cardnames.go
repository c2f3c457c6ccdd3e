package schedule

import (
	"slices"
	"strings"
	"unicode"

	"abut/internal/regexp"
)

// cardLead is what may stand before the name at the head of a card.
var cardLead = regexp.MustCompile(`^(?i:(?:tag|code|product|item|mark|no\.?|card)\s*[:.#]?\s+)`)

// maxName is how many words the name of a product has at most, and maxHeadCells how
// many cells stand in a row at the head of a card.
const (
	maxName      = 4
	maxHeadCells = 3
)

// nameList parts the names of a card that is for several products.
var nameList = regexp.MustCompile(`\s*(?:[/,&+]|\band\b)\s*`)

var endBracket = regexp.MustCompile(`^(.*?)\s*[(\[]([^()\[\]]+)[)\]]$`)

// nameIn finds the name that the schedule uses at the head of a card: the whole text,
// or what it begins with ("FM-1 - butyl sheet"), has last in brackets ("Alder Sheet
// (FM-1)") or tells after a colon ("Data sheet 1: FM-1"). rest is what stands beside it.
func nameIn(text string, names *wordIndex) (name, rest string, ok bool) {
	text = strings.TrimSpace(cardLead.ReplaceAllString(strings.TrimSpace(text), ""))
	if len(strings.Fields(text)) <= maxName && isNamed(text, names) {
		return text, "", true
	}
	if len(namesIn(text, names)) > 1 {
		return text, "", true
	}
	if name, rest = nameFirst(text, names); name != "" {
		return name, rest, true
	}
	if m := endBracket.FindStringSubmatch(text); m != nil && isNamed(m[2], names) {
		return m[2], m[1], true
	}
	if _, after, found := strings.Cut(text, ":"); found {
		if name, rest = nameFirst(strings.TrimSpace(after), names); name != "" {
			return name, rest, true
		}
	}
	return "", "", false
}

// namesIn parts a text that lists names of the schedule and nothing else; nil for any
// other.
func namesIn(text string, names *wordIndex) []string {
	parts := nameList.Split(strings.TrimSpace(text), -1)
	if slices.ContainsFunc(parts, func(part string) bool { return !isNamed(part, names) }) {
		return nil
	}
	return parts
}

// nameFirst is the longest name of the schedule that a text begins with and that looks
// like one, parted from the rest by a sign or not.
func nameFirst(text string, names *wordIndex) (name, rest string) {
	words := strings.Fields(text)
	for n := min(maxName, len(words)); n > 0; n-- {
		name = strings.TrimRight(strings.Join(words[:n], " "), ":=,;.-–— ")
		if looksNamed(name) && isNamed(name, names) {
			if n == len(words)-1 && !looksCoded(name) && lastLetters.MatchString(text) {
				return text, "" // the schedule has another of the maker's, as "Alder Bond AQ"
			}
			return name, strings.TrimLeft(strings.Join(words[n:], " "), ":=-–— ")
		}
	}
	return "", ""
}

// lastLetters are the letters or figures that tell one product of a maker from another:
// "Alder Bond V".
var lastLetters = regexp.MustCompile(`[\pL\d] [A-Z\d]{1,2}$`)

// looksNamed holds for a code, or for several words of which each is a name: a single
// word that the schedule uses may be any.
func looksNamed(name string) bool {
	if looksCoded(name) {
		return true
	}
	words := strings.Fields(name)
	for _, w := range words {
		if first := []rune(w)[0]; !unicode.IsUpper(first) && !unicode.IsDigit(first) {
			return false
		}
	}
	return len(words) > 1
}

// looksCoded holds for a name with a figure, or of a few capitals.
func looksCoded(name string) bool {
	name = strings.TrimSpace(name)
	return strings.ContainsFunc(name, unicode.IsDigit) || len(name) <= longAcronym && strings.ToUpper(name) == name
}

// longAcronym is how many letters a code has at most that is written in capitals, as
// headings are ("EDGES").
const longAcronym = 4
