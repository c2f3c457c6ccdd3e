package cli

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"abut/internal/engine"
	"abut/internal/material"
	"abut/internal/output"
	"abut/internal/phrase"
	"abut/policies"

	"github.com/spf13/cobra"
)

// identity is how a text was read.
type identity struct {
	Text       string              `json:"text"`
	Materials  []material.Material `json:"materials"`
	Quantities []phrase.Quantity   `json:"quantities"`
}

func newIdentify(s Streams) *cobra.Command {
	var format string
	var from projectFlags
	cmd := &cobra.Command{
		Use:   "identify TEXT...",
		Short: "How the words for a material are read: family, traits, and why",
		Long: `Identify reads the words as a cell of a schedule is read. Several materials are
told apart. What the words leave open is left open, and what is not known is
said to be unknown, with the families that come nearest.`,
		Example: `  abut identify "mod-bit peel & stick, 40 mil, HDPE face"
  abut identify --format json "butyl sealant, no solvent"`,
		Args: cobra.MinimumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			return runIdentify(strings.Join(args, " "), format, from, s)
		},
	}
	cmd.Flags().StringVar(&format, "format", "text", "text or json")
	from.addPolicies(cmd)
	return cmd
}

func runIdentify(text, format string, from projectFlags, s Streams) error {
	if format != "text" && format != "json" {
		return fmt.Errorf("--format %q: write text or json", format)
	}
	set, err := from.settings()
	if err != nil {
		return err
	}
	tree, err := engine.Overlay(policies.FS, slices.Concat(set.Policies, from.Policies))
	if err != nil {
		return err
	}
	vocab, err := material.Load(tree)
	if err != nil {
		return err
	}
	vocab = vocab.Explaining()
	reader, err := phrase.From(tree)
	if err != nil {
		return err
	}
	id := identity{Text: text, Materials: vocab.Find(text), Quantities: reader.Quantities(text, "")}
	if len(id.Materials) == 0 {
		id.Materials = []material.Material{vocab.Describe(text)}
	}
	if format == "json" {
		return output.WriteJSON(s.Out, "  ", id)
	}
	return writeIdentity(s.Out, id)
}

func writeIdentity(w io.Writer, id identity) error {
	var b strings.Builder
	for _, m := range id.Materials {
		writeMaterial(&b, m)
	}
	for i, q := range id.Quantities {
		if i == 0 {
			b.WriteString("figures\n")
		}
		fmt.Fprintf(&b, "  %s: %s\n", output.Plain(q.Text), strings.ReplaceAll(q.Kind, "_", " "))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func writeMaterial(b *strings.Builder, m material.Material) {
	fmt.Fprintf(b, "%s\n", output.Plain(m.Text))
	line := func(label, value string) {
		if value != "" {
			fmt.Fprintf(b, "  %-10s %s\n", label, value)
		}
	}
	switch {
	case m.Unknown:
		line("family", "not known")
		line("nearest", strings.Join(m.Near, ", "))
	case m.Family == "":
		line("family", "not told by these words alone")
		line("may be", strings.Join(m.Near, ", "))
	default:
		line("family", fmt.Sprintf("%s (%s)", m.Name, m.Family))
		line("class", m.Class)
	}
	line("traits", strings.Join(m.Traits, ", "))
	for i, why := range m.Why {
		label := ""
		if i == 0 {
			label = "why"
		}
		line(label, output.Plain(why))
	}
	if !m.Unknown {
		line("sureness", fmt.Sprintf("%.0f%%", 100*m.Confidence))
	}
}
