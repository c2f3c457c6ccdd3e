package cli

import (
	"context"
	"fmt"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/output"

	"github.com/spf13/cobra"
)

func newRead(s Streams) *cobra.Command {
	var flags projectFlags
	var why bool
	cmd := &cobra.Command{
		Use:   "read FILE",
		Short: "Print how a workbook is read: the JSON document, or with --why a page in plain words",
		Args:  needs(1, "the name of one workbook"),
		RunE: func(c *cobra.Command, args []string) error {
			p, err := flags.open()
			if err != nil {
				return err
			}
			doc, err := guarded(c.Context(), p.guard, func(context.Context) (*document.Document, error) { return p.read(args[0]) })
			if err != nil {
				return err
			}
			if why {
				return explain(c.Context(), p, doc, s)
			}
			return writeDocument(s, doc)
		},
	}
	flags.add(cmd)
	cmd.Flags().BoolVar(&why, "why", false, "a page in plain words: sheets, columns, lines, contacts and which are fine, and every cell not understood")
	return cmd
}

// explain writes the page in plain words; the rules are asked which contacts are
// fine and why.
func explain(ctx context.Context, p *project, doc *document.Document, s Streams) error {
	eng, err := p.engine()
	if err != nil {
		return err
	}
	fine, err := guarded(ctx, p.guard, func(ctx context.Context) ([]engine.FineContact, error) { return eng.Fine(ctx, doc) })
	if err != nil {
		return err
	}
	return output.WriteReading(s.Out, doc, fine)
}

func writeDocument(s Streams, doc *document.Document) error {
	if err := output.WriteJSON(s.Out, " ", doc); err != nil {
		return fmt.Errorf("write the document: %w", err)
	}
	return nil
}
