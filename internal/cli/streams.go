package cli

import "io"

// Streams are the three standard streams, handed to every command so that
// tests can run it in memory.
type Streams struct {
	In       io.Reader
	Out, Err io.Writer
}
