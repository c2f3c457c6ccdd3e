package phrase

import (
	"slices"
	"strconv"
)

// asideData is the part of words.json about what is said of another case, time
// or version, and not of this work.
type asideData struct {
	Rules          []string `json:"rules"`
	RulesNeed      []string `json:"rules_need"`
	Supposed       []string `json:"supposed"`
	Cases          []string `json:"cases"`
	IfAny          []string `json:"if_any"`
	Disposed       []string `json:"disposed"`
	Versions       []string `json:"versions"`
	VersionsOfYear []string `json:"versions_of_year"`
	Trials         []string `json:"trials"`
	TrialsOfYear   []string `json:"trials_of_year"`
	Times          []string `json:"times"`
	TimesOfYear    []string `json:"times_of_year"`
	Instead        []string `json:"instead"`
	Declined       []string `json:"declined"`
	Likened        []string `json:"likened"`
	LikenedOver    []string `json:"likened_over"`
	Now            []string `json:"now"`
	Turns          []string `json:"turns"`
	Past           []string `json:"past"`
	Present        []string `json:"present"`
	Faults         []string `json:"faults"`
	Passing        []string `json:"passing"`
	Kept           []string `json:"kept"`
}

// Kinds of asides, as ids of their matcher.
const (
	asideRule = iota
	asideSupposed
	asideCase
	asideIfAny
	asideDisposed
	asideVersion
	asideVersionOfYear
	asideTrial
	asideTrialOfYear
	asideTime
	asideTimeOfYear
	asideInstead
	asideDeclined
)

// asides holds the compiled words of asides.
type asides struct {
	m                                     *matcher
	need, likened, likenedOver, now, turn map[string]bool
	past, present, faults, passing, kept  map[string]bool
}

func newAsides(d asideData) (*asides, error) {
	a := &asides{
		m: newMatcher(), need: set(d.RulesNeed), likened: set(d.Likened), likenedOver: set(d.LikenedOver), now: set(d.Now), turn: set(d.Turns),
		past: set(d.Past), present: set(d.Present), faults: set(d.Faults), passing: set(d.Passing), kept: set(d.Kept),
	}
	for id, list := range [][]string{d.Rules, d.Supposed, d.Cases, d.IfAny, d.Disposed, d.Versions, d.VersionsOfYear, d.Trials, d.TrialsOfYear, d.Times, d.TimesOfYear, d.Instead, d.Declined} {
		if err := a.m.addAll(id, list); err != nil {
			return nil, err
		}
	}
	return a, nil
}

// setAside marks the signals that are said of another case, time or version, and
// remembers the spans whose materials are.
func (p *clauseParser) setAside() {
	if len(p.signals) == 0 && len(p.nouns) == 0 {
		return
	}
	for _, h := range p.lang.asides.m.find(p.view) {
		p.aside(h)
	}
	for i := range p.view {
		if p.view[i].low == "?" && p.view[i].kind == sign { // asked, and not told
			p.hush(p.byteAt(p.begin(i)), p.byteAt(i), p.lang.asides.fault)
		}
	}
}

func (p *clauseParser) aside(h hit) {
	a := p.lang.asides
	switch h.id {
	case asideRule:
		if first, _ := p.part(h.from, nil); p.has(h.from, h.to, a.need) || p.has(first, h.from, a.need) && h.from-first < 2 {
			_, end := p.part(h.to-1, nil)
			p.hush(p.byteAt(h.from+1), p.endOf(end), func(id string) bool { return !a.kept[id] })
		}
	case asideSupposed:
		if p.opens(h.from, true) {
			p.hush(p.endOf(h.to), p.endOf(p.sentence(h.to)), nil)
		}
	case asideCase:
		if _, end := p.part(h.to-1, nil); p.opens(h.from, false) && !p.has(h.to, end, a.past) {
			p.hush(p.endOf(h.to), p.endOf(end), a.fault)
		}
	case asideIfAny:
		p.hush(p.byteAt(p.begin(h.from)), p.byteAt(h.from), a.fault)
	case asideDisposed:
		first := p.subject(h.from, nil)
		if first == h.from && first > 1 && p.view[first-1].low == "," { // "one dam missing, sent back"
			first, _ = p.part(first-2, nil)
		}
		p.hush(p.byteAt(first), p.byteAt(h.from), a.fault)
	case asideInstead:
		_, end := p.part(h.to-1, nil)
		p.hush(p.byteAt(h.to), p.endOf(end), a.unkept)
		p.gone = append(p.gone, Span{p.byteAt(h.to), p.endOf(end)})
	case asideDeclined:
		if first := p.subject(h.from, a.now); !p.likened(h.from) {
			p.hush(p.byteAt(first), p.byteAt(h.from), a.unkept)
			p.gone = append(p.gone, Span{p.byteAt(first), p.byteAt(h.from)})
		}
	default:
		p.elsewhen(h)
	}
}

func (a *asides) fault(id string) bool  { return a.faults[id] }
func (a *asides) unkept(id string) bool { return !a.kept[id] }

// elsewhen sets aside the part of a sentence that tells of another time or version.
func (p *clauseParser) elsewhen(h hit) {
	a := p.lang.asides
	if p.likened(h.from) || (h.id == asideVersionOfYear || h.id == asideTrialOfYear) && !isYear(p.view[h.from].low) {
		return
	}
	if h.id == asideTimeOfYear && !isYear(p.view[h.to-1].low) {
		return
	}
	from, to := p.part(h.from, a.now)
	past, present := p.has(from, to, a.past), p.has(from, to, a.present)
	takes := a.unkept
	switch h.id {
	case asideTime, asideTimeOfYear:
		takes = func(id string) bool { return a.passing[id] }
		if present || !past {
			return
		}
	case asideTrial, asideTrialOfYear:
		if present || h.id == asideTrialOfYear && !past {
			return
		}
	}
	p.hush(p.byteAt(from), p.endOf(to), takes)
	if past && h.id != asideTime && h.id != asideTimeOfYear {
		p.gone = append(p.gone, Span{p.byteAt(from), p.endOf(to)})
	}
}

// subject is where the words start that a verb bears on, brackets before it among
// them: "the alternate (pan without dams) was refused".
func (p *clauseParser) subject(i int, more map[string]bool) int {
	first, _ := p.part(i, more)
	for k := first - 1; k >= 0 && first > 0 && p.view[first-1].low == ")"; k-- {
		if p.closes[k] == first-1 {
			first, _ = p.part(max(0, k-1), more)
			break
		}
	}
	return first
}

func isYear(s string) bool {
	n, err := strconv.Atoi(s)
	return err == nil && n >= 1850 && n < 2100
}

// likened holds for "as in the old detail": this work is as that was.
func (p *clauseParser) likened(i int) bool {
	a := p.lang.asides
	for i--; i >= 0 && a.likenedOver[p.view[i].low]; i-- {
	}
	return i >= 0 && a.likened[p.view[i].low]
}

// part is the run of tokens around one that no comma, other sign or turn of the
// sentence cuts, nor one of more words.
func (p *clauseParser) part(i int, more map[string]bool) (from, to int) {
	cuts := func(k int) bool {
		hard, soft := p.cut(k)
		return hard || soft || p.lang.asides.turn[p.view[k].low] || more[p.view[k].low]
	}
	for from = i; from > 0 && !cuts(from-1); from-- {
	}
	for to = i + 1; to < len(p.view) && !cuts(to); to++ {
	}
	return from, to
}

// sentence is where the sentence of a token ends, begin where it starts.
func (p *clauseParser) sentence(i int) int {
	for ; i < len(p.view); i++ {
		if hard, _ := p.cut(i); hard || p.lang.asides.turn[p.view[i].low] {
			break
		}
	}
	return i
}

func (p *clauseParser) begin(i int) int {
	for ; i > 0; i-- {
		if hard, _ := p.cut(i - 1); hard {
			break
		}
	}
	return i
}

// opens holds for the first word of a sentence, or of a part of one.
func (p *clauseParser) opens(i int, sentence bool) bool {
	if i == 0 {
		return true
	}
	hard, soft := p.cut(i - 1)
	return hard || soft && !sentence
}

func (p *clauseParser) has(from, to int, words map[string]bool) bool {
	return slices.ContainsFunc(p.view[from:max(from, min(to, len(p.view)))], func(t token) bool { return words[t.low] })
}

func (p *clauseParser) byteAt(i int) int {
	if i >= len(p.view) {
		return len(p.text)
	}
	return p.view[i].Start
}

// endOf is where the token before i ends.
func (p *clauseParser) endOf(i int) int { return p.view[max(0, min(i, len(p.view))-1)].End }

// hush marks the signals of a kind that start between two bytes.
func (p *clauseParser) hush(from, to int, kind func(id string) bool) {
	for i := range p.signals {
		if s := &p.signals[i]; s.Start >= from && s.Start < to && (kind == nil || kind(s.ID)) {
			s.If = true
		}
	}
}

// isGone holds for a clause all of whose materials stand in a part that tells of
// another time or version, or of what was turned down.
func (p *clauseParser) isGone(cl *Clause) bool {
	if len(p.gone) == 0 || len(cl.Nouns) == 0 {
		return false
	}
	return !slices.ContainsFunc(cl.Nouns, func(n Noun) bool {
		return !slices.ContainsFunc(p.gone, func(s Span) bool { return n.Start >= s.Start && n.End <= s.End })
	})
}
