package web

import (
	"math"

	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
)

// evenFields ask for ground without bumps in one go.
func (e *entry) evenFields() []view.Field {
	return []view.Field{
		chosenField[quantity.Length](e, "even_out", e.units.long(), nil),
		chosenField[quantity.Angle](e, "even_falls", degrees, nil),
		chosenField[quantity.Angle](e, "even_towards", degrees, nil),
	}
}

// evenSpots are six heights about the stem on ground that falls evenly, none where
// it is not asked for. Level ground needs no direction.
func evenSpots(e *entry) []survey.SpotHeight {
	out := chosen[quantity.Length](e, "even_out", e.units.long(), nil)
	falls, towards := chosen[quantity.Angle](e, "even_falls", degrees, nil), chosen[quantity.Angle](e, "even_towards", degrees, nil)
	if out == nil {
		if falls != nil || towards != nil {
			need(e, "even_out", out)
		}
		return nil
	}
	slope, direction := need(e, "even_falls", falls).Value, quantity.Angle(0)
	if slope != 0 {
		direction = need(e, "even_towards", towards).Value
	}
	var spots []survey.SpotHeight
	for azimuth := quantity.Angle(0); azimuth < 360; azimuth += 60 {
		at := azimuth * quantity.Degree
		height := -float64(out.Value) * math.Tan(float64(slope)) * (at - direction).Cos()
		spots = append(spots, survey.SpotHeight{
			Azimuth: survey.ChosenAngle{Value: at}, Distance: *out,
			Height: survey.MeasuredLength{Value: quantity.Length(math.Round(height*100) / 100), How: quantity.Clinometer},
		})
	}
	return spots
}
