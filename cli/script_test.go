package cli

import (
	"os"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain lets the scripts call the program by its name.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"boughline": func() {
			os.Exit(Run(Env{Args: os.Args[1:], Stdin: os.Stdin, Stdout: os.Stdout, Stderr: os.Stderr, Now: scriptClock}))
		},
	})
}

// scriptClock is the time that a script sets with NOW, or the time it is.
func scriptClock() time.Time {
	if at, err := time.Parse(time.RFC3339, os.Getenv("NOW")); err == nil {
		return at
	}
	return time.Now()
}

// TestScripts runs every script in testdata/script. They read as a manual.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{Dir: "testdata/script"})
}
