package contact

import (
	"slices"
	"strings"

	"abut/internal/regexp"
	"abut/internal/schedule"
)

// keptByKind is what the row says of the chemistry of a neighbor that a column
// lists: "the butyl never gets to the foil", "the EPDM ends 2 in. short of the sheet",
// "butyl strip between EPDM and sheet".
func (f *finder) keptByKind(c Contact) (Contact, bool) {
	i := slices.IndexFunc(f.found, func(by Contact) bool {
		if by.Kind != "apart" && by.Kind != "separated" || by.B.Item == c.B.Item || by.A.Item != c.A.Item || !(by.B.Family == "" && covers(c.B, by.B) || anySheet(by.B, c.B)) {
			return false
		}
		at := slices.IndexFunc(f.line.Items, func(it schedule.Item) bool { return it.ID == by.B.Item })
		if at < 0 { // of another row
			return false
		}
		it := &f.line.Items[at]
		if by.Kind == "separated" {
			return by.From == "remark" || by.From == "edge"
		}
		elsewhere := it.Side == "subject" && slices.Contains(it.Signals, "lies_elsewhere") // "EPDM bonded to the wood curb only"
		return elsewhere || it.Polarity == "no" && it.Relation != "" || by.From == "remark" && f.stopsShort(at)
	})
	if i < 0 {
		return Contact{}, false
	}
	return f.found[i], true
}

// anySheet holds for words for a sheet that do not tell which, and so mean the one of the
// row: "no gasket on membrane".
func anySheet(words, sheet End) bool {
	return words.Product == "" && strings.HasSuffix(words.Family, "-unspecified") && words.Class == "membrane" && sheet.Class == "membrane"
}

// bedHides holds for the sheet metal that the row's own rubber or sheet lies on, and for
// what its words put on the other side of that: "the seal bears on the steel angle, FM-1
// stops behind it", "the angle laps over FM-1". A bead is no such material, since it goes
// over the metal's edge, nor is a fastener, which goes through.
func (f *finder) bedHides(s, a, b *schedule.Item) bool {
	if f.main == nil || a.ID != f.main.ID || s.Slot != "substrate" || s.Class != "flashing-metal" || s.Polarity != "yes" || throughOrOver[a.Class] || b.Class == s.Class {
		return false
	}
	bare := slices.ContainsFunc(f.line.Items, func(o schedule.Item) bool {
		return o.Slot == "substrate" && o.ID != b.ID && o.Class != "flashing-metal" // the row's own lies on more than the metal
	})
	return !bare && (f.putBehind(s, b) || a.Class == "gasket" && beyondFrame(s, b))
}

// beyondFrame holds for what a clause puts on the far side of the frame in whose pocket a
// gasket sits: "sheet on the outside of the frame", "AB-1 laps the back of the mullion".
// The frame is called by the last word of the gasket's bed, and the clause ends with it,
// since "outside of the frame and into the pocket" goes on to the gasket.
func beyondFrame(s, b *schedule.Item) bool {
	bed, far := strings.Fields(strings.ToLower(s.Text)), farSide.FindStringSubmatch(b.Clause)
	return far != nil && len(bed) > 0 && strings.EqualFold(far[1], bed[len(bed)-1]) && b.Slot == "touches"
}

// farSide are words for the side of a frame that lies away from its pocket.
var farSide = regexp.MustCompile(`(?i)\b(?:(?:outside|(?:outer|exterior|outward|back|rear|far|other|wall) (?:face|side|leg|edge)|back) of|outside|outboard of|behind) (?:the )?(?:\pL+ )?(\pL+)\W*$`)

// throughOrOver are the classes of what joins both sides of a sheet of metal, and metal itself.
var throughOrOver = map[string]bool{"sealant": true, "mastic": true, "adhesive": true, "primer": true, "coating": true, "fastener": true, "flashing-metal": true}

// putBehind holds where a clause puts b under or behind the metal s, or s over b; metal
// named by its shape alone ("behind the angle") is the one of the bed.
func (f *finder) putBehind(s, b *schedule.Item) bool {
	hidden := b.Side == "subject" && behindWords[b.Relation]
	covered := b.Side == "object" && onto[b.Relation]
	if !hidden && !covered {
		return false
	}
	metal, other := false, false
	for i := range f.line.Items {
		o := &f.line.Items[i]
		if o.ID == b.ID || o.At != b.At || o.Clause != b.Clause || o.Side == b.Side {
			continue
		}
		if o.Family == s.Family && (o.Product == "" || s.Product == "" || o.Product == s.Product) {
			metal = true
		} else {
			other = true
		}
	}
	return !other && (metal || hidden)
}

// behindWords are relations of what lies on the other side of another.
var behindWords = map[string]bool{"behind": true, "under": true, "below": true}
