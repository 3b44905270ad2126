package frame

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// Tapered round cantilever with a load P at the tip: the greatest stress lies
// off the base where the tip is thinner than two thirds of it, at x = dt L/(2
// (db - dt)) from the tip, 128 P L/(27 pi dt^2 (db - dt)); at the base it is
// 32 P L/(pi db^3). Derived from d(M/Z)/dx = 0; the figures are those of a
// table worked from it.
func TestGreatestStressOfTaper(t *testing.T) {
	const load, length, base = 1000, 5, 0.25
	for _, c := range []struct{ tip, stress, fromTip float64 }{
		{0.25, 3.259e6, 5},
		{0.20, 3.259e6, 5},
		{0.15, 3.353e6, 3.75},
		{0.10, 5.030e6, 1.667},
		{0.05, 15.09e6, 0.625},
	} {
		f := must(t, cantilever(base, quantity.Length(c.tip), length))
		s := mustStatics(t, f, LoadCase{Points: []PointLoad{{Place{0, length}, quantity.Vec3{Z: -load}}}})
		p := s.GreatestFibre()
		near(t, "stress", float64(p.Stress), c.stress, 5e-4*c.stress)
		near(t, "place", length-float64(p.At.Along), c.fromTip, 5e-4)
		if c.tip < base*2/3 {
			near(t, "closed form", float64(p.Stress), 128*load*length/(27*math.Pi*c.tip*c.tip*(base-c.tip)), 1e-9*c.stress)
		}
	}
}

// The worst fibre is the worst of many round the perimeter, by sigma = N/A -
// M_h y_v/I_v + M_v y_h/I_h.
func TestWorstFibreByScan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Section{Outer: drawEllipse(t, 0.2), Inner: Circle(quantity.Length(number(t, 0, 0.1)))}
		f := SectionForces{
			Axial:         quantity.Force(number(t, -1e4, 1e4)),
			MomentAcross:  quantity.Moment(number(t, -1e4, 1e4)),
			MomentUpright: quantity.Moment(number(t, -1e4, 1e4)),
		}
		greatest, least := s.Fibres(f)
		upright, across := s.SecondMoments()
		high, low := math.Inf(-1), math.Inf(1)
		for k := range 3600 {
			sin, cos := math.Sincos(2 * math.Pi * float64(k) / 3600)
			v, h := float64(s.Outer.Upright)/2*cos, float64(s.Outer.Across)/2*sin
			sigma := float64(f.Axial)/float64(s.Area()) - float64(f.MomentAcross)*v/upright + float64(f.MomentUpright)*h/across
			high, low = math.Max(high, sigma), math.Min(low, sigma)
		}
		within := 1e-5*(math.Abs(high)+math.Abs(low)) + 1e-3
		if math.Abs(float64(greatest.Stress)-high) > within || math.Abs(float64(least.Stress)-low) > within {
			t.Fatalf("got %v and %v, want %v and %v", greatest.Stress, least.Stress, high, low)
		}
	})
}

// Shear of solid sections, closed forms: 4/3 V/A; torsion 16 T/(pi d^3) of the
// circle and 2 T/(pi a b^2) of the ellipse; of a thin tube 2 V/A and T/(2 A_m t).
func TestShearStress(t *testing.T) {
	ellipse := Section{Outer: Ellipse{0.3, 0.2}}
	area := float64(ellipse.Area())
	near(t, "both shears", float64(ellipse.TransverseShear(SectionForces{ShearUpright: 300, ShearAcross: 400})), 4.0/3*500/area, 1e-9)
	near(t, "torsion of ellipse", float64(ellipse.TorsionShear(-1000)), 2*1000/(math.Pi*0.15*0.1*0.1), 1e-6)
	round := Section{Outer: Circle(0.2)}
	near(t, "torsion of circle", float64(round.TorsionShear(1000)), 16*1000/(math.Pi*0.008), 1e-6)
	tube := Section{Outer: Circle(0.2), Inner: Circle(0.198)}
	near(t, "shear of tube", float64(tube.TransverseShear(SectionForces{ShearUpright: 1000}))/(2*1000/float64(tube.Area())), 1, 1e-3)
	mean := math.Pi / 4 * 0.199 * 0.199
	near(t, "torsion of tube", float64(tube.TorsionShear(1000))/(1000/(2*mean*0.001)), 1, 0.01)
	together := SectionForces{ShearUpright: 300, Torque: 1000}
	near(t, "sum", float64(ellipse.Shear(together)), float64(ellipse.TransverseShear(together)+ellipse.TorsionShear(1000)), 1e-9)
}

// A shrinking hollow becomes the solid section.
func TestNoHollowIsSolid(t *testing.T) {
	solid, hollow := Section{Outer: Ellipse{0.3, 0.2}}, Section{Outer: Ellipse{0.3, 0.2}, Inner: Circle(1e-6)}
	a, b := solid.stiffnesses(), hollow.stiffnesses()
	for _, pair := range [][2]float64{{a.area, b.area}, {a.upright, b.upright}, {a.across, b.across}, {a.torsion, b.torsion}} {
		near(t, "stiffness", pair[1]/pair[0], 1, 1e-9)
	}
	v, h := solid.SectionModulus()
	ov, oh := solid.Outer.SectionModulus()
	near(t, "modulus", v/ov+h/oh, 2, 1e-12)
}

// Concentric hollow: loss of section modulus (d/D)^4 (closed form), area loss
// (d/D)^2.
func TestConcentricHollow(t *testing.T) {
	for _, wall := range []float64{0.5, 0.4, 0.3, 0.1} { // wall over radius
		share := 1 - wall
		s := Section{Outer: Circle(0.4), Inner: Circle(quantity.Length(0.4 * share))}
		v, _ := s.SectionModulus()
		whole, _ := s.Outer.SectionModulus()
		near(t, "modulus", 1-v/whole, math.Pow(share, 4), 1e-12)
		near(t, "area", 1-float64(s.Area()/s.Outer.Area()), share*share, 1e-12)
	}
}

// No sampled cut of a random limb has a greater stress than the one found.
func TestGreatestFibreIsGreatest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawLimb(t)
		f, err := New(d.model)
		if err != nil {
			t.Fatal(err)
		}
		s, err := f.Statics(d.loads)
		if err != nil {
			t.Fatal(err)
		}
		best, shear := s.GreatestFibre(), s.GreatestShearOn(0, 0, f.Length(0))
		for i := range f.Members() {
			for k := range 500 {
				at := Place{i, f.Length(i) * quantity.Length(float64(k)/499)}
				for _, side := range []Side{RootSide, TipSide} {
					forces, wood := s.At(at, side), f.Section(at, side)
					outside := along0(at) && side == RootSide
					if w := wood.Worst(forces); !outside && math.Abs(float64(w.Stress)) > math.Abs(float64(best.Stress))*(1+1e-9) {
						t.Fatalf("%v at %v %v, above %v at %v", w.Stress, at, side, best.Stress, best.At)
					}
					if i == 0 && !outside && float64(wood.Shear(forces)) > float64(shear.Stress)*(1+1e-9) {
						t.Fatalf("shear at %v above %v", at, shear.Stress)
					}
				}
			}
		}
	})
}

// along0 says whether a place is the root of its member, whose root side lies
// outside it.
func along0(at Place) bool { return at.Along == 0 }
