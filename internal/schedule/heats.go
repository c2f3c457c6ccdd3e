package schedule

import (
	"slices"
	"strings"
)

// heats parts a cell of temperatures that tells both at what a product goes on and
// what it bears in service: "40 °F; service 180 °F". Under a heading of both
// ("install / service") a piece that names neither is what stands in its place
// there, and one alone is what the heading names first.
func (r *reader) heats(c source) []source {
	if c.slot != "apply" && c.slot != "service_max" {
		return []source{c}
	}
	order := r.head.heatOrder(c.heading)
	var out []source
	for _, text := range r.heatPieces(c, len(order) == 2) {
		one := c
		one.slot, one.text = r.heatOpening(text)
		switch {
		case one.slot == "" && r.words.hasAny(text, r.words.serves):
			one.slot = "service_max"
		case one.slot == "" && len(order) == 2:
			one.slot = order[min(len(out), 1)]
		case one.slot == "":
			one.slot = c.slot
		}
		if r.isHeat(one) && !slices.ContainsFunc(out, func(o source) bool { return o.slot == one.slot }) {
			out = append(out, one)
		}
	}
	if !slices.ContainsFunc(out, func(o source) bool { return o.slot != c.slot }) {
		return []source{c}
	}
	return out
}

// heatOpening is the slot of a piece by the words that it opens with, "" for none, and
// what follows them.
func (r *reader) heatOpening(text string) (slot, rest string) {
	text = strings.TrimSpace(text)
	if slot, rest = r.opening(text); slot == "apply" || slot == "service_max" {
		return slot, strings.TrimPrefix(rest, "at ")
	}
	return "", text
}

// heatPieces parts a cell as a list, or at the stroke between two temperatures under a
// heading of both.
func (r *reader) heatPieces(c source, both bool) []string {
	if halves := strings.Split(c.text, "/"); both && len(halves) == 2 {
		first, second := c, c
		first.text, second.text = strings.TrimSpace(halves[0]), strings.TrimSpace(halves[1])
		if r.isHeat(first) && r.isHeat(second) {
			return halves
		}
	}
	var out []string
	for _, piece := range r.words.splitList(c.text) {
		out = append(out, piece.text)
	}
	return out
}

// isHeat holds for a cell or a piece of one that tells a temperature.
func (r *reader) isHeat(c source) bool {
	f, said := r.figure(c, "temperature")
	return said && f.Problem == "" && !f.NoLimit
}

// heatOrder is what a heading that names both temperatures names first and second;
// nil for one that does not name both.
func (h *headings) heatOrder(text string) []string {
	var out []string
	for _, part := range headingParts(text) {
		words := headingWords(part)
		slot := ""
		switch {
		case holdsAny(words, h.service):
			slot = "service_max"
		case holdsAny(words, h.applies):
			slot = "apply"
		}
		if slot != "" && !slices.Contains(out, slot) {
			out = append(out, slot)
		}
	}
	if len(out) < 2 {
		return nil
	}
	return out
}
