package cli

import (
	"fmt"
	"os"
	"path/filepath"

	"boughline/demo"
)

type demoCommand struct {
	Folder string `arg:"" help:"Folder to write survey.json and register.json into; it is made where it is missing."`
}

// Run writes the demo survey and the register of its gear.
func (c demoCommand) Run(env Env) error {
	if err := os.MkdirAll(c.Folder, 0o755); err != nil {
		return fmt.Errorf("cannot make the folder of the demo: %w", err)
	}
	for _, file := range []struct {
		name string
		data []byte
	}{{"survey.json", demo.Survey()}, {"register.json", demo.Register()}} {
		name := filepath.Join(c.Folder, file.name)
		if err := os.WriteFile(name, file.data, 0o644); err != nil {
			return fmt.Errorf("cannot write the demo: %w", err)
		}
		fmt.Fprintln(env.Stdout, name)
	}
	return nil
}
