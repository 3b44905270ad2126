package assess

import (
	"boughline/quantity"
)

// togetherReasons names the other hangs on the tree, and those of neighbours
// that reach into the ground this one needs: each hang is judged alone, so
// that they may not be ridden together.
func (r *rig) togetherReasons(u trial) []Reason {
	var list []Reason
	add := func(path, id string) {
		list = append(list, Reason{Code: NotTogether, Outcome: WithinLimits, Path: path, Text: id})
	}
	for i := range r.s.Hangs {
		if other := &r.s.Hangs[i]; other != r.h {
			add(element(r.path+".hangs", i), other.ID)
		}
	}
	list = append(list, r.linesBeside("")...)
	area := r.keptClearArea(u)
	for _, n := range r.neighbours() {
		for i := range n.s.Hangs {
			other := &n.s.Hangs[i]
			at := n.shapes[other.Member].position(float64(other.At.Value)).Add(n.offset)
			// However that one swings, it reaches no farther than its own flights.
			reach := 2*other.Line.Value + quantity.Length(r.rules.clearFirm.Value)
			if area.Distance(at) < reach {
				add(element(n.path+".hangs", i), other.ID)
			}
		}
	}
	return list
}
