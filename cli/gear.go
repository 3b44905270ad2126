package cli

import (
	"bytes"
	"fmt"
	"os"

	"boughline/register"
	"boughline/survey"
)

// gearCommand keeps a register of gear. What changes it prints the new register
// or writes it where -o says, never into the old one unasked.
type gearCommand struct {
	List    gearListCommand    `cmd:"" default:"withargs" help:"List the items with their marks, days of use and what is due."`
	Check   gearCheckCommand   `cmd:"" help:"Hold every part of every chain of a survey against the register."`
	Use     gearUseCommand     `cmd:"" help:"Record a day on which items were in use."`
	Examine gearExamineCommand `cmd:"" help:"Record a thorough examination."`
	Retire  gearRetireCommand  `cmd:"" help:"Take an item out of use for good."`
	Schema  gearSchemaCommand  `cmd:"" help:"Print the JSON Schema of the register."`
}

type gearSchemaCommand struct{}

// Run prints the schema.
func (gearSchemaCommand) Run(env Env) error {
	_, err := env.Stdout.Write(register.Schema())
	return err
}

// readRegister reads a register and refuses it with all its problems listed on
// stderr.
func readRegister(env Env, name string) (register.Register, error) {
	file, err := os.Open(name)
	if err != nil {
		return register.Register{}, fmt.Errorf("cannot open the register: %w", err)
	}
	defer file.Close()
	r, problems, err := register.Read(file)
	if err != nil {
		return register.Register{}, fmt.Errorf("cannot read %s: %w", name, err)
	}
	if len(problems) > 0 {
		listProblems(env.Stderr, problems)
		return register.Register{}, refusal{fmt.Errorf("%s: %d %s; nothing was worked out", name, len(problems), plural("problem", len(problems)))}
	}
	return *r, nil
}

// writeRegister checks a changed register and prints it, or writes it whole
// where a file is named.
func writeRegister(env Env, r register.Register, out string) error {
	if problems := r.Validate(); len(problems) > 0 {
		listProblems(env.Stderr, problems)
		return refusal{fmt.Errorf("%d %s with the change; nothing was written", len(problems), plural("problem", len(problems)))}
	}
	var text bytes.Buffer
	if err := r.Write(&text); err != nil {
		return err
	}
	if out == "" {
		_, err := env.Stdout.Write(text.Bytes())
		return err
	}
	return replace(out, text.Bytes())
}

// dayOf reads the day of an option; today where it is left out.
func dayOf(option, text string) (survey.Date, error) {
	if text == "" {
		text = today()
	}
	d, err := survey.ParseDate(text)
	if err != nil {
		return d, refusal{fmt.Errorf("%s: %w", option, err)}
	}
	return d, nil
}
