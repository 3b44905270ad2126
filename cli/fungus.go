package cli

import (
	"fmt"

	"boughline/knowledge"
	"boughline/quantity"
)

type fungusCommand struct {
	Says      []string `arg:"" optional:"" help:"What is seen, in your own words, each by itself: \"underside: yellow\" \"black laces under the bark\"."`
	Host      string   `help:"Kind of tree, by any name." placeholder:"TREE"`
	Place     []string `help:"Where on the tree: butt, roots_away, stem, wound, limb, crown, cavity, stump, twig, ground." placeholder:"PLACE"`
	Month     int      `help:"Month in which it was seen, 1 to 12." placeholder:"N"`
	Form      string   `help:"Shape: bracket, hoof, crust, rosette, toadstool_cluster and others." placeholder:"FORM"`
	Underside string   `help:"Pores, gills, teeth, smooth, crust or none." placeholder:"KIND"`
	Size      string   `help:"Greatest width with its unit, such as \"20 cm\"." placeholder:"SIZE"`
	JSON      bool     `name:"json" help:"Print the result as JSON; nothing is asked."`
}

// Run names a growth on a tree. Without any answer on the command line it asks,
// one question at a time, whatever would split what remains best.
func (c fungusCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	d, err := c.description()
	if err != nil {
		return err
	}
	id := k.IdentifyFungus(d)
	if id.Evidence.Answers() == 0 && len(id.Evidence.Unread) == 0 && !c.JSON {
		if id, err = (fungusTalk{k: k, in: env.Stdin, out: env.Stdout}).run(); err != nil {
			return err
		}
	}
	if c.JSON {
		return writeJSON(env.Stdout, newFungusReport(id))
	}
	return writeFungus(env.Stdout, k, id)
}

func (c fungusCommand) description() (knowledge.Description, error) {
	d := knowledge.Description{Host: c.Host, Positions: c.Place, Month: c.Month, Form: c.Form, Underside: c.Underside, Words: c.Says}
	if c.Month < 0 || c.Month > 12 {
		return d, refusal{fmt.Errorf("--month: %d; expected 1 to 12", c.Month)}
	}
	if c.Size == "" {
		return d, nil
	}
	size, err := quantity.Parse[quantity.Length](c.Size)
	if err != nil || size.Value <= 0 {
		return d, refusal{fmt.Errorf("--size: %q; expected a width with its unit, such as \"20 cm\"", c.Size)}
	}
	d.Size = size.Value
	return d, nil
}
