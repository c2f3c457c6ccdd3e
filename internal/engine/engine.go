// Package engine judges a document with the policies: it loads the policy tree
// once, keeps the catalogue of rules, and turns what the rules say into
// findings.
package engine

import (
	"io/fs"
	"slices"
	"time"

	"abut/policies"
)

// Limits where the options give none.
const (
	defaultTimeout   = 60 * time.Second
	defaultRuleTime  = 10 * time.Second
	defaultRuleSteps = 20_000_000
)

// Options say what is loaded and how findings are graded.
type Options struct {
	// Tree is the policy tree; nil is the one built in.
	Tree fs.FS
	// Folders hold an office's own rules and data, later ones over earlier ones.
	Folders []string
	// Replace names packages ("contact.plasticizer") that Folders may define
	// anew; without it a folder can add rules and change data, not rules.
	Replace []string
	// Off lists ids of rules that are not run.
	Off []string
	// Severity grades a rule's findings by the rule's id: error, warning, note.
	// Findings that carry a milder severity of their own keep it.
	Severity map[string]string
	// Timeout stops judging of one document; 0 is a minute.
	Timeout time.Duration
	// RuleTime and RuleSteps stop one rule of an office on one document; 0 is
	// ten seconds and twenty million steps.
	RuleTime  time.Duration
	RuleSteps int
}

// Engine is the policy tree, ready to judge; it may be used by several
// goroutines.
type Engine struct {
	rules   []Rule
	options Options
	changes []Change
	across  func() map[string]bool // files of rules that look across rows
	shared  shared
	plan    *planned  // the built-in rules, compiled beforehand; nil if there is none for this tree
	own     *compiled // what is asked of OPA: all rules, or beside a plan those of an office
	all     func() (*compiled, error)
}

// Catalogue reads the metadata of the rules without compiling them.
func Catalogue(opts Options) ([]Rule, error) {
	if opts.Tree == nil && len(opts.Folders) == 0 {
		if kept, err := readPlan(policies.FS, policies.Plan); err == nil {
			return kept.rules, nil // as they were read from the metadata
		}
	}
	_, rules, err := read(opts.withDefaults())
	return rules, err
}

func read(opts Options) (*tree, []Rule, error) {
	tree, err := readTree(opts)
	if err != nil {
		return nil, nil, err
	}
	rules, err := catalogue(tree.modules)
	for i := range rules {
		rules[i].Office = tree.office[rules[i].File]
	}
	return tree, rules, err
}

func (o Options) withDefaults() Options {
	if o.Tree == nil {
		o.Tree = policies.FS
	}
	if o.Timeout == 0 {
		o.Timeout = defaultTimeout
	}
	if o.RuleTime == 0 {
		o.RuleTime = defaultRuleTime
	}
	if o.RuleSteps == 0 {
		o.RuleSteps = defaultRuleSteps
	}
	return o
}

// Rules lists the rules by topic and id.
func (e *Engine) Rules() []Rule {
	return slices.Clone(e.rules)
}

func checkSettings(opts Options, rules []Rule) error {
	var problems Problems
	known := func(id string) bool {
		return slices.ContainsFunc(rules, func(r Rule) bool { return r.ID == id })
	}
	for _, id := range opts.Off {
		if !known(id) {
			problems = append(problems, Problem{Rule: id, Message: "settings switch off a rule that does not exist"})
		}
	}
	for id, severity := range opts.Severity {
		if !known(id) {
			problems = append(problems, Problem{Rule: id, Message: "settings grade a rule that does not exist"})
		}
		if !slices.Contains(Severities(), severity) {
			problems = append(problems, Problem{Rule: id, Message: "settings grade it " + severity + "; use error, warning or note"})
		}
	}
	return problems.asError()
}

// Severities are listed worst first.
func Severities() []string {
	return []string{"error", "warning", "note"}
}

// Topics are the first part of a rule's package; other packages hold no rules.
func Topics() []string {
	return []string{
		"contact", "pairing", "temperature", "exposure", "sequence",
		"performance", "vapor", "data", "substitution", "safety",
	}
}
