package knowledge

// Group parts the trees in two.
type Group string

// The groups.
const (
	Broadleaf Group = "broadleaf"
	Conifer   Group = "conifer"
)

func (r row) group() Group {
	g := Group(r.text("group"))
	if g != Broadleaf && g != Conifer {
		r.problem("the group %q is not known", g)
	}
	return g
}

// covers reports whether a tree of group g may be one of the other group. An
// unknown group may be either.
func (g Group) covers(other Group) bool { return g == "" || g == other }
