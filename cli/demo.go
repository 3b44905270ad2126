package cli

import (
	"fmt"
	"os"
	"path/filepath"

	"boughline/demo"
)

type demoCommand struct {
	Folder string `arg:"" help:"Folder to write survey.json into; it is made where it is missing."`
}

// Run writes the demo survey.
func (c demoCommand) Run(env Env) error {
	if err := os.MkdirAll(c.Folder, 0o755); err != nil {
		return fmt.Errorf("cannot make the folder of the demo: %w", err)
	}
	name := filepath.Join(c.Folder, "survey.json")
	if err := os.WriteFile(name, demo.Survey(), 0o644); err != nil {
		return fmt.Errorf("cannot write the demo: %w", err)
	}
	fmt.Fprintln(env.Stdout, name)
	return nil
}
