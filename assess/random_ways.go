package assess

import (
	"cmp"
	"math"
	"slices"

	"boughline/engine/chance"
	"boughline/quantity"
)

// ratios goes through every ratio of capacity to demand that can fail a hang.
func (h *randomHang) ratios(k *randomCase, each func(wayKey, float64)) {
	for i := range h.cuts {
		c := &h.cuts[i]
		s := c.solidIn(k)
		each(wayKey{h.bendingCode(c), i}, c.bendingRatio(k, &s))
		each(wayKey{LimbShear, i}, c.shearRatio(k, &s))
		each(wayKey{LimbJerk, i}, c.jerkRatio(k, &s, h.jerkStiffness))
	}
	for i := range h.bends {
		each(wayKey{LimbAcrossGrain, i}, h.bends[i].splittingRatio(k, h.acrossFactor))
	}
	for i := range h.stems {
		code := StemBending
		if h.stems[i].overturn {
			code = RootPlate
		}
		each(wayKey{code, i}, h.stemRatio(&h.stems[i], k))
	}
}

// wayKey names a way to fail: a check at one of its sections.
type wayKey struct {
	code  Code
	index int
}

// bendingCode is the check that a section is bent in.
func (h *randomHang) bendingCode(c *randomCut) Code {
	union, windy := c.cut.along == 0, h.places.gust != none
	switch {
	case union && windy:
		return UnionInWind
	case union:
		return UnionBending
	case windy:
		return LimbInWind
	}
	return LimbBending
}

// ratio is that of one way.
func (h *randomHang) ratio(key wayKey, k *randomCase) float64 {
	c := h.cutOf(key)
	if c == nil {
		return h.stemRatio(&h.stems[key.index], k)
	}
	if key.code == LimbAcrossGrain {
		return c.splittingRatio(k, h.acrossFactor)
	}
	s := c.solidIn(k)
	switch key.code {
	case LimbShear:
		return c.shearRatio(k, &s)
	case LimbJerk:
		return c.jerkRatio(k, &s, h.jerkStiffness)
	}
	return c.bendingRatio(k, &s)
}

// margin is the logarithm of a ratio, nearly straight in the logarithms of its
// inputs.
func (h *randomHang) margin(ratio func(*randomCase) float64) chance.Margin {
	return func(x []float64) float64 {
		k := h.caseOf(x)
		return math.Log(ratio(&k))
	}
}

// way is a way to fail with what its own section was seen to bear.
func (h *randomHang) way(key wayKey) chance.Way {
	w := chance.Way{Fails: h.margin(func(k *randomCase) float64 { return h.ratio(key, k) })}
	if c := h.cutOf(key); c != nil {
		w.Seen = h.margin(func(k *randomCase) float64 { return h.heldRatio(c, k) })
	}
	return w
}

// heldRatio is strength over stress of the most that a section is seen to bear.
func (h *randomHang) heldRatio(c *randomCut, k *randomCase) float64 {
	s := c.solidIn(k)
	if h.test > 0 {
		return c.testedRatio(k, &s, h.test)
	}
	return c.standsRatio(k, &s, 0)
}

// cutOf is the section of a limb that a way is at; nil on the stem.
func (h *randomHang) cutOf(key wayKey) *randomCut {
	switch key.code {
	case LimbAcrossGrain:
		return &h.bends[key.index]
	case StemBending, RootPlate:
		return nil
	}
	return &h.cuts[key.index]
}

// least is the least margin of all ways at all sections.
func (h *randomHang) least(x []float64) float64 {
	k := h.caseOf(x)
	least := math.Inf(1)
	h.ratios(&k, func(_ wayKey, ratio float64) { least = math.Min(least, ratio) })
	return math.Log(least)
}

// seen is the least margin of what the limb bears today: its own weight, and
// the load test where it is counted as passed.
func (h *randomHang) seen(x []float64) float64 {
	k := h.caseOf(x)
	least := math.Inf(1)
	for i := range h.cuts {
		c := &h.cuts[i]
		s := c.solidIn(&k)
		least = math.Min(least, c.standsRatio(&k, &s, 0))
		if h.test > 0 {
			least = math.Min(least, c.testedRatio(&k, &s, h.test))
		}
	}
	return math.Log(least)
}

// ways picks for each check of each member the section that is likeliest to
// fail, by the slope of its margin at the middle values; ways beyond greatestBeta are left out, but for the likeliest.
func (h *randomHang) ways(in chance.Inputs) []wayKey {
	type place struct {
		code Code
		part string
	}
	best, betas := map[place]wayKey{}, map[place]float64{}
	k := h.caseOf(h.medians(in))
	h.ratios(&k, func(key wayKey, _ float64) {
		at := place{key.code, h.partOf(key)}
		beta := chance.Problem{Inputs: in, Margin: h.way(key).Fails}.MeanValue()
		if known, ok := betas[at]; !ok || beta < known {
			best[at], betas[at] = key, beta
		}
	})
	least := math.Inf(1)
	for _, beta := range betas {
		least = math.Min(least, beta)
	}
	var list []wayKey
	for at, key := range best {
		if betas[at] < greatestBeta || betas[at] == least {
			list = append(list, key)
		}
	}
	slices.SortFunc(list, func(a, b wayKey) int { return cmp.Or(cmp.Compare(a.code, b.code), cmp.Compare(a.index, b.index)) })
	return list
}

func (h *randomHang) medians(in chance.Inputs) []float64 {
	x := make([]float64, in.Len())
	in.Values(x, x)
	return x
}

// partOf names the member that a way is at.
func (h *randomHang) partOf(key wayKey) string {
	switch key.code {
	case StemBending:
		return h.rig.on.stem().member.ID
	case RootPlate:
		return "root plate"
	case LimbAcrossGrain:
		return h.bends[key.index].on.member.ID
	}
	return h.cuts[key.index].on.member.ID
}

// alongOf is where on the member a way is.
func (h *randomHang) alongOf(key wayKey) quantity.Length {
	switch key.code {
	case StemBending, RootPlate:
		return quantity.Length(h.stems[key.index].height)
	case LimbAcrossGrain:
		return quantity.Length(h.bends[key.index].along)
	}
	return quantity.Length(h.cuts[key.index].along)
}

// given is the question how likely the hang fails, given what it bears today.
func (h *randomHang) given() (chance.Given, []wayKey, error) {
	in, err := chance.NewInputs(h.inputs.laws, h.inputs.ties...)
	if err != nil {
		return chance.Given{}, nil, err
	}
	keys := h.ways(in)
	g := chance.Given{Inputs: in, Least: h.least, Seen: h.seen}
	for _, key := range keys {
		g.Ways = append(g.Ways, h.way(key))
	}
	return g, keys, nil
}
