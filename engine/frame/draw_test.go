package frame

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

func must(t testing.TB, m Model) *Frame {
	t.Helper()
	f, err := New(m)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func mustAnalyse(t testing.TB, f *Frame, o Options) *Analysis {
	t.Helper()
	a, err := f.Analyse(o)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

func mustStatics(t testing.TB, f *Frame, c LoadCase) Statics {
	t.Helper()
	s, err := f.Statics(c)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// cantilever is a straight level limb along x with round ends of two diameters.
func cantilever(base, tip, length quantity.Length) Model {
	return Model{
		Members: []Member{{Name: "limb", Parent: -1, Stations: []Station{
			{Outer: Circle(base)},
			{Position: quantity.Vec3{X: float64(length)}, Outer: Circle(tip)},
		}}},
		Material: Material{Young: 9e9, Shear: 0.6e9, Density: 900},
	}
}

func near(t testing.TB, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %.12g, want %.12g within %.2g", what, got, want, within)
	}
}

// drawn is a random forked limb with masses, a hollow and loads on both parts.
type drawn struct {
	model Model
	loads LoadCase
}

func number(t *rapid.T, low, high float64) float64 {
	return rapid.Float64Range(low, high).Draw(t, "number")
}

// place draws a place on a grid of 25 mm: loads and hollows end no nearer to one
// another. Between places a hair's breadth apart an element is so stiff that
// rounding hides what these tests look at.
func place(t *rapid.T, low, high float64) quantity.Length {
	const grid = 0.025
	return quantity.Length(grid * float64(rapid.IntRange(int(math.Round(low/grid)), int(math.Round(high/grid))).Draw(t, "place")))
}

func drawVec(t *rapid.T, size float64) quantity.Vec3 {
	return quantity.Vec3{X: number(t, -size, size), Y: number(t, -size, size), Z: number(t, -size, size)}
}

// drawLine draws stations that never stand upright, tapering outwards.
func drawLine(t *rapid.T, start quantity.Vec3, diameter float64) []Station {
	stations := []Station{{start, drawEllipse(t, diameter)}}
	for range rapid.IntRange(1, 3).Draw(t, "segments") {
		step := quantity.Vec3{X: number(t, 0.5, 1.5), Y: number(t, -0.7, 0.7), Z: number(t, -0.5, 0.8)}
		start, diameter = start.Add(step), diameter*number(t, 0.6, 1)
		stations = append(stations, Station{start, drawEllipse(t, diameter)})
	}
	return stations
}

func drawEllipse(t *rapid.T, diameter float64) Ellipse {
	d := quantity.Length(diameter)
	return Ellipse{d * quantity.Length(number(t, 0.9, 1.3)), d}
}

func drawLimb(t *rapid.T) drawn {
	main := Member{Name: "main", Parent: -1, Stations: drawLine(t, quantity.Vec3{Z: 3}, number(t, 0.2, 0.4))}
	from := place(t, 0.05, 0.2)
	main.Hollows = []Hollow{{From: from, To: from + place(t, 0.1, 0.25),
		InnerFrom: Circle(0.05), InnerTo: Circle(quantity.Length(number(t, 0.01, 0.04)))}}
	fork := main.Stations[1]
	along := quantity.Length(fork.Position.Sub(main.Stations[0].Position).Norm())
	d := drawn{model: Model{
		Members: []Member{
			main,
			{Name: "left", Parent: 0, ParentAlong: along, Stations: drawLine(t, fork.Position, 0.12)},
			{Name: "right", Parent: 0, ParentAlong: along, Stations: drawLine(t, fork.Position, 0.1)},
		},
		Material: Material{Young: 9e9, Shear: 0.6e9, Density: 900},
	}}
	d.model.Masses = []Mass{{Place{1, 0.3}, quantity.Mass(number(t, 0, 30))}, {Place{0, along}, 4}}
	d.loads = StandardWeight()
	for i := range d.model.Members {
		d.loads.Points = append(d.loads.Points, PointLoad{Place{i, place(t, 0, 0.45)}, drawVec(t, 2000)})
	}
	d.loads.Lines = []LineLoad{{Member: 2, From: 0.1, To: place(t, 0.2, 0.45),
		FromForce: drawVec(t, 200), ToForce: drawVec(t, 200)}}
	return d
}

// cutsOf lists some cuts of every member.
func cutsOf(f *Frame) []Place {
	var places []Place
	for i := range f.Members() {
		for k := range 7 {
			places = append(places, Place{i, f.Length(i) * quantity.Length(float64(k)/7)})
		}
	}
	return places
}

// sameForces compares section forces on the scale of their vectors.
func sameForces(t *rapid.T, what string, got, want SectionForces) {
	t.Helper()
	const rounding = 1e-9
	force, moment := rounding*(1+want.Force.Norm()), rounding*(1+want.Moment.Norm())
	if got.Force.Sub(want.Force).Norm() > force || got.Moment.Sub(want.Moment).Norm() > moment {
		t.Fatalf("%s: got %+v, want %+v", what, got, want)
	}
	sameParts(t, what, got, want)
}

func sameParts(t *rapid.T, what string, got, want SectionForces) {
	t.Helper()
	const rounding = 1e-9
	force, moment := rounding*(1+want.Force.Norm()), rounding*(1+want.Moment.Norm())
	for _, p := range [][3]float64{
		{float64(got.Axial), float64(want.Axial), force},
		{float64(got.ShearUpright), float64(want.ShearUpright), force},
		{float64(got.ShearAcross), float64(want.ShearAcross), force},
		{float64(got.Torque), float64(want.Torque), moment},
		{float64(got.MomentAcross), float64(want.MomentAcross), moment},
		{float64(got.MomentUpright), float64(want.MomentUpright), moment},
	} {
		if math.Abs(p[0]-p[1]) > p[2] {
			t.Fatalf("%s: got %+v, want %+v", what, got, want)
		}
	}
}

// mapped returns the drawn limb with every position, gravity left alone, and
// every force moved by a linear map that keeps the vertical.
func (d drawn) mapped(by func(quantity.Vec3) quantity.Vec3) drawn {
	out := drawn{model: d.model, loads: d.loads}
	out.model.Members = nil
	for _, m := range d.model.Members {
		stations := append([]Station(nil), m.Stations...)
		for i := range stations {
			stations[i].Position = by(stations[i].Position)
		}
		m.Stations = stations
		out.model.Members = append(out.model.Members, m)
	}
	out.loads.Points, out.loads.Lines = nil, nil
	for _, p := range d.loads.Points {
		out.loads.Points = append(out.loads.Points, PointLoad{p.At, by(p.Force)})
	}
	for _, l := range d.loads.Lines {
		l.FromForce, l.ToForce = by(l.FromForce), by(l.ToForce)
		out.loads.Lines = append(out.loads.Lines, l)
	}
	return out
}
