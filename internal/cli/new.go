package cli

import (
	"context"
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"abut/internal/output"

	"github.com/spf13/cobra"
)

func newNew(s Streams) *cobra.Command {
	var p projectFlags
	cmd := &cobra.Command{
		Use:   "new FILE",
		Short: "Write a blank schedule workbook to fill in",
		Long: `New writes a workbook with the headings of a schedule, a sheet for product data
and one for the project's place and limits. Drop-downs offer the words that are
known, and each cell says what belongs in it. A file that is there already is
left as it is.`,
		Example: `  abut new schedule.xlsx
  abut new --place "Duluth, Minnesota" schedule.xlsx`,
		Args: needs(1, "the name of the workbook to write"),
		RunE: func(c *cobra.Command, args []string) error {
			return runNew(c.Context(), args[0], p, s)
		},
	}
	p.add(cmd)
	return cmd
}

func runNew(ctx context.Context, file string, flags projectFlags, s Streams) error {
	if !strings.EqualFold(filepath.Ext(file), ".xlsx") {
		return fmt.Errorf("%s: the workbook is written as .xlsx; give it that ending", file)
	}
	p, err := flags.open(ctx)
	if err != nil {
		return err
	}
	if err := createFile(file, func(w io.Writer) error { return output.WriteBlank(w, p.tree, p.reading.Place) }); err != nil {
		return err
	}
	_, err = fmt.Fprintf(s.Out, "%s written. Fill in the sheets Project, Products and Schedule, then: abut check %s\n", file, file)
	return err
}
