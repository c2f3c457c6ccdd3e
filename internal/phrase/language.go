package phrase

// wordData is the layout of knowledge/words.json.
type wordData struct {
	Figures  figureData   `json:"figures"`
	Dates    dateData     `json:"dates"`
	Language languageData `json:"language"`
}

// languageData is the part of words.json about clauses.
type languageData struct {
	Abbreviations []string `json:"abbreviations"`
}

// language holds the compiled words of clauses.
type language struct {
	abbreviations map[string]bool
}

func newLanguage(d languageData) (*language, error) {
	return &language{abbreviations: set(d.Abbreviations)}, nil
}
