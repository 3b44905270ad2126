package cli

import (
	"crypto/rand"
	"errors"
	"fmt"
	"os"
	"strings"
	"time"

	"boughline/knowledge"
	"boughline/outing"
	"boughline/outing/wording"
	"boughline/survey"
)

type dayIssueCommand struct {
	File   string `arg:"" help:"Survey document (JSON)."`
	Hang   string `required:"" help:"The hang." placeholder:"ID"`
	Tree   string `help:"Its tree, if it is to be checked." placeholder:"ID"`
	Group  string `help:"Riders to judge it for, instead of those the hang names." placeholder:"ID"`
	Until  string `required:"" help:"When it is down again, today." placeholder:"HH:MM"`
	Signed string `required:"" help:"Who is in charge and signs." placeholder:"NAME"`
	Out    string `short:"o" required:"" help:"File to write the day into; it must not be there yet." placeholder:"LOG" type:"path"`
	Gear   string `help:"Register of gear that the chain is held against." placeholder:"REGISTER" type:"path"`
	Pace   string `help:"Length of one of your steps; 0.7 m if left out." placeholder:"LENGTH"`
}

// Run issues the card. The survey is judged as it stands now; nothing that a
// file says of outcome or limits is looked at.
func (c dayIssueCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	s, err := readSurvey(env, c.File, k)
	if err != nil {
		return err
	}
	pace, err := paceOf(c.Pace, k)
	if err != nil {
		return err
	}
	if _, err := os.Stat(c.Out); !errors.Is(err, os.ErrNotExist) {
		return refusal{fmt.Errorf("-o %s: the file is there already; a day is never written over another", c.Out)}
	}
	issue, err := c.issue(env.now(), s)
	if err != nil {
		return err
	}
	o, err := c.outing(env, s, k, issue)
	var no *outing.NoCard
	if errors.As(err, &no) {
		for _, line := range wording.NoCard(no) {
			fmt.Fprintln(env.Stderr, "- "+line)
		}
		return refusal{no}
	}
	if err != nil {
		return err
	}
	if err := writeDay(c.Out, o); err != nil {
		return err
	}
	return page{env.Stdout}.dayCard(o.Card, pace)
}

// outing begins the day, if the register of gear has nothing against it.
func (c dayIssueCommand) outing(env Env, s *survey.Survey, k *knowledge.Base, i outing.Issue) (*outing.Outing, error) {
	if c.Gear != "" {
		r, err := readRegister(env, c.Gear)
		if err != nil {
			return nil, err
		}
		if err := outing.GearStands(r, s, i.Hang, i.Day()); err != nil {
			return nil, err
		}
	}
	return outing.New(strings.ToLower(rand.Text()), s, k, i)
}

// issue reads the command line and puts the group into the hang.
func (c dayIssueCommand) issue(now time.Time, s *survey.Survey) (outing.Issue, error) {
	i := outing.Issue{Tree: c.Tree, Hang: c.Hang, At: now, Signed: c.Signed}
	at, err := time.Parse("15:04", c.Until)
	if err != nil {
		return i, refusal{fmt.Errorf("--until: %q is no time of day; expected the form 17:00", c.Until)}
	}
	i.Until = time.Date(now.Year(), now.Month(), now.Day(), at.Hour(), at.Minute(), 0, 0, now.Location())
	for t := range s.Trees {
		for h := range s.Trees[t].Hangs {
			if hang := &s.Trees[t].Hangs[h]; hang.ID == c.Hang && (c.Tree == "" || c.Tree == s.Trees[t].ID) {
				i.Tree = s.Trees[t].ID
				return i, useGroup(hang, s, c.Group)
			}
		}
	}
	return i, refusal{fmt.Errorf("--hang: %q is no hang of this survey, or not on the tree %q", c.Hang, c.Tree)}
}

// useGroup judges a hang for another group of the survey.
func useGroup(h *survey.Hang, s *survey.Survey, group string) error {
	if group == "" {
		return nil
	}
	var known []string
	for _, r := range s.Riders {
		if r.ID == group {
			h.Riders = group
			return nil
		}
		known = append(known, r.ID)
	}
	return refusal{fmt.Errorf("--group: %q is no group of this survey; expected one of %v", group, known)}
}
