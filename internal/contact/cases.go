package contact

import (
	"slices"
	"strconv"
	"strings"

	"abut/internal/schedule"
)

// shareCases gives contacts that say the same of the same materials the same
// case, the id of the first of them, so that a judgement is made once for all.
func shareCases(contacts []Contact, lines []schedule.Line) {
	roles := make(map[string]string, len(lines))
	for i := range lines {
		roles[lines[i].ID] = lines[i].Role
	}
	first := map[string]string{}
	for i := range contacts {
		c := &contacts[i]
		says := c.says(roles)
		if first[says] == "" {
			first[says] = c.ID
		}
		c.Case = first[says]
	}
}

// says writes all that a contact tells, but not where it stands.
func (c *Contact) says(roles map[string]string) string {
	parts := append([]string{c.Kind, c.From, strconv.FormatBool(c.Wet), roles[c.Line], c.Clause}, c.Signals...)
	if c.ClearMM != nil {
		parts = append(parts, "clear", strconv.FormatFloat(*c.ClearMM, 'g', -1, 64))
	}
	for _, end := range []*End{&c.A, &c.B, c.Separator} {
		if parts = append(parts, "\x01"); end == nil {
			continue
		}
		own := []string{roles[end.Line], end.Slot, end.Text, end.Tag, end.Product, end.Family, end.Name, end.Class}
		parts = slices.Concat(parts, own, end.Keys)
	}
	return strings.Join(parts, "\x00")
}
