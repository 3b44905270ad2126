package assess

import (
	"math"

	"boughline/engine/swing"
	"boughline/quantity"

	"gonum.org/v1/gonum/interp"
)

// randomCase is one draw of the inputs as the margins take it.
type randomCase struct {
	x      []float64
	places *randomPlaces
	mass   quantity.Mass // riders, seat and line
	// amplitude of the swing, and factor by which the limb that gives way raises
	// its pull.
	amplitude quantity.Angle
	dynamic   float64
	arm       float64 // 0 at the near place of the hang, 1 at the far one
	self      float64 // own weight over that as worked out
	strength  float64 // of clear wood with the error of theory, Pa
	limbWind  float64 // force of the gust on the limb, N
}

// caseOf reads a draw.
func (h *randomHang) caseOf(x []float64) randomCase {
	p := &h.places
	c := randomCase{
		x: x, places: p, mass: quantity.Mass(x[p.mass]) + h.riders.seat, amplitude: quantity.Angle(x[p.amplitude]),
		self: x[p.ownMass], strength: x[p.clear] * x[p.model],
	}
	c.dynamic = h.dynamic.at(float64(c.mass))
	if p.arm != none {
		near, far := h.rig.armEnds()
		c.arm = (math.Max(0, x[p.arm]) - near) / (far - near)
	}
	if p.gust != none {
		c.limbWind = x[p.drag] * h.onLimb.at(x[p.gust])
	}
	return c
}

// armEnds are the places along the limb of the near and the far unit cases.
func (r *rig) armEnds() (near, far float64) {
	end := r.on.length()
	return math.Min(end, float64(r.arm.Low())), math.Min(end, float64(r.arm.High()))
}

// pull is the force on the hang point at a share of the amplitude: down, and
// along the swing.
func (c *randomCase) pull(share, factor float64) (down, ahead float64) {
	if share == 0 {
		return factor * float64(swing.PeakPull(c.mass, c.amplitude)), 0
	}
	at := c.amplitude * quantity.Angle(share)
	force := factor * float64(swing.Pull(c.mass, c.amplitude, at))
	return force * at.Cos(), force * at.Sin()
}

// curve is a function of one number read from equal steps by monotone cubic
// pieces, smooth as a search for a design point needs it, and level beyond its ends.
type curve struct{ pieces *interp.FritschButland }

// curveOf tabulates f between two numbers.
func curveOf(f func(float64) float64, from, to float64, steps int) (curve, error) {
	var at, values []float64
	for i := range steps + 1 {
		at = append(at, from+float64(i)*(to-from)/float64(steps))
		values = append(values, f(at[i]))
	}
	c := curve{new(interp.FritschButland)}
	return c, c.pieces.Fit(at, values)
}

func (c curve) at(x float64) float64 { return c.pieces.Predict(x) }

// dynamicCurve is the dynamic factor by mass, at the masses at which it was
// worked out.
type dynamicCurve struct{ curve }

// dynamicCurveOf takes all masses that riders can have.
func (r *rig) dynamicCurveOf(line quantity.Length) (dynamicCurve, error) {
	const lightest, heaviest = -2, 4 // powers of massRatio: 2 kg to 1.6 t
	c, err := curveOf(func(step float64) float64 { return r.factorAt(int(math.Round(step)), line) }, lightest, heaviest, heaviest-lightest)
	return dynamicCurve{c}, err
}

func (d dynamicCurve) at(mass float64) float64 {
	return d.curve.at(math.Log(mass/float64(firstMass)) / math.Log(massRatio))
}
