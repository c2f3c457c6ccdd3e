package cli

import (
	"context"
	"errors"
	"fmt"
	"io"

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
			return runRead(c.Context(), args[0], why, flags, s)
		},
	}
	flags.add(cmd)
	cmd.Flags().BoolVar(&why, "why", false, "a page in plain words: sheets, columns, lines, contacts and which are fine, and every cell not understood")
	return cmd
}

func runRead(ctx context.Context, file string, why bool, flags projectFlags, s Streams) error {
	p, err := flags.open(ctx)
	if err != nil {
		return err
	}
	doc, err := p.readOne(ctx, file)
	if err != nil {
		return err
	}
	write := func(w io.Writer) error {
		if err := output.WriteJSON(w, " ", doc); err != nil {
			return fmt.Errorf("write the document: %w", err)
		}
		return nil
	}
	if why {
		if write, err = p.explain(ctx, doc); err != nil {
			return err
		}
	}
	if err = p.guard.write(ctx, s.Out, write); errors.Is(err, errStopped) {
		return errors.New("stopped before the end; what was written is not whole")
	}
	return ofFile(file, err)
}

// explain is what writes the page in plain words; the rules are asked which
// contacts are fine and why.
func (p *project) explain(ctx context.Context, doc *document.Document) (func(io.Writer) error, error) {
	eng, err := p.engine()
	if err != nil {
		return nil, err
	}
	fine, err := guarded(ctx, p.guard, func(ctx context.Context) ([]engine.FineContact, error) { return eng.Fine(ctx, doc) })
	return func(w io.Writer) error { return output.WriteReading(w, doc, fine) }, ofFile(doc.File, err)
}
