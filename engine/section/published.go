package section

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// The published formulas for a round stem of diameter D with a round central
// hollow of diameter d. They are here to be compared with the section itself.
// All three estimate a share of the second moment, not of the strength, and
// two differed significantly from it on measured sections (Kane & Ryan 2004,
// abstract).

// WagenerLoss returns the share (d/D)^3 lost to a closed central hollow
// (Wagener 1963, conifers; formula as tabled and worked in the arboricultural
// literature, read second-hand). The error says when the hollow is not within
// the stem.
func WagenerLoss(hollow, stem quantity.Length) (quantity.Proportion, error) {
	k, err := hollowShare(hollow, stem)
	return quantity.Proportion(k * k * k), err
}

// CoderLoss returns the share (d/D)^4 lost to a closed central hollow (Coder
// 1989, read second-hand): the exact loss of second moment and of section
// modulus of a concentric round hollow.
func CoderLoss(hollow, stem quantity.Length) (quantity.Proportion, error) {
	k, err := hollowShare(hollow, stem)
	return quantity.Proportion(math.Pow(k, 4)), err
}

// SmileyFraedrichLoss returns the share [d^3 + r (D^3 - d^3)]/D^3 lost to an
// open cavity, r being the width of the opening over the circumference (Smiley
// & Fraedrich 1992, read second-hand).
func SmileyFraedrichLoss(hollow, stem quantity.Length, opening quantity.Proportion) (quantity.Proportion, error) {
	k, err := hollowShare(hollow, stem)
	if err == nil && !(opening >= 0 && opening <= 1) {
		err = fmt.Errorf("opening %v of the circumference; expected 0 to 1", float64(opening))
	}
	cube := quantity.Proportion(k * k * k)
	return cube + opening*(1-cube), err
}

func hollowShare(hollow, stem quantity.Length) (float64, error) {
	if !(stem > 0 && hollow >= 0 && hollow <= stem) {
		return 0, fmt.Errorf("hollow of %v m in a stem of %v m; expected it within the stem", float64(hollow), float64(stem))
	}
	return float64(hollow / stem), nil
}
