package web

import (
	"fmt"
	"net/http"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/sheet/figure"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// spareRows is how many empty rows a form of rows has; more come once they are
// kept.
const spareRows = 4

// editSpots shows the spot heights about a tree.
func (a *app) editSpots(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error { return a.spotsForm(w, r, e, s, t, nil) })
}

func (a *app) spotsForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, problems []string) error {
	lie := survey.Lie{}
	if t.Ground != nil {
		lie = *t.Ground
	}
	f := view.Form{
		Page: a.newPage(r, words.SpotsTitle, a.treeTrail(s, t)...), Back: a.treeLink(s, t), Problems: problems, Revision: t.Revision, Intro: words.SpotsIntro,
		Drawings: a.spotDrawings(r, s, t),
		Groups: []view.Group{
			{Legend: words.EvenGround, Help: words.EvenGroundHelp, Fields: e.evenFields()},
			{Legend: words.Spots, Help: words.RowsHelp, Fields: e.spotRows(lie.Spots)},
			{Legend: words.TheGround, Fields: []view.Field{
				e.selectField("surface", lie.Surface, a.surfaceChoices()), measuredField(e, "depth_loose", e.units.thick(), lie.DepthLoose, quantity.Taped),
			}},
		},
	}
	return a.form(w, r, e, f)
}

func (e *entry) spotRows(spots []survey.SpotHeight) []view.Field {
	var fields []view.Field
	for i := range e.rows("lie_height", len(spots)) {
		var azimuth *survey.ChosenAngle
		var distance *survey.ChosenLength
		var height *survey.MeasuredLength
		if i < len(spots) {
			azimuth, distance, height = &spots[i].Azimuth, &spots[i].Distance, &spots[i].Height
		}
		fields = append(fields, row(i,
			chosenField(e, at("lie_azimuth", i), degrees, azimuth), chosenField(e, at("lie_distance", i), e.units.long(), distance),
			measuredField(e, at("lie_height", i), e.units.long(), height, quantity.Clinometer))...)
	}
	return fields
}

// rows is how many rows a form has: those that were sent, or those kept and some
// to spare.
func (e *entry) rows(name string, kept int) int {
	sent := 0
	for e.listed && e.values.Has(at(name, sent)) {
		sent++
	}
	return max(sent, kept+spareRows)
}

// at names a field of a row.
func at(name string, i int) string { return fmt.Sprintf("%s_%d", name, i) }

// row sets fields side by side; the help stands with the first row only.
func row(i int, fields ...view.Field) []view.Field {
	for j := range fields {
		fields[j].Pair = true
		if i > 0 {
			fields[j].Help = ""
		}
	}
	fields[0].First = true
	return fields
}

func (a *app) saveSpots(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		return a.change(w, r, e, s, t, words.DidEditSpots, a.treeLink(s, t, "ground"),
			func(t *notebook.Tree) any { return t.Ground },
			func(t *notebook.Tree) error { readSpots(e, t); return e.taken() },
			func(problems []string) error { return a.spotsForm(w, r, e, s, t, problems) })
	})
}

// readSpots takes the rows that hold something; an emptied one is taken off.
func readSpots(e *entry, t *notebook.Tree) {
	var before survey.Lie
	if t.Ground != nil {
		before = *t.Ground
	}
	lie := survey.Lie{Surface: e.text("surface"), DepthLoose: measured(e, "depth_loose", e.units.thick(), before.DepthLoose)}
	for i := 0; e.values.Has(at("lie_height", i)); i++ {
		var kept survey.SpotHeight
		if i < len(before.Spots) {
			kept = before.Spots[i]
		}
		if e.blank(i, "lie_azimuth", "lie_distance", "lie_height") {
			continue
		}
		lie.Spots = append(lie.Spots, survey.SpotHeight{
			Azimuth:  need(e, at("lie_azimuth", i), chosen(e, at("lie_azimuth", i), degrees, &kept.Azimuth)),
			Distance: need(e, at("lie_distance", i), chosen(e, at("lie_distance", i), e.units.long(), &kept.Distance)),
			Height:   need(e, at("lie_height", i), measured(e, at("lie_height", i), e.units.long(), &kept.Height)),
		})
	}
	if even := evenSpots(e); even != nil {
		lie.Spots = even
	}
	t.Ground = nil
	switch {
	case len(lie.Spots) == 0 && lie.Surface == "" && lie.DepthLoose == nil:
	case len(lie.Spots) < 3:
		e.faults["lie_height_0"] = words.WantSpots
	case lie.Surface == "":
		e.faults["surface"] = words.WantValue
	default:
		t.Ground = &lie
	}
}

// blank reports whether nothing stands in a row.
func (e *entry) blank(i int, names ...string) bool {
	for _, name := range names {
		if e.text(at(name, i)) != "" {
			return false
		}
	}
	return true
}

func (a *app) surfaceChoices() []view.Choice {
	list := []view.Choice{{Text: words.NotChosen}}
	for _, s := range a.Notebook.Knowledge().Surfaces() {
		list = append(list, view.Choice{Value: s.Name, Text: s.Name})
	}
	return list
}

// spotDrawings draw the spots as they are kept.
func (a *app) spotDrawings(r *http.Request, s *notebook.Site, t *notebook.Tree) []view.Drawing {
	figures, err := a.Notebook.Figures(s, t)
	if err != nil {
		return nil
	}
	tree, err := figures.Tree(t.ID)
	if err != nil {
		return nil
	}
	if scene := figure.Spots(tree); scene != nil {
		return []view.Drawing{easel{a, r, nil}.drawn(scene)}
	}
	return nil
}
