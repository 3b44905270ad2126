package register

import (
	"errors"
	"fmt"
	"slices"

	"boughline/survey"
)

// ErrNoItem says that the register holds no item of a name.
var ErrNoItem = errors.New("the register holds no such item; expected an id from its list")

// Item finds an item by its id.
func (r Register) Item(id string) (Item, error) {
	for _, i := range r.Items {
		if i.ID == id {
			return i, nil
		}
	}
	return Item{}, fmt.Errorf("item %q: %w", id, ErrNoItem)
}

// UsesOf lists the uses of an item in the order of their days.
func (r Register) UsesOf(id string) []Use {
	var list []Use
	for _, u := range r.Uses {
		if slices.Contains(u.Items, id) {
			list = append(list, u)
		}
	}
	slices.SortStableFunc(list, func(a, b Use) int { return compareDays(a.Date, b.Date) })
	return list
}

// DaysUsed counts the days on which an item was in use, as far as they are
// recorded. Two uses on one day are one day.
func (r Register) DaysUsed(id string) int {
	days := map[string]bool{}
	for _, u := range r.UsesOf(id) {
		days[u.Date.String()] = true
	}
	return len(days)
}

// Cycles counts the rides or swings that an item took, as far as they were
// counted.
func (r Register) Cycles(id string) int {
	n := 0
	for _, u := range r.UsesOf(id) {
		n += u.Cycles
	}
	return n
}

// FirstUse is the first day of use: the earlier of what is written on the item
// and the first use recorded. It is zero where neither is known.
func (r Register) FirstUse(i Item) survey.Date {
	first := i.InServiceSince
	for _, u := range r.UsesOf(i.ID) {
		if first.IsZero() || first.After(u.Date) {
			first = u.Date
		}
	}
	return first
}

// LastExamination is the latest thorough examination up to a day, false where
// there was none. Of two on one day the later entry counts.
func (i Item) LastExamination(on survey.Date) (Examination, bool) {
	var last Examination
	for _, e := range i.Examinations {
		if !e.On.After(on) && !last.On.After(e.On) {
			last = e
		}
	}
	return last, !last.On.IsZero()
}

// lastShock is the latest day up to on on which an item was shock-loaded.
func (r Register) lastShock(id string, on survey.Date) survey.Date {
	var last survey.Date
	for _, u := range r.UsesOf(id) {
		if u.Shock && !u.Date.After(on) {
			last = u.Date
		}
	}
	return last
}

func compareDays(a, b survey.Date) int {
	switch {
	case a.After(b):
		return 1
	case b.After(a):
		return -1
	}
	return 0
}
