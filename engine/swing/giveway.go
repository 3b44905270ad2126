package swing

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// LimbAtHang is a limb as a swing meets it at the hang point.
type LimbAtHang struct {
	// StiffnessNewtonPerMetre is the force that holds the hang point displaced
	// by a unit length, along the axes of the site; symmetric.
	StiffnessNewtonPerMetre [3][3]float64
	MovingMass              quantity.Mass       // that moves with the hang point
	DampingRatio            quantity.Proportion // of the limb, 0 or more
}

// MovingMass returns the mass that on the stiffness of a hang point vibrates
// with the lowest frequency of the limb: k / (2 pi f)^2. It keeps both right.
// The effective mass of the lowest mode does so only near the tip; nearer the
// union that mode is a small share of the flexibility there, and its mass on
// the whole stiffness would be far too slow.
// Source: single degree of freedom, as in Clough & Penzien, Dynamics of
// Structures (from memory).
func MovingMass(stiffness quantity.Stiffness, lowest quantity.Frequency) quantity.Mass {
	omega := 2 * math.Pi * float64(lowest)
	return quantity.Mass(float64(stiffness) / (omega * omega))
}

// GivenWay is what a swing on a limb that gives way comes to. Where the line
// went slack, Factor and Sag do not hold: the limb gives too much for the
// amplitude.
type GivenWay struct {
	Factor quantity.Proportion // by which the greatest pull on a rigid support is to be raised, 1 or more
	Sag    quantity.Length     // the greatest, from the place without riders
	Slack  bool
}

// GiveWay returns the dynamic factor of a limb that gives way below a swing:
// the greatest force of spring and damper in the plane of swing, over the
// first two swings there and back from a rest at the amplitude, over
// m g (3 - 2 cos a). It is not let below 1, though a limb can shed pull. The
// limb gives up and down and along the heading (an azimuth), each with the
// flexibility of the whole limb to a force in that direction alone. The term
// that couples the two is dropped, or a swing along the limb would turn on the
// limb's stiffness end to end: it is 0 for a level limb or a swing square to
// it; 15 deg off square on one that rises by 20 deg, it can add 0.01 to the
// factor. It fails on inputs out of range and on a stiffness that is not positive.
// Source: as YieldingSwing.
func GiveWay(limb LimbAtHang, mass quantity.Mass, length quantity.Length, amplitude, heading quantity.Angle) (GivenWay, error) {
	given, err := limb.giveWay(mass, length, amplitude, heading, giveWayPrecision)
	if err != nil {
		return GivenWay{}, fmt.Errorf("limb that gives way: %w", err)
	}
	return given, nil
}

// giveWayPrecision leaves the factor right to 1e-6.
var giveWayPrecision = numeric.Tolerance{Relative: 1e-7, Absolute: 1e-9}

// stiffest is the greatest frequency that is followed in time.
const stiffest quantity.Frequency = 6

// giveWay follows the swing. A limb beyond the stiffest is followed at that
// frequency and what it adds then falls with its flexibility, to which it is
// proportional in the limit.
func (l LimbAtHang) giveWay(mass quantity.Mass, length quantity.Length, amplitude, heading quantity.Angle, tolerance numeric.Tolerance) (GivenWay, error) {
	if err := l.check(amplitude); err != nil {
		return GivenWay{}, err
	}
	vertical, err := l.along(quantity.Vec3{Z: 1})
	if err != nil {
		return GivenWay{}, err
	}
	horizontal, err := l.along(quantity.Heading(heading, 0))
	if err != nil {
		return GivenWay{}, err
	}
	limit := SupportOf(l.MovingMass, stiffest, 0).Stiffness
	followed := SupportBy(l.MovingMass, min(horizontal, limit), l.DampingRatio)
	s := YieldingSwing{
		Length: length, Mass: mass, LimbMass: l.MovingMass,
		Vertical: SupportBy(l.MovingMass, min(vertical, limit), l.DampingRatio), Horizontal: &followed,
	}
	peak, err := s.peak(amplitude, tolerance)
	if err != nil {
		return GivenWay{}, err
	}
	excess := float64(peak.force/PeakPull(mass, amplitude)) - 1
	excess *= math.Min(1, float64(limit/min(vertical, horizontal)))
	return GivenWay{
		Factor: quantity.Proportion(1 + math.Max(excess, 0)),
		Sag:    peak.sag * quantity.Length(s.Vertical.Stiffness/vertical),
		Slack:  peak.slack,
	}, nil
}

func (l LimbAtHang) check(amplitude quantity.Angle) error {
	if err := requirePositive(field{"moving mass", float64(l.MovingMass), "kg"}); err != nil {
		return err
	}
	if err := requireNotNegative(field{"damping ratio", float64(l.DampingRatio), ""}); err != nil {
		return err
	}
	return requireTaut(amplitude)
}

// along returns the stiffness against a force in one direction, the hang point
// being free in the others.
func (l LimbAtHang) along(direction quantity.Vec3) (quantity.Stiffness, error) {
	matrix := numeric.NewSkyline([]int{0, 0, 0})
	for i, row := range l.StiffnessNewtonPerMetre {
		for j := i; j < len(row); j++ {
			matrix.Add(i, j, row[j])
		}
	}
	if err := matrix.Factor(); err != nil {
		return 0, fmt.Errorf("stiffness %v N/m: %w", l.StiffnessNewtonPerMetre, err)
	}
	moved := []float64{direction.X, direction.Y, direction.Z}
	matrix.Solve(moved)
	flexibility := direction.Dot(quantity.Vec3{X: moved[0], Y: moved[1], Z: moved[2]})
	if stiffness := 1 / flexibility; stiffness > 0 && !math.IsInf(stiffness, 0) {
		return quantity.Stiffness(stiffness), nil
	}
	return 0, fmt.Errorf("stiffness %v N/m; expected finite numbers", l.StiffnessNewtonPerMetre)
}

type yieldingPeak struct {
	force quantity.Force // on the limb
	sag   quantity.Length
	slack bool
}

// peak follows two swings there and back, by the time on a rigid support, from
// the line held at the angle.
func (s YieldingSwing) peak(angle quantity.Angle, tolerance numeric.Tolerance) (yieldingPeak, error) {
	start := s.Held(angle)
	period, err := Period(s.Length, angle)
	if err != nil {
		return yieldingPeak{}, err
	}
	end := 2 * period
	if err := s.check(start, []quantity.Time{end}); err != nil {
		return yieldingPeak{}, err
	}
	run := newYieldingRun(s)
	seen := observer{observe(run.resultant, run.resultantRate), run.observer[yieldingSag]}
	y := []float64{float64(start.X), float64(start.Y), float64(start.Angle), 0, 0, 0}
	in, err := numeric.NewIntegrator(run, 0, y, tolerance)
	if err != nil {
		return yieldingPeak{}, fmt.Errorf("start of the motion: %w", err)
	}
	slackens := numeric.Event{Value: func(_ float64, y []float64) float64 { return run.pull(y) }, Direction: numeric.Falling}
	slack := false
	in.Watch(append(seen.events(), slackens), func(h numeric.Hit) {
		seen.hit(h)
		slack = slack || h.Event == len(seen)
	})
	seen.all(0, y)
	if _, err := in.Run(float64(end)); err != nil {
		return yieldingPeak{}, fmt.Errorf("motion: %w", err)
	}
	seen.all(in.Time(), in.State())
	return yieldingPeak{quantity.Force(seen[0].most.value), quantity.Length(seen[1].most.value), slack}, nil
}

// resultant is the size of the force on the limb.
func (s *yielding) resultant(y []float64) float64 { return math.Hypot(s.horizontal(y), s.vertical(y)) }

func (s *yielding) resultantRate(y []float64) float64 {
	var d [6]float64
	s.Rates(0, y, d[:])
	h, v := s.horizontal(y), s.vertical(y)
	return (h*s.x.force(d[0], d[3]) - v*s.y.force(d[1], d[4])) / math.Hypot(h, v)
}
