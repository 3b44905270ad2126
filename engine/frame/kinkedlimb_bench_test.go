package frame_test

import (
	"testing"

	"boughline/engine/frame"
	"boughline/quantity"
)

// kinkedLimb is a limb of six segments with elliptical sections that taper, a
// lumped mass and two pulls: the reference case limb_10, so that bench/ can
// time the same limb elsewhere. It makes 41 elements.
func kinkedLimb() (frame.Model, frame.LoadCase, frame.Options) {
	limb := frame.Member{Name: "limb", Parent: -1}
	for _, s := range [][5]quantity.Length{
		{0, 0, 0, 0.322, 0.28}, {1.2, 0.1, 0.5, 0.2787, 0.24235}, {2.3, 0.5, 0.8, 0.23858, 0.20746}, {3.3, 0.4, 1.2, 0.20266, 0.17622},
		{4.1, -0.3, 1.3, 0.1672, 0.14539}, {5, -0.6, 1.1, 0.135, 0.11739}, {5.7, -0.2, 1.6, 0.1035, 0.09},
	} {
		limb.Stations = append(limb.Stations, frame.Station{
			Position: quantity.Vec3{X: float64(s[0]), Y: float64(s[1]), Z: float64(s[2])},
			Outer:    frame.Ellipse{Upright: s[3], Across: s[4]},
		})
	}
	model := frame.Model{
		Members:  []frame.Member{limb},
		Material: frame.Material{Young: 9e9, Shear: 0.6e9, Density: 900},
		Masses:   []frame.Mass{{At: frame.Place{Along: 5.6}, Mass: 12}},
	}
	c := frame.StandardWeight()
	c.Points = []frame.PointLoad{
		{At: frame.Place{Along: 4}, Force: quantity.Vec3{X: 120, Y: -250, Z: -1600}},
		{At: frame.Place{Along: 2.2}, Force: quantity.Vec3{Y: 150, Z: -300}},
	}
	return model, c, frame.Options{ElementLength: 0.18}
}

// tipOff is how far the computed tip is from that of the closed integral
// (SciPy quad of the curvatures, reference case limb_10), as a share.
func tipOff(a *frame.Analysis, tip frame.Place) float64 {
	want := quantity.Vec3{X: 0.01686139286083482, Y: -9.733802544497941e-05, Z: -0.07059622340869905}
	got, _ := a.Motion(tip)
	return got.Sub(want).Norm() / want.Norm()
}

// BenchmarkKinkedLimb assembles, factors and solves in a workspace that is
// there; with "model" everything from the stations on.
func BenchmarkKinkedLimb(b *testing.B) {
	model, c, options := kinkedLimb()
	f, err := frame.New(model)
	if err != nil {
		b.Fatal(err)
	}
	analysis, err := f.Analyse(options)
	if err != nil {
		b.Fatal(err)
	}
	report := func(b *testing.B, a *frame.Analysis) {
		b.ReportMetric(float64(a.Elements()), "elements")
		b.ReportMetric(1e9*tipOff(a, frame.Place{Along: f.Length(0)}), "ppb-error")
	}
	b.Run("assembleSolve", func(b *testing.B) {
		for b.Loop() {
			if err := analysis.Assemble(); err != nil {
				b.Fatal(err)
			}
			if err := analysis.Solve(c); err != nil {
				b.Fatal(err)
			}
		}
		report(b, analysis)
	})
	b.Run("model", func(b *testing.B) {
		for b.Loop() {
			f, err := frame.New(model)
			if err != nil {
				b.Fatal(err)
			}
			if analysis, err = f.Analyse(options); err != nil {
				b.Fatal(err)
			}
			if err := analysis.Solve(c); err != nil {
				b.Fatal(err)
			}
		}
		report(b, analysis)
	})
}
