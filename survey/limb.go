package survey

import "boughline/quantity"

// checkLimb holds a limb to the narrower ranges of limbs, and the inclination
// of a stem to that of something that stands.
func (c *checker) checkLimb(at path, m *Member) {
	if m.Parent == "" && c.isLost(at.field("parent")) {
		return
	}
	if m.Parent == "" {
		c.checkStem(at, m)
		return
	}
	if length := at.field("length"); m.Length != nil && !c.isLost(length) {
		checkRange(c, length, m.Length.Value, limbLength)
	}
	for at, s := range items(c, at.field("stations"), m.Stations) {
		c.checkLimbStation(at, s)
	}
}

func (c *checker) checkStem(at path, m *Member) {
	at = at.field("inclination")
	if m.Inclination == nil || c.isLost(at) || stemIncline.contains(m.Inclination.Value) {
		return
	}
	c.report(Problem{
		Code: CodeOutOfRange, Path: string(at), Fault: "a stem stands steeper than that",
		Expected: "45 deg to 90 deg above the horizontal",
		Do:       "count from the horizontal, not from the plumb line; give a path for a stem that lies",
	})
}

func (c *checker) checkLimbStation(at path, s *Station) {
	for _, f := range []struct {
		name string
		size *MeasuredLength
		span span[quantity.Length]
	}{
		{"girth", s.Girth, limbGirth},
		{"diameter", s.Diameter, limbDiameter},
		{"upright", s.Upright, limbDiameter},
		{"across", s.Across, limbDiameter},
	} {
		if at := at.field(f.name); f.size != nil && !c.isLost(at) {
			checkRange(c, at, f.size.Value, f.span)
		}
	}
}
