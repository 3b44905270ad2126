package bark

import (
	"cmp"
	"fmt"
	"slices"

	"boughline/quantity"
)

// Cover is a way for a hang to bear on the bark: the bare line, a sleeve such
// as a hose or an inner tube, a strap with a ring, a pad.
type Cover struct {
	Name  string
	Width quantity.Length // over which the pull is spread on the bark
	// Rubs says that the part that moves with the swing touches the bark. In a
	// sleeve or through a ring it moves on something else.
	Rubs bool
}

// Advice is what one cover does to the bark.
type Advice struct {
	Cover     Cover
	Pressure  quantity.Stress
	Shear     quantity.Stress
	BondShare float64         // shear over the bond of bark to wood
	Rubbing   quantity.Length // way rubbed on the bark, 0 where it does not rub
}

// Compare returns the covers from the gentlest to the roughest: those that
// don't rub first, then by pressure. bond is the strength of the bond of bark
// to wood at the season, rubbing the way of RubbingPath. There is no limit
// here: the figures compare, they don't pass or fail a hang. Stems as anchors
// have a rule of their own: DIN 79400 asks for slings of 50 mm and stems of
// 300 mm (read second-hand).
func Compare(c Contact, covers []Cover, bond quantity.Stress, rubbing quantity.Length) ([]Advice, error) {
	if !(bond > 0) {
		return nil, fmt.Errorf("bond: %v Pa; expected the strength of the bond of bark to wood, above 0", bond)
	}
	advice := make([]Advice, 0, len(covers))
	for _, cover := range covers {
		pressure, err := c.Pressure(cover.Width)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", cover.Name, err)
		}
		shear, err := c.Shear(cover.Width)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", cover.Name, err)
		}
		a := Advice{Cover: cover, Pressure: pressure, Shear: shear, BondShare: float64(shear / bond)}
		if cover.Rubs {
			a.Rubbing = rubbing
		}
		advice = append(advice, a)
	}
	slices.SortStableFunc(advice, func(a, b Advice) int {
		return cmp.Or(cmp.Compare(rank(a), rank(b)), cmp.Compare(a.Pressure, b.Pressure))
	})
	return advice, nil
}

func rank(a Advice) int {
	if a.Cover.Rubs {
		return 1
	}
	return 0
}
