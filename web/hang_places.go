package web

import (
	"net/http"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// editPlaces shows all that lies about a hang: the ground in any number of
// points, where people wait, the way in, and what stands in the way.
func (a *app) editPlaces(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		return a.placesForm(w, r, e, s, t, h, nil)
	})
}

func (a *app) placesForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang, problems []string) error {
	ground := survey.Ground{}
	if h.Ground != nil {
		ground = *h.Ground
	}
	groups := []view.Group{
		{Legend: words.GroundAlong, Help: words.GroundAlongHelp, Fields: e.profileRows("along", ground.Along)},
		{Legend: words.GroundAcross, Help: words.GroundAcrossHelp, Fields: e.profileRows("across", ground.Across)},
		{Legend: words.TheGround, Fields: []view.Field{
			e.selectField("surface", ground.Surface, a.surfaceChoices()), measuredField(e, "depth_loose", e.units.thick(), ground.DepthLoose, quantity.Taped),
		}},
		{Legend: words.WaitingPlaces, Help: words.RowsHelp, Fields: e.placeRows("wait", h.Waiting)},
		{Legend: words.WayInPoints, Help: words.WayInHelp, Fields: e.placeRows("way", h.WayIn)},
	}
	for i := range e.rows("obstacle_what", len(h.Obstacles)) - spareRows + 1 {
		groups = append(groups, e.obstacleGroup(i, h.Obstacles))
	}
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.PlacesTitle+" "+h.ID, a.hangTrail(s, t, h)...), Back: a.treeLink(s, t, "hang", h.ID), Problems: problems, Revision: t.Revision,
		Intro: words.PlacesIntro, Groups: groups,
	})
}

func (e *entry) profileRows(name string, points []survey.GroundPoint) []view.Field {
	var fields []view.Field
	for i := range e.rows(name+"_height", len(points)) {
		var place *survey.ChosenLength
		var height *survey.MeasuredLength
		if i < len(points) {
			place, height = &points[i].At, &points[i].Height
		}
		fields = append(fields, row(i,
			chosenField(e, at(name+"_at", i), e.units.long(), place), measuredField(e, at(name+"_height", i), e.units.long(), height, quantity.Clinometer))...)
	}
	return fields
}

func (e *entry) placeRows(name string, spots []survey.Spot) []view.Field {
	var fields []view.Field
	for i := range e.rows(name+"_azimuth", len(spots)) {
		var azimuth *survey.ChosenAngle
		var distance *survey.ChosenLength
		if i < len(spots) {
			azimuth, distance = &spots[i].Azimuth, &spots[i].Distance
		}
		fields = append(fields, row(i, chosenField(e, at(name+"_azimuth", i), degrees, azimuth), chosenField(e, at(name+"_distance", i), e.units.long(), distance))...)
	}
	return fields
}

func (e *entry) obstacleGroup(i int, list []survey.Obstacle) view.Group {
	var o survey.Obstacle
	var azimuth *survey.MeasuredAngle
	var distance, radius *survey.MeasuredLength
	legend := words.NewObstacle
	if i < len(list) {
		o = list[i]
		azimuth, distance, radius, legend = &o.Azimuth, &o.Distance, &o.Radius, o.What
	}
	corners := e.field(at("obstacle_corners", i), view.Long, cornerText(o.Corners, e.units.long()))
	corners.Help += " " + e.units.long() + "."
	return view.Group{Legend: legend, Fields: []view.Field{
		e.field(at("obstacle_what", i), view.Text, o.What), e.selectField(at("obstacle_kind", i), o.Kind, obstacleKinds),
		measuredField(e, at("obstacle_azimuth", i), degrees, azimuth, quantity.Compass),
		measuredField(e, at("obstacle_distance", i), e.units.long(), distance, quantity.Taped),
		measuredField(e, at("obstacle_radius", i), e.units.long(), radius, quantity.Taped),
		e.selectField(at("obstacle_shape", i), shapeOf(o), obstacleShapes), corners,
	}}
}

// The shapes of an obstacle in the form.
const (
	shapeDisc = "disc"
	shapeLine = "line"
	shapeArea = "area"
)

var (
	obstacleKinds  = []view.Choice{{Value: survey.Solid, Text: words.KindSolid}, {Value: survey.Water, Text: words.KindWater}, {Value: survey.Path, Text: words.KindPath}}
	obstacleShapes = []view.Choice{{Value: shapeDisc, Text: words.ShapeDisc}, {Value: shapeLine, Text: words.ShapeLine}, {Value: shapeArea, Text: words.ShapeArea}}
)

func shapeOf(o survey.Obstacle) string {
	switch {
	case o.Area:
		return shapeArea
	case len(o.Corners) > 0:
		return shapeLine
	}
	return shapeDisc
}
