package swing

import (
	"math"
	"testing"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// coupled is a swing on a limb whose up-and-down and sideways give are coupled
// by the stiffness xy; X, Y, angle, then their rates.
type coupled struct {
	yielding
	xy float64
}

func (c *coupled) forces(y []float64) (h, v float64) {
	return c.x.force(y[0], y[3]) + c.xy*y[1], c.y.force(y[1], y[4]) + c.xy*y[0]
}

func (c *coupled) Rates(_ float64, y, rates []float64) {
	sin, cos := math.Sincos(y[2])
	h, v := c.forces(y)
	pull := c.mass * (c.gravity*cos + c.length*y[5]*y[5] + (h*sin-v*cos)/c.limb) / (1 + c.mass/c.limb)
	ax, ay := (pull*sin-h)/c.limb, (-pull*cos-v)/c.limb
	copy(rates, []float64{y[3], y[4], y[5], ax, ay, -(c.gravity*sin + ax*cos + ay*sin) / c.length})
}

// greatest follows two swings from the coupled limb at rest under the pull of
// release.
func (c *coupled) greatest(t *testing.T, amplitude quantity.Angle, side float64) float64 {
	sin, cos := math.Sincos(side * float64(amplitude))
	pull := c.mass * c.gravity * cos
	whole := c.x.stiffness*c.y.stiffness - c.xy*c.xy
	y := []float64{pull * (c.y.stiffness*sin + c.xy*cos) / whole, -pull * (c.x.stiffness*cos + c.xy*sin) / whole, side * float64(amplitude), 0, 0, 0}
	in, err := numeric.NewIntegrator(c, 0, y, precision)
	if err != nil {
		t.Fatal(err)
	}
	period, err := Period(quantity.Length(c.length), amplitude)
	if err != nil {
		t.Fatal(err)
	}
	most, moments := 0.0, 4000
	for i := range moments {
		if _, err := in.Run(2 * float64(period) * float64(i+1) / float64(moments)); err != nil {
			t.Fatal(err)
		}
		h, v := c.forces(in.State())
		most = math.Max(most, math.Hypot(h, v))
	}
	return most
}

// What dropping the coupling costs, against the coupled equations, on a limb
// that rises and a swing off the square to it.
func TestDroppedCoupling(t *testing.T) {
	for _, row := range []struct{ rise, off, allowed float64 }{{0, 20, 1e-4}, {20, 0, 1e-4}, {20, 15, 0.01}, {35, 30, 0.02}} {
		const mass, length, moving, bending, amplitude = 74.6, 4.2, 150, 22000, 80 * quantity.Degree
		along := quantity.Heading(0, quantity.Angle(row.rise)*quantity.Degree)
		heading := (90 + quantity.Angle(row.off)) * quantity.Degree
		n := quantity.Heading(heading, 0)
		// Flexibility (1 - a at)/k across the limb, a hundredth of it along.
		flexible := func(p, q quantity.Vec3) float64 { return (p.Dot(q) - 0.99*p.Dot(along)*q.Dot(along)) / bending }
		limb := LimbAtHang{MovingMass: moving, DampingRatio: 0.05}
		axes := []quantity.Vec3{{X: 1}, {Y: 1}, {Z: 1}}
		for i, p := range axes {
			for j, q := range axes { // the inverse: k (1 + 99 a at)
				limb.StiffnessNewtonPerMetre[i][j] = bending * (p.Dot(q) + 99*p.Dot(along)*q.Dot(along))
			}
		}
		z := axes[2]
		nn, nz, zz := flexible(n, n), flexible(n, z), flexible(z, z)
		whole := nn*zz - nz*nz
		c := &coupled{yielding{length: length, mass: mass, limb: moving, gravity: quantity.StandardGravity, bothWays: true,
			x: spring{zz / whole, 2 * 0.05 * math.Sqrt(moving/nn)}, y: spring{nn / whole, 2 * 0.05 * math.Sqrt(moving/zz)}}, -nz / whole}
		given, err := GiveWay(limb, mass, length, amplitude, heading)
		if err != nil {
			t.Fatal(err)
		}
		rigid := float64(PeakPull(mass, amplitude))
		there, back := c.greatest(t, amplitude, 1)/rigid, c.greatest(t, amplitude, -1)/rigid
		if short := math.Max(there, back) - float64(given.Factor); math.Abs(short) > row.allowed {
			t.Errorf("rise %v deg, %v deg off square: factor %v, coupled %v and %v", row.rise, row.off, given.Factor, there, back)
		}
	}
}
