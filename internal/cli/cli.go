// Package cli holds the commands, one file each: flags in, a call, output out.
package cli

import (
	"context"
	"errors"
	"fmt"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"abut/internal/engine"
	"abut/internal/output"
)

// Exit codes: 0 nothing at or above the chosen severity, 1 some findings, 2
// something could not be read or run.
const (
	exitClean    = 0
	exitFindings = 1
	exitFailed   = 2
)

// errFindings ends a run that worked and has findings to fail on.
var errFindings = errors.New("findings")

// errReported ends a run whose problems were already told.
var errReported = errors.New("reported")

// Main runs the command line and gives the exit code.
func Main(ctx context.Context, args []string, s Streams) int {
	root := newRoot(s)
	root.SetArgs(args)
	err := noCommand(root, args)
	if err == nil {
		err = root.ExecuteContext(ctx)
	}
	switch {
	case err == nil:
		return exitClean
	case errors.Is(err, errFindings):
		return exitFindings
	case !errors.Is(err, errReported):
		tell(s, err)
	}
	return exitFailed
}

// noCommand tells who gives a file or a folder alone how to go on.
func noCommand(root *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	if _, _, err := root.Find(args); err == nil {
		return nil
	}
	if _, err := os.Stat(args[0]); err != nil {
		return nil // the library tells the nearest command
	}
	return fmt.Errorf("%s is a file or folder and no command; to check it, write: abut check %s", args[0], args[0])
}

// tell writes one line an error, whatever the library wrote; mistakes in
// policies come several at a time.
func tell(s Streams, err error) {
	var problems engine.Problems
	list := []error{err}
	if errors.As(err, &problems) {
		list = list[:0]
		for _, p := range problems {
			list = append(list, p)
		}
	}
	for _, e := range list {
		say(s, e.Error())
	}
}

// say writes one line to the person; a stranger's text in it may be endless.
func say(s Streams, text string) {
	const most = 2000
	text = output.Plain(text)
	if len(text) > most {
		text = strings.ToValidUTF8(text[:most], "") + "…"
	}
	fmt.Fprintln(s.Err, "abut:", text)
}

// needs wants arguments, at most so many (0: any number), and says in plain
// words what is missing.
func needs(most int, what string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		if len(args) == 0 || most > 0 && len(args) > most {
			return fmt.Errorf("%s needs %s; `abut %s --help` tells more", cmd.Name(), what, cmd.Name())
		}
		return nil
	}
}

// offer has a shell complete the value of a flag. It fails only for a flag that
// the command has not, which the script of completions would show.
func offer(cmd *cobra.Command, flag string, values ...string) {
	_ = cmd.RegisterFlagCompletionFunc(flag, cobra.FixedCompletions(values, cobra.ShellCompDirectiveNoFileComp))
}

func newRoot(s Streams) *cobra.Command {
	root := &cobra.Command{
		Use:   "abut",
		Short: "Checks a building-material schedule: what touches what, over which primer, in which season",
		Long: `abut reads a schedule of membranes, primers, sealants and flashings (.xlsx or
.csv) in the office's own layout and lists what a reviewer would stop at: by
sheet and row, with reason, remedy and source.`,
		Example: `  abut check schedule.xlsx -o report.html
  abut new blank.xlsx`,
		SilenceErrors: true,
		SilenceUsage:  true,
		Version:       build(),
	}
	root.SetIn(s.In)
	root.SetOut(s.Out)
	root.SetErr(s.Err)
	root.AddCommand(newBundle(s), newCheck(s), newCompare(s), newIdentify(s), newManual(), newNew(s), newRead(s),
		newRules(s), newSeason(s), newSettings(s))
	return root
}
