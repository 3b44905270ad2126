package register

import (
	"fmt"
	"slices"
)

// Added returns the register with one more item. It fails for an id that is
// taken.
func (r Register) Added(i Item) (Register, error) {
	if _, err := r.Item(i.ID); err == nil {
		return r, fmt.Errorf("id is %q, which another item has; expected one of its own", i.ID)
	}
	r.Items = append(slices.Clone(r.Items), i)
	return r, nil
}

// Edited returns the register with what is written about an item replaced. Its
// examinations and its retirement stay as they are; another id goes into the
// uses as well.
func (r Register) Edited(id string, to Item) (Register, error) {
	if to.ID != id {
		if _, err := r.Item(to.ID); err == nil {
			return r, fmt.Errorf("id is %q, which another item has; expected one of its own", to.ID)
		}
		r.Uses = renamed(r.Uses, id, to.ID)
	}
	return r.change(id, func(i *Item) error {
		to.Examinations, to.Retired = i.Examinations, i.Retired
		*i = to
		return nil
	})
}

func renamed(uses []Use, from, to string) []Use {
	uses = slices.Clone(uses)
	for n := range uses {
		if at := slices.Index(uses[n].Items, from); at >= 0 {
			uses[n].Items = slices.Clone(uses[n].Items)
			uses[n].Items[at] = to
		}
	}
	return uses
}
