package frame

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// Cantilever under each kind of load: moments at the root and at mid-length by
// hand (P a, w L^2/2, w0 L^2/6 for a load that falls to 0 at the tip).
func TestCantileverMoments(t *testing.T) {
	const length = 4.0
	down := func(w float64) quantity.Vec3 { return quantity.Vec3{Z: -w} }
	for _, c := range []struct {
		name         string
		loads        LoadCase
		root, middle float64
	}{
		{"point", LoadCase{Points: []PointLoad{{Place{0, 3}, down(1000)}}}, -3000, -1000},
		{"uniform", LoadCase{Lines: []LineLoad{{0, 0, length, down(500), down(500)}}}, -4000, -1000},
		{"triangle", LoadCase{Lines: []LineLoad{{0, 0, length, down(600), down(0)}}}, -1600, -200},
	} {
		s := mustStatics(t, must(t, cantilever(0.2, 0.2, length)), c.loads)
		near(t, c.name+" root", float64(s.At(Place{0, 0}, TipSide).MomentAcross), c.root, 1e-9)
		near(t, c.name+" middle", float64(s.At(Place{0, length / 2}, TipSide).MomentAcross), c.middle, 1e-9)
	}
}

// Weight of a cone frustum pi L/12 (D^2 + D d + d^2) and its centroid
// L/4 (D^2 + 2 D d + 3 d^2)/(D^2 + D d + d^2) from the base (handbook).
func TestFrustumWeight(t *testing.T) {
	const base, tip, length = 0.4, 0.1, 6.0
	f := must(t, cantilever(base, tip, length))
	s := mustStatics(t, f, StandardWeight())
	sum := base*base + base*tip + tip*tip
	mass := 900 * math.Pi * length / 12 * sum
	arm := length / 4 * (base*base + 2*base*tip + 3*tip*tip) / sum
	force, moment := s.Reaction()
	near(t, "mass", float64(f.WoodMass()), mass, 1e-9*mass)
	near(t, "reaction", force.Z, mass*quantity.StandardGravity, 1e-9*mass)
	near(t, "moment", moment.Y, -mass*quantity.StandardGravity*arm, 1e-9*mass*arm)
}

// The two sides of a place differ by what sits there.
func TestSidesOfAPlace(t *testing.T) {
	m := cantilever(0.2, 0.2, 4)
	m.Masses = []Mass{{Place{0, 2}, 10}}
	f := must(t, m)
	s := mustStatics(t, f, LoadCase{
		Gravity: quantity.Vec3{Z: -10},
		Points:  []PointLoad{{Place{0, 3}, quantity.Vec3{Y: 7}}, {Place{0, 0}, quantity.Vec3{X: 5}}},
	})
	for _, c := range []struct {
		along             quantity.Length
		rootSide, tipSide quantity.Vec3
	}{
		{0, quantity.Vec3{X: 5, Y: 7, Z: -100}, quantity.Vec3{Y: 7, Z: -100}},
		{2, quantity.Vec3{Y: 7, Z: -100}, quantity.Vec3{Y: 7}},
		{3, quantity.Vec3{Y: 7}, quantity.Vec3{}},
		{4, quantity.Vec3{}, quantity.Vec3{}},
	} {
		near(t, "root side", s.At(Place{0, c.along}, RootSide).Force.Sub(c.rootSide).Norm(), 0, 1e-12)
		near(t, "tip side", s.At(Place{0, c.along}, TipSide).Force.Sub(c.tipSide).Norm(), 0, 1e-12)
	}
}

// The support takes all loads: forces and moments about the root balance.
func TestReactionBalancesLoads(t *testing.T) {
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
		force, moment := s.Reaction()
		sum, about := d.total(f)
		scale := sum.Norm() + about.Norm() + 1
		if off := force.Add(sum).Norm() + moment.Add(about).Norm(); off > 1e-9*scale {
			t.Fatalf("off balance by %g", off)
		}
	})
}

// total sums all loads and their moments about the root, with no cut taken:
// Simpson's rule over every stretch is exact for weight and lines.
func (d drawn) total(f *Frame) (force, about quantity.Vec3) {
	root := d.model.Members[0].Stations[0].Position
	add := func(at, load quantity.Vec3) {
		force = force.Add(load)
		about = about.Add(at.Sub(root).Cross(load))
	}
	for _, p := range d.loads.Points {
		add(f.Position(p.At), p.Force)
	}
	for _, m := range d.model.Masses {
		add(f.Position(m.At), d.loads.Gravity.Scale(float64(m.Mass)))
	}
	for _, l := range d.loads.Lines {
		simpson(float64(l.From), float64(l.To), func(s, w float64) {
			add(f.Position(Place{l.Member, quantity.Length(s)}), l.at(s).Scale(w))
		})
	}
	for i := range d.model.Members {
		breaks := f.Breaks(i)
		for k := 1; k < len(breaks); k++ {
			simpson(float64(breaks[k-1]), float64(breaks[k]), func(s, w float64) {
				side := TipSide
				if s == float64(breaks[k]) {
					side = RootSide
				}
				at := Place{i, quantity.Length(s)}
				area := float64(f.Section(at, side).Area())
				add(f.Position(at), d.loads.Gravity.Scale(w*area*float64(d.model.Material.Density)))
			})
		}
	}
	return force, about
}

// simpson is exact to degree 3, as the loads and their moments are.
func simpson(from, to float64, add func(s, weight float64)) {
	h := to - from
	add(from, h/6)
	add((from+to)/2, 4*h/6)
	add(to, h/6)
}

func TestSuperposition(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawLimb(t)
		f, err := New(d.model)
		if err != nil {
			t.Fatal(err)
		}
		weight, err1 := f.Statics(StandardWeight())
		rest := d.loads
		rest.Gravity, rest.SelfWeight = quantity.Vec3{}, false
		others, err2 := f.Statics(rest)
		both, err3 := f.Statics(d.loads)
		if err1 != nil || err2 != nil || err3 != nil {
			t.Fatal(err1, err2, err3)
		}
		sum := weight.Add(others.Scale(0.5)).Add(others.Scale(0.5))
		for _, at := range cutsOf(f) {
			sameForces(t, "sum of statics", sum.At(at, TipSide), both.At(at, TipSide))
			byHand := weight.At(at, RootSide).Add(others.At(at, RootSide).Scale(2)).Add(others.At(at, RootSide).Scale(-1))
			sameForces(t, "sum of section forces", byHand, both.At(at, RootSide))
		}
	})
}

// Turning the whole tree about the vertical turns the vectors and leaves the
// parts along the member's own axes.
func TestTurnAboutVertical(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawLimb(t)
		sin, cos := math.Sincos(number(t, 0, 6.28))
		turn := func(v quantity.Vec3) quantity.Vec3 {
			return quantity.Vec3{X: cos*v.X - sin*v.Y, Y: sin*v.X + cos*v.Y, Z: v.Z}
		}
		compareMapped(t, d, d.mapped(turn), turn, 1)
	})
}

// Mirroring turns the signs of torque, sideways shear and upright moment.
func TestMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawLimb(t)
		mirror := func(v quantity.Vec3) quantity.Vec3 { return quantity.Vec3{X: v.X, Y: -v.Y, Z: v.Z} }
		compareMapped(t, d, d.mapped(mirror), mirror, -1)
	})
}

func compareMapped(t *rapid.T, d, e drawn, by func(quantity.Vec3) quantity.Vec3, sign float64) {
	t.Helper()
	f, err1 := New(d.model)
	g, err2 := New(e.model)
	if err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	s, err1 := f.Statics(d.loads)
	r, err2 := g.Statics(e.loads)
	if err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	for _, at := range cutsOf(f) {
		want := s.At(at, TipSide)
		want.Torque *= quantity.Moment(sign)
		want.ShearAcross *= quantity.Force(sign)
		want.MomentUpright *= quantity.Moment(sign)
		want.Force, want.Moment = by(want.Force), by(want.Moment).Scale(sign)
		sameForces(t, "mapped", r.At(at, TipSide), want)
	}
	a, err1 := f.Analyse(Options{})
	b, err2 := g.Analyse(Options{})
	if err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	if err1, err2 = a.Solve(d.loads), b.Solve(e.loads); err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	for _, at := range cutsOf(f) {
		u, _ := a.Motion(at)
		v, _ := b.Motion(at)
		if v.Sub(by(u)).Norm() > 1e-6*(u.Norm()+1e-6) {
			t.Fatalf("moved by %v, want %v", v, by(u))
		}
	}
}

// Side limbs listed the other way round, or a mesh numbered otherwise, change
// no result.
func TestOrderOfMembers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawLimb(t)
		e := d
		swap := []int{0, 2, 1}
		e.model.Members = []Member{d.model.Members[0], d.model.Members[2], d.model.Members[1]}
		e.model.Masses = nil
		for _, m := range d.model.Masses {
			m.At.Member = swap[m.At.Member]
			e.model.Masses = append(e.model.Masses, m)
		}
		e.loads.Points, e.loads.Lines = nil, nil
		for _, p := range d.loads.Points {
			p.At.Member = swap[p.At.Member]
			e.loads.Points = append(e.loads.Points, p)
		}
		for _, l := range d.loads.Lines {
			l.Member = swap[l.Member]
			e.loads.Lines = append(e.loads.Lines, l)
		}
		comparePermuted(t, d, e, swap)
	})
}

func comparePermuted(t *rapid.T, d, e drawn, swap []int) {
	t.Helper()
	f, err1 := New(d.model)
	g, err2 := New(e.model)
	if err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	a, err1 := f.Analyse(Options{})
	b, err2 := g.Analyse(Options{})
	if err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	if err1, err2 = a.Solve(d.loads), b.Solve(e.loads); err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	s, err1 := f.Statics(d.loads)
	r, err2 := g.Statics(e.loads)
	if err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	for _, at := range cutsOf(f) {
		other := Place{swap[at.Member], at.Along}
		sameForces(t, "swapped", r.At(other, TipSide), s.At(at, TipSide))
		u, _ := a.Motion(at)
		v, _ := b.Motion(other)
		if v.Sub(u).Norm() > 1e-6*(u.Norm()+1e-6) {
			t.Fatalf("moved by %v, want %v", v, u)
		}
	}
}
