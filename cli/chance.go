package cli

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/signal"

	"boughline/assess"
	"boughline/knowledge"
)

type chanceCommand struct {
	File    string `arg:"" help:"Survey document (JSON)."`
	Hang    string `required:"" help:"The hang." placeholder:"ID"`
	Samples int    `help:"Samples for each exposure, half about the likeliest failures and half plain; 0 for none." default:"20000"`
	Seed    uint64 `help:"Seed of the samples; the same seed gives the same figures." default:"1"`
	Inputs  bool   `help:"List all random inputs with their laws."`
	JSON    bool   `name:"json" help:"Print the chances as JSON."`
}

// chanceReport is the JSON form of what the command prints.
type chanceReport struct {
	assess.HangChances
	Next assess.NextSteps `json:"measure_next"`
}

// Run works out how likely the modelled parts of a hang fail and what would be
// worth measuring. An interrupt ends it.
func (c chanceCommand) Run(env Env) error {
	const most = 100_000_000
	if c.Samples < 0 || c.Samples > most {
		return refusal{fmt.Errorf("--samples: %d; expected 0 to %d", c.Samples, most)}
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
	chances, err := assess.ChanceOf(ctx, s, k, c.Hang, assess.ChanceOptions{Samples: c.Samples, Seed: c.Seed, Progress: progressOn(env.Stderr, "sampling")})
	if err != nil {
		return ofHang(c.File, err)
	}
	next, err := assess.MeasureNext(s, k, c.Hang)
	if err != nil {
		return ofHang(c.File, err)
	}
	if c.JSON {
		return writeJSON(env.Stdout, chanceReport{chances, next})
	}
	return page{env.Stdout}.chances(chances, next, c.Inputs)
}

// ofHang tells refused input from a run that was ended.
func ofHang(file string, err error) error {
	var unknown assess.UnknownHang
	switch {
	case errors.Is(err, context.Canceled):
		return fmt.Errorf("ended before it was done: %w", err)
	case errors.As(err, &unknown):
		return refusal{fmt.Errorf("--hang: %w", err)}
	}
	return refusal{fmt.Errorf("%s: %w", file, err)}
}
