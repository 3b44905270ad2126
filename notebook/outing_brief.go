package notebook

import (
	"context"
	"encoding/json"
	"errors"
	"slices"

	"boughline/outing"
	"boughline/store"
	"boughline/survey"
)

// Brief is what the page of a tree tells of an outing, without working anything
// out: it is written whenever the swing goes up or comes down.
type Brief struct {
	Version int    `json:"boughline_day"`
	ID      string `json:"id"`
	outing.Issue
	Up        bool          `json:"up,omitempty"`
	Down      bool          `json:"down,omitempty"`
	Turns     int           `json:"turns,omitempty"`
	Riders    int           `json:"riders,omitempty"`
	Minutes   int           `json:"minutes,omitempty"`
	Swings    int           `json:"swings,omitempty"` // at most
	Bark      outing.Bark   `json:"bark,omitempty"`
	Wear      string        `json:"wear,omitempty"` // what was written at take-down
	Over      outing.Reason `json:"over,omitempty"`
	LookAgain survey.Date   `json:"look_again,omitzero"`
}

func briefOf(id string, o *outing.Outing) Brief {
	turns, riders := o.Riders()
	b := Brief{
		Version: 1, ID: id, Issue: o.Issue, Up: o.IsUp(), Down: o.Down != nil, Turns: turns, Riders: riders,
		Minutes: int(o.Used.Minutes()), Swings: o.Swings(o.Issue.At), Over: o.Over, LookAgain: o.Card.LookAgain,
	}
	if o.Down != nil {
		b.Bark, b.Wear = o.Down.Bark, o.Down.Text
	}
	return b
}

// Briefs lists the outings of a site, the newest first.
func (n *Notebook) Briefs(ctx context.Context, site string) ([]Brief, error) {
	objects, err := store.List(ctx, n.store, briefsKey(site))
	var list []Brief
	for _, o := range objects {
		var b Brief
		if json.Unmarshal(o.Data, &b) == nil && b.Version == 1 {
			list = append(list, b)
		}
	}
	slices.SortStableFunc(list, func(a, b Brief) int { return b.At.Compare(a.At) })
	return list, err
}

func (n *Notebook) briefPut(ctx context.Context, site, id string, o *outing.Outing) (store.Put, error) {
	key := briefsKey(site) + store.Segment(id)
	kept, err := n.store.Get(ctx, key)
	if err != nil && !errors.Is(err, store.ErrNotFound) {
		return store.Put{}, err
	}
	data, err := json.Marshal(briefOf(id, o))
	return store.Put{Key: key, Rests: kept.Revision, What: "outing", Data: data}, err
}
