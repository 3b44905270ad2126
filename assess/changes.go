package assess

import "boughline/quantity"

// Changes lists what would cure a check that falls short at a line, the
// smallest change first, each worked out alone: a lesser mass of all riders
// together, a lower amplitude, less wind, what stands in the way.
func (w Swing) Changes(short Short, line quantity.Length) []Change {
	var list []Change
	c, ok := w.checker(short.Code)
	if !ok {
		return nil
	}
	switch c.cure {
	case byLighter, byCalm:
		if mass, ok := w.massAt(c, line); ok {
			list = append(list, Change{Code: ChangeLighter, Value: float64(mass), Unit: "kg"})
		}
		list = append(list, Change{Code: ChangeOtherLimb})
	case bySpace:
		list = append(list, w.roomChange(short))
	}
	return list
}

func (w Swing) checker(code Code) (checker, bool) {
	for _, c := range w.battery.all() {
		if c.code == code {
			return c, true
		}
	}
	return checker{}, false
}

// massAt is the greatest mass of all riders at which a check holds on a calm
// day.
func (w Swing) massAt(c checker, line quantity.Length) (quantity.Mass, bool) {
	u := w.rig.asked
	u.line, u.gust = line, w.rig.calm()
	mass, ok := greatest([]checker{c}, unfavourable, float64(w.rig.lightest()), float64(u.mass), func(m float64) trial {
		v := u
		v.mass = quantity.Mass(m)
		return v
	})
	return quantity.Mass(mass), ok
}

// roomChange is what makes room.
func (w Swing) roomChange(short Short) Change {
	switch short.Code {
	case LimbInPath:
		return Change{Code: ChangeClear}
	case Obstructed:
		return Change{Code: ChangeMoveThing}
	case StemClearance:
		return Change{Code: ChangeLine}
	}
	return Change{Code: ChangeOtherLimb}
}
