package assess

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// varied is a copy of the survey of which the tree of a hang may be changed.
type varied struct {
	survey *survey.Survey
	tree   *survey.Tree
	hang   *survey.Hang
}

// varied copies the survey; all but the tree and the riders is shared.
func (r *rig) varied() (varied, error) {
	written, err := json.Marshal(r.s)
	if err != nil {
		return varied{}, fmt.Errorf("copying tree %q: %w", r.s.ID, err)
	}
	s := *r.survey
	s.Trees, s.Riders = slices.Clone(s.Trees), slices.Clone(s.Riders)
	for i := range s.Trees {
		if s.Trees[i].ID != r.s.ID {
			continue
		}
		s.Trees[i] = survey.Tree{}
		if err := json.Unmarshal(written, &s.Trees[i]); err != nil {
			return varied{}, fmt.Errorf("copying tree %q: %w", r.s.ID, err)
		}
		at := slices.IndexFunc(s.Trees[i].Hangs, func(h survey.Hang) bool { return h.ID == r.h.ID })
		return varied{&s, &s.Trees[i], &s.Trees[i].Hangs[at]}, nil
	}
	return varied{}, fmt.Errorf("tree %q is not in the survey", r.s.ID)
}

// member returns a member of the copy.
func (v varied) member(id string) *survey.Member {
	return &v.tree.Members[slices.IndexFunc(v.tree.Members, func(m survey.Member) bool { return m.ID == id })]
}

// learned is what a value would come out as if it were got another way, so many
// standard deviations of what there is to learn above it. One that is known no worse stays.
func learned[Q quantity.Kind](k *knowledge.Base, now quantity.Measured[Q], how quantity.How, above float64) quantity.Measured[Q] {
	now = resolve(k, now)
	again := resolve(k, quantity.Measured[Q]{Value: now.Value, How: how})
	if again.Sd >= now.Sd && !guessed(now.How) {
		now.SdStated = true
		return now
	}
	gain := math.Sqrt(math.Max(0, float64(now.Sd*now.Sd-again.Sd*again.Sd)))
	again.Value = max(now.Value/10, now.Value+Q(above*gain)) // a value far off is still a value
	return again
}
