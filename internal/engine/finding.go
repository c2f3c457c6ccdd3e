package engine

// Finding is one judged mistake or caution, at the line where the reader would
// fix it. It follows schema/findings.schema.json.
type Finding struct {
	Rule     string    `json:"rule"`
	Topic    string    `json:"topic"`
	Severity string    `json:"severity"` // error, warning, note
	File     string    `json:"file"`
	Sheet    string    `json:"sheet"`
	Row      int       `json:"row"`
	Cells    []string  `json:"cells"`
	Mark     string    `json:"mark"`
	Message  string    `json:"message"`
	Reason   string    `json:"reason"`
	Remedy   string    `json:"remedy"`
	Source   string    `json:"source"`
	Related  []Related `json:"related,omitempty"`
	Waived   *Waived   `json:"waived,omitempty"`
	// Facts are ids of the facts of the document that were judged: contacts,
	// items, and checks of a window as "item bound". Reports draw by them.
	Facts []string `json:"-"`
	// Throughout: it is told once for the rows of a table that Related lists.
	Throughout bool `json:"-"`
}

// Related is another row that takes part in a finding.
type Related struct {
	Sheet string   `json:"sheet"`
	Row   int      `json:"row"`
	Cells []string `json:"cells,omitempty"`
	What  string   `json:"what"`
	Cause bool     `json:"-"` // a comparison's word for what brings the finding, no part of it
}

// Waived says that a finding was accepted, and until when.
type Waived struct {
	Reason    string `json:"reason"`
	Reference string `json:"reference,omitempty"`
	By        string `json:"by"`
	Until     string `json:"until,omitempty"`
	At        string `json:"at,omitempty"` // where the waiver is written
}
