package engine

import (
	"context"

	"abut/internal/document"
)

// Bare is a row whose sheet stays open to the sun, with the limits that the
// rules hold its days against.
type Bare struct {
	Line   string      `json:"line"`
	Text   string      `json:"text"`
	Min    int         `json:"min"`
	Max    int         `json:"max"`
	From   string      `json:"from"`
	To     string      `json:"to"`
	Limits []BareLimit `json:"limits"`
}

// BareLimit is one limit in days. Level is how bad it is, "" within the limit.
type BareLimit struct {
	Days  float64 `json:"days"`
	By    string  `json:"by"`
	Level string  `json:"level"`
}

// Bare lists the rows with bare days in the order of the document, as
// policies/lib/bare.rego holds them against their limits.
func (e *Engine) Bare(ctx context.Context, doc *document.Document) ([]Bare, error) {
	var out []Bare
	err := e.lookUp(ctx, doc, "exposure", barePath, &out)
	return out, err
}
