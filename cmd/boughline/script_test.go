package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain lets the scripts call the program with its records in SQLite.
func TestMain(m *testing.M) { testscript.Main(m, map[string]func(){"boughline": main}) }

// TestScripts runs every script in testdata/script; each finds a photo of a
// telephone in its folder.
func TestScripts(t *testing.T) {
	photo, err := os.ReadFile("../../exchange/picture/testdata/written.jpg")
	must(t, err)
	testscript.Run(t, testscript.Params{Dir: "testdata/script", Setup: func(e *testscript.Env) error {
		return os.WriteFile(filepath.Join(e.WorkDir, "written.jpg"), photo, 0o644)
	}})
}
