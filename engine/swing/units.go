package swing

import "boughline/quantity"

// Acceleration is in m/s2. Where it stands for gravity, 0 means standard
// gravity.
type Acceleration float64

func (g Acceleration) orStandard() float64 {
	if g == 0 {
		return quantity.StandardGravity
	}
	return float64(g)
}

// Damping is a force per speed, in N s/m.
type Damping float64
