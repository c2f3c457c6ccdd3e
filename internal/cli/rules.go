package cli

import (
	"fmt"
	"slices"

	"github.com/hbollon/go-edlib"
	"github.com/spf13/cobra"

	"abut/internal/engine"
	"abut/internal/output"
)

// newRules lists the rules, or tells all of one; both come from the rules'
// metadata alone.
func newRules(s Streams) *cobra.Command {
	var format string
	var from projectFlags
	cmd := &cobra.Command{
		Use:   "rules [ID]",
		Short: "List the rules, or tell why one fires and what to do",
		Args:  cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			set, err := from.settings()
			if err != nil {
				return err
			}
			folders := slices.Concat(set.Policies, from.Policies)
			rules, err := engine.Catalogue(engine.Options{Folders: folders, Replace: set.Replace})
			if err != nil {
				return err
			}
			if len(args) == 0 {
				return output.WriteRules(s.Out, format, rules)
			}
			rule, err := findRule(rules, args[0])
			if err != nil {
				return err
			}
			return output.WriteRule(s.Out, format, rule)
		},
	}
	cmd.Flags().StringVar(&format, "format", "text", "text or json")
	from.addPolicies(cmd)
	return cmd
}

func findRule(rules []engine.Rule, id string) (engine.Rule, error) {
	ids := make([]string, len(rules))
	for i, r := range rules {
		ids[i] = r.ID
	}
	if i := slices.Index(ids, id); i >= 0 {
		return rules[i], nil
	}
	near, err := edlib.FuzzySearch(id, ids, edlib.Levenshtein)
	if err != nil || near == "" {
		return engine.Rule{}, fmt.Errorf("there is no rule %q; `abut rules` lists them", id)
	}
	return engine.Rule{}, fmt.Errorf("there is no rule %q; did you mean %s? `abut rules` lists them", id, near)
}
