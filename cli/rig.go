package cli

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"boughline/assess"
	"boughline/assess/rigging"
	"boughline/assess/wording"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

type rigCommand struct {
	File  string   `arg:"" help:"Survey document (JSON)."`
	Tree  string   `help:"The tree that it hangs from; refused where it does not." placeholder:"ID"`
	Hang  string   `required:"" help:"The hang." placeholder:"ID"`
	Seat  string   `help:"Height wanted of the seat at rest under its riders, as \"0.6 m\"; left out, as the line of the hang puts it." placeholder:"LENGTH"`
	Stand string   `help:"Where the thrower stands, from the plumb line of the hang point, as \"4 m\"." placeholder:"LENGTH"`
	Hours *float64 `help:"Hours of riding in the day, for what rubs on the bark." placeholder:"H"`
	Why   bool     `help:"Print formula, numbers and sources below each answer."`
	JSON  bool     `name:"json" help:"Print the answers as JSON."`
}

// Run says how a hang is rigged.
func (c rigCommand) Run(env Env) error {
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
	if err := c.onTree(s); err != nil {
		return refusal{err}
	}
	r, err := rigging.Of(s, k, c.Hang, options)
	if err != nil {
		return c.refused(err)
	}
	if c.JSON {
		return writeJSON(env.Stdout, r)
	}
	return page{env.Stdout}.rigging(r, c.Why)
}

func (c rigCommand) options() (rigging.Options, error) {
	o := rigging.Options{Hours: c.Hours}
	for _, given := range []struct {
		flag, text string
		to         **quantity.Length
	}{{"--seat", c.Seat, &o.Seat}, {"--stand", c.Stand, &o.Stand}} {
		if given.text == "" {
			continue
		}
		length, err := quantity.ParseChosen[quantity.Length](given.text)
		if err != nil {
			return o, fmt.Errorf("%s: %w", given.flag, err)
		}
		*given.to = &length.Value
	}
	return o, nil
}

// onTree refuses a hang that hangs from no tree or from another one than was
// named.
func (c rigCommand) onTree(s *survey.Survey) error {
	var names []string
	for _, t := range s.Trees {
		for _, h := range t.Hangs {
			names = append(names, h.ID)
			if h.ID != c.Hang {
				continue
			}
			if c.Tree != "" && c.Tree != t.ID {
				return fmt.Errorf("--tree: %q hangs from %q, not from %q", c.Hang, t.ID, c.Tree)
			}
			return nil
		}
	}
	return fmt.Errorf("--hang: %w", assess.UnknownHang{Name: c.Hang, Known: names})
}

// refused tells a wrong option from a hang that cannot be worked out.
func (c rigCommand) refused(err error) error {
	var option rigging.OptionError
	if errors.As(err, &option) {
		return refusal{fmt.Errorf("--%w", err)}
	}
	return refusal{fmt.Errorf("%s: %w", c.File, err)}
}

// rigging writes how a hang is rigged, one heading for each question.
func (p page) rigging(r rigging.Rigging, why bool) error {
	var b strings.Builder
	b.WriteString(hanging(r.Hang, fmt.Sprintf("limb %s of %s", r.Limb, r.Tree), max(column, len(r.Hang)+2)))
	b.WriteString(hanging("  "+wording.Shape(r.Outcome), wording.Outcome(r.Outcome), column))
	if !r.Outcome.Rideable() {
		b.WriteString(hanging("  !", wording.RigNotNow, column))
	}
	for _, part := range wording.Rigging(r) {
		b.WriteString("\n" + rigPart(part, why))
	}
	b.WriteString("\n")
	for _, caution := range wording.RigCautions() {
		b.WriteString(hanging("!", caution, 2))
	}
	_, err := io.WriteString(p.w, b.String())
	return err
}

// rigPart leaves out what the chain does not have, unless all is asked for.
func rigPart(part wording.RigPart, why bool) string {
	text, left := paragraph(part.Title), 0
	if part.Help != "" {
		text += hanging(" ", part.Help, 2)
	}
	for _, item := range part.Items {
		if item.Minor && !why {
			left++
			continue
		}
		text += rigItem(item, why)
	}
	if left > 0 {
		text += hanging("  -", fmt.Sprintf("%d others with --why", left), 4)
	}
	return text
}

func rigItem(item wording.RigItem, why bool) string {
	const indent = 10
	first := "  -"
	if item.Margin != "" {
		first = "  " + item.Margin
	}
	text := hanging(first, item.Text, max(4, len(first)+1))
	if !why {
		return text
	}
	if item.Formula != "" {
		text += hanging("", "formula: "+item.Formula, indent)
	}
	text += hanging("", "from: "+item.Basis, indent)
	for _, t := range item.Terms {
		text += hanging("", wording.Term(t), indent)
		if t.Note != "" {
			text += hanging("", t.Note, indent+2)
		}
		for _, ref := range t.Refs {
			text += hanging("", "source: "+ref.Citation(), indent+2)
		}
	}
	for _, ref := range item.Refs {
		text += hanging("", "source: "+ref.Citation(), indent+2)
	}
	return text
}
