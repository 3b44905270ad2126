package assess

import (
	"math"

	"boughline/engine/frame"
	"boughline/quantity"
)

// section is the wood of a member inside its bark at one cut: as measured,
// and at the unfavourable (thin) and favourable (thick) 5 % value of diameter
// and bark.
type section struct {
	thin, mean, thick frame.Ellipse
	// cov is the variation of its section modulus: three times that of the
	// diameter inside the bark.
	cov float64
}

// leastWood keeps a section from vanishing where bark and error together
// exceed the diameter, m. Such a limb fails every check.
const leastWood = 1e-3

func (t *tree) section(s *shape, along float64) section {
	d := s.diameter(along)
	bark, _ := t.barkOf(s, (d.upright.Value+d.across.Value)/2)
	inside := func(diameter, bark quantity.Length) quantity.Length {
		return max(leastWood, diameter-2*bark)
	}
	ellipse := func(value func(quantity.Measured[quantity.Length]) quantity.Length, bark quantity.Length) frame.Ellipse {
		return frame.Ellipse{Upright: inside(value(d.upright), bark), Across: inside(value(d.across), bark)}
	}
	mean := ellipse(func(m quantity.Measured[quantity.Length]) quantity.Length { return m.Value }, bark.Value)
	sd := math.Hypot(float64(d.upright.Sd), 2*float64(bark.Sd))
	return section{
		thin:  ellipse(quantity.Measured[quantity.Length].Low, bark.High()),
		mean:  mean,
		thick: ellipse(quantity.Measured[quantity.Length].High, bark.Low()),
		cov:   3 * sd / float64(min(mean.Upright, mean.Across)),
	}
}
