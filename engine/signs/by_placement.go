package signs

// ByPlacement holds what a sign does in each of the three placements.
type ByPlacement struct{ OnLoadPath, AbovePeople, Elsewhere Effect }

// Widen returns the effects for a scope: a sign of the whole tree or of the
// place counts elsewhere as it does where it weighs most.
func (e ByPlacement) Widen(scope Scope) ByPlacement {
	if scope != Member {
		e.Elsewhere = max(e.OnLoadPath, e.AbovePeople)
	}
	return e
}

// Effects returns the three effects of the sign.
func (s Sign) Effects() ByPlacement { return ByPlacement{s.OnLoadPath, s.AbovePeople, s.Elsewhere} }

// Ordered reports whether a worse placement never weighs less: elsewhere is
// at most what the sign does on the load path and above the people.
func (e ByPlacement) Ordered() bool {
	return e.Elsewhere <= e.OnLoadPath && e.Elsewhere <= e.AbovePeople
}
