package cli

import (
	"fmt"
	"os"
	"runtime/debug"
	"time"

	"github.com/spf13/cobra"
	"github.com/spf13/cobra/doc"
)

// newManual writes the manual pages, for those who pack abut for a system.
func newManual() *cobra.Command {
	return &cobra.Command{
		Use:   "manual FOLDER",
		Short: "Write the manual pages of all commands, for man",
		Args:  needs(1, "the folder to write them to"),
		RunE: func(c *cobra.Command, args []string) error {
			if err := os.MkdirAll(args[0], 0o755); err != nil {
				return fmt.Errorf("write manual pages: %w", err)
			}
			c.Root().DisableAutoGenTag = true // it holds the day of writing
			day := committed()
			header := &doc.GenManHeader{Title: "ABUT", Section: "1", Date: &day, Source: "abut", Manual: "abut"}
			if err := doc.GenManTree(c.Root(), header, args[0]); err != nil {
				return fmt.Errorf("write manual pages: %w", err)
			}
			return nil
		},
	}
}

// committed is the day of the commit, so that the same commit gives the same
// pages; without one it is the beginning of 1970.
func committed() time.Time {
	day := time.Unix(0, 0).UTC()
	if info, ok := debug.ReadBuildInfo(); ok {
		if at, err := time.Parse(time.RFC3339, setting(info, "vcs.time")); err == nil {
			day = at
		}
	}
	return day
}
