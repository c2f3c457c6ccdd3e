package cli

import (
	"encoding/json"
	"fmt"

	"abut/internal/document"
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
		RunE: func(_ *cobra.Command, args []string) error {
			p, err := flags.open()
			if err != nil {
				return err
			}
			doc, err := p.read(args[0])
			if err != nil {
				return err
			}
			if why {
				return output.WriteReading(s.Out, doc)
			}
			return writeDocument(s, doc)
		},
	}
	flags.add(cmd)
	cmd.Flags().BoolVar(&why, "why", false, "a page in plain words: sheets, columns, lines, and every cell not understood")
	return cmd
}

func writeDocument(s Streams, doc *document.Document) error {
	enc := json.NewEncoder(s.Out)
	enc.SetIndent("", " ")
	enc.SetEscapeHTML(false)
	if err := enc.Encode(doc); err != nil {
		return fmt.Errorf("write the document: %w", err)
	}
	return nil
}
