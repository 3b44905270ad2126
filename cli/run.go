package cli

import (
	"context"
	"fmt"
	"io"
	"time"

	"boughline/store"

	"github.com/alecthomas/kong"
)

// Env is what a command may touch of the world.
type Env struct {
	Context context.Context // ends when the program is to stop
	Args    []string        // without the program's name
	Stdin   io.Reader
	Stdout  io.Writer
	Stderr  io.Writer
	// OpenStore opens the file that the app keeps its records in.
	OpenStore func(file string) (store.Backend, error)
	// Now is the clock; time.Now where it is nil.
	Now func() time.Time
}

// commands is the command line, one field for each command.
type commands struct {
	Check    checkCommand    `cmd:"" help:"Check a survey and list every problem in it."`
	Assess   assessCommand   `cmd:"" help:"Work out what follows for every hang of a survey, with the reasons."`
	Place    placeCommand    `cmd:"" help:"Look for the best hangs: which limb, how far out, how long a line, which way."`
	Rig      rigCommand      `cmd:"" help:"Work out how one hang is rigged: links, line to cut, throw, knots, bark."`
	Chance   chanceCommand   `cmd:"" help:"Work out how likely one hang fails, and what is worth measuring next."`
	LoadTest loadTestCommand `cmd:"" name:"loadtest" help:"Plan and record load tests."`
	Day      dayCommand      `cmd:"" help:"Issue a day card and write down the day: put up, tested, ridden, stopped, down."`
	Look     lookCommand     `cmd:"" help:"List what is still to be looked at on a tree, from the crown down."`
	Signs    signsCommand    `cmd:"" help:"Print the signs of an inspection, one of them, or the hazards of a site."`
	Fungus   fungusCommand   `cmd:"" help:"Name a growth on a tree, as likely as it is, and say what it means for people."`
	Species  speciesCommand  `cmd:"" help:"Tell what the tables say of a kind of tree, by any of its names."`
	Measure  measureCommand  `cmd:"" help:"Work out what cannot be taped, with its error; without a kind, list the kinds."`
	Gear     gearCommand     `cmd:"" help:"Keep a register of gear: what is there, what is due, what stands against its use."`
	Draw     drawCommand     `cmd:"" help:"Draw a tree, a hang or the site as SVG."`
	Sheet    sheetCommand    `cmd:"" help:"Make a sheet to print or to send: an assessment, a site, a letter."`
	Work     workCommand     `cmd:"" help:"Recompute single figures from JSON files with group and inputs."`
	Export   exportCommand   `cmd:"" help:"Write a site for elsewhere: an archive, a map, lists, a calendar."`
	Import   importCommand   `cmd:"" help:"Take in an archive, a file of the app, a list of trees, or photos."`
	Schema   schemaCommand   `cmd:"" help:"Print the JSON Schema of the survey document."`
	Demo     demoCommand     `cmd:"" help:"Write the demo survey and its register of gear into a folder."`
	App      appCommand      `cmd:"" help:"Serve the app for a browser, at a desk and for the phone."`
	Field    fieldCommand    `cmd:"" help:"Write the app for the phone as a folder of files."`
}

const about = `Judges a tree before a rope swing is hung from it for a day.

Exit codes: 0 done, 1 a file could not be read or written, 2 the input or the
command line was refused and nothing was done.`

// Run runs one command and returns its exit code.
func Run(env Env) int {
	var c commands
	left := -1
	parser, err := kong.New(&c, kong.Name("boughline"), kong.Description(about),
		kong.Writers(env.Stdout, env.Stderr), kong.Exit(func(code int) { left = code }),
		kong.Vars{"sheet_kinds": sheetKinds()}, kong.Bind(env), kong.UsageOnError())
	if err != nil {
		fmt.Fprintln(env.Stderr, "boughline:", err)
		return ExitFailed
	}
	parsed, err := parser.Parse(env.Args)
	if left >= 0 { // help was asked for and printed
		return left
	}
	if err != nil {
		fmt.Fprintf(env.Stderr, "boughline: %v\nTry: boughline --help\n", err)
		return ExitRefuse
	}
	err = parsed.Run(env)
	if err != nil {
		fmt.Fprintln(env.Stderr, "boughline:", err)
	}
	return exitCode(err)
}
