package wind

import (
	"fmt"
	"math"

	"boughline/quantity"
)

const knot quantity.Speed = 1852.0 / 3600 // m/s

// beaufortKnots holds the lowest and highest whole knots of forces 3 to 10
// (United States National Weather Service, Beaufort wind scale page).
var beaufortKnots = [...][2]quantity.Speed{
	{7, 10}, {11, 16}, {17, 21}, {22, 27}, {28, 33}, {34, 40}, {41, 47}, {48, 55},
}

const lowestForce = 3 // of beaufortKnots

// BeaufortMean returns the mean speed of a Beaufort force: 0.836 B^1.5 m/s, a
// 10-minute mean at 10 m in the open.
// Errors: a force outside 0 to 12.
// Source: World Meteorological Organization's equivalent (from memory).
func BeaufortMean(force int) (quantity.Speed, error) {
	if force < 0 || force > 12 {
		return 0, fmt.Errorf("Beaufort force %d; expected 0 to 12", force)
	}
	return quantity.Speed(0.836 * math.Pow(float64(force), 1.5)), nil
}

// BeaufortRange returns the range of mean speeds of a Beaufort force, in whole
// knots turned to m/s; neighbouring ranges leave a gap of one knot.
// Errors: a force outside 3 to 10, the rows that were read.
// Source: United States National Weather Service, Beaufort wind scale page.
func BeaufortRange(force int) (low, high quantity.Speed, err error) {
	row := force - lowestForce
	if row < 0 || row >= len(beaufortKnots) {
		return 0, 0, fmt.Errorf("Beaufort force %d; expected %d to %d", force, lowestForce, lowestForce+len(beaufortKnots)-1)
	}
	return beaufortKnots[row][0] * knot, beaufortKnots[row][1] * knot, nil
}
