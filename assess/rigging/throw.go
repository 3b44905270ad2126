package rigging

import (
	"math"

	"boughline/assess"
	"boughline/engine/throw"
	"boughline/knowledge"
	"boughline/quantity"
)

// Throw is how a weight goes over the limb from the ground, square to it. It
// is reckoned without drag, which a small heavy weight hardly feels.
type Throw struct {
	// ByHand says that the limb is low enough to lay the line over it; then nothing
	// below counts.
	ByHand bool            `json:"by_hand"`
	Stand  quantity.Length `json:"stand_m"` // from the plumb line of the hang point
	From   quantity.Angle  `json:"stand_azimuth_rad"`
	Top    quantity.Length `json:"limb_top_m"` // above the ground at the plumb line, high value
	Up     quantity.Length `json:"up_m"`       // of the highest point above the hand
	Speed  quantity.Speed  `json:"speed_m_s"`
	Angle  quantity.Angle  `json:"angle_rad"` // above the level
	Least  quantity.Speed  `json:"least_speed_m_s"`
	Mass   quantity.Mass   `json:"weight_kg"`
	Energy float64         `json:"energy_j"`
	// Comfortable is the speed up to which a throw by hand is.
	Comfortable quantity.Speed `json:"comfortable_m_s"`
	// Lands is where the weight comes down beyond the plumb line, without a line
	// that is held; from LandsNear to LandsFar when it is thrown a little amiss.
	Lands     quantity.Length `json:"lands_m"`
	LandsNear quantity.Length `json:"lands_near_m"`
	LandsFar  quantity.Length `json:"lands_far_m"`
	// People is how far from there people are expected at the nearest, waiting or on
	// the way in; nil where nobody has said where they are.
	People *quantity.Length `json:"people_m,omitempty"`
	// Meets is the wood that the way of the weight comes nearest to, besides the limb
	// itself.
	Meets       string          `json:"nearest_member,omitempty"`
	MeetsRoom   quantity.Length `json:"nearest_member_m,omitempty"` // below 0: it hits
	Level       bool            `json:"ground_taken_level"`
	LineAtLeast quantity.Length `json:"throw_line_m"` // over the limb and back to the ground
	Terms       []assess.Term   `json:"terms"`
}

// Comes says whether the throw is one that most people manage by hand.
func (t Throw) Comes() bool { return t.Speed <= t.Comfortable }

// alongTheSwing is how far off the swing line a throw may go for the ground along it to
// count, otherwise it is taken level.
const alongTheSwing = 20 * quantity.Degree

func (r rigger) throw() (Throw, error) {
	stand := quantity.Length(r.value(knowledge.ThrowStand))
	if r.o.Stand != nil {
		stand = *r.o.Stand
	}
	square := r.squareToLimb()
	a, err := r.throwFrom(stand, square)
	if err != nil || a.ByHand {
		return a, err
	}
	b, err := r.throwFrom(stand, square+180*quantity.Degree)
	if err != nil {
		return b, err
	}
	if b.better(a) {
		return b, nil
	}
	return a, nil
}

// better puts hitting no wood first, then being far from people.
func (t Throw) better(other Throw) bool {
	if free, otherFree := t.MeetsRoom > 0 || t.Meets == "", other.MeetsRoom > 0 || other.Meets == ""; free != otherFree {
		return free
	}
	return t.People != nil && other.People != nil && *t.People > *other.People
}

// squareToLimb is the azimuth on which the limb is crossed, the swing line's own
// where the limb stands upright.
func (r rigger) squareToLimb() quantity.Angle {
	axis := r.figure.Axis
	if math.Hypot(axis.X, axis.Y) < 0.1 {
		return r.figure.Azimuth
	}
	return quantity.Angle(math.Atan2(axis.X, axis.Y)) + 90*quantity.Degree
}

// throwFrom throws from a place on an azimuth from the plumb line, back over it.
func (r rigger) throwFrom(stand quantity.Length, from quantity.Angle) (Throw, error) {
	t := Throw{
		Stand: stand, From: quantity.Angle(math.Mod(float64(from)+4*math.Pi, 2*math.Pi)), Mass: quantity.Mass(r.value(knowledge.ThrowBagMass)),
		Comfortable: quantity.Speed(r.value(knowledge.ThrowComfortableSpeed)),
	}
	ground, level := r.groundTowards(from)
	hand := ground(stand) + quantity.Length(r.value(knowledge.ThrowReleaseHeight))
	t.Level = level
	t.Top = r.figure.Height.High() + r.figure.Upright.High()
	clearance := quantity.Length(r.value(knowledge.ThrowClearance))
	t.Up = t.Top + clearance - hand
	if t.Up <= 2*clearance { // an arm's reach
		t.ByHand = true
		return t, nil
	}
	l, err := throw.Over(stand, t.Up)
	if err != nil {
		return t, err
	}
	t.Speed, t.Angle, t.Least, t.Energy = l.Speed, l.Angle, throw.LeastSpeed(stand, t.Up), l.Joules(t.Mass)
	r.land(&t, l, hand, ground)
	r.wayOfWeight(&t, l, hand)
	t.LineAtLeast = quantity.Length(math.Ceil(math.Hypot(float64(stand), float64(t.Up)) + float64(t.Top+t.Lands) + 2))
	r.throwTerms(&t, hand)
	return t, nil
}

// groundTowards is the ground on an azimuth from the plumb line, and beyond it on
// the other side; level where the swing line, on which it is known, goes another way.
func (r rigger) groundTowards(from quantity.Angle) (ground func(quantity.Length) quantity.Length, level bool) {
	across := quantity.Heading(from, 0).Dot(quantity.Heading(r.figure.Azimuth, 0))
	if !r.figure.Surveyed || math.Abs(across) < alongTheSwing.Cos() {
		return func(quantity.Length) quantity.Length { return 0 }, true
	}
	side := quantity.Length(math.Copysign(1, across))
	return func(x quantity.Length) quantity.Length { return r.figure.Ground.At(side * x) }, false
}

// land finds where the weight comes down, well thrown and a little amiss.
func (r rigger) land(t *Throw, l throw.Launch, hand quantity.Length, ground func(quantity.Length) quantity.Length) {
	t.Lands = landsBeyond(l, t.Stand, hand, ground)
	t.LandsNear, t.LandsFar = t.Lands, t.Lands
	speed, angle := r.value(knowledge.ThrowSpeedError), quantity.Angle(r.value(knowledge.ThrowAngleError))
	for _, v := range []float64{1 - speed, 1, 1 + speed} {
		for _, a := range []quantity.Angle{-angle, 0, angle} {
			amiss := throw.Launch{Speed: l.Speed * quantity.Speed(v), Angle: min(l.Angle+a, 89*quantity.Degree)}
			at := landsBeyond(amiss, t.Stand, hand, ground)
			t.LandsNear, t.LandsFar = min(t.LandsNear, at), max(t.LandsFar, at)
		}
	}
	t.People = r.peopleNear(t)
}

// landsBeyond is how far beyond the plumb line a throw meets the ground, below 0
// before it.
func landsBeyond(l throw.Launch, stand, hand quantity.Length, ground func(quantity.Length) quantity.Length) quantity.Length {
	const pace quantity.Length = 0.02
	over := func(x quantity.Length) quantity.Length { return hand + l.Height(x) - ground(stand-x) }
	x := pace
	for over(x) > 0 {
		x += pace
	}
	before, after := over(x-pace), over(x)
	return x - pace*(-after)/(before-after) - stand
}

// peopleNear is the least distance from where the weight may land to where
// people wait or come in.
func (r rigger) peopleNear(t *Throw) *quantity.Length {
	people := r.hang.People()
	if len(people.Places) == 0 && len(people.Ways) == 0 {
		return nil
	}
	plumb := r.figure.Point
	plumb.Z = 0
	beyond := quantity.Heading(t.From, 0).Scale(-1)
	landing := [2]quantity.Vec3{plumb.Add(beyond.Scale(float64(t.LandsNear))), plumb.Add(beyond.Scale(float64(t.LandsFar)))}
	least := quantity.Length(math.Inf(1))
	for _, d := range people.Places {
		least = min(least, apart(landing, [2]quantity.Vec3{d.Centre, d.Centre})-d.Radius)
	}
	for _, s := range people.Ways {
		least = min(least, apart(landing, [2]quantity.Vec3{s.From, s.To})-s.HalfWidth)
	}
	return &least
}

// wayOfWeight finds the member that the weight comes nearest to.
func (r rigger) wayOfWeight(t *Throw, l throw.Launch, hand quantity.Length) {
	const pieces = 80
	from, beyond := quantity.Heading(t.From, 0), quantity.Heading(t.From, 0).Scale(-1)
	start := r.figure.Point.Add(from.Scale(float64(t.Stand)))
	foot := r.figure.Point.Z - float64(r.figure.Height.Value+r.figure.Upright.Value/2)
	way := make([]quantity.Vec3, pieces+1)
	for i := range way {
		x := (t.Stand + t.Lands) * quantity.Length(i) / pieces
		way[i] = start.Add(beyond.Scale(float64(x)))
		way[i].Z = foot + float64(hand+l.Height(x))
	}
	t.MeetsRoom = quantity.Length(math.Inf(1))
	for _, m := range r.hang.Tree.Members {
		if m.ID == r.hang.Survey().Member {
			continue
		}
		for i := 1; i < len(m.Axis); i++ {
			for j := 1; j < len(way); j++ {
				room := apart([2]quantity.Vec3{way[j-1], way[j]}, [2]quantity.Vec3{m.Axis[i-1].Position, m.Axis[i].Position}) - m.Axis[i-1].Across/2
				if room < t.MeetsRoom {
					t.Meets, t.MeetsRoom = m.ID, room
				}
			}
		}
	}
	if t.Meets == "" {
		t.MeetsRoom = 0
	}
}

func (r rigger) throwTerms(t *Throw, hand quantity.Length) {
	t.Terms = []assess.Term{
		{Symbol: "x", Name: "from the hand to the limb, level", Value: float64(t.Stand), Unit: "m"},
		{Symbol: "z_L", Name: "top of the limb above the ground at the plumb line, high value", Value: float64(t.Top), Unit: "m"},
		{Symbol: "z_h", Name: "hand above the same ground", Value: float64(hand), Unit: "m", Refs: refs(r.k.Parameter(knowledge.ThrowReleaseHeight).Ref)},
		r.term("c", "over the limb", knowledge.ThrowClearance),
		{Symbol: "y", Name: "z_L + c - z_h", Value: float64(t.Up), Unit: "m"},
		r.term("m", "weight thrown", knowledge.ThrowBagMass),
		r.term("v_c", "thrown by hand at most", knowledge.ThrowComfortableSpeed),
		r.term("da", "thrown amiss by", knowledge.ThrowAngleError),
		r.term("dv", "thrown amiss by a share of its speed of", knowledge.ThrowSpeedError),
	}
}
