package cli

import (
	"encoding/json"
	"fmt"
	"os"

	"boughline/work"
)

type workCommand struct {
	Files []string `arg:"" help:"JSON files with id, group and inputs."`
}

// Run prints one line of JSON for each file. All files are worked out before
// the first line is printed, so that a refused one leaves nothing half-done.
func (c workCommand) Run(env Env) error {
	results := make([]work.Result, 0, len(c.Files))
	for _, name := range c.Files {
		data, err := os.ReadFile(name)
		if err != nil {
			return fmt.Errorf("cannot read the figure: %w", err)
		}
		result, err := work.Run(data)
		if err != nil {
			return refusal{fmt.Errorf("%s: %w", name, err)}
		}
		results = append(results, result)
	}
	encoder := json.NewEncoder(env.Stdout)
	for _, result := range results {
		if err := encoder.Encode(result); err != nil {
			return fmt.Errorf("cannot write the result: %w", err)
		}
	}
	return nil
}
