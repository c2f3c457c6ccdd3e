package engine

import (
	"context"
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"

	"abut/internal/contact"
	"abut/internal/document"
)

// What is looked up beside findings.
const (
	finePath = "lib/verdict/fine"
	barePath = "lib/bare/held"
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
	err := e.lookUp(ctx, doc, "contact", finePath, &out)
	return out, err
}

// lookUp asks for what the rules of a topic go by, beside their findings.
func (e *Engine) lookUp(ctx context.Context, doc *document.Document, topic, path string, into any) error {
	ctx, cancel := context.WithTimeout(ctx, e.options.Timeout)
	defer cancel()
	value, err := e.value(ctx, topic, path, doc)
	if err == nil && value == nil {
		return nil
	}
	var raw []byte
	if err == nil {
		raw, err = json.Marshal(value)
	}
	if err == nil {
		err = json.Unmarshal(raw, into)
	}
	if err != nil {
		return fmt.Errorf("%s of %s: %w", path, doc.File, err)
	}
	return nil
}

// value asks the plan, and OPA if there is none or it fails. Rules of the topic
// that are all switched off have nothing to go by.
func (e *Engine) value(ctx context.Context, topic, path string, doc *document.Document) (any, error) {
	on := func(r Rule) bool { return r.Topic == topic && !slices.Contains(e.options.Off, r.ID) }
	if e.plan != nil && slices.ContainsFunc(e.rules, on) {
		if value, err := e.plan.value(ctx, path, doc); err == nil || ctx.Err() != nil {
			return value, err
		}
	}
	all, err := e.all()
	if err != nil {
		return nil, err
	}
	document.Complete(doc)
	of, err := input(doc)
	if err != nil {
		return nil, err
	}
	return all.value(ctx, topic, path, of)
}

func (e *compiled) value(ctx context.Context, topic, path string, of ast.Value) (any, error) {
	i := slices.IndexFunc(e.queries, func(q query) bool { return q.rules[0].Topic == topic })
	if i < 0 {
		return nil, nil
	}
	result, err := rego.New(rego.Query("data."+strings.ReplaceAll(path, "/", ".")), rego.Compiler(e.queries[i].compiler),
		rego.Store(e.store), rego.ParsedInput(of)).Eval(ctx)
	if err != nil || len(result) == 0 {
		return nil, err
	}
	return result[0].Expressions[0].Value, nil
}
