package assess

import (
	"boughline/engine/signs"
	"boughline/quantity"
	"boughline/survey"
)

// TreeFigure is one tree in its own frame: origin at the centre of the stem at
// ground level, X east, Y north, Z up.
type TreeFigure struct {
	Survey *survey.Tree
	// At is the place on the site; Placed is false where it is not known.
	At     quantity.Vec3
	Placed bool
	Height quantity.Length // as measured, or of the highest member
	// CrownBase and CrownWidth are 0 where they were not measured.
	CrownBase, CrownWidth quantity.Length
	Members               []MemberFigure // parents before children
	Findings              []FindingFigure
	Obstacles             []ObstacleFigure // of the tree, for all its hangs
}

// MemberFigure is the axis of a member with its thickness over bark.
type MemberFigure struct {
	ID, Parent string // the stem has no parent
	// Measured is false where length or direction were assumed.
	Measured bool
	Axis     []AxisPoint // from the foot to the tip
}

// AxisPoint is a point on the axis of a member.
type AxisPoint struct {
	Along           quantity.Length
	Position        quantity.Vec3
	Upright, Across quantity.Length // diameters over bark
}

// FindingFigure is a finding with the place at which it is drawn.
type FindingFigure struct {
	Survey   *survey.Finding
	Sign     signs.Sign
	Position quantity.Vec3
	// Placed is false where the survey does not say where it is; Position is
	// then a place in its zone.
	Placed bool
}

// ObstacleFigure is a thing on the ground: a disc, a line or an area.
type ObstacleFigure struct {
	What, Kind string
	Corners    []quantity.Vec3
	Radius     quantity.Length
	Area       bool
}

func obstacleFigures(things []survey.Obstacle) []ObstacleFigure {
	var list []ObstacleFigure
	for _, o := range things {
		f := ObstacleFigure{What: o.What, Kind: o.Kind, Radius: o.Radius.Value, Area: o.Area, Corners: []quantity.Vec3{spotPosition(o.Azimuth.Value, o.Distance.Value)}}
		for _, c := range o.Corners {
			f.Corners = append(f.Corners, spotPosition(c.Azimuth.Value, c.Distance.Value))
		}
		list = append(list, f)
	}
	return list
}

func (t *tree) figure() TreeFigure {
	f := TreeFigure{Survey: t.s, Height: value(t.s.Height), Obstacles: obstacleFigures(t.s.Obstacles)}
	f.At, f.Placed = placeOf(t.s)
	if c := t.s.Crown; c != nil {
		f.CrownBase, f.CrownWidth = value(c.BaseHeight), value(c.Width)
	}
	for _, s := range t.order {
		m := s.figure()
		f.Members = append(f.Members, m)
		for _, a := range m.Axis {
			if t.s.Height == nil {
				f.Height = max(f.Height, quantity.Length(a.Position.Z))
			}
		}
	}
	for i := range t.s.Findings {
		f.Findings = append(f.Findings, t.findingFigure(&t.s.Findings[i]))
	}
	return f
}

func (s *shape) figure() MemberFigure {
	m := MemberFigure{ID: s.member.ID, Measured: s.measured()}
	if s.parent != nil {
		m.Parent = s.parent.member.ID
	}
	for _, along := range append(s.breaks(), s.length()) {
		if n := len(m.Axis); n > 0 && along-float64(m.Axis[n-1].Along) < 1e-6 {
			continue
		}
		m.Axis = append(m.Axis, s.axisPoint(along))
	}
	return m
}

func (s *shape) axisPoint(along float64) AxisPoint {
	d := s.diameter(along)
	return AxisPoint{quantity.Length(along), s.position(along), d.upright.Value, d.across.Value}
}

// PointAt returns the point of a member at an arc length; false for a member
// that the tree has not.
func (t TreeFigure) PointAt(member string, along quantity.Length) (AxisPoint, bool) {
	for _, m := range t.Members {
		if m.ID == member {
			return m.PointAt(along), true
		}
	}
	return AxisPoint{}, false
}

// PointAt returns the point at an arc length, held within the member.
func (m MemberFigure) PointAt(along quantity.Length) AxisPoint {
	for i := 1; i < len(m.Axis); i++ {
		a, b := m.Axis[i-1], m.Axis[i]
		if along <= b.Along {
			t := max(0, float64((along-a.Along)/(b.Along-a.Along)))
			mix := func(x, y quantity.Length) quantity.Length { return x + quantity.Length(t)*(y-x) }
			return AxisPoint{mix(a.Along, b.Along), a.Position.Add(b.Position.Sub(a.Position).Scale(t)), mix(a.Upright, b.Upright), mix(a.Across, b.Across)}
		}
	}
	return m.Axis[len(m.Axis)-1]
}

// findingFigure places a finding: on its member, or by side, distance and
// height. What is not known is taken in the middle of its zone.
func (t *tree) findingFigure(f *survey.Finding) FindingFigure {
	sign, _ := t.k.Sign(f.Sign)
	figure := FindingFigure{Survey: f, Sign: sign}
	if s, ok := t.shapes[f.Member]; ok {
		at := s.length() / 2
		if figure.Placed = f.At != nil; figure.Placed {
			at = float64(f.At.Value)
		}
		figure.Position = s.position(at)
		return figure
	}
	height, measured := t.zoneHeight(sign.Zone)
	if f.Height != nil {
		height, measured = float64(f.Height.Value), true
	}
	figure.Position = t.order[0].position(height)
	figure.Position.Z = height
	if f.Side != nil {
		distance := radius(t.order[0], height)
		if f.Distance != nil {
			distance = float64(f.Distance.Value)
		}
		figure.Position = figure.Position.Add(quantity.Heading(f.Side.Value, 0).Scale(distance))
		figure.Placed = measured
	}
	return figure
}

// zoneHeight is where on a tree a zone lies; known for those at the ground.
func (t *tree) zoneHeight(z signs.Zone) (height float64, known bool) {
	switch z {
	case signs.Base, signs.RootPlate, signs.Ground, signs.Surroundings:
		return 0, true
	case signs.Stem:
		return 1.3, false
	}
	return float64(t.tall) * 0.7, false
}
