package assess

import (
	"fmt"
	"math"

	"boughline/engine/gear"
	"boughline/engine/space"
	"boughline/engine/wood"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// line is a line of the site with everything that its ends share.
type line struct {
	k       *knowledge.Base
	survey  *survey.Survey
	s       *survey.Line
	at      string // path in the document
	riders  group
	ends    []*rig
	span    survey.MeasuredLength
	byPlace *quantity.Length // the span by the places of the trees
	rise    quantity.Length
	towards quantity.Vec3 // level, from the first end to the second
	leg     quantity.Vec3 // of a redirected line, from the anchor to the redirect
	between quantity.Angle
	// A traverse as tight and as slack as it may be.
	tight, slack gear.SlungLine
	suddenShare  float64 // by how much a load let go onto it raises it
	known        map[quantity.Mass][2][]steady
}

// lineAt is line i of a survey among the trees of its site.
func lineAt(k *knowledge.Base, s *survey.Survey, site []*tree, i int) (*line, error) {
	l := &line{k: k, survey: s, s: &s.Lines[i], at: element("lines", i), known: map[quantity.Mass][2][]steady{}}
	for i := range s.Riders {
		if s.Riders[i].ID == l.s.Riders {
			l.riders = groupOf(k, &s.Riders[i], element("riders", i))
		}
	}
	for j, end := range l.s.Ends {
		if err := l.addEnd(site, end, element(l.at+".ends", j)); err != nil {
			return nil, err
		}
	}
	if r := l.s.Redirect; r != nil {
		end := survey.LineEnd{Tree: l.s.Ends[0].Tree, Member: r.Member, At: r.At, Anchor: r.Anchor}
		if err := l.addEnd(site, end, l.at+".redirect"); err != nil {
			return nil, err
		}
	}
	if err := l.shape(); err != nil {
		return nil, err
	}
	for _, r := range l.ends {
		if err := r.lineMechanics(); err != nil {
			return nil, err
		}
	}
	return l, nil
}

// addEnd makes a rig of one anchor: a hang that does not swing, on a tree of its
// own whose wood bears as long a load as this one.
func (l *line) addEnd(site []*tree, end survey.LineEnd, at string) error {
	var own tree
	for _, t := range site {
		if t.s.ID == end.Tree {
			if _, err := t.treeSway(); err != nil {
				return fmt.Errorf("%s: %w", at, err)
			}
			own = *t
		}
	}
	if own.shapes[end.Member] == nil {
		return fmt.Errorf("%s: there is no member %q of a tree %q", at, end.Member, end.Tree)
	}
	own.rigs = map[int]*rig{}
	time := l.k.Parameter(knowledge.LineOtherTime)
	if l.s.Kind == survey.HammockLine {
		time = l.k.Parameter(knowledge.LineHammockTime)
	}
	duration, err := wood.DurationFactor(quantity.Time(time.Value))
	if err != nil {
		return fmt.Errorf("%s: %w", at, err)
	}
	own.species.design *= quantity.Stress(duration)
	h := &survey.Hang{ID: l.s.ID, Member: end.Member, At: end.At, Riders: l.s.Riders, Chain: l.s.Chain, Height: end.Height, Sleeve: l.s.Sleeve}
	r := own.emptyRig(h, at)
	r.findShared()
	if r.gear == nil || r.riders.s == nil {
		return fmt.Errorf("%s: riders %q and chain %q are not both in the survey", l.at, l.s.Riders, l.s.Chain)
	}
	r.anchor = &anchor{line: l, index: len(l.ends)}
	for i := range r.gear.Parts {
		if p := &r.gear.Parts[i]; p.Name == end.Anchor {
			r.anchor.part = p
		}
	}
	l.ends = append(l.ends, r)
	return nil
}

// lineMechanics works out what limb, stem and wind are to the pull of a line.
func (r *rig) lineMechanics() error {
	var err error
	if r.on.parent != nil {
		if r.bough, err = r.newBough(r.on, r.arm); err != nil {
			return fmt.Errorf("%s: limb %q: %w", r.at, r.h.Member, err)
		}
	}
	r.cutLimbs()
	if r.air, err = r.crownWind(); err != nil {
		return fmt.Errorf("%s: %w", r.path, err)
	}
	r.cutStem()
	gust, err := r.askedGust()
	r.asked = trial{mass: r.riders.design, gust: gust, line: leastLine}
	return err
}

// leastLine stands for the length of a line that does not swing, m.
const leastLine = 1

// shape works out where the line goes, and how tight it is.
func (l *line) shape() error {
	if l.s.Kind == survey.ClimbingLine {
		l.redirect()
		return nil
	}
	if err := l.lay(); err != nil {
		return err
	}
	if l.s.Kind == survey.HammockLine {
		_, err := l.hammock(l.sag().Low(), l.weight()).Solve()
		if err != nil {
			err = fmt.Errorf("%s: %w", l.at, err)
		}
		return err
	}
	return l.tune()
}

func (l *line) weight() quantity.Force { return (l.riders.design + l.riders.seat).Weight() }

// lay finds span, rise and direction of a line between two anchors.
func (l *line) lay() error {
	a, b := l.ends[0], l.ends[1]
	from, to := a.hangPoint(), b.hangPoint()
	here, placedA := placeOf(a.s)
	there, placedB := placeOf(b.s)
	known := a.s.ID == b.s.ID || placedA && placedB
	if a.s.ID != b.s.ID {
		to = to.Add(there).Sub(here)
	}
	apart := to.Sub(from)
	if l.s.Azimuth != nil {
		l.towards = quantity.Heading(l.s.Azimuth.Value, 0)
	} else {
		l.towards = flatten(apart).Unit()
	}
	if known {
		level := quantity.Length(math.Hypot(apart.X, apart.Y)) - a.faceOut() - b.faceOut()
		l.byPlace = &level
	}
	switch {
	case l.s.Span != nil:
		l.span = resolve(l.k, *l.s.Span)
	case known:
		l.span = survey.MeasuredLength{Value: *l.byPlace, Sd: placeDoubt(l.k, a.s, b.s), SdStated: true, How: quantity.Taped}
	default:
		return fmt.Errorf("%s.span: it is not stated, and the places of %q and %q are not both known; expected one of the two", l.at, a.s.ID, b.s.ID)
	}
	if !(l.span.Value > 0) || l.towards == (quantity.Vec3{}) {
		return fmt.Errorf("%s.ends: both stand in one place; expected two anchors apart", l.at)
	}
	l.rise = l.riseOf(l.groundAt(l.span.Value))
	return nil
}

// faceOut is how far the face of a stem stands out from its axis; a limb is held
// all round.
func (r *rig) faceOut() quantity.Length {
	if r.on.parent != nil {
		return 0
	}
	return quantity.Length(radius(r.on, float64(r.arm.Value)))
}

// placeDoubt is the standard deviation of the span by the places of two trees.
func placeDoubt(k *knowledge.Base, a, b *survey.Tree) quantity.Length {
	if a.ID == b.ID {
		return sameTreeDoubt
	}
	sum := 0.0
	for _, m := range []*survey.MeasuredLength{a.East, a.North, b.East, b.North} {
		sum += math.Pow(float64(resolve(k, *m).Sd), 2)
	}
	return quantity.Length(math.Sqrt(sum / 2))
}

// sameTreeDoubt is that of a span by the shape of one tree, m (house).
const sameTreeDoubt quantity.Length = 0.1

// riseOf is how much higher the second anchor is, over ground that lies so much
// higher below it.
func (l *line) riseOf(ground quantity.Length) quantity.Length {
	if l.s.Rise != nil {
		return l.s.Rise.Value
	}
	first, _ := l.ends[0].anchorHeight()
	second, _ := l.ends[1].anchorHeight()
	return second.Value + ground - first.Value
}

// anchorHeight is that of an anchor above the ground below it, as measured or
// by the shape of the tree on level ground.
func (r *rig) anchorHeight() (height survey.MeasuredLength, measured bool) {
	if r.h.Height != nil {
		return resolve(r.k, *r.h.Height), true
	}
	if r.on.parent == nil {
		return r.arm, true
	}
	return resolve(r.k, survey.MeasuredLength{Value: quantity.Length(r.hangPoint().Z), How: quantity.ByEye}), false
}

// sag is that wanted, with its doubt.
func (l *line) sag() survey.MeasuredLength {
	m := resolve(l.k, *l.s.Sag)
	m.Sd = min(m.Sd, m.Value/2) // so that some is left at the low end
	return m
}

// tune cuts a traverse to its sag or its pretension: as tight and stiff as it
// may be for pulls, as slack and soft for clearances.
func (l *line) tune() error {
	empty := gear.SlungLine{Right: gear.Spot{X: l.span.High(), Y: l.rise}, Weight: quantity.Force(l.k.Parameter(knowledge.LineWeight).Value)}
	tight, slack := empty, empty
	slack.Right.X = l.span.Value
	tight.Axial, slack.Axial = quantity.Force(l.ends[0].axial(stiffest)), quantity.Force(l.ends[0].axial(softest))
	var err, also error
	if p := l.s.Pretension; p != nil {
		doubt := quantity.Force(l.k.Parameter(knowledge.LinePretensionDoubt).Value)
		l.tight, err = gear.SlungToPull(tight, p.Value*(1+doubt))
		l.slack, also = gear.SlungToPull(slack, p.Value*(1-doubt))
	} else {
		l.tight, err = gear.SlungToSag(tight, l.weight(), 0.5, l.sag().Low())
		l.slack, also = gear.SlungToSag(slack, l.weight(), 0.5, l.sag().High())
	}
	if err == nil {
		err = also
	}
	if err != nil {
		return fmt.Errorf("%s: %w", l.at, err)
	}
	sudden, err := l.tight.Sudden(l.weight(), 0.5)
	if err != nil {
		return fmt.Errorf("%s: %w", l.at, err)
	}
	l.suddenShare = float64(sudden / l.weight())
	return nil
}

// redirect finds the leg from the anchor to the redirect: by the angle stated
// between the legs, at its low end, or by the shape of the tree.
func (l *line) redirect() {
	if l.s.Redirect == nil {
		return
	}
	from, to := l.ends[0].hangPoint(), l.ends[1].hangPoint()
	l.leg = to.Sub(from).Unit()
	if l.leg == (quantity.Vec3{}) {
		l.leg = quantity.Vec3{Z: -1}
	}
	// The other leg there goes down: back up along the first one, and down.
	l.between = quantity.Angle(math.Acos(math.Max(-1, math.Min(1, l.leg.Z))))
	if stated := l.s.Redirect.Angle; stated != nil {
		l.between = max(0, resolve(l.k, *stated).Low())
		level := flatten(to.Sub(from)).Unit()
		l.leg = level.Scale(l.between.Sin()).Add(quantity.Vec3{Z: l.between.Cos()})
	}
}

// shapeTerms tell what the pull follows from.
func (l *line) shapeTerms() []Term {
	span := Term{Symbol: "s", Name: "span between the anchors", Value: float64(l.span.Value), Unit: "m", Sd: float64(l.span.Sd), How: l.span.How, Path: l.at + ".span"}
	sudden := factTerm("k_s", "a load let go onto the line over the load at rest", l.k.Parameter(knowledge.LineSudden))
	switch l.s.Kind {
	case survey.HammockLine:
		sag := l.sag()
		return []Term{span, {Symbol: "f", Name: "sag of the body", Value: float64(sag.Value), Unit: "m", Sd: float64(sag.Sd), How: sag.How, Path: l.at + ".sag"},
			{Symbol: "b", Name: "length of the body", Value: float64(l.s.Body.Value), Unit: "m", Path: l.at + ".body"}, sudden}
	case survey.TraverseLine:
		list := []Term{span}
		if l.s.Sag != nil {
			sag := l.sag()
			list = append(list, Term{Symbol: "f", Name: "sag with the riders at rest in the middle", Value: float64(sag.Value), Unit: "m", Sd: float64(sag.Sd), How: sag.How, Path: l.at + ".sag"})
		} else {
			list = append(list, Term{Symbol: "T_0", Name: "pretension", Value: float64(l.s.Pretension.Value), Unit: "N", Path: l.at + ".pretension"},
				factTerm("d_0", "by how much it may be off", l.k.Parameter(knowledge.LinePretensionDoubt)))
		}
		return append(list, Term{Symbol: "L_0", Name: "length of the line between the anchors without a pull", Value: float64(l.tight.Length), Unit: "m"},
			Term{Symbol: "EA", Name: "pull for a stretch of its own length", Value: float64(l.tight.Axial), Unit: "N", Refs: []source.Ref{l.k.Parameter(knowledge.RopeAxialStiffness).Ref}},
			Term{Symbol: "k_s", Name: "a load let go onto the line over the load at rest, in the middle", Value: l.suddenShare, Unit: "1"})
	}
	list := []Term{sudden}
	if l.s.Redirect != nil {
		list = append(list, Term{Symbol: "theta", Name: "angle between the legs at the redirect", Value: l.between.Degrees(), Unit: "deg", Path: l.at + ".redirect"})
	}
	return list
}

// area is the ground that the people of the line use, in plan about its first
// end's tree or another one.
func (l *line) area(r *rig) space.Polygon {
	room := l.k.Parameter(knowledge.LineSideRoom).Value
	if l.s.Kind == survey.ClimbingLine {
		room = l.k.Parameter(knowledge.LineClimberRoom).Value
		at := flatten(l.ends[len(l.ends)-1].hangPoint())
		return corners(at, at, quantity.Vec3{X: 1}, room, room)
	}
	from := flatten(r.hangPoint())
	to := from.Add(l.towards.Scale(float64(l.span.Value)))
	if r.anchor.index == 1 {
		from, to = from.Sub(l.towards.Scale(float64(l.span.Value))), from
	}
	return corners(from, to, l.towards, room, 0)
}

// corners is the strip from one place to another, wider and longer by a room.
func corners(from, to, along quantity.Vec3, wide, long float64) space.Polygon {
	across, ahead := quantity.Vec3{X: -along.Y, Y: along.X}.Scale(wide), along.Scale(long)
	return space.Polygon{from.Sub(ahead).Add(across), from.Sub(ahead).Sub(across), to.Add(ahead).Sub(across), to.Add(ahead).Add(across)}
}
