package assess

import (
	"math"

	"boughline/engine/space"
	"boughline/quantity"
)

// SpaceFigure is the swing in the upright plane of its line. Along counts from
// the plumb line towards the swing azimuth, Height from the ground there.
type SpaceFigure struct {
	Ground    []space.Point // as measured; empty where it was not
	Surface   string
	Hang      quantity.Length // height of the limb's underside
	Measured  bool            // whether that was measured
	Line      quantity.Length
	FootReach quantity.Length // of the feet below the seat
	// Declared is the amplitude asked for; Full is that at which space must
	// hold for a hang without limits.
	Declared, Full quantity.Angle
	// Seat and Foot are the least clearances over the swing at the full angle,
	// limb and line under load, at the unfavourable 5 % values.
	Seat, Foot           space.Nearest
	SeatLeast, FootLeast quantity.Length
	// Fall is the greatest height of fall and FallMost what it may be.
	Fall, FallMost quantity.Length
	FallAt         space.Highest
	// Ahead and Behind are the let-go flights that land farthest on the drawn
	// profile, on the side of the swing azimuth and against it.
	Ahead, Behind Flight
	// LandsAhead and LandsBehind are how far from the plumb line such flights
	// land, those off the line counted too.
	LandsAhead, LandsBehind quantity.Length
	// ClearAhead and ClearBehind are kept clear of people, Standard is what
	// EN 1176-2 asks for by itself.
	ClearAhead, ClearBehind, Standard quantity.Length
}

// Flight is the path of a rider who lets go at the worst moment.
type Flight struct {
	Release quantity.Angle
	Landing quantity.Length // from the plumb line, signed
	Path    []space.Point
}

// Space works out clearances, fall and let-go at the use asked for. The error
// says which figure of ground or swing is out of range.
func (h HangFigure) Space() (SpaceFigure, error) {
	r := h.rig
	u := r.clearTrial(r.asked)
	height, measured := r.hangHeight()
	f := SpaceFigure{
		Hang: height.Value, Measured: measured, Line: u.line, FootReach: r.riders.reach, Declared: r.asked.amplitude, Full: u.amplitude,
		SeatLeast: quantity.Length(r.rules.seatClearance.Value), FootLeast: quantity.Length(r.rules.footClearance.Value),
		FallMost: quantity.Length(r.rules.fallLimit.Value),
	}
	if r.lie != nil {
		f.Ground, f.Surface = r.lie.ground(0).Stations, r.lie.surface
	}
	if err := r.leastRoom(&f, u); err != nil {
		return f, err
	}
	if err := r.falls(&f, u); err != nil {
		return f, err
	}
	return f, r.letGo(&f, u)
}

// groundsOr are the profiles of the hang, or level ground where it was not
// surveyed.
func (r *rig) groundsOr(doubt quantity.Length) []space.Ground {
	if r.lie == nil {
		return []space.Ground{{Stations: []space.Point{{}}}}
	}
	return r.lie.grounds(doubt)
}

func (r *rig) leastRoom(f *SpaceFigure, u trial) error {
	for i, ground := range r.groundsOr(1) {
		near, err := space.Clearances(ground, r.swingAt(u, r.lowHeight(unfavourable), true))
		if err != nil {
			return err
		}
		if i == 0 || near.Seat.Clearance < f.Seat.Clearance {
			f.Seat = near.Seat
		}
		if i == 0 || near.Foot.Clearance < f.Foot.Clearance {
			f.Foot = near.Foot
		}
	}
	return nil
}

func (r *rig) falls(f *SpaceFigure, u trial) error {
	s := r.swingAt(u, r.highHeight(unfavourable), false)
	for _, ground := range r.groundsOr(-1) {
		high, err := space.Fall(ground, s)
		if err != nil {
			return err
		}
		if high.Height > f.FallAt.Height {
			f.FallAt = high
		}
	}
	f.Fall = f.FallAt.Height
	if r.lie != nil {
		f.Fall = quantity.Length(r.flightFall(s, float64(f.Fall)))
	}
	return nil
}

func (r *rig) letGo(f *SpaceFigure, u trial) error {
	s, ground := r.swingAt(u, r.highHeight(unfavourable), false), r.groundsOr(0)[0]
	flights, err := space.LetGo(ground, s)
	if err != nil {
		return err
	}
	top := float64(ground.At(0) + s.HangHeight)
	f.Ahead, f.Behind = flightOf(flights.Positive, s, top), flightOf(flights.Negative, s, top)
	lengths := r.clearLengths(u)
	f.LandsAhead, f.LandsBehind, f.Standard = lengths.letGoAhead, lengths.letGoBehind, lengths.standard
	f.ClearAhead, f.ClearBehind = r.keptClear(u)
	return nil
}

// flightOf follows a let-go flight from the seat to the ground.
func flightOf(l space.Landing, s space.Swing, top float64) Flight {
	const steps = 24
	f := Flight{Release: l.Release, Landing: l.Along}
	sin, cos := math.Sincos(float64(l.Release))
	side := math.Copysign(1, float64(l.Release))
	v, line := float64(l.ReleaseSpeed)*side, float64(s.Line)
	for i := range steps + 1 {
		t := float64(l.Time) * float64(i) / steps
		f.Path = append(f.Path, space.Point{
			Along:  quantity.Length(line*sin + v*cos*t),
			Height: quantity.Length(top - line*cos + v*sin*t - quantity.StandardGravity*t*t/2),
		})
	}
	return f
}

// People returns the plan of everywhere that people are while the swing is in
// use, in the frame of the tree: the ground to be kept clear, the waiting
// places and the ways in.
func (h HangFigure) People() space.People { return h.rig.people(h.rig.clearTrial(h.rig.asked)) }
