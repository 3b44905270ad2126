package assess

import (
	"fmt"
	"math"

	"boughline/engine/wind"
	"boughline/knowledge"
	"boughline/quantity"
)

// crownWind is the tree in the wind, with its crown as large and as small as
// its measurements allow.
type crownWind struct {
	large, small wind.Tree
	path         string
}

// crownWind returns nil where the crown or the wind of the site is not
// described well enough; the reasons say so.
func (t *tree) crownWind() (*crownWind, error) {
	if t.s.Crown == nil || t.s.Crown.BaseHeight == nil || t.s.Crown.Width == nil || t.s.Height == nil || t.survey.Wind == nil {
		return nil, nil
	}
	height, base, width := resolve(t.k, *t.s.Height), resolve(t.k, *t.s.Crown.BaseHeight), resolve(t.k, *t.s.Crown.Width)
	if height.Low() <= base.High() { // too roughly measured to say that there is a crown
		return nil, nil
	}
	large, err := t.windTree(height.High(), base.Low(), width.High())
	if err != nil {
		return nil, err
	}
	small, err := t.windTree(height.Low(), base.High(), width.Low())
	return &crownWind{large, small, t.path + ".crown"}, err
}

func (t *tree) windTree(height, base, width quantity.Length) (wind.Tree, error) {
	terrain, ok := t.k.Terrain(t.survey.Wind.Terrain)
	if !ok {
		return wind.Tree{}, fmt.Errorf("wind.terrain: %q is no terrain category; expected 0, I, II, III or IV", t.survey.Wind.Terrain)
	}
	open, _ := t.k.Terrain("II")
	p := t.k.Parameter
	crown := wind.Crown{
		CentreHeight: (height + base) / 2, HalfHeight: (height - base) / 2, HalfWidth: width / 2,
		Drag: p(t.byGroup(knowledge.CrownDragBroadleaf, knowledge.CrownDragConifer)).Value,
		Reconfiguring: wind.Reconfiguration{
			Vogel:     p(knowledge.VogelExponent).Value,
			Reference: quantity.Speed(p(t.byGroup(knowledge.CrownDragSpeedBroadleaf, knowledge.CrownDragSpeedConifer)).Value),
			Threshold: true,
		},
	}
	if leaf := t.survey.Wind.InLeaf; leaf != nil && !*leaf && t.species.Group != knowledge.Conifer {
		crown.Drag *= p(knowledge.LeaflessShare).Value
	}
	stem := t.order[0]
	foot, top := stem.diameter(0).across, stem.diameter(float64(base)).across
	return wind.Tree{
		Crown: crown,
		Stem:  wind.Stem{BaseDiameter: foot.Value, TopDiameter: top.Value, Top: base, Drag: stemDrag},
		Site: wind.Profile{Terrain: windTerrain(terrain), AirDensity: quantity.Density(p(knowledge.AirDensity).Value),
			Orography: 1, Turbulence: p(knowledge.TurbulenceFactor).Value},
		Open: windTerrain(open),
	}, nil
}

// stemDrag is the drag coefficient of a rough cylinder across the wind (EN
// 1991-1-4, section 7.9, from memory: 0.7 to 1.2, the greater taken).
const stemDrag = 1.2

func windTerrain(t knowledge.Terrain) wind.Terrain {
	return wind.Terrain{Roughness: quantity.Length(t.Roughness.Value), LeastHeight: quantity.Length(t.LeastHeight.Value)}
}

func (t *tree) byGroup(broadleaf, conifer string) string {
	if t.species.Group == knowledge.Conifer {
		return conifer
	}
	return broadleaf
}

func (w *crownWind) at(side scenario) *wind.Tree {
	if side == favourable {
		return &w.small
	}
	return &w.large
}

// load is the wind load on the whole tree in a gust at 10 m in the open.
func (w *crownWind) load(gust quantity.Speed, side scenario) wind.Load {
	load, err := w.at(side).GustLoad(gust)
	if err != nil { // every input was checked when the crown was built
		return wind.Load{Moment: quantity.Moment(math.Inf(1))}
	}
	return load
}

// onLimb is the wind force on a limb that carries a share of the crown.
func (w *crownWind) onLimb(gust quantity.Speed, share float64, height quantity.Length, side scenario) quantity.Force {
	tree := w.at(side)
	held := min(tree.Crown.Top(), max(tree.Crown.Base(), height))
	load, err := tree.LimbLoad(gust, share, held)
	if err != nil {
		return quantity.Force(math.Inf(1))
	}
	return load.Force
}

// shareOfCrown is the share of the crown's area that a limb carries, by its
// area of wood against that of the stem below it (pipe model of Shinozaki et
// al. 1964, from memory).
func (r *rig) shareOfCrown() float64 {
	root := r.limbs[len(r.limbs)-1].on
	limb, stem := root.diameter(0).across.Value, root.parent.diameter(root.rises).across.Value
	ratio := float64(limb / stem)
	return math.Min(1, ratio*ratio)
}

// askedGust is the gust that the stop rule allows, the site's own or the house's,
// whichever is lower: the peak that goes with the top of its Beaufort force as
// a mean in open country.
func (t *tree) askedGust() (quantity.Speed, error) {
	force := int(t.k.Parameter(knowledge.StopBeaufort).Value)
	if t.survey.Wind != nil && t.survey.Wind.StopBeaufort != nil {
		force = min(force, *t.survey.Wind.StopBeaufort)
	}
	b, ok := t.k.Beaufort(force)
	if !ok {
		return 0, fmt.Errorf("wind.stop_beaufort: %d is not in the table of Beaufort forces; expected 3 to 10", force)
	}
	return t.gustOf(b)
}

// gustOf is the gust at 10 m in open country that goes with the top of a
// Beaufort force.
func (t *tree) gustOf(b knowledge.Beaufort) (quantity.Speed, error) {
	open, _ := t.k.Terrain("II")
	p := wind.Profile{Terrain: windTerrain(open), AirDensity: quantity.Density(t.k.Parameter(knowledge.AirDensity).Value), Orography: 1, Turbulence: 1}
	p, err := p.WithOpenMean(quantity.Speed(b.Mean.High), windTerrain(open))
	if err != nil {
		return 0, fmt.Errorf("wind: the gust of Beaufort %d: %w", b.Number, err)
	}
	return p.Gust(10), nil
}

// beaufortOf is the greatest Beaufort force whose gusts in open country stay
// at or below a gust.
func (t *tree) beaufortOf(gust quantity.Speed) (knowledge.Beaufort, bool) {
	var best knowledge.Beaufort
	found := false
	for force := 3; force <= 10; force++ {
		b, ok := t.k.Beaufort(force)
		if !ok {
			continue
		}
		if reaches, err := t.gustOf(b); err == nil && reaches <= gust*(1+1e-9) {
			best, found = b, true
		}
	}
	return best, found
}
