package assess

import (
	"cmp"
	"math"
	"slices"

	"boughline/quantity"
)

// limbClearanceChecker compares the room between the swing and all wood near
// it, of this tree and its neighbours: seat and body, the line, and the ground
// where let-go flights come down. The stem of the tree has a check of its own.
func (r *rig) limbClearanceChecker() (checker, bool) {
	if r.around == nil {
		r.around = r.woodAround()
	}
	if len(r.around) == 0 {
		return checker{}, false
	}
	return checker{code: LimbInPath, unit: "m", cure: bySpace, try: r.limbClearance, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u), factTerm("c_b", "reach of arms and legs about the seat", r.rules.bodyOutline),
			Term{Symbol: "c_l", Name: "room about the line (house)", Value: lineRoom, Unit: "m"})
	}}, true
}

// limbClearance takes the wood in turn, the nearest first; what can't come
// nearer than what was found already is passed over.
func (r *rig) limbClearance(u trial, side scenario) figure {
	body := r.rules.bodyOutline.Value
	worst := figure{demand: body, capacity: greatestMargin, where: Where{Case: string(LimbInPath)}}
	if r.hasty {
		worst.capacity = body
	}
	top := r.lineTop(side)
	highest := top.Z - float64(u.line)*u.amplitude.Cos() // of the seat, at either end of its arc
	reach := float64(u.line)*(1+math.Tan(float64(angle(r.rules.sidewaysLaunch)))) + top.Sub(r.hangPoint()).Norm()
	var paths *seatPaths
	for i := range r.around {
		w := &r.around[i]
		near := w.fromHang - reach // no point of the swing comes nearer
		byBody := w.figure(body, math.Max(near, w.lowest-highest)).margin() < worst.margin()
		byLine := w.figure(lineRoom, near).margin() < worst.margin()
		if (byBody || byLine) && paths == nil {
			paths = r.seatPaths(u, side)
		}
		if byBody {
			worst = worse(worst, w.figure(body, w.roomOf(paths, worst.margin()*body)))
		}
		if byLine {
			worst = worse(worst, w.figure(lineRoom, w.roomOfLine(top, paths[0][:], worst.margin()*lineRoom)))
		}
		if w.stands {
			worst = worse(worst, w.figure(body, float64(r.reach(u).Polygon(0, 0).Distance(w.points[0]))-w.radii[0]))
		}
	}
	return worst
}

// lineRoom is the room that the line needs to any wood, m (house).
const lineRoom = 0.3

func (w *timber) figure(demand, room float64) figure {
	return figure{demand, math.Min(math.Max(0, room), greatestMargin), Where{Part: w.name, Case: string(LimbInPath)}}
}

// worse returns the figure with the lesser margin.
func worse(a, b figure) figure {
	if b.margin() < a.margin() {
		return b
	}
	return a
}

// timber is the axis of a member, or a stretch of it, with its thickness at
// each corner.
type timber struct {
	name   string
	points []quantity.Vec3
	radii  []float64
	stands bool // on the ground: a stem of a neighbour
	// fromHang is the distance of its face from the hang point.
	fromHang float64
	lowest   float64 // height of its underside
}

// woodAround lists the wood near the swing, the nearest first. Of the hang's
// own limb the stretch at the hang point is left out, and its stem has a check
// of its own.
func (r *rig) woodAround() []timber {
	list := []timber{}
	hang := r.hangPoint()
	near := 3*float64(r.asked.line) + 4
	add := func(w timber, offset quantity.Vec3) {
		for i := range w.points {
			w.points[i] = w.points[i].Add(offset)
			w.lowest = math.Min(w.lowest, w.points[i].Z-w.radii[i])
		}
		if w.fromHang = w.room([]quantity.Vec3{hang, hang}, math.Inf(1)); w.fromHang < near {
			list = append(list, w)
		}
	}
	for _, s := range r.order {
		switch {
		case s == r.on:
			at := float64(r.arm.Value)
			if at > besideHang {
				add(s.stretch(0, at-besideHang), quantity.Vec3{})
			}
			if at+besideHang < s.length() {
				add(s.stretch(at+besideHang, s.length()), quantity.Vec3{})
			}
		case s != r.on.stem():
			add(s.stretch(0, s.length()), quantity.Vec3{})
		}
	}
	for _, n := range r.neighbours() {
		for _, s := range n.order {
			w := s.stretch(0, s.length())
			w.name += " of " + nameOf(n.s)
			w.stands = s.parent == nil
			add(w, n.offset)
		}
	}
	slices.SortStableFunc(list, func(a, b timber) int { return cmp.Compare(a.fromHang, b.fromHang) })
	return list
}

// besideHang is the stretch of the limb on either side of the hang point that
// the line leaves from, m.
const besideHang = 1.0

// stretch is a part of a member with its corners.
func (s *shape) stretch(from, to float64) timber {
	w := timber{name: s.member.ID, lowest: math.Inf(1)}
	add := func(at float64) {
		w.points = append(w.points, s.position(at))
		w.radii = append(w.radii, radius(s, at))
	}
	add(from)
	for _, at := range s.along {
		if at > from && at < to {
			add(at)
		}
	}
	add(to)
	return w
}

// seatPaths are the arc of the seat as it is meant to go, and the outermost
// ones to either side that a launch off the line takes it. With the chords 5
// degrees wide, the arc lies within 5 mm of them for a line of 5 m.
type seatPaths [3][2*seatSteps + 1]quantity.Vec3

// seatSteps is the number of chords to each side.
const seatSteps = 16

func (r *rig) seatPaths(u trial, side scenario) *seatPaths {
	hang, line := r.lineTop(side), float64(u.line)
	aside := quantity.Heading(r.azimuth+90*quantity.Degree, 0)
	half := line * u.amplitude.Sin()
	off, drift := math.Tan(float64(angle(r.rules.sidewaysLaunch))), float64(r.drift(u))
	var paths seatPaths
	for i := range paths[0] {
		q := u.amplitude * quantity.Angle(i-seatSteps) / seatSteps
		along := line * q.Sin()
		seat := hang.Add(r.heading.Scale(along)).Add(quantity.Vec3{Z: -line * q.Cos()})
		wide := math.Max(off*math.Abs(along), drift*math.Sqrt(math.Max(0, 1-along*along/(half*half))))
		paths[0][i] = seat
		paths[1][i] = seat.Add(aside.Scale(wide))
		paths[2][i] = seat.Add(aside.Scale(-wide))
	}
	return &paths
}

// lineTop is where the line leaves the underside of the limb.
func (r *rig) lineTop(side scenario) quantity.Vec3 {
	top := r.on.position(float64(r.armNear(side)))
	top.Z -= float64(r.on.diameter(float64(r.arm.Value)).upright.Value) / 2
	return top
}

// roomOf is the least distance between any of the paths and the face of the
// wood, or enough where all of it is farther off.
func (w *timber) roomOf(paths *seatPaths, enough float64) float64 {
	for i := range paths {
		enough = w.room(paths[i][:], enough)
	}
	return enough
}

// room is the least distance between a path and the face of the wood, or enough
// where that is less. What can't come nearer within the way along the path since
// the last look is passed over.
func (w *timber) room(path []quantity.Vec3, enough float64) float64 {
	for i := 1; i < len(w.points); i++ {
		thickest := math.Max(w.radii[i-1], w.radii[i])
		for j := 1; j < len(path); {
			distance := segmentDistance(path[j-1], path[j], w.points[i-1], w.points[i]) - thickest
			enough = math.Min(enough, distance)
			for j++; j < len(path); j++ {
				if distance -= path[j].Sub(path[j-1]).Norm(); distance < enough {
					break
				}
			}
		}
	}
	return enough
}

// roomOfLine is the least distance between the line at every angle, from a
// little below the limb down to the seat, and the face of the wood, or enough
// where that is less. No point of the line moves farther than the seat.
func (w *timber) roomOfLine(hang quantity.Vec3, path []quantity.Vec3, enough float64) float64 {
	for j := 0; j < len(path); {
		down := path[j].Sub(hang)
		from := hang.Add(down.Scale(math.Min(1, belowHang/down.Norm())))
		distance := w.room([]quantity.Vec3{from, path[j]}, math.Inf(1))
		enough = math.Min(enough, distance)
		for j++; j < len(path); j++ {
			if distance -= path[j].Sub(path[j-1]).Norm(); distance < enough {
				break
			}
		}
	}
	return enough
}

// belowHang is where the check of the line begins, m below the limb.
const belowHang = 0.5

// segmentDistance returns the least distance between two segments in space.
// Source: Ericson, Real-Time Collision Detection, 2005, section 5.1.9 (from memory).
func segmentDistance(p1, q1, p2, q2 quantity.Vec3) float64 {
	d1, d2, r := q1.Sub(p1), q2.Sub(p2), p1.Sub(p2)
	a, e, f := d1.Dot(d1), d2.Dot(d2), d2.Dot(r)
	s, t := 0.0, 0.0
	switch {
	case a == 0 && e == 0:
	case a == 0:
		t = unit(f / e)
	case e == 0:
		s = unit(-d1.Dot(r) / a)
	default:
		b, c := d1.Dot(d2), d1.Dot(r)
		if denominator := a*e - b*b; denominator > 0 {
			s = unit((b*f - c*e) / denominator)
		}
		t = (b*s + f) / e
		if t < 0 {
			t, s = 0, unit(-c/a)
		} else if t > 1 {
			t, s = 1, unit((b-c)/a)
		}
	}
	return p1.Add(d1.Scale(s)).Sub(p2.Add(d2.Scale(t))).Norm()
}

// unit holds a number between 0 and 1.
func unit(x float64) float64 { return math.Min(1, math.Max(0, x)) }
