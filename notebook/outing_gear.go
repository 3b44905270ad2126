package notebook

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"boughline/outing"
	"boughline/register"
	"boughline/store"
	"boughline/survey"
)

// GearStands returns a *outing.NoCard where the register says something against
// a part of the chain of a hang on a day, and no reason is written down for using
// it nevertheless. Where no register is kept it has nothing to say.
func (n *Notebook) GearStands(ctx context.Context, s *survey.Survey, hang string, on survey.Date) error {
	g, err := n.Gear(ctx)
	if err != nil || len(g.Items) == 0 {
		return err
	}
	return outing.GearStands(g.Register, s, hang, on)
}

// gearPut notes in the register that the gear of an outing was used. Items that
// the register does not hold are passed over: they are somebody else's.
func (n *Notebook) gearPut(ctx context.Context, id string, o *outing.Outing) ([]store.Put, error) {
	s, problems, err := survey.Read(strings.NewReader(string(o.Document)))
	if err != nil || len(problems) > 0 {
		return nil, errors.Join(err, fmt.Errorf("the document of outing %s: %d problems", id, len(problems)))
	}
	g, err := n.Gear(ctx)
	if err != nil {
		return nil, err
	}
	turns, _ := o.Riders()
	use := register.Use{Date: o.Issue.Day(), Outing: id, Wet: o.Down.Wet, Cycles: turns, Note: o.Down.Text}
	for _, item := range outing.ItemsOf(s, o.Card.Chain) {
		if _, err := g.Item(item); err == nil {
			use.Items = append(use.Items, item)
		}
	}
	noted := slices.ContainsFunc(g.Uses, func(u register.Use) bool { return u.Outing == id })
	if len(use.Items) == 0 || noted {
		return nil, nil
	}
	used, err := g.Used(use)
	if err != nil {
		return nil, err
	}
	put, err := putGear(used, g.Revision, "outing: "+o.Issue.Hang)
	return []store.Put{put}, err
}
