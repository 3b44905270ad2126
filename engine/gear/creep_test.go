package gear

import (
	"math"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

// A block on an incline slides where tan i is above the friction: any textbook.
// A level limb swung along itself leans as far as the line does, one swung
// square to itself not at all.
func TestFrictionToStay(t *testing.T) {
	down, north := quantity.Vec3{Z: -3}, quantity.Heading(0, 0)
	incline := quantity.Heading(90*quantity.Degree, quantity.Angle(math.Atan(0.2)))
	near(t, "incline", FrictionToStay(incline, down), 0.2, 1e-12)
	near(t, "level", FrictionToStay(quantity.Heading(1, 0), down), 0, 1e-12)
	level := quantity.Heading(90*quantity.Degree, 0)
	near(t, "swung along", FrictionInSwing(level, level, 40*quantity.Degree), math.Tan(40*math.Pi/180), 1e-12)
	near(t, "swung square", FrictionInSwing(level, north, 40*quantity.Degree), 0, 1e-12)
	// Square to an inclined limb the swing eases the anchor: rest governs.
	near(t, "rest governs", FrictionInSwing(incline, north, 60*quantity.Degree), 0.2, 1e-12)
	// Along an incline of 10 degrees, 30 to each side: it leans 40 degrees by hand.
	slope := quantity.Heading(0, 10*quantity.Degree)
	near(t, "along the incline", FrictionInSwing(slope, north, 30*quantity.Degree), math.Tan(40*math.Pi/180), 1e-12)
}

// The closed form is the greatest over the swing, tried step by step.
func TestFrictionInSwingIsTheGreatest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		axis := quantity.Heading(quantity.Angle(rapid.Float64Range(0, 6.28).Draw(t, "azimuth")), quantity.Angle(rapid.Float64Range(-1.2, 1.2).Draw(t, "inclination")))
		heading := quantity.Heading(quantity.Angle(rapid.Float64Range(0, 6.28).Draw(t, "heading")), 0)
		amplitude := rapid.Float64Range(0, 1.5).Draw(t, "amplitude")
		greatest := 0.0
		const steps = 400
		for i := range steps + 1 {
			q := amplitude * (2*float64(i)/steps - 1)
			pull := heading.Scale(math.Sin(q)).Add(quantity.Vec3{Z: -math.Cos(q)})
			greatest = math.Max(greatest, FrictionToStay(axis, pull))
		}
		got := FrictionInSwing(axis, heading, quantity.Angle(amplitude))
		lean := func(friction float64) float64 { return math.Atan(friction) } // tan is steep near a right angle
		if lean(got) < lean(greatest)-1e-9 || lean(got) > lean(greatest)+1.5/steps {
			t.Fatalf("closed form %v, stepped %v", got, greatest)
		}
	})
}
