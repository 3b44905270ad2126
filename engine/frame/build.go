package frame

import (
	"fmt"
	"math"
	"slices"
)

// New checks a model and works out its geometry. The error names the first
// field that cannot be computed with: no stations, two stations on one point,
// diameters that are not positive, a hollow as wide as its member, places off
// a member, parents listed after their children.
func New(m Model) (*Frame, error) {
	if err := m.Material.check(); err != nil {
		return nil, err
	}
	if len(m.Members) == 0 {
		return nil, fmt.Errorf("members: there are none; expected at least the main member")
	}
	f := &Frame{material: m.Material, masses: slices.Clone(m.Masses)}
	lines := make([]line, len(m.Members))
	for i, member := range m.Members {
		var err error
		if lines[i], err = trace(member); err != nil {
			return nil, fmt.Errorf("member %d (%s): %w", i, member.Name, err)
		}
	}
	for i, mass := range m.Masses {
		if err := onMember(mass.At, lines); err != nil {
			return nil, fmt.Errorf("mass %d: %w", i, err)
		}
		if !(mass.Mass >= 0) || math.IsInf(float64(mass.Mass), 0) {
			return nil, fmt.Errorf("mass %d: %v kg; expected 0 or more", i, float64(mass.Mass))
		}
	}
	for i := range m.Members {
		if err := checkParent(m.Members, i, lines); err != nil {
			return nil, fmt.Errorf("member %d (%s): %w", i, m.Members[i].Name, err)
		}
	}
	for i, member := range m.Members {
		f.members = append(f.members, compile(m, i, lines[i]))
		if i > 0 {
			parent := &f.members[member.Parent]
			parent.children = append(parent.children, i)
		}
	}
	return f, nil
}

func (m Material) check() error {
	for _, v := range []struct {
		name     string
		value    float64
		positive bool
	}{
		{"young", float64(m.Young), true},
		{"shear", float64(m.Shear), false},
		{"density", float64(m.Density), false},
	} {
		if math.IsNaN(v.value) || math.IsInf(v.value, 0) || v.value < 0 || v.positive && v.value == 0 {
			return fmt.Errorf("material %s: %v; expected a positive number", v.name, v.value)
		}
	}
	return nil
}

func onMember(at Place, lines []line) error {
	if at.Member < 0 || at.Member >= len(lines) {
		return fmt.Errorf("member %d; expected 0 to %d", at.Member, len(lines)-1)
	}
	if length := lines[at.Member].length(); !(at.Along >= -joint && float64(at.Along) <= length+joint) {
		return fmt.Errorf("%v m along member %d; expected 0 to %.6g m", float64(at.Along), at.Member, length)
	}
	return nil
}

func checkParent(members []Member, i int, lines []line) error {
	m := members[i]
	if i == 0 {
		if m.Parent != -1 {
			return fmt.Errorf("parent %d; expected -1, for member 0 is the main member", m.Parent)
		}
		return nil
	}
	if m.Parent < 0 || m.Parent >= i {
		return fmt.Errorf("parent %d; expected a member listed before it, 0 to %d", m.Parent, i-1)
	}
	if err := onMember(Place{m.Parent, m.ParentAlong}, lines); err != nil {
		return fmt.Errorf("on its parent: %w", err)
	}
	start := lines[m.Parent].point(float64(m.ParentAlong))
	const near = 1e-4 // m
	if gap := m.Stations[0].Position.Sub(start).Norm(); gap > near {
		return fmt.Errorf("its first station lies %.4g m off its parent's centreline; expected none", gap)
	}
	return nil
}

// compile cuts a member into pieces at every break.
func compile(m Model, i int, l line) member {
	source := m.Members[i]
	breaks := slices.Clone(l.along)
	for _, h := range source.Hollows {
		breaks = append(breaks, float64(h.From), float64(h.To))
	}
	for _, mass := range m.Masses {
		if mass.At.Member == i {
			breaks = append(breaks, float64(mass.At.Along))
		}
	}
	for _, child := range m.Members[i+1:] {
		if child.Parent == i {
			breaks = append(breaks, float64(child.ParentAlong))
		}
	}
	out := member{name: source.Name, length: l.length(), parent: Place{source.Parent, source.ParentAlong}}
	breaks = distinct(breaks, l)
	for k := 0; k+1 < len(breaks); k++ {
		out.pieces = append(out.pieces, l.piece(source, breaks[k], breaks[k+1]))
	}
	return out
}

// distinct sorts the breaks and drops those that all but touch another,
// keeping the arc lengths of stations to the last digit.
func distinct(breaks []float64, l line) []float64 {
	for i, s := range breaks {
		for _, station := range l.along {
			if math.Abs(s-station) < joint {
				breaks[i] = station
			}
		}
	}
	slices.Sort(breaks)
	return slices.CompactFunc(breaks, func(a, b float64) bool { return math.Abs(b-a) < joint })
}
