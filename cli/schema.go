package cli

import (
	"fmt"

	"boughline/survey"
)

type schemaCommand struct{}

// Run prints the JSON Schema of the survey document.
func (schemaCommand) Run(env Env) error {
	if _, err := env.Stdout.Write(survey.Schema()); err != nil {
		return fmt.Errorf("cannot write the schema: %w", err)
	}
	return nil
}
