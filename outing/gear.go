package outing

import (
	"fmt"
	"slices"
	"strings"

	"boughline/register"
	"boughline/survey"
)

// GearStands returns a *NoCard where a register says something against a part of
// the chain of a hang on a day, and no reason is written down for using it
// nevertheless.
func GearStands(r register.Register, s *survey.Survey, hang string, on survey.Date) error {
	today := *s
	today.Day = on
	var against []string
	for _, d := range r.Doubts(&today) {
		if d.Chain != chainOf(s, hang) || len(d.Bars) == 0 || d.Despite != "" {
			continue
		}
		for _, b := range d.Bars {
			against = append(against, fmt.Sprintf("%s (%s): %s", d.Part, d.Item, b))
		}
	}
	if len(against) == 0 {
		return nil
	}
	return &NoCard{Cause: GearDue, Hang: hang, Detail: "by the register of gear: " + strings.Join(against, "; ") +
		"; take another part, have it examined, or write down at the part why it is used nevertheless"}
}

func chainOf(s *survey.Survey, hang string) string {
	for _, t := range s.Trees {
		for _, h := range t.Hangs {
			if h.ID == hang {
				return h.Chain
			}
		}
	}
	return ""
}

// ItemsOf lists what a chain is put together of, by the ids of the register.
func ItemsOf(s *survey.Survey, chain string) []string {
	var items []string
	for _, c := range s.Chains {
		if c.ID != chain {
			continue
		}
		for _, p := range c.Parts {
			if p.Item != "" && !slices.Contains(items, p.Item) {
				items = append(items, p.Item)
			}
		}
	}
	return items
}
