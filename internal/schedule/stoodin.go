package schedule

import "strings"

// stoodIn makes the product that a remark says came in place of the row's own the row's
// material ("LT on back order, use the SA-40 we have"): what is built is judged. The
// figures of the row were those of the product that it names, and go with it.
func (r *reader) stoodIn(l *Line) {
	own := l.Main()
	if own == nil || own.Product == "" {
		return
	}
	for i := range l.Items {
		it := &l.Items[i]
		if it.Slot != "remark" || it.Product == "" || it.Product == own.Product || !alike(own.Class, it.Class) || !r.saysStoodIn(l.Texts["remark"], it.Text) {
			continue
		}
		it.Slot, it.Relation, it.Side, it.Polarity = own.Slot, "", "", "yes"
		own.Relation, own.Side, own.Polarity = "instead_of", "object", "no"
		for _, key := range ofProducts {
			delete(l.Figures, key)
		}
		return
	}
}

// ofProducts are the figures of a row that tell of the product that it names.
var ofProducts = []string{
	"thickness_mm", "apply_min_c", "apply_max_c", "service_max_c", "exposure_days", "air_lsm2", "vapor_ng", "voc_gl",
}

// alike holds for classes of which one comes in place of the other.
func alike(a, b string) bool {
	sheet := func(class string) bool { return class == "membrane" || class == "tape" }
	return a == b || sheet(a) && sheet(b)
}

// saysStoodIn holds where the remark tells it of one of the places at which the name stands.
func (r *reader) saysStoodIn(remark, name string) bool {
	if r.words.stoodNot.MatchString(remark) {
		return false
	}
	parts := strings.Split(remark, name)
	for i := 1; i < len(parts); i++ {
		if r.words.stoodIn.MatchString(strings.Join(parts[:i], name) + "#" + strings.Join(parts[i:], name)) {
			return true
		}
	}
	return false
}
