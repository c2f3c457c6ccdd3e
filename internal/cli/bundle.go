package cli

import (
	"fmt"
	"io"
	"os"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"abut/internal/engine"
)

// bundleOptions are the flags of the bundle command.
type bundleOptions struct {
	key       string
	algorithm string
	from      projectFlags
}

func newBundle(s Streams) *cobra.Command {
	var o bundleOptions
	cmd := &cobra.Command{
		Use:   "bundle FILE",
		Short: "Write the rules and data as a standard OPA bundle (.tar.gz)",
		Long: `Bundle writes the rules with their data, and the office's own over them, as a
bundle for any OPA. Ask it for data.answer.findings, with what abut read prints
as the input.`,
		Example: `  abut bundle abut.tar.gz
  abut read schedule.xlsx | opa eval --bundle abut.tar.gz --stdin-input data.answer.findings`,
		Args: needs(1, "the name of the bundle to write"),
		RunE: func(_ *cobra.Command, args []string) error { return runBundle(args[0], o, s) },
	}
	o.from.addPolicies(cmd)
	cmd.Flags().StringVar(&o.key, "key", "", "file with the private key (PEM) or the secret to sign with")
	cmd.Flags().StringVar(&o.algorithm, "algorithm", "RS256", "how to sign: RS256, ES256, HS256 and the like")
	return cmd
}

func runBundle(file string, o bundleOptions, s Streams) error {
	if !strings.HasSuffix(file, ".tar.gz") {
		return fmt.Errorf("%s: the bundle is written as .tar.gz; give it that ending", file)
	}
	set, err := o.from.settings()
	if err != nil {
		return err
	}
	sign := engine.Signing{Algorithm: o.algorithm}
	if o.key != "" {
		key, err := os.ReadFile(o.key)
		if err != nil {
			return fmt.Errorf("read the key to sign with: %w", err)
		}
		if sign.Key = string(key); strings.TrimSpace(sign.Key) == "" {
			return fmt.Errorf("%s: the file of the key is empty", o.key)
		}
	}
	opts := engine.Options{
		Folders: slices.Concat(set.Policies, o.from.Policies), Replace: set.Replace, Off: set.Off, Severity: set.Severity,
	}
	if err := writeFile(file, func(w io.Writer) error { return engine.WriteBundle(w, opts, sign) }); err != nil {
		return err
	}
	_, err = fmt.Fprintf(s.Out, "%s written. Ask it for data.answer.findings, with what abut read prints as the input.\n", file)
	return err
}
