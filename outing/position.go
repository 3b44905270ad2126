package outing

import (
	"fmt"
	"math"
)

// Position writes degrees and decimal minutes, as a position is read out over a radio or a
// telephone: 52° 43.860' N, 2° 54.840' W. A thousandth of a minute of latitude
// is 1.9 m. Latitude is in -90 to 90 and longitude in -180 to 180 decimal degrees.
func Position(latitude, longitude float64) string {
	return minutes(latitude, "N", "S") + ", " + minutes(longitude, "E", "W")
}

func minutes(degrees float64, ahead, behind string) string {
	side := ahead
	if degrees < 0 {
		side = behind
	}
	thousandths := math.Round(math.Abs(degrees) * 60000)
	whole := math.Floor(thousandths / 60000)
	return fmt.Sprintf("%.0f° %06.3f' %s", whole, (thousandths-60000*whole)/1000, side)
}
