package frame

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// 64 P L^3/(3 pi E db^3 dt), from integrating P x^2/(E I) over the linear
// taper; the figures in mm are those of a table worked from it (P 1 kN, L 5 m,
// E 9 GPa, db 0.25 m).
func TestTaperedDeflection(t *testing.T) {
	for _, c := range []struct{ tip, millimetres float64 }{
		{0.25, 24.144}, {0.20, 30.180}, {0.15, 40.241}, {0.10, 60.361}, {0.05, 120.722},
	} {
		a := mustAnalyse(t, must(t, cantilever(0.25, quantity.Length(c.tip), 5)), Options{})
		if err := a.Solve(LoadCase{Points: []PointLoad{{Place{0, 5}, quantity.Vec3{Z: -1000}}}}); err != nil {
			t.Fatal(err)
		}
		near(t, "table", float64(a.Sag(Place{0, 5}))*1000, c.millimetres, 5e-4*1.5)
		exact := 64 * 1000 * 125 / (3 * math.Pi * 9e9 * math.Pow(0.25, 3) * c.tip)
		near(t, "closed form", float64(a.Sag(Place{0, 5})), exact, 1e-7*exact)
	}
}

// Deflections of the uniform cantilever: P a^2 (3 x - a)/(6 E I) beyond the
// load, w x^2 (6 L^2 - 4 L x + x^2)/(24 E I), and w0 L^4/(30 E I) at the tip
// for a load that falls to 0 there (Roark, Formulas for Stress and Strain,
// table 8.1, from memory).
func TestUniformDeflections(t *testing.T) {
	const length, x = 4.0, 2.53
	f := must(t, cantilever(0.2, 0.2, length))
	inertia, _ := Circle(0.2).SecondMoments()
	ei := 9e9 * inertia
	down := func(w float64) quantity.Vec3 { return quantity.Vec3{Z: -w} }
	for _, c := range []struct {
		name  string
		loads LoadCase
		at, u float64
	}{
		{"point", LoadCase{Points: []PointLoad{{Place{0, 1.7}, down(800)}}}, x, 800 * 1.7 * 1.7 * (3*x - 1.7) / (6 * ei)},
		{"uniform", LoadCase{Lines: []LineLoad{{0, 0, length, down(300), down(300)}}}, x,
			300 * x * x * (6*length*length - 4*length*x + x*x) / (24 * ei)},
		{"triangle", LoadCase{Lines: []LineLoad{{0, 0, length, down(300), down(0)}}}, length, 300 * math.Pow(length, 4) / (30 * ei)},
		{"weight", StandardWeight(), x,
			900 * quantity.StandardGravity * math.Pi * 0.01 * x * x * (6*length*length - 4*length*x + x*x) / (24 * ei)},
	} {
		for _, size := range []quantity.Length{length, 1.3, 0.1} {
			a := mustAnalyse(t, f, Options{ElementLength: size})
			if err := a.Solve(c.loads); err != nil {
				t.Fatal(err)
			}
			near(t, c.name, float64(a.Sag(Place{0, quantity.Length(c.at)})), c.u, 1e-7*c.u)
		}
	}
}

// Timoshenko's beam sinks by P L/(kappa G A) more.
func TestShearFlexible(t *testing.T) {
	f := must(t, cantilever(0.2, 0.2, 4))
	c := LoadCase{Points: []PointLoad{{Place{0, 4}, quantity.Vec3{Z: -1000}}}}
	stiff, soft := mustAnalyse(t, f, Options{}), mustAnalyse(t, f, Options{ShearFlexible: true})
	if err := stiff.Solve(c); err != nil {
		t.Fatal(err)
	}
	if err := soft.Solve(c); err != nil {
		t.Fatal(err)
	}
	more := 1000 * 4 / (0.9 * 0.6e9 * math.Pi * 0.01)
	near(t, "shear", float64(soft.Sag(Place{0, 4})-stiff.Sag(Place{0, 4})), more, 1e-5*more)
}

// The finite elements find the reactions that balance the loads, their
// flexibility is symmetric (Maxwell), and meshes of any size agree.
func TestAnalysisOfRandomLimbs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawLimb(t)
		f, err := New(d.model)
		if err != nil {
			t.Fatal(err)
		}
		coarse, err1 := f.Analyse(Options{ElementLength: 0.4})
		fine, err2 := f.Analyse(Options{ElementLength: 0.1}) // rounding grows with the fourth power of 1/length
		s, err3 := f.Statics(d.loads)
		if err1 != nil || err2 != nil || err3 != nil {
			t.Fatal(err1, err2, err3)
		}
		if err1, err2 = coarse.Solve(d.loads), fine.Solve(d.loads); err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		force, moment := s.Reaction()
		gotForce, gotMoment := coarse.Reaction()
		if off := gotForce.Sub(force).Norm() + gotMoment.Sub(moment).Norm(); off > 1e-9*(force.Norm()+moment.Norm()) {
			t.Fatalf("reaction off by %g N, N m", off)
		}
		for _, at := range cutsOf(f) {
			u, turn := coarse.Motion(at)
			v, other := fine.Motion(at)
			if v.Sub(u).Norm() > 1e-5*u.Norm()+1e-9 || other.Sub(turn).Norm() > 1e-5*turn.Norm()+1e-9 {
				t.Fatalf("%v: coarse %v %v, fine %v %v", at, u, turn, v, other)
			}
		}
		checkFlexibility(t, f, coarse)
	})
}

func checkFlexibility(t *rapid.T, f *Frame, a *Analysis) {
	t.Helper()
	at := Place{1, f.Length(1) / 2}
	c, err1 := a.Flexibility(at)
	k, err2 := a.Stiffness(at)
	if err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	for i := range c {
		for j := range c {
			if math.Abs(c[i][j]-c[j][i]) > 1e-7*math.Sqrt(c[i][i]*c[j][j]) {
				t.Fatalf("flexibility %v is not symmetric", c)
			}
			unit := k[i][0]*c[0][j] + k[i][1]*c[1][j] + k[i][2]*c[2][j]
			if i == j {
				unit--
			}
			if math.Abs(unit) > 1e-6 {
				t.Fatalf("stiffness times flexibility is off 1 by %g", unit)
			}
		}
	}
	along, err := a.StiffnessAlong(at, quantity.Vec3{Z: 2})
	if err != nil || math.Abs(float64(along)*c[2][2]-1) > 1e-9 {
		t.Fatalf("stiffness along z %v, want %v (%v)", along, 1/c[2][2], err)
	}
}

func TestSupportCannotMove(t *testing.T) {
	a := mustAnalyse(t, must(t, cantilever(0.2, 0.2, 4)), Options{})
	if _, err := a.Stiffness(Place{}); err == nil {
		t.Error("a stiffness at the support")
	}
	if _, err := a.StiffnessAlong(Place{}, quantity.Vec3{Z: 1}); err == nil {
		t.Error("a stiffness along z at the support")
	}
	if u, turn := a.Motion(Place{}); u.Norm() != 0 || turn.Norm() != 0 {
		t.Errorf("the support moves by %v, %v", u, turn)
	}
}

// Every error names the field.
func TestModelErrors(t *testing.T) {
	good := func() Model { return cantilever(0.2, 0.1, 4) }
	child := Member{Name: "side", Parent: 0, ParentAlong: 2, Stations: []Station{
		{quantity.Vec3{X: 2}, Circle(0.05)}, {quantity.Vec3{X: 3, Z: 1}, Circle(0.04)}}}
	for _, c := range []struct {
		want   string
		change func(*Model)
	}{
		{"members", func(m *Model) { m.Members = nil }},
		{"young", func(m *Model) { m.Material.Young = 0 }},
		{"density", func(m *Model) { m.Material.Density = -1 }},
		{"stations", func(m *Model) { m.Members[0].Stations = m.Members[0].Stations[:1] }},
		{"station 1", func(m *Model) { m.Members[0].Stations[1].Position = quantity.Vec3{} }},
		{"diameters", func(m *Model) { m.Members[0].Stations[0].Outer = Circle(0) }},
		{"hollow from", func(m *Model) { m.Members[0].Hollows = []Hollow{{From: 3, To: 5}} }},
		{"wood all round", func(m *Model) {
			m.Members[0].Hollows = []Hollow{{From: 0, To: 4, InnerFrom: Circle(0.1), InnerTo: Circle(0.1)}}
		}},
		{"overlaps", func(m *Model) { m.Members[0].Hollows = []Hollow{{From: 0, To: 2}, {From: 1, To: 3}} }},
		{"mass 0", func(m *Model) { m.Masses = []Mass{{Place{0, 5}, 1}} }},
		{"mass 0", func(m *Model) { m.Masses = []Mass{{Place{0, 1}, quantity.Mass(math.NaN())}} }},
		{"parent", func(m *Model) { m.Members[0].Parent = 0 }},
		{"parent", func(m *Model) { c := child; c.Parent = 1; m.Members = append(m.Members, c) }},
		{"on its parent", func(m *Model) { c := child; c.ParentAlong = 9; m.Members = append(m.Members, c) }},
		{"off its parent", func(m *Model) { c := child; c.ParentAlong = 1; m.Members = append(m.Members, c) }},
	} {
		m := good()
		c.change(&m)
		if _, err := New(m); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("got %v, want an error that names %q", err, c.want)
		}
	}
}

func TestLoadErrors(t *testing.T) {
	f := must(t, cantilever(0.2, 0.1, 4))
	a := mustAnalyse(t, f, Options{})
	nan := quantity.Vec3{X: math.NaN()}
	for _, c := range []struct {
		want  string
		loads LoadCase
	}{
		{"gravity", LoadCase{Gravity: nan}},
		{"point load 0", LoadCase{Points: []PointLoad{{Place{0, 9}, quantity.Vec3{}}}}},
		{"point load 0", LoadCase{Points: []PointLoad{{Place{1, 0}, quantity.Vec3{}}}}},
		{"force", LoadCase{Points: []PointLoad{{Place{0, 1}, nan}}}},
		{"line load 0", LoadCase{Lines: []LineLoad{{Member: 0, From: 2, To: 1}}}},
		{"line load 0", LoadCase{Lines: []LineLoad{{Member: 0, From: 2, To: 9}}}},
	} {
		if _, err := f.Statics(c.loads); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("statics: got %v, want an error that names %q", err, c.want)
		}
		if err := a.Solve(c.loads); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("solve: got %v, want an error that names %q", err, c.want)
		}
	}
	if _, err := f.Analyse(Options{ElementLength: 1e-5}); err == nil || !strings.Contains(err.Error(), "element length") {
		t.Errorf("got %v, want an error that names the element length", err)
	}
	soft := cantilever(0.2, 0.1, 4)
	soft.Material.Shear = 0
	if _, err := must(t, soft).Analyse(Options{}); err == nil || !strings.Contains(err.Error(), "shear") {
		t.Errorf("got %v, want an error that names the shear modulus", err)
	}
}
