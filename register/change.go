package register

import (
	"fmt"
	"slices"

	"boughline/survey"
)

// Used returns the register with one more use. What happened is recorded
// whatever stood against it: an item that was used although it is retired has
// been used. It fails for a use without a day or items, for an item that the
// register does not hold, and for a count below 0.
func (r Register) Used(u Use) (Register, error) {
	switch {
	case u.Date.IsZero():
		return r, fmt.Errorf("date is empty; expected the day of the use as 2026-05-16")
	case len(u.Items) == 0:
		return r, fmt.Errorf("items is empty; expected the id of at least one item")
	case u.Cycles < 0:
		return r, fmt.Errorf("cycles is %d; expected 0 or more", u.Cycles)
	}
	u.Items = slices.Clone(u.Items)
	slices.Sort(u.Items)
	u.Items = slices.Compact(u.Items)
	for _, id := range u.Items {
		if _, err := r.Item(id); err != nil {
			return r, err
		}
	}
	r.Uses = append(slices.Clone(r.Uses), u)
	return r, nil
}

// Retire returns the register with an item taken out of use for good. It fails
// without a day or a reason, and for an item that is retired already: the first
// retirement stands.
func (r Register) Retire(id string, on survey.Date, why string) (Register, error) {
	switch {
	case on.IsZero():
		return r, fmt.Errorf("on is empty; expected the day of the retirement as 2026-05-16")
	case why == "":
		return r, fmt.Errorf("why is empty; expected the reason in words")
	}
	return r.change(id, func(i *Item) error {
		if i.Retired != nil {
			return fmt.Errorf("item %s is retired since %s; expected one in use", id, i.Retired.On)
		}
		i.Retired = &Retirement{On: on, Why: why}
		return nil
	})
}

// Examined returns the register with one more thorough examination. An
// examination never brings a retired item back; it fails without a day, a name
// or a finding.
func (r Register) Examined(id string, e Examination) (Register, error) {
	switch {
	case e.On.IsZero():
		return r, fmt.Errorf("on is empty; expected the day of the examination as 2026-05-16")
	case e.By == "":
		return r, fmt.Errorf("by is empty; expected who examined it")
	case e.Found != Fit && e.Found != Unfit:
		return r, fmt.Errorf("found is %q; expected %s or %s", e.Found, Fit, Unfit)
	}
	return r.change(id, func(i *Item) error {
		i.Examinations = append(slices.Clone(i.Examinations), e)
		return nil
	})
}

// change returns the register with one item changed.
func (r Register) change(id string, change func(*Item) error) (Register, error) {
	at := slices.IndexFunc(r.Items, func(i Item) bool { return i.ID == id })
	if at < 0 {
		return r, fmt.Errorf("item %q: %w", id, ErrNoItem)
	}
	items := slices.Clone(r.Items)
	if err := change(&items[at]); err != nil {
		return r, err
	}
	r.Items = items
	return r, nil
}
