package assess

import (
	"boughline/engine/chance"
)

// ChanceFigure is the decisive chance check as two curves, to be drawn: what
// comes on the section and what it bears, over the moment.
type ChanceFigure struct {
	Code Code
	Part string
	chance.LimbDensities
}

// chanceFigure draws the section with the least reliability index at a use;
// nil where its laws contradict what was seen.
func (r *rig) chanceFigure(u trial) *ChanceFigure {
	var figure *ChanceFigure
	least := 0.0
	known := betas{}
	for i := range r.limbs {
		part := &r.limbs[i]
		cuts := map[Code]*cut{UnionChance: &part.cuts[0]}
		if len(part.cuts) > 1 {
			cuts[LimbChance] = r.mostStressed(part, u)
		}
		for _, code := range []Code{UnionChance, LimbChance} {
			c := cuts[code]
			if c == nil {
				continue
			}
			beta := r.leastBeta(known, u, c, unfavourable)
			if figure != nil && beta >= least {
				continue
			}
			if densities, err := r.limbCase(u, c, unfavourable).Densities(); err == nil {
				figure, least = &ChanceFigure{code, place(c, 0, code).Part, densities}, beta
			}
		}
	}
	return figure
}
