package survey

import (
	"fmt"
	"strings"

	"boughline/quantity"
)

// checkStations wants one way of measuring at each station and no two stations
// at one place.
func (c *checker) checkStations(at path, m *Member) {
	places := map[quantity.Length]path{}
	for at, s := range items(c, at.field("stations"), m.Stations) {
		c.checkThickness(at, s)
		if c.isLost(at.field("at")) {
			continue
		}
		first, taken := places[s.At.Value]
		if !taken {
			places[s.At.Value] = at
			continue
		}
		c.report(Problem{
			Code: CodeSamePlace, Path: string(at.field("at")), Fault: fmt.Sprintf("%s is at the same place", first),
			Expected: "stations at places of their own", Do: "correct one of them, or take the two together",
		})
	}
}

// checkThickness wants girth, or diameter, or upright and across.
func (c *checker) checkThickness(at path, s *Station) {
	var have []string
	for _, f := range []struct {
		name string
		set  bool
	}{
		{"girth", s.Girth != nil}, {"diameter", s.Diameter != nil}, {"upright", s.Upright != nil}, {"across", s.Across != nil},
	} {
		if c.given(at, f.name, f.set) {
			have = append(have, f.name)
		}
	}
	fault, do := "", ""
	switch got := strings.Join(have, " and "); got {
	case "girth", "diameter", "upright and across":
		return
	case "":
		fault, do = "it has no thickness", "measure the girth there, or delete the station"
	case "upright", "across":
		fault, do = "it has "+got+" alone", "measure the other of the two, or call it diameter"
	default:
		fault, do = "it has "+got, "keep one of them, or make two stations"
	}
	c.report(Problem{
		Code: CodeThickness, Path: string(at), Fault: fault,
		Expected: "girth, or diameter, or upright and across", Do: do,
	})
}
