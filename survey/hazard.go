package survey

// Hazard is something at the site that can hurt people or that people must
// not harm. Its place is a side and a distance from the stem of a tree, or
// east and north of the origin of the site; without either it counts for every
// hang.
type Hazard struct {
	ID       string          `json:"id"`
	Hazard   string          `json:"hazard"` // a row of the table of hazards
	Tree     string          `json:"tree,omitempty"`
	Side     *MeasuredAngle  `json:"side,omitempty"`
	Distance *MeasuredLength `json:"distance,omitempty"`
	East     *MeasuredLength `json:"east,omitempty"`
	North    *MeasuredLength `json:"north,omitempty"`
	SeenOn   Date            `json:"seen_on,omitzero"`
	Cleared  *Cleared        `json:"cleared,omitempty"`
	Note     string          `json:"note,omitempty"`
}

// checkHazards holds the hazards of the site to the rules of places and days.
func (c *checker) checkHazards() {
	s := c.survey
	checkNames(c, "hazards", s.Hazards, "id", "the site", func(h *Hazard) string { return h.ID })
	trees := targetsOf(c, "tree", "trees", s.Trees, func(t *Tree) string { return t.ID })
	for at, h := range items(c, "hazards", s.Hazards) {
		c.checkReference(at.field("tree"), h.Tree, trees)
		c.checkHazardPlace(at, h)
		if h.Cleared != nil && !c.isLost(at.field("seen_on")) {
			c.checkLater(at.field("cleared").field("on"), h.Cleared.On, h.SeenOn, "the clearing")
		}
	}
}

// checkHazardPlace wants a whole place or none, and one place alone.
func (c *checker) checkHazardPlace(at path, h *Hazard) {
	byTree := h.Side != nil || h.Distance != nil
	given := func(name string, set bool) bool { return c.given(at, name, set) }
	fault := ""
	switch {
	case byTree && !given("tree", h.Tree != ""):
		fault = "it has a side or a distance but names no tree"
	case byTree && (!given("side", h.Side != nil) || !given("distance", h.Distance != nil)):
		fault = "of side and distance one is missing"
	case given("east", h.East != nil) != given("north", h.North != nil):
		fault = "of east and north one is missing"
	case byTree && h.East != nil:
		fault = "it has a place by the tree and one on the site"
	default:
		return
	}
	c.report(Problem{
		Code: CodeFindingPlace, Path: string(at), Fault: fault,
		Expected: "tree, side and distance; or east and north; or no place at all", Do: "complete the place, or leave it out: it then counts for every hang",
	})
}
