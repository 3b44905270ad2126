package assess

import (
	"math"
	"testing"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// oakOn puts the oak of the demo on a plane that rises by the slopes along its
// swing line and to the right of it, surveyed as the hang's own profile.
func oakOn(t testing.TB, along, across float64) *survey.Survey {
	s := oak(t)
	h := &s.Trees[0].Hangs[0]
	h.Ground.Along, h.Ground.Across = nil, nil
	for _, x := range []float64{-14, -6, 0, 6, 14} {
		h.Ground.Along = append(h.Ground.Along, pointOn(x, along*x))
		h.Ground.Across = append(h.Ground.Across, pointOn(x, across*x))
	}
	return s
}

func pointOn(at, height float64) survey.GroundPoint {
	return survey.GroundPoint{At: survey.ChosenLength{Value: quantity.Length(at)}, Height: exactly(height)}
}

func exactly(m float64) survey.MeasuredLength {
	return survey.MeasuredLength{Value: quantity.Length(m), SdStated: true, How: quantity.Laser}
}

// onSpots surveys the same plane as spot heights about the stem instead.
func onSpots(t testing.TB, s *survey.Survey, along, across float64) {
	tree, h := &s.Trees[0], &s.Trees[0].Hangs[0]
	rig := rigOf(t, s)
	right := quantity.Heading(rig.azimuth+90*quantity.Degree, 0)
	plumb := rig.hangPoint()
	height := func(p quantity.Vec3) float64 {
		d := p.Sub(plumb)
		return along*d.Dot(rig.heading) + across*d.Dot(right)
	}
	tree.Ground = &survey.Lie{Surface: h.Ground.Surface, DepthLoose: h.Ground.DepthLoose}
	for _, spot := range [][2]float64{{20, 0}, {20, 70}, {20, 140}, {20, 210}, {20, 280}, {3, 10}, {5, 200}} {
		azimuth := quantity.Angle(spot[1]) * quantity.Degree
		tree.Ground.Spots = append(tree.Ground.Spots, survey.SpotHeight{
			Azimuth: survey.ChosenAngle{Value: azimuth}, Distance: survey.ChosenLength{Value: quantity.Length(spot[0])},
			Height: exactly(height(quantity.Heading(azimuth, 0).Scale(spot[0])) - height(quantity.Vec3{})),
		})
	}
	h.Ground = nil
}

// The plumb line may stand on the very corner of the spot heights: a line that
// only touches them there has no ground to be cut, and it counts as not known.
func TestPlumbLineOnTheCornerOfTheSpots(t *testing.T) {
	s := oak(t)
	tree, h := &s.Trees[0], &s.Trees[0].Hangs[0]
	plumb := rigOf(t, s).hangPoint()
	azimuth, distance := quantity.Angle(math.Atan2(plumb.X, plumb.Y)), quantity.Length(math.Hypot(plumb.X, plumb.Y))
	h.Ground = nil
	spot := func(azimuth quantity.Angle, distance quantity.Length) survey.SpotHeight {
		return survey.SpotHeight{Azimuth: survey.ChosenAngle{Value: azimuth}, Distance: survey.ChosenLength{Value: distance}, Height: exactly(0)}
	}
	tree.Ground = &survey.Lie{Surface: "turf", Spots: []survey.SpotHeight{
		spot(azimuth, distance+1e-10), spot(azimuth-0.3, distance+8), spot(azimuth+0.3, distance+9),
	}}
	for turn := range 36 {
		h.SwingAzimuth = &survey.ChosenAngle{Value: quantity.Angle(turn) * 10 * quantity.Degree}
		rigOf(t, s)
	}
}

func rigOf(t testing.TB, s *survey.Survey) *rig {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	site, err := newSite(k, rulesOf(k), s)
	if err != nil {
		t.Fatal(err)
	}
	r, err := site[0].newRig(0)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

var onGround = []Code{SeatClearance, FootClearance, FallHeight}

// One plane surveyed in two ways is one ground: every check of space agrees,
// and so does the length to be kept clear.
func TestSpotHeightsAndProfileAgree(t *testing.T) {
	for _, slope := range [][2]float64{{0, 0}, {0.1, 0}, {-0.06, 0.04}, {0.02, -0.12}} {
		profile, spots := oakOn(t, slope[0], slope[1]), oakOn(t, slope[0], slope[1])
		onSpots(t, spots, slope[0], slope[1])
		a, b := assessAll(t, profile)[0], assessAll(t, spots)[0]
		for _, code := range onGround {
			if x, y := marginFor(a, code), marginFor(b, code); math.Abs(x-y) > 1e-9 {
				t.Errorf("slope %v, %s: %v by profile, %v by spots", slope, code, x, y)
			}
		}
		r, q := rigOf(t, profile), rigOf(t, spots)
		u := r.clearTrial(r.asked)
		ahead, behind := r.keptClear(u)
		ahead2, behind2 := q.keptClear(u)
		if math.Abs(float64(ahead-ahead2)) > 1e-6 || math.Abs(float64(behind-behind2)) > 1e-6 {
			t.Errorf("slope %v: kept clear %v and %v m by profile, %v and %v m by spots", slope, ahead, behind, ahead2, behind2)
		}
	}
}

func marginFor(h Hang, code Code) float64 {
	for _, c := range h.Checks {
		if c.Code == code {
			return c.Margin
		}
	}
	return math.NaN()
}

// The height of a limb over spot heights is that of its shape less that of the
// ground: the pieces of level ground 0.4 m lower leave 0.4 m more.
func TestHeightOverSpotHeights(t *testing.T) {
	s := oakOn(t, 0, 0)
	onSpots(t, s, 0, 0)
	s.Trees[0].Hangs[0].Height = nil
	level, measured := rigOf(t, s).hangHeight()
	for i := range s.Trees[0].Ground.Spots {
		s.Trees[0].Ground.Spots[i].Height.Value -= 0.4
	}
	lower, _ := rigOf(t, s).hangHeight()
	if !measured || math.Abs(float64(lower.Value-level.Value)-0.4) > 1e-9 {
		t.Errorf("%v m (measured %v), %v m over ground 0.4 m lower", level.Value, measured, lower.Value)
	}
	s.Trees[0].Members[indexOf(s, s.Trees[0].Hangs[0].Member)].RisesAt.How = quantity.ByEye
	if _, measured = rigOf(t, s).hangHeight(); measured {
		t.Error("a limb whose rise was guessed still has a measured height")
	}
}

func indexOf(s *survey.Survey, id string) int {
	for i, m := range s.Trees[0].Members {
		if m.ID == id {
			return i
		}
	}
	return -1
}

// Beyond the outermost spots nothing is known: that is an open question, not
// level ground.
func TestPlumbLineBeyondTheSpots(t *testing.T) {
	s := oakOn(t, 0, 0)
	onSpots(t, s, 0, 0)
	for i := range s.Trees[0].Ground.Spots {
		s.Trees[0].Ground.Spots[i].Distance.Value /= 20
	}
	h := assessAll(t, s)[0]
	if h.Outcome != Unfinished || !hasReason(h, GroundNotSurveyed) {
		t.Errorf("got %v with %v", h.Outcome, h.Reasons)
	}
}

func hasReason(h Hang, code Code) bool {
	for _, r := range h.Reasons {
		if r.Code == code {
			return true
		}
	}
	return false
}

// Ground that falls away to the side is met by a launch off the line: the fall
// grows by L sin(60 deg) sin(10 deg) times the slope (plane geometry).
func TestCrossSlopeCountsOffTheLine(t *testing.T) {
	fall := func(across float64) float64 {
		s := oakOn(t, 0, across)
		h := assessAll(t, s)[0]
		for _, c := range h.Checks {
			if c.Code == FallHeight {
				return c.Demand
			}
		}
		return math.NaN()
	}
	line := float64(oak(t).Trees[0].Hangs[0].Line.Value)
	want := line * math.Sin(math.Pi/3) * math.Sin(math.Pi/18) * 0.2
	if got := fall(0.2) - fall(0); math.Abs(got-want) > 1e-9 {
		t.Errorf("the fall grows by %v m, want %v m", got, want)
	}
}

// A launch off the line of a small swing drifts by its share of the amplitude:
// an ellipse of the plane pendulum (small angles, Landau & Lifshitz, Mechanics,
// §23, from memory).
func TestDriftOfASmallSwing(t *testing.T) {
	off, amplitude := 10*quantity.Degree, quantity.Angle(0.01)
	if got, want := float64(driftShare(amplitude, off)), float64(amplitude)*off.Sin(); math.Abs(got/want-1) > 1e-4 {
		t.Errorf("got %v, want %v", got, want)
	}
	if a, b := driftShare(30*quantity.Degree, off), driftShare(60*quantity.Degree, off); a >= b {
		t.Errorf("a wider swing drifts %v, a lesser one %v", b, a)
	}
}

// A fence beside the swing: its room is the distance to the end of the reach,
// which is as wide there as flights off the line are (plane geometry).
func TestFenceBesideTheSwing(t *testing.T) {
	s := oakOn(t, 0, 0)
	r := rigOf(t, s)
	right := quantity.Heading(r.azimuth+90*quantity.Degree, 0)
	from := r.hangPoint().Add(right.Scale(5)).Add(r.heading.Scale(-20))
	to := r.hangPoint().Add(right.Scale(5)).Add(r.heading.Scale(20))
	azimuth, distance := spotOf(from)
	corner, far := spotOf(to)
	s.Trees[0].Obstacles = []survey.Obstacle{{
		What: "fence", Azimuth: survey.MeasuredAngle{Value: azimuth}, Distance: exactly(float64(distance)), Radius: exactly(0.1),
		Corners: []survey.Spot{{Azimuth: survey.ChosenAngle{Value: corner}, Distance: survey.ChosenLength{Value: far}}},
	}}
	u := r.askedOf(checker{cure: bySpace})
	ahead, behind := r.keptClear(u)
	want := 5 - float64(max(ahead, behind))*math.Tan(math.Pi/18) - 0.1
	if got := marginFor(assessAll(t, s)[0], Obstructed); math.Abs(got-want) > 1e-6 {
		t.Errorf("room for a body %v times, want %v", got, want)
	}
	s.Trees[0].Obstacles[0].Kind = survey.Path
	beside := want / (1 + r.rules.wayHalfWidth.Value)
	if got := marginFor(assessAll(t, s)[0], Obstructed); math.Abs(got-beside) > 1e-6 {
		t.Errorf("beside a path %v, want %v", got, beside)
	}
}

func spotOf(p quantity.Vec3) (quantity.Angle, quantity.Length) {
	return quantity.Angle(math.Atan2(p.X, p.Y)), quantity.Length(math.Hypot(p.X, p.Y))
}
