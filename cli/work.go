package cli

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"

	"boughline/work"
)

type workCommand struct {
	Files []string `arg:"" help:"JSON files with id, group and inputs."`
}

// Run prints one line of JSON for each file that can be worked out, and tells
// of all the others: a refused file must not cost the rest of a long list.
func (c workCommand) Run(env Env) error {
	encoder := json.NewEncoder(env.Stdout)
	var failed []error
	for _, name := range c.Files {
		data, err := os.ReadFile(name)
		if err != nil {
			failed = append(failed, fmt.Errorf("cannot read the figure: %w", err))
			continue
		}
		result, err := work.Run(data)
		if err != nil {
			failed = append(failed, refusal{fmt.Errorf("%s: %w", name, err)})
			continue
		}
		if err := encoder.Encode(result); err != nil {
			return fmt.Errorf("cannot write the result: %w", err)
		}
	}
	return errors.Join(failed...)
}
