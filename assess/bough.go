package assess

import (
	"math"
	"slices"

	"boughline/engine/frame"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
)

// bough is the limb that grows from the stem with all that it carries: a
// space frame clamped at the face of the stem, loaded by unit forces at the
// hang point. Section forces are linear in the loads, so that every load case
// of every check is a sum of these.
type bough struct {
	*limbFrame
	// Unit forces at the hang point along X, Y and Z, and a wind of 1 N in all
	// square to the hang's limb in plan. The hang point stands at its
	// unfavourable distance in far and at its favourable one in near.
	far, near [3]frame.Statics
	wind      frame.Statics
	hangs     *shape
	arm       quantity.Measured[quantity.Length]
}

// newBough builds the frame of the first-order limb that carries a hang on s.
func (t *tree) newBough(s *shape, arm quantity.Measured[quantity.Length]) (*bough, error) {
	root := s
	for root.parent != nil && root.parent.parent != nil {
		root = root.parent
	}
	limb, err := t.limbFrame(root)
	if err != nil {
		return nil, err
	}
	b := &bough{limbFrame: limb, hangs: s, arm: arm}
	return b, b.load()
}

// limbFrame is all of a limb that does not depend on where the hang is.
type limbFrame struct {
	frame *frame.Frame
	index map[*shape]int
	self  frame.Statics // under its own weight
	// analysis is the limb in finite elements, lowest its first mode with all
	// that it carries. The stem counts as rigid.
	analysis *frame.Analysis
	lowest   quantity.Frequency
}

// elementLength is that of the finite elements of a limb, m. Elements are
// exact for linear taper, so few are enough.
const elementLength = 0.5

// limbFrame works a limb out when it is first asked for.
func (t *tree) limbFrame(root *shape) (*limbFrame, error) {
	if known, ok := t.frames[root]; ok {
		return known, nil
	}
	limb := &limbFrame{}
	var err error
	if limb.frame, limb.index, err = t.frameFrom(root); err != nil {
		return nil, err
	}
	if limb.self, err = limb.frame.Statics(frame.LoadCase{Gravity: quantity.Vec3{Z: -quantity.StandardGravity}}); err != nil {
		return nil, err
	}
	if limb.analysis, err = limb.frame.Analyse(frame.Options{ElementLength: elementLength}); err != nil {
		return nil, err
	}
	if limb.lowest, err = limb.analysis.LowestFrequency(); err != nil {
		return nil, err
	}
	t.frames[root] = limb
	return limb, nil
}

// frameFrom builds the frame of a member, clamped at its foot, with all that
// grows from it, and tells which member of the frame each shape is.
func (t *tree) frameFrom(root *shape) (*frame.Frame, map[*shape]int, error) {
	index := map[*shape]int{}
	model := frame.Model{Material: t.material()}
	for _, m := range t.order {
		if _, grows := index[m.parent]; m != root && !grows {
			continue
		}
		index[m] = len(model.Members)
		member := t.frameMember(index, m)
		model.Members = append(model.Members, member)
		model.Masses = append(model.Masses, t.ownMasses(index, m)...)
	}
	built, err := frame.New(model)
	return built, index, err
}

// frameMember gives the frame the wood inside the bark at its mean thickness:
// what bends. Strength takes thinner sections, see section.go.
func (t *tree) frameMember(index map[*shape]int, s *shape) frame.Member {
	m := frame.Member{Name: s.member.ID, Parent: -1}
	if i, ok := index[s.parent]; ok {
		m.Parent = i
		m.ParentAlong = quantity.Length(s.rises + lineBefore(index, s.parent))
	}
	for _, along := range s.breaks() {
		wood := t.section(s, along).mean
		wood.Upright, wood.Across = max(wood.Upright, thinnestBending), max(wood.Across, thinnestBending)
		m.Stations = append(m.Stations, frame.Station{Position: s.position(along), Outer: wood})
	}
	if m.Parent >= 0 { // the frame wants a child to start on the centreline
		m.Stations = append([]frame.Station{{Position: s.parent.position(s.rises), Outer: m.Stations[0].Outer}}, m.Stations...)
	}
	return m
}

// thinnestBending keeps the stiffness of a twig at a limb's tip, all bark by
// the table, from vanishing, m. Strength does not take it.
const thinnestBending = 0.02

// breaks lists the arc lengths at which the outline or the axis changes.
func (s *shape) breaks() []float64 {
	list := slices.Clone(s.along)
	for _, g := range s.girths {
		if g.at < s.length() {
			list = append(list, g.at)
		}
	}
	slices.Sort(list)
	return slices.CompactFunc(list, func(a, b float64) bool { return math.Abs(a-b) < 1e-6 })
}

func (t *tree) material() frame.Material {
	young := quantity.Stress(t.species.wood.MOE.Value)
	return frame.Material{Young: young, Shear: young / shearRatio, Density: traceDensity}
}

// traceDensity keeps the mass matrix of the frame regular, kg/m3: the weight of
// the wood stands in the lumped masses, spread by its girth over bark.
const traceDensity = 1

// shearRatio is Young's modulus along the grain over the shear modulus of
// hardwoods and softwoods, about 14 to 17 (Wood Handbook GTR-190, table 5-1,
// from memory). Twist alone depends on it.
const shearRatio = 16

// load solves the unit cases.
func (b *bough) load() error {
	var err error
	units := [3]quantity.Vec3{{X: 1}, {Y: 1}, {Z: 1}}
	for i, unit := range units {
		if b.far[i], err = b.unit(b.armAt(b.arm.High()), unit); err != nil {
			return err
		}
		if b.near[i], err = b.unit(b.armAt(b.arm.Low()), unit); err != nil {
			return err
		}
	}
	b.wind, err = b.frame.Statics(frame.LoadCase{Lines: []frame.LineLoad{b.gustLine()}})
	return err
}

func (b *bough) unit(at frame.Place, force quantity.Vec3) (frame.Statics, error) {
	return b.frame.Statics(frame.LoadCase{Points: []frame.PointLoad{{At: at, Force: force}}})
}

// armAt is the place of the hang in the frame, held on its limb.
func (b *bough) armAt(arm quantity.Length) frame.Place {
	along := math.Min(float64(arm), b.hangs.length())
	return frame.Place{Member: b.index[b.hangs], Along: quantity.Length(along) + b.offset(b.hangs)}
}

// offset is how much longer the frame's line of a member is than the member:
// from the centreline of its parent to the parent's face.
func (b *bough) offset(s *shape) quantity.Length {
	i := b.index[s]
	return b.frame.Length(i) - quantity.Length(s.length())
}

// gustLine spreads 1 N evenly over the limb of the hang, level and square to
// it in plan.
func (b *bough) gustLine() frame.LineLoad {
	d := b.hangs.direction(0)
	across := quantity.Vec3{X: d.Y, Y: -d.X}.Unit()
	if across == (quantity.Vec3{}) {
		across = quantity.Vec3{X: 1}
	}
	i := b.index[b.hangs]
	force := across.Scale(1 / float64(b.frame.Length(i)))
	return frame.LineLoad{Member: i, To: b.frame.Length(i), FromForce: force, ToForce: force}
}

// lineBefore is how much longer the frame's line of a member is than the
// member: from the centreline of its parent to the parent's face, where the
// frame holds the parent too.
func lineBefore(index map[*shape]int, s *shape) float64 {
	if _, grows := index[s.parent]; !grows {
		return 0
	}
	return radius(s.parent, s.rises)
}

// ownMasses spreads the green weight of a member along it: its wood over bark
// by the girths, and side branches and leaf as a share of that spread evenly
// from near the foot to the tip. Each piece of the member carries its mass at
// two points, total and moment kept.
func (t *tree) ownMasses(index map[*shape]int, s *shape) []frame.Mass {
	const pieces = 6
	step := s.length() / pieces
	density := t.species.wood.GreenDensity.Value
	var at, mass [2 * pieces]float64
	wood := 0.0
	for i := range at {
		at[i] = (float64(i/2) + gaussPair[i%2]) * step
		d := s.diameter(at[i])
		mass[i] = density * math.Pi / 4 * float64(d.upright.Value*d.across.Value) * step / 2
		wood += mass[i]
	}
	start := t.rules.sideBranchStart.Value * s.length()
	perMetre := wood * (t.rules.ownMassFactor.Value - 1) / (s.length() - start)
	for i := 0; i < len(at); i += 2 {
		from := math.Max(start, float64(i/2)*step)
		to := float64(i/2+1) * step
		branches, centre := perMetre*(to-from), (from+to)/2
		second := (centre - at[i]) / (at[i+1] - at[i])
		mass[i] += branches * (1 - second)
		mass[i+1] += branches * second
	}
	var masses []frame.Mass
	before := lineBefore(index, s)
	for i := range at {
		along := t.snapped(s, at[i]) + before
		masses = append(masses, frame.Mass{At: frame.Place{Member: index[s], Along: quantity.Length(along)}, Mass: quantity.Mass(mass[i])})
	}
	return masses
}

// snapReach is how far a lumped mass is moved onto a corner of the member, m:
// elements shorter than that would make the stiffness ill-conditioned.
const snapReach = 0.03

// snapped moves a place onto a break of the member, or onto the foot of a limb
// that grows from it, where one is very near.
func (t *tree) snapped(s *shape, along float64) float64 {
	nearest := along
	best := snapReach
	consider := func(place float64) {
		if d := math.Abs(place - along); d < best {
			nearest, best = place, d
		}
	}
	for _, place := range s.breaks() {
		consider(place)
	}
	for _, child := range t.order {
		if child.parent == s {
			consider(child.rises)
		}
	}
	return nearest
}

// gaussPair are the two Gauss-Legendre points of the unit interval; with them
// the weight of linearly tapering wood is exact.
var gaussPair = [2]float64{0.5 - 0.5/math.Sqrt(3), 0.5 + 0.5/math.Sqrt(3)}

// barkOf returns the thickness of the bark on one side of a member at a
// diameter over bark, with its scatter.
func (t *tree) barkOf(s *shape, diameter quantity.Length) (quantity.Measured[quantity.Length], source.Fact) {
	stated := s.member.Bark
	if stated != nil && !guessed(stated.How) {
		return resolve(t.k, *stated), source.Fact{}
	}
	part := knowledge.LimbPart
	if s.parent == nil {
		part = knowledge.StemPart
	}
	bark := t.k.Bark(t.species.Species, part, diameter)
	cov := t.k.Parameter(knowledge.BarkVariation).Value
	tabled := quantity.Measured[quantity.Length]{
		Value: quantity.Length(bark.Value), Sd: quantity.Length(bark.Value * cov), How: quantity.FromTable,
	}
	if stated != nil { // a guess never makes the bark thinner than the table
		if guess := resolve(t.k, *stated); guess.High() > tabled.High() {
			return guess, source.Fact{}
		}
	}
	return tabled, bark
}
