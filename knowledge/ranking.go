package knowledge

import (
	"cmp"
	"slices"

	"boughline/engine/fungi"
)

// RankedName is one line of a ranking.
type RankedName struct {
	Name        string
	Common      string // a common name, where there is one
	Probability float64
	FromMemory  bool // its row rests on memory, wholly or in part
}

// Lines of a ranking: of the names that are likely, and where too little was
// seen to prefer any.
const (
	mostNames = 8
	fewNames  = 3
)

// Ranking lists the likeliest names by falling probability. All that is no
// fungus stands together as one line; where too little was seen, so does all
// that is not listed. The probabilities sum to one at most; the rest is
// something else.
func (id Identification) Ranking() []RankedName {
	list := []RankedName{{Name: string(fungi.PerhapsNone), Probability: id.Share(fungi.NoFungus)}}
	most := mostNames
	if id.Answer == fungi.NotEnoughSeen {
		most = fewNames
	}
	for _, one := range id.Ranked {
		if one.Kind != fungi.NoFungus && len(list) <= most {
			list = append(list, id.line(one))
		}
	}
	if id.Answer == fungi.NotEnoughSeen {
		list = append(list, RankedName{Name: string(fungi.NotEnoughSeen), Probability: Rest(list)})
	}
	slices.SortStableFunc(list, func(a, b RankedName) int { return -cmp.Compare(a.Probability, b.Probability) })
	return list
}

func (id Identification) line(one fungi.Ranked) RankedName {
	r := RankedName{Name: one.Name, Probability: one.Probability, FromMemory: true}
	if f, ok := id.base.Fungus(one.Name); ok {
		r.Common, r.FromMemory = f.Common, f.FromMemory || f.PartlyFromMemory
	} else if k, ok := id.base.lookalike(one.Name); ok {
		r.FromMemory = k.FromMemory || k.PartlyFromMemory
	}
	return r
}

// Rest is the share that a ranking leaves for something else.
func Rest(list []RankedName) float64 {
	rest := 1.0
	for _, one := range list {
		rest -= one.Probability
	}
	return max(rest, 0)
}
