package frame_test

import (
	"fmt"
	"math"
	"testing"

	"boughline/engine/frame"
	"boughline/quantity"
)

// wholeTree is a stem of 18 m with six limbs of 5 to 8 m, each kinked twice,
// and leaf as lumped masses: one frame of one material.
func wholeTree() frame.Model {
	model := frame.Model{
		Members: []frame.Member{{Name: "stem", Parent: -1, Stations: []frame.Station{
			{Outer: frame.Circle(0.62)},
			{Position: quantity.Vec3{Z: 1.3}, Outer: frame.Circle(0.52)},
			{Position: quantity.Vec3{X: 0.1, Z: 6}, Outer: frame.Circle(0.44)},
			{Position: quantity.Vec3{X: 0.3, Y: 0.1, Z: 12}, Outer: frame.Circle(0.26)},
			{Position: quantity.Vec3{X: 0.2, Y: 0.2, Z: 18}, Outer: frame.Circle(0.06)},
		}}},
		Material: frame.Material{Young: 8e9, Shear: 0.55e9, Density: 950},
	}
	stem, err := frame.New(model)
	if err != nil {
		panic(err)
	}
	for i := range 6 {
		along, length := quantity.Length(4.5+1.6*float64(i)), 8-0.6*float64(i)
		foot := stem.Position(frame.Place{Member: 0, Along: along})
		out := quantity.Heading(quantity.Angle(i)*137.5*quantity.Degree, 15*quantity.Degree)
		up := quantity.Vec3{Z: 1}
		base := 0.24 - 0.02*float64(i)
		model.Members = append(model.Members, frame.Member{Name: fmt.Sprintf("limb %d", i+1), Parent: 0, ParentAlong: along,
			Stations: []frame.Station{
				{Position: foot, Outer: frame.Circle(quantity.Length(base))},
				{Position: foot.Add(out.Scale(length / 3)), Outer: frame.Circle(quantity.Length(0.8 * base))},
				{Position: foot.Add(out.Scale(2 * length / 3)).Add(up.Scale(0.2)), Outer: frame.Circle(quantity.Length(0.5 * base))},
				{Position: foot.Add(out.Scale(length)).Add(up.Scale(0.5)), Outer: frame.Circle(quantity.Length(0.2 * base))},
			}})
		for _, share := range []float64{0.5, 0.8} {
			at := frame.Place{Member: i + 1, Along: quantity.Length(share * length)}
			model.Masses = append(model.Masses, frame.Mass{At: at, Mass: 20})
		}
	}
	return model
}

// swingCases are ten pulls at a hang point, each with the tree's own weight.
func swingCases(hang frame.Place) []frame.LoadCase {
	cases := make([]frame.LoadCase, 10)
	for i := range cases {
		angle := quantity.Angle(i-5) * 16 * quantity.Degree
		pull := 800 * (3*angle.Cos() - 2*(80*quantity.Degree).Cos())
		cases[i] = frame.StandardWeight()
		cases[i].Points = []frame.PointLoad{{At: hang, Force: quantity.Vec3{X: pull * angle.Sin(), Z: -pull * angle.Cos()}}}
	}
	return cases
}

var hangPoint = frame.Place{Member: 1, Along: 2.5}

// Two bounds on the first mode of a whole tree, both by Rayleigh's principle.
// With each limb and its leaf as a point mass where it leaves the stem the tree
// sways faster: limbs that bend and reach out only slow it down. And of the
// flexibility of a place the mode's share 1/(M w^2) is less than the whole.
func TestWholeTreeFirstMode(t *testing.T) {
	tree := wholeTree()
	analysis, first := firstMode(t, tree)
	lumped := frame.Model{Members: tree.Members[:1], Material: tree.Material}
	whole, err := frame.New(tree)
	if err != nil {
		t.Fatal(err)
	}
	for i, limb := range tree.Members[1:] {
		one, err := frame.New(frame.Model{Members: []frame.Member{{Parent: -1, Stations: limb.Stations}}, Material: tree.Material})
		if err != nil {
			t.Fatal(err)
		}
		at := frame.Place{Member: 0, Along: limb.ParentAlong}
		lumped.Masses = append(lumped.Masses, frame.Mass{At: at, Mass: one.WoodMass() + 40})
		if got, want := whole.Position(frame.Place{Member: i + 1}), whole.Position(at); got.Sub(want).Norm() > 1e-9 {
			t.Errorf("limb %d starts at %v, off the stem at %v", i+1, got, want)
		}
	}
	if _, bare := firstMode(t, lumped); !(first.Frequency < bare.Frequency) {
		t.Errorf("whole tree %v Hz, with limbs as masses on the stem %v Hz", first.Frequency, bare.Frequency)
	}
	omega := 2 * math.Pi * float64(first.Frequency)
	flexibility, err := analysis.Flexibility(hangPoint)
	if err != nil {
		t.Fatal(err)
	}
	for i, axis := range []quantity.Vec3{{X: 1}, {Y: 1}, {Z: 1}} {
		share := 1 / (float64(first.EffectiveMass(hangPoint, axis)) * omega * omega)
		if !(share > 0 && share < flexibility[i][i]) {
			t.Errorf("axis %d: the mode's flexibility %v m/N of %v m/N", i, share, flexibility[i][i])
		}
	}
}

func firstMode(t *testing.T, m frame.Model) (*frame.Analysis, frame.Mode) {
	t.Helper()
	f, err := frame.New(m)
	if err != nil {
		t.Fatal(err)
	}
	analysis, err := f.Analyse(frame.Options{})
	if err != nil {
		t.Fatal(err)
	}
	modes, err := analysis.Modes(2)
	if err != nil {
		t.Fatal(err)
	}
	return analysis, modes[0]
}

// BenchmarkWholeTree is what a tree takes from the frame: model, mesh and
// factors, ten load cases, the stiffness at the hang point, two modes and the
// statics of each case with the greatest fibre on each member.
func BenchmarkWholeTree(b *testing.B) {
	model, cases := wholeTree(), swingCases(hangPoint)
	b.ReportAllocs()
	for b.Loop() {
		f, analysis := analysed(b, model)
		for _, c := range cases {
			if err := analysis.Solve(c); err != nil {
				b.Fatal(err)
			}
		}
		if _, err := analysis.Stiffness(hangPoint); err != nil {
			b.Fatal(err)
		}
		twoModes(b, analysis)
		greatestFibres(b, f, cases)
	}
}

// The parts of BenchmarkWholeTree.
func BenchmarkWholeTreeParts(b *testing.B) {
	model, cases := wholeTree(), swingCases(hangPoint)
	f, analysis := analysed(b, model)
	b.Run("assemble", func(b *testing.B) {
		for b.Loop() {
			analysed(b, model)
		}
		b.ReportMetric(float64(analysis.Elements()), "elements")
	})
	b.Run("solve10", func(b *testing.B) {
		for b.Loop() {
			for _, c := range cases {
				if err := analysis.Solve(c); err != nil {
					b.Fatal(err)
				}
			}
		}
	})
	b.Run("modes2", func(b *testing.B) {
		var frequency quantity.Frequency
		for b.Loop() {
			frequency = twoModes(b, analysis)[0].Frequency
		}
		b.ReportMetric(float64(frequency), "Hz")
	})
	b.Run("statics10", func(b *testing.B) {
		for b.Loop() {
			greatestFibres(b, f, cases)
		}
	})
}

func analysed(b *testing.B, m frame.Model) (*frame.Frame, *frame.Analysis) {
	f, err := frame.New(m)
	if err != nil {
		b.Fatal(err)
	}
	analysis, err := f.Analyse(frame.Options{})
	if err != nil {
		b.Fatal(err)
	}
	return f, analysis
}

func twoModes(b *testing.B, analysis *frame.Analysis) []frame.Mode {
	modes, err := analysis.Modes(2)
	if err != nil {
		b.Fatal(err)
	}
	return modes
}

func greatestFibres(b *testing.B, f *frame.Frame, cases []frame.LoadCase) {
	for _, c := range cases {
		statics, err := f.Statics(c)
		if err != nil {
			b.Fatal(err)
		}
		for member := range f.Members() {
			if peak := statics.GreatestFibreOn(member, 0, f.Length(member)); peak.Stress == 0 {
				b.Fatalf("member %d bears nothing", member)
			}
		}
	}
}
