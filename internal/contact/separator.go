package contact

import (
	"slices"
	"strings"
	"unicode"

	"abut/internal/regexp"
	"abut/internal/schedule"
)

// separator finds a material that the row puts between the two: one of the
// separator class in a clause that names the second, or that says between.
func (f *finder) separator(a, b *schedule.Item) *schedule.Item {
	for i := range f.line.Items {
		s := &f.line.Items[i]
		if s.ID == a.ID || s.ID == b.ID || s.Polarity == "no" {
			continue
		}
		if f.bedHides(s, a, b) || slipOver(s, b) || wrappedIn(s, b) || f.coatOf(i, a, b) || f.coatOf(i, b, a) {
			return s
		}
		if s.Slot == "separator" && touching[b.Slot] && b.Slot != "substrate" && b.Slot != "primer" && !fills(s) {
			return s
		}
		if touching[b.Slot] && b.Slot != "substrate" && b.Slot != "primer" && f.keepsOff(s, b) {
			return s
		}
		if b.Slot == "touches" && f.past(s, b) || f.stripOn(s, b) {
			return s
		}
		if !separates(s) && !f.coats(s) && !goesAllAlong(s) && !holdsApart(s) {
			continue
		}
		if s.Slot == "remark" && s.At != b.At && f.remarked(s, a, b) {
			return s
		}
		if b.Slot == "substrate" && touching[s.Slot] && (f.aloneInCell(s) || f.coats(s) || f.laidUnder(s)) {
			return s
		}
		if f.saidCoated(s, b) {
			return s
		}
		if f.stuckWith(s, b) {
			continue
		}
		if f.coversFirst(s, b) {
			return s
		}
		if s.At == b.At && (s.Clause == b.Clause || f.namedWith(s, b) || f.alone(s) || f.follows(s, b) || f.comesBetween(s, b) || f.goesOnBetween(s, b)) {
			return s
		}
		if touching[s.Slot] && s.At != b.At && f.putBetween(s, b) {
			return s
		}
	}
	return nil
}

// slipOver holds for the slip sheet that the cell of the bed names after a membrane, on which it
// says that the row's own lies: "HRW at the joint, on a slip sheet". A membrane lies on none
// itself; a topping or board may.
func slipOver(s, b *schedule.Item) bool {
	return b.Slot == "substrate" && b.Class == "membrane" && s.At == b.At && s.Clause != b.Clause && s.Relation == "on" &&
		s.Side == "object" && slices.Contains(s.Signals, "separator")
}

// wrappedIn holds for the sheet or tape that b itself is wrapped in: "treated blocking wrapped
// all round in FT-2", whatever then lies on it.
func wrappedIn(s, b *schedule.Item) bool {
	wraps := s.Class == "tape" || s.Class == "membrane" || s.Class == "separator"
	return wraps && s.At == b.At && s.Clause == b.Clause && s.Side == "object" && b.Side == "subject" && b.Polarity == "yes" &&
		s.Relation == "set_in" && b.Relation == "set_in" && slices.Contains(s.Signals, "wraps_whole") && !slices.Contains(s.Signals, "coat_in_part")
}

// holdsApart holds for sheet metal of which a remark says that it keeps the two apart:
// "steel closure holds them apart".
func holdsApart(s *schedule.Item) bool {
	return s.Slot == "remark" && s.Class == "flashing-metal" && s.Polarity == "yes" && slices.Contains(s.Signals, "put_between")
}

// past holds for sheet metal that a cell of neighbors calls the separator, and for what it
// names next, which lies behind that: "stainless separator, then FM-1".
func (f *finder) past(s, b *schedule.Item) bool {
	if s.At != b.At || s.Clause == b.Clause || s.Class != "flashing-metal" || !slices.Contains(s.Signals, "separator") {
		return false
	}
	i := slices.IndexFunc(f.line.Items, func(o schedule.Item) bool { return o.ID == s.ID })
	return i+1 < len(f.line.Items) && f.line.Items[i+1].ID == b.ID && (i == 0 || f.line.Items[i-1].At != s.At)
}

// stripOn holds for a strip that the row of a metal lays on the very thing that its metal
// goes on, and past both edges of it: "FT-2 strip on nailer, 1/2 in. past each side".
func (f *finder) stripOn(s, b *schedule.Item) bool {
	strip := s.Class == "tape" || s.Class == "membrane" || s.Class == "separator"
	if !strip || s.Slot != "touches" || s.Side != "subject" || !lies[s.Relation] || !pastEdges.MatchString(f.line.Texts[s.Slot]) || f.main == nil || f.main.Class != "flashing-metal" {
		return false
	}
	return slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.At == s.At && o.Clause == s.Clause && o.Side == "object" && lies[o.Relation] &&
			(f.names(&o, b) || strings.HasSuffix(o.Family, "-unspecified") && o.Class == b.Class)
	})
}

// pastEdges are words by which a strip is wider than what lies on it.
var pastEdges = regexp.MustCompile(`(?i)\b(?:past|beyond|wider than) (?:(?:the|its|each|both|all|either|metal|flange) )*(?:sides?|edges?|metal|flange)\b|\bfull width\b`)

// pastMetal holds where a separator of sheet metal is named just before item i.
func (f *finder) pastMetal(i int) bool {
	return i > 0 && f.past(&f.line.Items[i-1], &f.line.Items[i]) && f.line.Items[i].Polarity == "yes" && f.line.Items[i-1].Polarity == "yes"
}

// coversFirst holds for a separator that a cell of covers names before another: what
// covers a sheet is told from the sheet outward ("protection board, then foam").
func (f *finder) coversFirst(s, b *schedule.Item) bool {
	if s.Class != "separator" || s.Slot != "front" || s.At != b.At {
		return false
	}
	for i := range f.line.Items {
		if id := f.line.Items[i].ID; id == s.ID || id == b.ID {
			return id == s.ID
		}
	}
	return false
}

// keepsOff holds for the plate of "a plate keeps the rubber off the sheet" and of
// "rubber kept off the sheet by a plate", for all of the row that is rubber.
func (f *finder) keepsOff(s, b *schedule.Item) bool {
	does := s.Side == "subject" && awayWords[s.Relation] && slices.Contains(s.Signals, "keeps_off")
	if !does && (s.Side != "object" || s.Relation != "by") {
		return false
	}
	alone := true
	for i := range f.line.Items {
		o := &f.line.Items[i]
		if o.ID == s.ID || o.At != s.At || o.Clause != s.Clause || o.Side != "subject" || !awayWords[o.Relation] {
			continue
		}
		if alone = false; o.Polarity == "yes" && f.names(o, b) {
			return true
		}
	}
	i := slices.IndexFunc(f.line.Items, func(o schedule.Item) bool { return o.ID == s.ID })
	return does && alone && (i > 0 && f.names(&f.line.Items[i-1], b) || saysAgain(s, b)) // "keeps it off", "keeps PVC off"
}

// names holds where o says b again, or a word for what b is made of.
func (f *finder) names(o, b *schedule.Item) bool {
	return o.Family != "" && o.Family == b.Family || covers(endOf(f.line, *b), endOf(f.line, *o))
}

// awayWords are relations of what is kept off something.
var awayWords = map[string]bool{"clear_of": true, "from": true}

// remarked holds for a remark on the row that puts s between the two: it names
// one of their kind, or says so and names no other.
func (f *finder) remarked(s, a, b *schedule.Item) bool {
	if !touching[b.Slot] || b.Slot == "substrate" || b.Slot == "primer" {
		return false
	}
	others := 0
	for i := range f.line.Items {
		o := &f.line.Items[i]
		if o.ID == s.ID || o.At != s.At || o.Clause != s.Clause {
			continue
		}
		if s.Relation == "separated_by" && s.Side == "object" && o.Polarity == "yes" && s.Polarity == "yes" && f.names(o, b) {
			return true // "the EPDM is held off by the steel plate"
		}
		if others++; (o.Class == b.Class || says(b, o)) && o.Relation == "between" && a.Class != b.Class {
			return true
		}
	}
	by := s.Relation == "separated_by" && s.Side == "object" && s.Polarity == "yes" && saysAgain(s, b) // "PVC held off by the steel plate"
	return others == 0 && (slices.Contains(s.Signals, "put_between") || isBetween(s) || by || goesAllAlong(s))
}

// saysAgain holds where the words around the separator s have a word of b that is none of
// its own, though it is no material by itself: the PVC of "PVC roof membrane".
func saysAgain(s, b *schedule.Item) bool {
	around := strings.Replace(s.Clause, s.Text, "", 1)
	return slices.ContainsFunc(stuffWord.FindAllString(around, -1), func(w string) bool {
		return slices.Contains(stuffWord.FindAllString(b.Text, -1), w)
	})
}

// stuffWord is a word in capitals, as those for what a thing is made of are.
var stuffWord = regexp.MustCompile(`\b[A-Z]{3,5}\b`)

// goesAllAlong holds for sheet metal or a film that a remark calls the separator, over the
// whole length: "stainless separator full length", "poly slip sheet, full width".
func goesAllAlong(s *schedule.Item) bool {
	parts := s.Class == "flashing-metal" || slices.Contains(s.Keys, "separator")
	return s.Slot == "remark" && s.Polarity == "yes" && parts && slices.Contains(s.Signals, "separator") && wholeLength.MatchString(s.Clause)
}

var wholeLength = regexp.MustCompile(`(?i)\b(?:full|whole|entire|continuous(?:ly)?|unbroken)\b`)

// isBetween holds for "separation strip, full width between": its own words call it a
// separator, and what it lies between is not named again.
func isBetween(s *schedule.Item) bool {
	return s.Relation == "between" && s.Side == "subject" && slices.Contains(s.Signals, "separator")
}

// stuckWith holds for "board dabbed on with adhesive": what sticks the separator
// to the row's own material meets that too.
func (f *finder) stuckWith(s, b *schedule.Item) bool {
	sticks := b.Class == "mastic" || b.Class == "adhesive"
	return sticks && s.At == b.At && s.Clause == b.Clause && s.Side == "subject" && b.Side == "object" && bedWords[b.Relation]
}

// bedWords are relations of what something is stuck with.
var bedWords = map[string]bool{"with": true, "set_in": true, "by": true, "sealed_with": true, "fastened_by": true, "on": true}

// fills holds for a backer ("rod"), which carries a bead and keeps it off nothing,
// and for what is not known.
func fills(s *schedule.Item) bool {
	return slices.Contains(s.Keys, "bond-breaker") || s.Family == "" && s.Tag == "" && len(s.Keys) == 0
}

// separates holds for separator classes and for what the words put between.
func separates(s *schedule.Item) bool {
	return s.Class == "separator" || slices.Contains(s.Keys, "separator") || s.Class == "tape" && slices.Contains(s.Signals, "separator") ||
		s.Relation == "separated_by" && s.Side == "object" || isMetalBetween(s) || s.Relation == "between" && s.Side != "object" && s.Class != "roofing"
}

// isMetalBetween holds for sheet metal that its own words call the separator, which another
// has, ends at or lies behind: "FM-1 with steel separator", "the rubber stops at a stainless
// separator strip", "the rubber behind a steel separator"; or by a tag for it: "EPDM behind SEP-2".
func isMetalBetween(s *schedule.Item) bool {
	met := s.Relation == "with" || s.Relation == "at" || s.Relation == "on" || s.Relation == "behind"
	return met && s.Side == "object" && s.Class == "flashing-metal" &&
		(slices.Contains(s.Signals, "separator") && ownSeparator.MatchString(s.Text) || separatorTag.MatchString(s.Tag))
}

// separatorTag is a tag that calls its metal the separator.
var separatorTag = regexp.MustCompile(`(?i)^sep(?:arator)?[-. ]?\d*[a-z]?$`)

// ownSeparator is the word by which a thing itself is called the separator.
var ownSeparator = regexp.MustCompile(`(?i)\bseparat(?:or|ion)\b`)

// follows holds for "gasket, separated by tape": a clause that names no other
// side tells of the material just before it.
func (f *finder) follows(s, b *schedule.Item) bool {
	for i := 1; i < len(f.line.Items); i++ {
		if f.line.Items[i].ID == s.ID {
			through := s.Relation == "through" && (s.Class == "separator" || s.Class == "tape") // "the sheet, through tape"
			if padded := s.At == b.At && slices.Contains(s.Signals, "separator"); padded && f.line.Items[i-1].ID == b.ID {
				return true // "galvanized angle, neoprene pad"
			}
			return (s.Relation == "separated_by" || through) && s.Side == "object" && f.line.Items[i-1].ID == b.ID
		}
	}
	return false
}

// comesBetween holds for the board of "shims are EPDM – board between shim and membrane":
// a clause that names the sheet alone as a material tells of the clause before it.
func (f *finder) comesBetween(s, b *schedule.Item) bool {
	if s.Relation != "between" || s.Side != "subject" || f.main == nil {
		return false
	}
	items := f.line.Items
	here := func(o schedule.Item) bool { return o.At == s.At && o.Clause == s.Clause }
	first := slices.IndexFunc(items, here)
	sheet := slices.ContainsFunc(items, func(o schedule.Item) bool { return here(o) && o.Side == "object" })
	other := slices.ContainsFunc(items, func(o schedule.Item) bool {
		return here(o) && o.Side == "object" && !f.same(&o) && o.Class != f.main.Class
	})
	return sheet && !other && first > 0 && items[first-1].At == b.At && items[first-1].Clause == b.Clause
}

// goesOnBetween holds for "isolation strip, 200 mm wide, between it and FM-1": after the size
// of the separator the words go on with what it lies between.
func (f *finder) goesOnBetween(s, b *schedule.Item) bool {
	if b.Relation != "between" || b.Side != "object" || b.Polarity != "yes" {
		return false
	}
	items := f.line.Items
	i := slices.IndexFunc(items, func(o schedule.Item) bool { return o.At == b.At && o.Clause == b.Clause })
	return i > 0 && items[i].Side == "object" && items[i-1].ID == s.ID
}

// putBetween holds for "isolation strip, 200 mm wide, between the sheet and the rubber" in another
// cell of neighbors than the rubber's own: of the two that its words name, one is b.
func (f *finder) putBetween(s, b *schedule.Item) bool {
	parts := func(o *schedule.Item) bool {
		return o.ID != s.ID && o.At == s.At && (o.Clause == s.Clause && o.Side == "object" && o.Relation == "between" || f.goesOnBetween(s, o))
	}
	first := slices.IndexFunc(f.line.Items, func(o schedule.Item) bool { return parts(&o) })
	if first < 0 {
		return false
	}
	pair := f.line.Items[first]
	return slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.ID != s.ID && o.At == s.At && o.Clause == pair.Clause && o.Polarity == "yes" && o.Relation == "between" && f.names(&o, b)
	})
}

// alone holds for "tape between" that names neither side: it stands between the
// row's own material and all else in the cell.
func (f *finder) alone(s *schedule.Item) bool {
	if s.Relation != "between" {
		return false
	}
	for i := range f.line.Items {
		if o := &f.line.Items[i]; o.ID != s.ID && o.At == s.At && o.Clause == s.Clause && !says(s, o) {
			return false
		}
	}
	return true
}

// says holds where o is a word for what s is: the butyl of "butyl B-1 between".
func says(s, o *schedule.Item) bool {
	return o.Family == "" && len(o.Traits) > 0 && !slices.ContainsFunc(o.Traits, func(t string) bool { return !slices.Contains(s.Traits, t) })
}

// coats holds for a coat of isolating paint on the row's own metal, which parts it
// from the mortar or concrete that it is bedded in.
func (f *finder) coats(s *schedule.Item) bool {
	return s.Class == "coating" && (slices.Contains(s.Keys, "separator") || slices.Contains(s.Keys, "asphaltic")) && f.main != nil &&
		(f.main.Class == "flashing-metal" || f.main.Class == "fastener" && slices.Contains(f.main.Keys, "metal"))
}

// saidCoated holds for a coat that a remark, or the cell of the row's own metal, says the
// metal has, whatever it then lies on: "bituminous paint both faces", "wrapped in isolation
// tape". Words that name another thing tell of the coat of that, and a fastener goes through it.
func (f *finder) saidCoated(s, b *schedule.Item) bool {
	if f.main == nil || f.main.Class != "flashing-metal" && (f.main.Class != "fastener" || b.Class != "masonry") || !bears[b.Slot] || bridges[b.Class] {
		return false
	}
	own := s.Slot == "remark" || s.Slot == "material" || s.At == f.main.At || f.coatsOwn(s)
	wraps := (s.Class == "separator" || s.Class == "tape" || slices.Contains(s.Keys, "polyethylene-film")) && slices.Contains(s.Signals, "wraps_whole")
	if !own || s.Polarity != "yes" || !f.coats(s) && !wraps || slices.Contains(s.Signals, "coat_in_part") {
		return false
	}
	return !slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.ID != s.ID && o.At == s.At && o.Clause == s.Clause && o.Family != "" && !f.isOwnForm(&o) &&
			(o.Family != f.main.Family && o.Family != b.Family || o.Relation == "after") // "once the mortar is in"
	})
}

// coatOf holds for item i, a coat told right after a piece of sheet metal, and for any other
// words of the row for that piece where it lies on masonry: "aluminum angle, bituminous paint on
// its faces" in one cell and "aluminum angle set in grout" in another.
func (f *finder) coatOf(i int, metal, bed *schedule.Item) bool {
	s := &f.line.Items[i]
	if i == 0 || metal.Class != "flashing-metal" || bed.Class != "masonry" && bed.Class != "substrate" || s.Class != "coating" ||
		!slices.Contains(s.Keys, "separator") && !slices.Contains(s.Keys, "asphaltic") || slices.Contains(s.Signals, "coat_in_part") {
		return false
	}
	before := &f.line.Items[i-1]
	return before.At == s.At && before.Polarity == "yes" && before.Family == metal.Family && before.Class == metal.Class && f.aloneInClause(s, before)
}

// aloneInClause holds where the clause of s names nothing besides itself and another item.
func (f *finder) aloneInClause(s, other *schedule.Item) bool {
	return !slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.ID != s.ID && o.ID != other.ID && o.At == s.At && o.Clause == s.Clause && o.Family != "" && o.Family != other.Family
	})
}

// coatsOwn holds for a coat that a cell of neighbors tells of the row's own metal, by its
// form: "mortar; angle coated with bituminous paint" in the row of a sill angle.
func (f *finder) coatsOwn(s *schedule.Item) bool {
	if !(s.Relation == "with" && s.Side == "object") && !isCoated.MatchString(s.Text) {
		return false
	}
	return slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.ID != s.ID && o.At == s.At && o.Clause == s.Clause && o.Side != "object" && f.isOwnForm(&o)
	})
}

// isCoated is how a coat is told with the word for it: "coated with bituminous paint".
var isCoated = regexp.MustCompile(`(?i)^(?:coated|painted)\b`)

// isOwnForm holds for a word for the form of a metal part ("angle", "plate") by which the
// name of the row's own calls it too.
func (f *finder) isOwnForm(o *schedule.Item) bool {
	form, _, _ := strings.Cut(strings.ToLower(o.Text), " ")
	own := strings.FieldsFunc(strings.ToLower(f.main.Name+" "+f.line.Texts["material"]), func(r rune) bool { return !unicode.IsLetter(r) })
	return o.Tag == "" && slices.Contains(o.Keys, "metal") && slices.Contains(own, form)
}

// bears are the columns of what the row's own material lies on or against, and bridges
// the classes of what goes through a coat or is laid on it.
var bears = map[string]bool{"substrate": true, "touches": true, "left": true, "right": true, "top": true, "bottom": true, "front": true, "behind": true, "edge": true}

var bridges = map[string]bool{"fastener": true, "sealant": true, "mastic": true, "adhesive": true, "primer": true, "coating": true}

// aloneInCell holds for "strip between" as all that a cell tells of neighbors: it
// parts the row's material from what it goes on.
func (f *finder) aloneInCell(s *schedule.Item) bool {
	if s.Relation != "between" || s.Slot == "substrate" {
		return false
	}
	for i := range f.line.Items {
		if o := &f.line.Items[i]; o.ID != s.ID && o.At == s.At && !f.same(o) && o.Side != "subject" {
			return false
		}
	}
	return true
}

// laidUnder holds for "fleece under" that names nothing else: it lies under the
// row's own material, and so on what that goes on.
func (f *finder) laidUnder(s *schedule.Item) bool {
	return s.Class == "separator" && s.Relation == "under" && s.Side == "subject" && s.Slot != "substrate" &&
		!slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
			return o.ID != s.ID && o.At == s.At && o.Clause == s.Clause
		})
}

// namedWith holds where another clause of the cell names the separator
// together with the same product as b.
func (f *finder) namedWith(s, b *schedule.Item) bool {
	for i := range f.line.Items {
		o := &f.line.Items[i]
		if o.Clause == s.Clause && o.At == s.At && o.ID != s.ID && o.Tag != "" && o.Tag == b.Tag {
			return true
		}
	}
	return false
}
