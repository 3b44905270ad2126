package work

import (
	"encoding/json"
	"fmt"
	"math"

	"boughline/engine/space"
	"boughline/quantity"
)

type clearanceInputs struct {
	Gravity    float64      `json:"g"`
	Ground     [][2]float64 `json:"ground_x_y"`
	HangX      float64      `json:"hang_x"`
	HangHeight float64      `json:"hang_height_above_ground_at_x0"`
	Line       float64      `json:"line_length_L_to_seat"`
	FootReach  float64      `json:"foot_extension_f"`
	FootOffset float64      `json:"foot_offset_perpendicular_p"`
	SeatDrop   float64      `json:"seat_drop_below_rider_centre_c"`
	Amplitude  float64      `json:"amplitude_deg"`
}

type clearanceResults struct {
	HangY           float64       `json:"hang_y"`
	SeatLeast       float64       `json:"seat_least_clearance_m"`
	SeatAngle       float64       `json:"seat_q_at_least_rad"`
	SeatX           float64       `json:"seat_x_at_least_m"`
	FootLeast       float64       `json:"foot_least_clearance_m"`
	FootAngle       float64       `json:"foot_q_at_least_rad"`
	FootX           float64       `json:"foot_x_at_least_m"`
	FootMeetsGround bool          `json:"foot_meets_ground"`
	Fall            float64       `json:"greatest_fall_m"`
	FallAngle       float64       `json:"fall_q_rad"`
	FallAngles      []float64     `json:"fall_q_all_rad"`
	FallX           float64       `json:"fall_x_m"`
	SeatAtRest      float64       `json:"seat_height_at_rest_m"`
	SpeedAtPlumb    float64       `json:"speed_at_q0_m_s"`
	LetGo           letGoLandings `json:"let_go"`
}

type letGoLandings struct {
	Right letGoLanding `json:"right"`
	Left  letGoLanding `json:"left"`
}

type letGoLanding struct {
	X            float64 `json:"landing_x_m"`
	Angle        float64 `json:"q_rad"`
	AngleDegrees float64 `json:"q_deg"`
	ReleaseSpeed float64 `json:"release_speed_m_s"`
	FlightTime   float64 `json:"flight_time_s"`
	ImpactSpeed  float64 `json:"impact_speed_m_s"`
	NormalSpeed  float64 `json:"impact_speed_normal_to_ground_m_s"`
	Y            float64 `json:"landing_y_m"`
	Apex         float64 `json:"apex_above_landing_m"`
}

func clearance(inputs json.RawMessage) (any, error) {
	in, err := read[clearanceInputs](inputs)
	if err != nil {
		return nil, err
	}
	if in.HangX != 0 {
		return nil, fmt.Errorf("inputs.hang_x: %v; expected 0, the profile counts from the plumb line", in.HangX)
	}
	if in.Gravity <= 0 {
		return nil, fmt.Errorf("inputs.g: %v; expected an acceleration above 0 in m/s2", in.Gravity)
	}
	ground, swing := in.model()
	return in.results(ground, swing)
}

func (in clearanceInputs) model() (space.Ground, space.Swing) {
	var ground space.Ground
	for _, point := range in.Ground {
		ground.Stations = append(ground.Stations, space.Point{
			Along: quantity.Length(point[0]), Height: quantity.Length(point[1]),
		})
	}
	return ground, space.Swing{
		HangHeight: quantity.Length(in.HangHeight),
		Line:       quantity.Length(in.Line),
		SeatDrop:   quantity.Length(in.SeatDrop),
		FootReach:  quantity.Length(in.FootReach),
		FootOffset: quantity.Length(in.FootOffset),
		Amplitude:  quantity.Angle(in.Amplitude) * quantity.Degree,
	}
}

func (in clearanceInputs) results(ground space.Ground, swing space.Swing) (any, error) {
	room, err := space.Clearances(ground, swing)
	if err != nil {
		return nil, err
	}
	fall, err := space.Fall(ground, swing)
	if err != nil {
		return nil, err
	}
	landings, err := space.LetGo(ground, swing)
	if err != nil {
		return nil, err
	}
	angles := make([]float64, len(fall.Angles))
	for i, q := range fall.Angles {
		angles[i] = float64(q)
	}
	return clearanceResults{
		HangY:           float64(ground.At(0) + swing.HangHeight),
		SeatLeast:       float64(room.Seat.Clearance),
		SeatAngle:       float64(room.Seat.Angle),
		SeatX:           float64(room.Seat.Along),
		FootLeast:       float64(room.Foot.Clearance),
		FootAngle:       float64(room.Foot.Angle),
		FootX:           float64(room.Foot.Along),
		FootMeetsGround: room.FootMeetsGround(),
		Fall:            float64(fall.Height),
		FallAngle:       float64(fall.Angle),
		FallAngles:      angles,
		FallX:           float64(fall.Along),
		SeatAtRest:      float64(swing.HangHeight - swing.Line),
		SpeedAtPlumb:    float64(swing.SeatSpeed(0)) * in.speedScale(),
		LetGo:           letGoLandings{in.landing(landings.Positive), in.landing(landings.Negative)},
	}, nil
}

// speedScale turns speeds in standard gravity into those in the gravity of
// the inputs. Distances do not depend on gravity.
func (in clearanceInputs) speedScale() float64 {
	return math.Sqrt(in.Gravity / quantity.StandardGravity)
}

func (in clearanceInputs) landing(l space.Landing) letGoLanding {
	scale := in.speedScale()
	return letGoLanding{
		X:            float64(l.Along),
		Angle:        float64(l.Release),
		AngleDegrees: l.Release.Degrees(),
		ReleaseSpeed: float64(l.ReleaseSpeed) * scale,
		FlightTime:   float64(l.Time) / scale,
		ImpactSpeed:  float64(l.ImpactSpeed) * scale,
		NormalSpeed:  float64(l.NormalSpeed) * scale,
		Y:            float64(l.Height),
		Apex:         float64(l.Apex),
	}
}
