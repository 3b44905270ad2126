package assess

import (
	"math"
	"slices"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// shape is a member in the frame of its tree: origin at the centre of the
// stem at ground level, X east, Y north, Z up.
type shape struct {
	member *survey.Member
	path   string // in the document
	parent *shape
	rises  float64 // along the parent, m
	points []quantity.Vec3
	along  []float64 // arc length of each point, m
	girths []thickness
}

// thickness is the diameter over bark at a place along a member.
type thickness struct {
	at              float64 // m
	upright, across quantity.Measured[quantity.Length]
	path            string
}

// length returns the arc length of the member, m.
func (s *shape) length() float64 { return s.along[len(s.along)-1] }

// position returns the point on the axis at the arc length, which is held
// within the member.
func (s *shape) position(along float64) quantity.Vec3 {
	i := s.segment(along)
	a, b := s.points[i], s.points[i+1]
	span := s.along[i+1] - s.along[i]
	t := math.Min(1, math.Max(0, (along-s.along[i])/span))
	return a.Add(b.Sub(a).Scale(t))
}

// direction returns the unit vector towards the tip at the arc length.
func (s *shape) direction(along float64) quantity.Vec3 {
	i := s.segment(along)
	return s.points[i+1].Sub(s.points[i]).Unit()
}

func (s *shape) segment(along float64) int {
	i := 0
	for i < len(s.along)-2 && along > s.along[i+1] {
		i++
	}
	return i
}

// diameter returns the two diameters over bark at the arc length: that of the
// first station up to it, linear between stations.
func (s *shape) diameter(along float64) thickness {
	first := s.girths[0]
	if along <= first.at {
		first.at = along
		return first
	}
	for i := 1; i < len(s.girths); i++ {
		a, b := s.girths[i-1], s.girths[i]
		if along <= b.at {
			t := (along - a.at) / (b.at - a.at)
			return thickness{along, between(a.upright, b.upright, t), between(a.across, b.across, t), a.path}
		}
	}
	last := s.girths[len(s.girths)-1]
	last.at = along
	return last
}

func between(a, b quantity.Measured[quantity.Length], t float64) quantity.Measured[quantity.Length] {
	f := quantity.Length(t)
	how := a.How
	if guessed(b.How) && t > 0 { // no better than the worse of the two
		how = b.How
	}
	return quantity.Measured[quantity.Length]{Value: a.Value + f*(b.Value-a.Value), Sd: a.Sd + f*(b.Sd-a.Sd), How: how}
}

// stem walks down the parents to the member that stands on the ground.
func (s *shape) stem() *shape {
	for s.parent != nil {
		s = s.parent
	}
	return s
}

// shapeOf works out the shape of a member whose parent is known already; the
// stem has none.
func shapeOf(k *knowledge.Base, m *survey.Member, path string, parent *shape) *shape {
	s := &shape{member: m, path: path, parent: parent}
	s.girths = thicknesses(k, m, path)
	foot := quantity.Vec3{}
	if parent != nil {
		s.rises = math.Min(float64(value(m.RisesAt)), parent.length())
		foot = faceOf(parent, s.rises, m)
	}
	s.points, s.along = polyline(m, foot, assumedLength(k, s), parent == nil)
	tip := endThickness(k, m, path, s)
	if last := s.girths[len(s.girths)-1]; tip.at > last.at {
		s.girths = append(s.girths, tip)
	}
	return s
}

// faceOf returns the point on the face of the parent at which a member starts.
func faceOf(parent *shape, rises float64, m *survey.Member) quantity.Vec3 {
	axis := parent.position(rises)
	if len(m.Path) > 0 {
		return axis.Add(outward(m).Scale(radius(parent, rises)))
	}
	heading := quantity.Heading(value(m.Azimuth), 0)
	return axis.Add(heading.Scale(radius(parent, rises)))
}

// outward is the horizontal direction in which a path leaves its foot.
func outward(m *survey.Member) quantity.Vec3 {
	last := m.Path[len(m.Path)-1]
	return quantity.Vec3{X: float64(last.East.Value), Y: float64(last.North.Value)}.Unit()
}

func radius(s *shape, along float64) float64 {
	d := s.diameter(along)
	return float64(d.upright.Value+d.across.Value) / 4
}

// measured reports whether the shape of a member was observed. One that was
// not is taken level, as long as limbs of its thickness are, and a reason says
// what to measure.
func (s *shape) measured() bool {
	m := s.member
	if s.parent != nil && m.RisesAt == nil {
		return false
	}
	return len(m.Path) > 0 || m.Length != nil && (s.parent == nil || m.Azimuth != nil && m.Inclination != nil)
}

// assumedLength is the length of limbs of the same thickness, 0.632 d^1.02 with
// the diameter in cm (295 scanned limbs).
func assumedLength(k *knowledge.Base, s *shape) quantity.Length {
	d := float64(s.girths[0].across.Value) * 100
	return quantity.Length(k.Parameter(knowledge.LimbPathCoefficient).Value * math.Pow(d, k.Parameter(knowledge.LimbPathExponent).Value))
}

// polyline returns the axis of a member from its foot on; the length is that
// assumed where none was measured.
func polyline(m *survey.Member, foot quantity.Vec3, length quantity.Length, isStem bool) (points []quantity.Vec3, along []float64) {
	points = []quantity.Vec3{foot}
	if len(m.Path) > 0 {
		for _, p := range m.Path {
			step := quantity.Vec3{X: float64(p.East.Value), Y: float64(p.North.Value), Z: float64(p.Up.Value)}
			if step != (quantity.Vec3{}) {
				points = append(points, foot.Add(step))
			}
		}
	} else {
		inclination := value(m.Inclination)
		if m.Inclination == nil && isStem {
			inclination = 90 * quantity.Degree
		}
		if m.Length != nil {
			length = m.Length.Value
		}
		heading := quantity.Heading(value(m.Azimuth), inclination)
		points = append(points, foot.Add(heading.Scale(float64(length))))
	}
	along = make([]float64, len(points))
	for i := 1; i < len(points); i++ {
		along[i] = along[i-1] + points[i].Sub(points[i-1]).Norm()
	}
	return points, along
}

// thicknesses reads the stations of a member from its foot to its tip.
func thicknesses(k *knowledge.Base, m *survey.Member, path string) []thickness {
	var list []thickness
	for i, station := range m.Stations {
		t := thickness{at: float64(station.At.Value), path: element(path+".stations", i)}
		switch {
		case station.Girth != nil:
			girth := resolve(k, *station.Girth)
			t.upright = quantity.Measured[quantity.Length]{Value: girth.Value / math.Pi, Sd: girth.Sd / math.Pi, How: girth.How}
			t.across = t.upright
		case station.Diameter != nil:
			t.upright = resolve(k, *station.Diameter)
			t.across = t.upright
		default:
			t.upright, t.across = resolve(k, *station.Upright), resolve(k, *station.Across)
		}
		list = append(list, t)
	}
	slices.SortStableFunc(list, func(a, b thickness) int {
		switch {
		case a.at < b.at:
			return -1
		case a.at > b.at:
			return 1
		}
		return 0
	})
	return list
}

// endThickness is the measured tip, or the house share of the first diameter.
func endThickness(k *knowledge.Base, m *survey.Member, path string, s *shape) thickness {
	t := thickness{at: s.length(), path: path + ".tip"}
	if m.Tip != nil {
		t.upright = resolve(k, *m.Tip)
	} else {
		first := s.girths[0].upright
		share := quantity.Length(k.Parameter(knowledge.TipShare).Value)
		t.upright = resolve(k, quantity.Measured[quantity.Length]{Value: first.Value * share, How: quantity.Assumed})
	}
	t.across = t.upright
	return t
}

// value returns what an optional measurement says, 0 where it was not made.
func value[Q quantity.Kind](m *quantity.Measured[Q]) Q {
	if m == nil {
		return 0
	}
	return m.Value
}

// resolve fills in the standard deviation that the method of measuring is
// known to have where the surveyor stated none.
func resolve[Q quantity.Kind](k *knowledge.Base, m quantity.Measured[Q]) quantity.Measured[Q] {
	if m.SdStated {
		return m
	}
	m.Sd = Q(k.StandardDeviation(m.How, m.Value.Name(), float64(m.Value)))
	return m
}
