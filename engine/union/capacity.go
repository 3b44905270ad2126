package union

import (
	"fmt"

	"boughline/quantity"
)

// Union is the joint of a limb with its parent. SectionModulus is that of the
// limb just beyond the collar, inside the bark, for the direction of bending;
// Strength the design strength of the member. IncludedFactor applies where bark
// is included (0.76: Slater & Ennos, 2015, hazel, 24 % lower).
type Union struct {
	SectionModulus quantity.Volume
	Strength       quantity.Stress
	Aspect         float64
	Form           FormCurve
	BarkIncluded   bool
	IncludedFactor float64
}

// Capacity is the bending moment at the union that it resists, and the factors
// in it.
type Capacity struct {
	Moment     quantity.Moment
	FormFactor float64
	BarkFactor float64 // 1 without included bark
}

// Capacity returns W x strength x form factor x factor of included bark. The
// figure says nothing of decay or cracks, and a union with included bark is not
// to be loaded whatever it is (common practice, no published source).
// Errors: a modulus or strength that is not positive, factors out of range.
// Source: proposal from the tests named at FormCurve and Union, with breaking
// stress on the section inside the bark as in Kane (2007), Arboriculture & Urban
// Forestry 33:283.
func (u Union) Capacity() (Capacity, error) {
	if !(u.SectionModulus > 0) || !(u.Strength > 0) {
		return Capacity{}, fmt.Errorf("union: section modulus %v m3 and strength %v Pa; expected both more than 0",
			float64(u.SectionModulus), float64(u.Strength))
	}
	form, err := u.Form.Factor(u.Aspect)
	if err != nil {
		return Capacity{}, err
	}
	bark := 1.0
	if u.BarkIncluded {
		bark = u.IncludedFactor
	}
	if !(bark > 0 && bark <= 1) {
		return Capacity{}, fmt.Errorf("union: factor of included bark %v; expected more than 0, at most 1", bark)
	}
	moment := float64(u.SectionModulus) * float64(u.Strength) * form * bark
	return Capacity{Moment: quantity.Moment(moment), FormFactor: form, BarkFactor: bark}, nil
}
