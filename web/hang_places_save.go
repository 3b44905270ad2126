package web

import (
	"cmp"
	"net/http"
	"slices"
	"strings"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/words"
)

func (a *app) savePlaces(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		return a.change(w, r, e, s, t, words.DidEditPlaces+h.ID, a.treeLink(s, t, "hang", h.ID, "places"), hangPart(h.ID),
			func(t *notebook.Tree) error {
				h := hangOf(t, h.ID)
				if h == nil {
					return errNoPage
				}
				readPlaces(e, h)
				return e.taken()
			},
			func(problems []string) error { return a.placesForm(w, r, e, s, t, h, problems) })
	})
}

func readPlaces(e *entry, h *survey.Hang) {
	h.Waiting, h.WayIn = e.readSpots("wait", h.Waiting), e.readSpots("way", h.WayIn)
	var before survey.Ground
	if h.Ground != nil {
		before = *h.Ground
	}
	ground := survey.Ground{
		Along: e.readProfile("along", before.Along), Across: e.readProfile("across", before.Across), Surface: e.text("surface"),
		DepthLoose: measured(e, "depth_loose", e.units.thick(), before.DepthLoose),
	}
	h.Ground = nil
	switch {
	case len(ground.Along) > 0 && ground.Surface != "":
		h.Ground = &ground
	case len(ground.Along)+len(ground.Across) > 0 || ground.Surface != "" || ground.DepthLoose != nil:
		e.faults["surface"] = words.WantProfile
	}
	var kept []survey.Obstacle
	for i := 0; e.values.Has(at("obstacle_what", i)); i++ {
		if e.blank(i, "obstacle_what", "obstacle_azimuth", "obstacle_distance", "obstacle_radius", "obstacle_corners") {
			continue
		}
		var o survey.Obstacle
		if i < len(h.Obstacles) {
			o = h.Obstacles[i]
		}
		kept = append(kept, e.readObstacle(i, o))
	}
	h.Obstacles = kept
}

func (e *entry) readSpots(name string, before []survey.Spot) []survey.Spot {
	var list []survey.Spot
	for i := 0; e.values.Has(at(name+"_azimuth", i)); i++ {
		if e.blank(i, name+"_azimuth", name+"_distance") {
			continue
		}
		var kept survey.Spot
		if i < len(before) {
			kept = before[i]
		}
		list = append(list, survey.Spot{
			Azimuth:  need(e, at(name+"_azimuth", i), chosen(e, at(name+"_azimuth", i), degrees, &kept.Azimuth)),
			Distance: need(e, at(name+"_distance", i), chosen(e, at(name+"_distance", i), e.units.long(), &kept.Distance)),
		})
	}
	return list
}

// readProfile puts the points in the order of their places.
func (e *entry) readProfile(name string, before []survey.GroundPoint) []survey.GroundPoint {
	var list []survey.GroundPoint
	for i := 0; e.values.Has(at(name+"_height", i)); i++ {
		if e.blank(i, name+"_at", name+"_height") {
			continue
		}
		var kept survey.GroundPoint
		if i < len(before) {
			kept = before[i]
		}
		list = append(list, survey.GroundPoint{
			At:     need(e, at(name+"_at", i), chosen(e, at(name+"_at", i), e.units.long(), &kept.At)),
			Height: need(e, at(name+"_height", i), measured(e, at(name+"_height", i), e.units.long(), &kept.Height)),
		})
	}
	slices.SortStableFunc(list, func(a, b survey.GroundPoint) int { return cmp.Compare(a.At.Value, b.At.Value) })
	return list
}

func (e *entry) readObstacle(i int, o survey.Obstacle) survey.Obstacle {
	long := e.units.long()
	before := o
	if o.What = e.text(at("obstacle_what", i)); o.What == "" {
		e.faults[at("obstacle_what", i)] = words.WantName
	}
	if kind := e.text(at("obstacle_kind", i)); kind != survey.Solid || before.Kind != "" {
		o.Kind = kind
	}
	o.Azimuth = need(e, at("obstacle_azimuth", i), measured(e, at("obstacle_azimuth", i), degrees, &before.Azimuth))
	o.Distance = need(e, at("obstacle_distance", i), measured(e, at("obstacle_distance", i), long, &before.Distance))
	o.Radius = need(e, at("obstacle_radius", i), measured(e, at("obstacle_radius", i), long, &before.Radius))
	name, shape := at("obstacle_corners", i), e.text(at("obstacle_shape", i))
	if text := e.text(name); text != cornerText(before.Corners, long) {
		o.Corners = e.readCorners(name, text)
	}
	o.Area = shape == shapeArea
	if (shape == shapeDisc) != (len(o.Corners) == 0) && e.faults[name] == "" {
		e.faults[name] = words.WantCorners
	}
	return o
}

// cornerText writes corners one a line, direction and distance.
func cornerText(corners []survey.Spot, unit string) string {
	var lines []string
	for _, c := range corners {
		lines = append(lines, number(c.Azimuth.Value, degrees)+" "+number(c.Distance.Value, unit))
	}
	return strings.Join(lines, "\n")
}

func (e *entry) readCorners(name, text string) []survey.Spot {
	var list []survey.Spot
	for line := range strings.FieldsFuncSeq(text, func(r rune) bool { return r == '\n' || r == ';' }) {
		cells := strings.Fields(line)
		if len(cells) == 0 {
			continue
		}
		if len(cells) != 2 {
			e.faults[name] = words.WantCorners
			return nil
		}
		azimuth, errAzimuth := quantity.ParseChosen[quantity.Angle](typed(cells[0], degrees))
		distance, errDistance := quantity.ParseChosen[quantity.Length](typed(cells[1], e.units.long()))
		if errAzimuth != nil || errDistance != nil {
			e.faults[name] = words.WantCorners
			return nil
		}
		list = append(list, survey.Spot{Azimuth: azimuth, Distance: distance})
	}
	return list
}
