package cli

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"slices"
	"strings"

	"boughline/engine/measure"
	"boughline/knowledge"
	"boughline/quantity"
)

type measureCommand struct {
	JSON     bool     `name:"json" help:"Print JSON."`
	Kind     string   `arg:"" optional:"" help:"Kind of measuring, or photo."`
	Readings []string `arg:"" optional:"" passthrough:"" help:"Readings as --field VALUE, with a unit; a field read several times is given several times. For photo: a file of marks, or - for stdin."`
}

// photo is the kind that reads marks from a file.
const photo = "photo"

// Run works out one kind of measuring, or says what it needs.
func (c measureCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	spread := func(how quantity.How, d measure.Dimension, value float64) float64 {
		return k.StandardDeviation(how, string(d), value)
	}
	if c.Kind == "" {
		return c.list(env.Stdout, measure.Kinds())
	}
	if c.Kind == photo {
		return c.photo(env, spread)
	}
	kind, ok := measure.ByName(c.Kind)
	if !ok {
		return refusal{fmt.Errorf("%q is no kind of measuring; expected one of %s, %s", c.Kind, strings.Join(kindNames(), ", "), photo)}
	}
	readings, err := c.parse(kind, spread)
	switch {
	case err != nil:
		return refusal{fmt.Errorf("%s: %w", kind.Name, err)}
	case len(readings) == 0:
		return c.list(env.Stdout, []measure.Kind{kind})
	}
	outcome, err := kind.Work(readings)
	if err != nil {
		return refusal{fmt.Errorf("%s: %w", kind.Name, err)}
	}
	return c.print(env.Stdout, outcome)
}

func kindNames() []string {
	var names []string
	for _, k := range measure.Kinds() {
		names = append(names, k.Name)
	}
	return names
}

// parse reads the fields of a kind as flags. Values may begin with a minus.
func (c *measureCommand) parse(kind measure.Kind, spread measure.Spread) (map[string][]measure.Reading, error) {
	flags := flag.NewFlagSet(kind.Name, flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	flags.BoolVar(&c.JSON, "json", c.JSON, "print JSON")
	readings := map[string][]measure.Reading{}
	var faults error
	for _, f := range kind.Fields {
		flags.Func(f.Name, f.Label, func(text string) error {
			r, err := f.Parse(text, spread)
			faults = errors.Join(faults, err)
			readings[f.Name] = append(readings[f.Name], r)
			return nil
		})
	}
	err := flags.Parse(c.Readings)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return nil, faults
	case err != nil:
		return nil, fmt.Errorf("%w; expected %s", err, strings.Join(usage(kind), " "))
	case flags.NArg() > 0:
		return nil, fmt.Errorf("%q stands alone; expected %s, each value in quotes", flags.Arg(0), strings.Join(usage(kind), " "))
	}
	return readings, faults
}

// usage words the fields as they are typed.
func usage(kind measure.Kind) []string {
	var words []string
	for _, f := range kind.Fields {
		word := fmt.Sprintf("--%s VALUE", f.Name)
		if f.Default != "" {
			word = "[" + word + "]"
		}
		words = append(words, word)
	}
	return words
}

// list says what kinds there are and what each needs.
func (c measureCommand) list(w io.Writer, kinds []measure.Kind) error {
	if c.JSON {
		return writeJSON(w, kinds)
	}
	var b strings.Builder
	for i, k := range kinds {
		if i > 0 {
			b.WriteString("\n")
		}
		b.WriteString(needs(k))
	}
	if len(kinds) > 1 {
		b.WriteString("\n" + hanging(photo, "thickness, lengths along a limb, slopes and angles from marks in a picture with a known length in it: boughline measure photo FILE (docs/measuring.md)", column))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func needs(k measure.Kind) string {
	var b strings.Builder
	b.WriteString(k.Name + "\n" + hanging("  gives", k.Does, column))
	for i, f := range k.Fields {
		first := ""
		if i == 0 {
			first = "  needs"
		}
		text := fmt.Sprintf("--%s: %s (%s)", f.Name, f.Label, f.How)
		if f.Default != "" {
			text += "; left out: " + f.Default
		}
		b.WriteString(hanging(first, text, column))
	}
	b.WriteString(hanging("  formula", k.Source, column))
	b.WriteString(hanging("  mind", k.Caution, column))
	return b.String()
}

// print writes what came out.
func (c measureCommand) print(w io.Writer, outcome measure.Outcome) error {
	if c.JSON {
		return writeJSON(w, measuredJSON(outcome))
	}
	_, err := io.WriteString(w, measuredPage(outcome))
	return err
}

// largestFirst orders the fields by their share in the variance, by name where
// equal.
func largestFirst(share map[string]float64) []string {
	var names []string
	for name := range share {
		names = append(names, name)
	}
	slices.SortFunc(names, func(a, b string) int {
		if share[a] != share[b] {
			if share[a] > share[b] {
				return -1
			}
			return 1
		}
		return strings.Compare(a, b)
	})
	return names
}
