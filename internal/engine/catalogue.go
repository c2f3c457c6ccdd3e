package engine

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Rule is what the metadata of a rule file says.
type Rule struct {
	ID          string `json:"id"`
	Topic       string `json:"topic"`
	Severity    string `json:"severity"` // error, warning, note
	Title       string `json:"title"`
	Description string `json:"description"`
	Reason      string `json:"reason"`
	Remedy      string `json:"remedy"`
	Source      string `json:"source"`
	Basis       string `json:"basis"` // source-read, common-practice, from-memory
	Example     string `json:"example,omitempty"`
	Package     string `json:"package"` // contact.plasticizer
	File        string `json:"file"`
	Line        int    `json:"line"`             // of the rule that makes the findings
	Office      string `json:"office,omitempty"` // folder it comes from, "" for a built-in rule
}

// catalogue makes the list of rules from the annotations and from nothing
// else, so that a rule without a source cannot exist.
func catalogue(modules map[string]*ast.Module) ([]Rule, error) {
	var rules []Rule
	var problems Problems
	for _, file := range sortedKeys(modules) {
		module := modules[file]
		topic, name, _ := strings.Cut(packageName(module), ".")
		if !slices.Contains(Topics(), topic) {
			continue
		}
		rule, wrong := ruleOf(module, topic, name)
		problems = append(problems, wrong...)
		rules = append(rules, rule)
	}
	problems = append(problems, repeated(rules)...)
	slices.SortFunc(rules, func(a, b Rule) int {
		order := cmp.Compare(slices.Index(Topics(), a.Topic), slices.Index(Topics(), b.Topic))
		return cmp.Or(order, cmp.Compare(a.ID, b.ID))
	})
	return rules, problems.asError()
}

func ruleOf(module *ast.Module, topic, name string) (Rule, Problems) {
	at := module.Package.Location
	if name == "" || strings.Contains(name, ".") {
		return Rule{}, Problems{located(at, "a rule's package is its topic and its name: contact.plasticizer")}
	}
	rule := Rule{Topic: topic, Package: topic + "." + name, File: at.File, Line: at.Row}
	entry := findingsRule(module)
	if entry == nil {
		return rule, Problems{located(at, "no rule `findings contains ...`; helpers belong under lib")}
	}
	rule.Line = entry.Location.Row
	notes := packageNotes(module)
	if notes == nil {
		return rule, Problems{located(at, "no metadata above the package")}
	}
	rule.Title, rule.Description = notes.Title, strings.TrimSpace(notes.Description)
	problems := rule.fill(notes.Custom, at)
	return rule, append(problems, rule.check(at)...)
}

// findingsRule is the first rule that makes findings: a set named findings.
func findingsRule(module *ast.Module) *ast.Rule {
	for _, rule := range module.Rules {
		if rule.Head.RuleKind() == ast.MultiValue && rule.Head.Ref().String() == "findings" {
			return rule
		}
	}
	return nil
}

func packageNotes(module *ast.Module) *ast.Annotations {
	for _, a := range module.Annotations {
		if a.Scope == "package" {
			return a
		}
	}
	return nil
}

// fill reads the custom keys; a key that is not known is most likely a slip.
func (r *Rule) fill(custom map[string]any, at *ast.Location) Problems {
	topic, view := "", acrossRows
	fields := map[string]*string{
		"id": &r.ID, "topic": &topic, "severity": &r.Severity, "reason": &r.Reason, "remedy": &r.Remedy,
		"source": &r.Source, "basis": &r.Basis, "example": &r.Example, looks: &view,
	}
	var problems Problems
	for _, key := range sortedKeys(custom) {
		field, known := fields[key]
		text, isText := custom[key].(string)
		switch {
		case !known:
			problems = append(problems, located(at, "metadata has an unknown key: "+key))
		case !isText:
			problems = append(problems, located(at, "metadata "+key+" is not a text; put it in quotes"))
		default:
			*field = strings.TrimSpace(text)
		}
	}
	if topic != r.Topic {
		problems = append(problems, located(at, fmt.Sprintf("metadata topic is %q, the package says %q", topic, r.Topic)))
	}
	if view != acrossRows {
		problems = append(problems, located(at, fmt.Sprintf("metadata %s is %q; a rule looks %q, or does not say", looks, view, acrossRows)))
	}
	return problems
}

func (r *Rule) check(at *ast.Location) Problems {
	var problems Problems
	for _, need := range []struct{ key, text string }{
		{"title", r.Title}, {"description", r.Description}, {"reason", r.Reason},
		{"remedy", r.Remedy}, {"source", r.Source},
	} {
		if need.text == "" {
			problems = append(problems, located(at, "metadata has no "+need.key))
		}
	}
	if !regexp.MustCompile(`^[a-z]+(-[a-z0-9]+)+$`).MatchString(r.ID) {
		problems = append(problems, located(at, fmt.Sprintf("metadata id %q is not words joined by hyphens", r.ID)))
	}
	if !slices.Contains(Severities(), r.Severity) {
		problems = append(problems, located(at, fmt.Sprintf("metadata severity %q is not error, warning or note", r.Severity)))
	}
	if r.Basis != "" && !slices.Contains([]string{"source-read", "common-practice", "from-memory"}, r.Basis) {
		problems = append(problems, located(at, fmt.Sprintf("metadata basis %q is not source-read, common-practice or from-memory", r.Basis)))
	}
	return problems
}

// repeated finds ids and packages that stand twice.
func repeated(rules []Rule) Problems {
	var problems Problems
	first := map[string]Rule{}
	for _, r := range rules {
		if r.ID == "" {
			continue // reported already
		}
		for _, key := range []string{"id " + r.ID, "package " + r.Package} {
			if other, exists := first[key]; exists {
				problems = append(problems, Problem{File: r.File, Line: r.Line, Message: key + " is also in " + other.File})
			} else {
				first[key] = r
			}
		}
	}
	return problems
}
