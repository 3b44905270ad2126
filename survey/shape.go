package survey

import (
	"strings"

	"boughline/quantity"
)

// checkShape wants a path, or all that makes a straight member, or nothing yet.
func (c *checker) checkShape(at path, m *Member) {
	var have, lack []string
	for _, part := range []struct {
		name     string
		set      bool
		needless bool // an upright stem has no azimuth and needs no inclination
	}{
		{"azimuth", m.Azimuth != nil, m.isUprightStem()},
		{"inclination", m.Inclination != nil, m.isUprightStem()},
		{"length", m.Length != nil, m.Parent == ""},
	} {
		switch {
		case c.given(at, part.name, part.set):
			have = append(have, part.name)
		case !part.needless:
			lack = append(lack, part.name)
		}
	}
	switch hasPath := c.given(at, "path", len(m.Path) > 0); {
	case hasPath && len(have) > 0:
		c.reportShape(at, "it has a path and also "+strings.Join(have, " and "), "keep one of the two")
	case !hasPath && len(have) > 0 && len(lack) > 0:
		c.reportShape(at, "it has "+strings.Join(have, " and ")+" but no "+strings.Join(lack, " and no "), "measure what is missing, or give a path")
	case len(m.Path) > 0:
		c.checkPath(at.field("path"), m)
	}
}

func (m *Member) isUprightStem() bool {
	return m.Parent == "" && m.Azimuth == nil && (m.Inclination == nil || m.Inclination.Value >= 90*deg)
}

func (c *checker) reportShape(at path, fault, do string) {
	c.report(Problem{
		Code: CodeShape, Path: string(at), Fault: fault,
		Expected: "azimuth, inclination and length, or a path", Do: do,
	})
}

// checkPath wants a length of the path that a member can have.
func (c *checker) checkPath(at path, m *Member) {
	if length, known := c.lengthOf(at.parent(), m); known {
		checkRange(c, at, length, anyLength)
	}
}

// lengthOf is the length of a member as far as it is known: that of its path
// from its foot, or the one measured.
func (c *checker) lengthOf(at path, m *Member) (quantity.Length, bool) {
	switch {
	case c.isLost(at.field("path")) || c.isLost(at.field("length")):
		return 0, false
	case len(m.Path) == 0 && m.Length == nil:
		return 0, false
	case len(m.Path) == 0:
		return m.Length.Value, true
	}
	var sum float64
	var from quantity.Vec3
	for i, p := range m.Path {
		if c.isAnyLost(at.field("path").item(i), "", "east", "north", "up") {
			return 0, false
		}
		to := quantity.Vec3{X: float64(p.East.Value), Y: float64(p.North.Value), Z: float64(p.Up.Value)}
		sum += to.Sub(from).Norm()
		from = to
	}
	return quantity.Length(sum), true
}

// isAnyLost asks for fields of a value; the empty name is the value itself.
func (c *checker) isAnyLost(at path, names ...string) bool {
	for _, name := range names {
		if (name == "" && c.isLost(at)) || (name != "" && c.isLost(at.field(name))) {
			return true
		}
	}
	return false
}
