package engine

import (
	"context"
	"encoding/json"
	"fmt"
	"slices"

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
	var out []FineContact
	err := e.lookUp(ctx, doc, "contact", "data.lib.verdict.fine", &out)
	return out, err
}

// lookUp asks for what the rules of a topic go by, beside their findings.
func (e *Engine) lookUp(ctx context.Context, doc *document.Document, topic, path string, into any) error {
	i := slices.IndexFunc(e.queries, func(q query) bool { return q.rules[0].Topic == topic })
	if i < 0 {
		return nil
	}
	document.Complete(doc)
	value, err := input(doc)
	if err != nil {
		return fmt.Errorf("%s of %s: %w", path, doc.File, err)
	}
	ctx, cancel := context.WithTimeout(ctx, e.options.Timeout)
	defer cancel()
	result, err := rego.New(rego.Query(path), rego.Compiler(e.queries[i].compiler), rego.Store(e.store),
		rego.ParsedInput(value)).Eval(ctx)
	if err != nil {
		return fmt.Errorf("%s of %s: %w", path, doc.File, err)
	}
	for _, r := range result {
		raw, err := json.Marshal(r.Expressions[0].Value)
		if err == nil {
			err = json.Unmarshal(raw, into)
		}
		if err != nil {
			return fmt.Errorf("%s of %s: %w", path, doc.File, err)
		}
	}
	return nil
}
