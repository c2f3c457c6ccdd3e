package contact

import (
	"strconv"

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
	var text []byte
	for i := range contacts {
		c := &contacts[i]
		text = c.says(text[:0], roles)
		if first[string(text)] == "" {
			first[string(text)] = c.ID
		}
		c.Case = first[string(text)]
	}
}

// says writes all that a contact tells, but not where it stands.
func (c *Contact) says(text []byte, roles map[string]string) []byte {
	write := func(parts ...string) {
		for _, p := range parts {
			text = append(append(text, p...), 0)
		}
	}
	write(c.Kind, c.From, c.Upper, strconv.FormatBool(c.Wet), roles[c.Line], c.Clause)
	write(c.Signals...)
	if c.ClearMM != nil {
		write("clear", strconv.FormatFloat(*c.ClearMM, 'g', -1, 64))
	}
	for _, end := range []*End{&c.A, &c.B, c.Separator} {
		if write("\x01"); end == nil {
			continue
		}
		write(roles[end.Line], end.Slot, end.Text, end.Tag, end.Product, end.Family, end.Name, end.Class)
		write(end.Keys...)
	}
	return text
}
