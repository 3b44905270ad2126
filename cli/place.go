package cli

import (
	"context"
	"fmt"
	"os"
	"os/signal"

	"boughline/assess/hangsearch"
	"boughline/knowledge"
	"boughline/quantity"
)

type placeCommand struct {
	File      string   `arg:"" help:"Survey document (JSON)."`
	Tree      string   `help:"Only this tree, with the lines that serve along each limb." placeholder:"ID"`
	Aim       string   `help:"What makes a hang the best: longest-line, lowest-fall or most-in-hand." default:"longest-line" placeholder:"AIM"`
	Group     []string `help:"Only these groups of riders." placeholder:"GROUP"`
	Amplitude string   `help:"Try this amplitude to each side alone, such as \"40 deg\"." placeholder:"ANGLE"`
	Shortest  string   `help:"The shortest line worth a swing." default:"2 m" placeholder:"LENGTH"`
	JSON      bool     `name:"json" help:"Print all that was found as JSON."`
}

// Run looks for hangs on the trees of a survey. An interrupt ends it.
func (c placeCommand) Run(env Env) error {
	options, err := c.options()
	if err != nil {
		return refusal{err}
	}
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	s, err := readSurvey(env, c.File, k)
	if err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	options.Progress = progressOn(env.Stderr, "looking for hangs")
	found, err := hangsearch.Search(ctx, s, k, options)
	switch {
	case ctx.Err() != nil:
		return fmt.Errorf("ended before it was done: %w", err)
	case err != nil:
		return refusal{fmt.Errorf("%s: %w", c.File, err)}
	case c.JSON:
		return writeJSON(env.Stdout, found)
	}
	return page{env.Stdout}.places(found, c.Tree != "")
}

func (c placeCommand) options() (hangsearch.Options, error) {
	o := hangsearch.Options{Aim: hangsearch.Aim(c.Aim), Groups: c.Group}
	if c.Tree != "" {
		o.Trees = []string{c.Tree}
	}
	shortest, err := quantity.ParseChosen[quantity.Length](c.Shortest)
	if err != nil {
		return o, fmt.Errorf("--shortest: %w", err)
	}
	if shortest.Value < 0.5 || shortest.Value > 40 {
		return o, fmt.Errorf("--shortest: %s; expected 0.5 m to 40 m", c.Shortest)
	}
	o.Shortest = shortest.Value
	if c.Amplitude == "" {
		return o, nil
	}
	amplitude, err := quantity.ParseChosen[quantity.Angle](c.Amplitude)
	if err != nil {
		return o, fmt.Errorf("--amplitude: %w", err)
	}
	if amplitude.Value <= 0 || amplitude.Value > 70*quantity.Degree {
		return o, fmt.Errorf("--amplitude: %s; expected up to 70 deg to each side", c.Amplitude)
	}
	o.Amplitudes = []quantity.Angle{amplitude.Value}
	return o, nil
}
