package main

import (
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain lets the scripts call the program with its records in SQLite.
func TestMain(m *testing.M) { testscript.Main(m, map[string]func(){"boughline": main}) }

func TestScripts(t *testing.T) { testscript.Run(t, testscript.Params{Dir: "testdata/script"}) }
