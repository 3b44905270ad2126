package swing

import (
	"math"
	"testing"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// energy is kinetic, of stretch and of height, from the hang point.
func (e *elastic) energy(y []float64) float64 {
	radius, _ := e.stretch(y)
	stretch := math.Max(0, radius-e.length)
	return e.mass*(y[2]*y[2]+y[3]*y[3])/2 + e.stiffness*stretch*stretch/2 - e.mass*e.gravity*y[1]
}

// energy is kinetic and of height, from the hang point.
func (p *planar) energy(y []float64) float64 {
	return p.mass * (p.length*p.length*y[1]*y[1]/2 - p.gravity*p.length*math.Cos(y[0]))
}

// energy is kinetic and of height, from the hang point.
func (s *spherical) energy(y []float64) float64 {
	return s.mass * ((y[3]*y[3]+y[4]*y[4]+y[5]*y[5])/2 + s.gravity*y[2])
}

// energy is kinetic, of the springs and of height.
func (s *yielding) energy(y []float64) float64 {
	sin, cos := math.Sincos(y[2])
	vx := y[3] + s.length*cos*y[5]
	vy := y[4] + s.length*sin*y[5]
	return s.limb*(y[3]*y[3]+y[4]*y[4])/2 + s.mass*(vx*vx+vy*vy)/2 +
		(s.x.stiffness*y[0]*y[0]+s.y.stiffness*y[1]*y[1])/2 + s.mass*s.gravity*(y[1]-s.length*cos)
}

// Without drag and damping the energy of a swing stays the same to 1e-9 of
// itself, counted from rest at the bottom, over a hundred periods.
func TestEnergyOverHundredPeriods(t *testing.T) {
	const length, angle = 5, 70 * quantity.Degree
	period, err := Period(length, angle)
	if err != nil {
		t.Fatal(err)
	}
	stiff := ElasticSwing{Length: length, Stiffness: 4000, Mass: 80}
	run := newElasticRun(stiff, AtRest(angle, stiff.Balanced(angle)))
	planar := &planar{length: length, mass: 80, gravity: quantity.StandardGravity}
	sphere := &spherical{length: length, mass: 80, gravity: quantity.StandardGravity}
	soft := newYieldingRun(YieldingSwing{Length: length, Mass: 80, LimbMass: 60, Vertical: SupportOf(60, 2, 0), Horizontal: &Support{Stiffness: 20000}})
	sin, cos := angle.Sin(), angle.Cos()
	for name, c := range map[string]struct {
		system numeric.System
		energy func([]float64) float64
		start  []float64
	}{
		"planar":    {planar, planar.energy, []float64{float64(angle), 0}},
		"elastic":   {&run.elastic, run.elastic.energy, run.start[:]},
		"spherical": {sphere, sphere.energy, []float64{0, length * sin, -length * cos, -2, 0, 0}},
		"yielding":  {&soft.yielding, soft.yielding.energy, []float64{0.01, -0.02, float64(angle), 0, 0, 0}},
	} {
		in, err := numeric.NewIntegrator(c.system, 0, c.start, precision)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := in.Run(100 * float64(period)); err != nil {
			t.Fatal(err)
		}
		bottom := -80 * quantity.StandardGravity * length
		before, after := c.energy(c.start)-bottom, c.energy(in.State())-bottom
		drift := math.Abs(after-before) / before
		t.Logf("%s: drift %.2g", name, drift)
		if drift > 1e-9 {
			t.Errorf("%s: energy drifts by %g of itself", name, drift)
		}
	}
}

// The distance of a drifting rider from the hang point stays the same too.
func TestLengthOverHundredPeriods(t *testing.T) {
	sphere := &spherical{length: 5, mass: 80, gravity: quantity.StandardGravity}
	in, err := numeric.NewIntegrator(sphere, 0, []float64{0, 3, -4, -2, 0, 0}, precision)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := in.Run(100 * float64(SmallPeriod(5))); err != nil {
		t.Fatal(err)
	}
	y := in.State()
	if length := math.Sqrt(y[0]*y[0] + y[1]*y[1] + y[2]*y[2]); math.Abs(length-5) > 5e-9 {
		t.Errorf("the line of 5 m grew to %.12g m", length)
	}
}
