package assess

// togetherReasons names the other hangs on the tree: each is judged alone, so
// that they may not be ridden together.
func (r *rig) togetherReasons() []Reason {
	var list []Reason
	for i := range r.s.Hangs {
		other := &r.s.Hangs[i]
		if other != r.h {
			list = append(list, Reason{Code: NotTogether, Outcome: WithinLimits, Path: element(r.path+".hangs", i), Text: other.ID})
		}
	}
	return list
}
