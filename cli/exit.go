package cli

import "errors"

// Exit codes of every command.
const (
	ExitDone   = 0 // done; an outcome is data and never an exit code
	ExitFailed = 1 // a file could not be read or written, or a fault in the program
	ExitRefuse = 2 // the input or the command line was refused
)

// refusal is an error of the input: exit code 2.
type refusal struct{ error }

func (r refusal) Unwrap() error { return r.error }

// exitCode tells refused input from anything else that went wrong.
func exitCode(err error) int {
	var r refusal
	switch {
	case err == nil:
		return ExitDone
	case errors.As(err, &r):
		return ExitRefuse
	}
	return ExitFailed
}
