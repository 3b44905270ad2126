package notebook

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"slices"

	"boughline/outing"
	"boughline/store"
	"boughline/survey"
)

// IssueCard judges a hang anew, issues its card for the day and begins an outing
// with it. It fails with a *outing.NoCard where no card follows, and with a
// *HangsAlready where the hang is up.
func (n *Notebook) IssueCard(ctx context.Context, site, id string, e Edit, i outing.Issue) (*outing.Outing, error) {
	if err := n.taken(ctx, e); err != nil {
		return nil, err
	}
	s, err := n.Site(ctx, site)
	if err != nil {
		return nil, err
	}
	t, err := s.Tree(i.Tree)
	if err != nil {
		return nil, err
	}
	if err := n.hangsAlready(ctx, site, id, i.Hang); err != nil {
		return nil, err
	}
	if err := n.GearStands(ctx, s.Near(t), i.Hang, i.Day()); err != nil {
		return nil, err
	}
	o, err := outing.New(id, s.Near(t), n.knowledge, i)
	if err != nil {
		return nil, err
	}
	data, err := json.Marshal(o.Log)
	if err != nil {
		return nil, err
	}
	brief, err := n.briefPut(ctx, site, id, o)
	if err != nil {
		return nil, err
	}
	return o, n.apply(ctx, e, store.Put{Key: outingKey(site, id), What: e.What, Data: data, Once: true}, brief)
}

// AddEvent adds one event to an outing, with what it means for the tree: a load
// test that was made and a sign that showed in use are written into the record of
// the tree in the same batch, so that they outlast the day. The event gets the
// time of the notebook's clock. It fails with a *outing.Refused where the event does
// not fit.
func (n *Notebook) AddEvent(ctx context.Context, site, id string, e Edit, event outing.Event) (*outing.Outing, error) {
	const tries = 8
	var err error
	for range tries {
		if err = n.taken(ctx, e); err != nil {
			return nil, err
		}
		var after *outing.Outing
		if after, err = n.addEvent(ctx, site, id, e, event); err == nil {
			return after, nil
		}
		var conflict *store.Conflict
		if !errors.As(err, &conflict) {
			return nil, err
		}
	}
	return nil, err
}

func (n *Notebook) addEvent(ctx context.Context, site, id string, e Edit, event outing.Event) (*outing.Outing, error) {
	before, err := n.Outing(ctx, site, id)
	if err != nil {
		return nil, err
	}
	if event.Kind == outing.Checked && !before.IsUp() {
		if err := n.hangsAlready(ctx, site, id, before.Issue.Hang); err != nil {
			return nil, err
		}
	}
	event.At = n.Now().In(before.Issue.At.Location())
	if last := len(before.Log.Events); last > 0 && event.At.Before(before.Log.Events[last-1].At) {
		event.At = before.Log.Events[last-1].At // the clock of the device was set back
	}
	after, err := before.Append(event)
	if err != nil {
		return nil, err
	}
	data, err := json.Marshal(event)
	if err != nil {
		return nil, err
	}
	puts := []store.Put{{Key: fmt.Sprintf("%s%06d", eventsKey(site, id), len(after.Log.Events)), What: e.What, Data: data, Once: true}}
	more, err := n.followUps(ctx, site, id, before, after)
	if err != nil {
		return nil, err
	}
	return after, n.apply(ctx, e, append(puts, more...)...)
}

// followUps are the other records that an event changes.
func (n *Notebook) followUps(ctx context.Context, site, id string, before, after *outing.Outing) ([]store.Put, error) {
	var puts []store.Put
	if before.IsUp() != after.IsUp() {
		put, err := n.upPut(ctx, site, id, after)
		if err != nil {
			return nil, err
		}
		puts = append(puts, put)
	}
	if before.IsUp() != after.IsUp() || before.Down != after.Down {
		put, err := n.briefPut(ctx, site, id, after)
		if err != nil {
			return nil, err
		}
		puts = append(puts, put)
	}
	if before.Down == nil && after.Down != nil {
		put, err := n.gearPut(ctx, id, after)
		if err != nil {
			return nil, err
		}
		puts = append(puts, put...)
	}
	sign := ""
	if after.Over != before.Over {
		sign = outing.SignOf(after.Over)
	}
	if sign == "" && len(after.Tests) == len(before.Tests) {
		return puts, nil
	}
	put, err := n.onTree(ctx, site, after, func(t *Tree) error {
		t.LoadTests = append(t.LoadTests[:len(t.LoadTests):len(t.LoadTests)], after.Recorded()[len(before.Tests):]...)
		if sign == "" {
			return nil
		}
		return n.showed(t, after, sign)
	})
	if err != nil {
		return nil, err
	}
	return append(puts, put...), nil
}

// upPut marks a swing that hangs, or takes the mark away.
func (n *Notebook) upPut(ctx context.Context, site, id string, o *outing.Outing) (store.Put, error) {
	key := upKey(site, id)
	kept, err := n.store.Get(ctx, key)
	if err != nil && !errors.Is(err, store.ErrNotFound) {
		return store.Put{}, err
	}
	data, err := json.Marshal(Still{Version: 1, Site: site, ID: id, Issue: o.Issue})
	return store.Put{Key: key, Rests: kept.Revision, What: "swing up", Gone: !o.IsUp(), Data: data}, err
}

// onTree changes the record of the outing's tree as it is now. Where the tree has
// been taken off its site since, nothing is left to change.
func (n *Notebook) onTree(ctx context.Context, site string, o *outing.Outing, change func(*Tree) error) ([]store.Put, error) {
	s, err := n.Site(ctx, site)
	if err != nil {
		return nil, err
	}
	t, err := s.Tree(o.Issue.Tree)
	if errors.Is(err, ErrNoTree) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	if !slices.ContainsFunc(t.Hangs, func(h survey.Hang) bool { return h.ID == o.Issue.Hang }) {
		return nil, nil
	}
	now, err := t.clone()
	if err != nil {
		return nil, err
	}
	if err := change(&now); err != nil {
		return nil, err
	}
	put, err := n.putTree(s, &now, "outing: "+o.Issue.Hang)
	put.Rests = t.Revision
	return []store.Put{put}, err
}

// showed writes a sign that showed in use as a finding on the tree.
func (n *Notebook) showed(t *Tree, o *outing.Outing, sign string) error {
	known, ok := n.knowledge.Sign(sign)
	if !ok {
		return fmt.Errorf("%q is no sign", sign)
	}
	f := survey.Finding{ID: freeID(t), Sign: sign, SeenOn: o.Issue.Day(), Note: "showed in use"}
	if known.Zone == "limb" {
		f.Member = o.Card.Member
	}
	t.Findings = append(t.Findings, f)
	looker := Looker{On: o.Issue.Day(), By: o.Issue.Signed, Signs: n.knowledge.Signs()}
	return looker.Answer(t, string(known.Zone), sign, Seen)
}
