package material

import "abut/internal/phrase"

// Nouns gives the materials of a text as nouns of a clause, so that a
// Vocabulary is a phrase.Lexicon. The key is the family, or the first trait of
// a material whose family is not known.
func (v *Vocabulary) Nouns(text string) []phrase.Noun {
	found := v.Find(text)
	nouns := make([]phrase.Noun, 0, len(found))
	for _, m := range found {
		n := phrase.Noun{Span: phrase.Span{Start: m.Start, End: m.End}, Kind: "material"}
		if len(m.Keys) > 0 {
			n.Key = m.Keys[0]
		}
		nouns = append(nouns, n)
	}
	return nouns
}
