package engine

import (
	"context"
	"encoding/json"
	"fmt"

	"github.com/open-policy-agent/opa/v1/rego"

	"abut/internal/contact"
	"abut/internal/document"
)

// FineContact is a contact that was judged and found good, with the reason.
type FineContact struct {
	Contact contact.Contact `json:"contact"`
	Why     string          `json:"why"`
}

// Fine lists the contacts of a document that are fine, in the order of the
// document, as policies/lib/verdict.rego judges them.
func (e *Engine) Fine(ctx context.Context, doc *document.Document) ([]FineContact, error) {
	document.Complete(doc)
	value, err := input(doc)
	if err != nil {
		return nil, fmt.Errorf("judge %s: %w", doc.File, err)
	}
	ctx, cancel := context.WithTimeout(ctx, e.options.Timeout)
	defer cancel()
	for _, q := range e.queries {
		if q.rules[0].Topic != "contact" {
			continue
		}
		result, err := rego.New(rego.Query("data.lib.verdict.fine"), rego.Compiler(q.compiler), rego.Store(e.store),
			rego.ParsedInput(value)).Eval(ctx)
		if err != nil {
			return nil, fmt.Errorf("fine contacts of %s: %w", doc.File, err)
		}
		return readFine(result)
	}
	return nil, nil
}

func readFine(result rego.ResultSet) ([]FineContact, error) {
	var out []FineContact
	for _, r := range result {
		raw, err := json.Marshal(r.Expressions[0].Value)
		if err != nil {
			return nil, fmt.Errorf("fine contacts: %w", err)
		}
		if err := json.Unmarshal(raw, &out); err != nil {
			return nil, fmt.Errorf("fine contacts: %w", err)
		}
	}
	return out, nil
}
