package register

import (
	"fmt"
	"reflect"
	"slices"
)

// Merged returns the register with another taken in: an item of both becomes
// as the other has it, with the examinations of both; a retirement that either
// holds stands, the earlier one where both do. What the other does not hold
// stays. It fails where one id means two kinds of thing.
func (r Register) Merged(other Register) (Register, error) {
	r.Owner, r.Note = other.Owner, other.Note
	if other.LOLER != nil {
		r.LOLER = other.LOLER
	}
	r.Items = slices.Clone(r.Items)
	for _, i := range other.Items {
		at := slices.IndexFunc(r.Items, func(kept Item) bool { return kept.ID == i.ID })
		if at < 0 {
			r.Items = append(r.Items, i)
			continue
		}
		kept := r.Items[at]
		if kept.Kind != i.Kind || kept.Material != i.Material {
			return r, fmt.Errorf("item %s is a %s of %s here and a %s of %s in the file; expected one thing under one id: rename one of them",
				i.ID, kept.Kind, kept.Material, i.Kind, i.Material)
		}
		r.Items[at] = mergedItem(kept, i)
	}
	r.Uses = united(r.Uses, other.Uses)
	return r, nil
}

// united adds to a list what another holds beyond it. What stands in both
// counts once; what stands twice in one of them, such as two like uses on one
// day, still stands twice.
func united[T any](kept, other []T) []T {
	all, left := slices.Clone(kept), slices.Clone(kept)
	for _, x := range other {
		at := slices.IndexFunc(left, func(y T) bool { return reflect.DeepEqual(x, y) })
		if at < 0 {
			all = append(all, x)
			continue
		}
		left = slices.Delete(left, at, at+1)
	}
	return all
}

func mergedItem(kept, i Item) Item {
	examinations := united(kept.Examinations, i.Examinations)
	slices.SortStableFunc(examinations, func(a, b Examination) int { return compareDays(a.On, b.On) })
	i.Examinations = examinations
	if i.Retired == nil || (kept.Retired != nil && !kept.Retired.On.After(i.Retired.On)) {
		i.Retired = kept.Retired
	}
	return i
}
