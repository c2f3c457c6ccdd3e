package engine

const rulesReplaced = "rules replaced"

// Change is something that an office or the settings have otherwise than it is
// built in. It is said in every report, since it may silence a rule.
type Change struct {
	What string `json:"what"` // rules off, rules graded, rules replaced, data changed
	Name string `json:"name"` // id or package of a rule, key of the data
	By   string `json:"by"`   // settings, or the folder or file
}

// Changes lists them: rules first, then data in the order of the folders.
func (e *Engine) Changes() []Change {
	var out []Change
	for _, id := range e.options.Off {
		out = append(out, Change{"rules off", id, "settings"})
	}
	for _, id := range sortedKeys(e.options.Severity) {
		out = append(out, Change{"rules graded", id, "settings"})
	}
	return append(out, e.changes...)
}
