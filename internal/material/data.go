package material

// The word lists as they stand in the policy tree.

type familyData struct {
	Name    string   `json:"name"`
	Class   string   `json:"class"`
	Traits  []string `json:"traits"`
	Words   []string `json:"words"`
	Weak    []string `json:"weak_words"`
	Not     []string `json:"not_words"`
	MadeOf  []string `json:"made_of"`
	Generic bool     `json:"generic"`
}

type termData struct {
	Kind      string   `json:"kind"`
	Implies   []string `json:"implies"`
	Classes   []string `json:"classes"`
	Add       []string `json:"add"`
	Drop      []string `json:"drop"`
	On        []string `json:"on"`
	Words     []string `json:"words"`
	Weak      []string `json:"weak_words"`
	Base      bool     `json:"base"`
	Alone     bool     `json:"alone"`
	Grade     bool     `json:"grade"`
	Component bool     `json:"component"`
}

type wordsData struct {
	Terms       map[string]termData `json:"terms"`
	Spelling    map[string]string   `json:"spelling"`
	Glue        []string            `json:"glue"`
	Breaks      []string            `json:"breaks"`
	Loose       []string            `json:"loose_breaks"`
	Denials     []string            `json:"denials"`
	Whole       []string            `json:"whole_words"`
	Soft        []string            `json:"soft_breaks"`
	Layered     []string            `json:"layered"`
	Partings    []string            `json:"partings"`
	OfNumber    []string            `json:"number_glue"`
	NameWords   []string            `json:"name_words"`
	LookAlikes  []string            `json:"look_alikes"`
	FuzzyLength int                 `json:"fuzzy_length"`
	NameLeads   []string            `json:"name_leads"`
	Cites       []string            `json:"cites"`
	Outsiders   []string            `json:"outsiders"`
	Adjectives  []string            `json:"adjective_endings"`
	Colors      []string            `json:"colors"`
	ColorLeads  []string            `json:"color_leads"`
	NoSlips     []string            `json:"no_slips"`
	SlipLength  int                 `json:"slip_length"`
	NearAt      float64             `json:"near_at"`
}
