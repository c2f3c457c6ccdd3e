//go:build !linux

package cli

import (
	"errors"
	"os"
)

func unnamed(string) (*os.File, error) { return nil, errors.ErrUnsupported }

func name(*os.File, string) error { return errors.ErrUnsupported }
