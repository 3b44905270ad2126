package web

import (
	"boughline/assess"
	"boughline/draw"
	"boughline/draw/svg"
	"boughline/notebook"
	"boughline/sheet/figure"
)

// treeDrawings are the drawings of a tree. What cannot be drawn yet is left
// out: the lists beside them say what is missing.
func (a *app) treeDrawings(s *notebook.Site, t *notebook.Tree) []string {
	figures, err := a.Notebook.Figures(s, t)
	if err != nil {
		return nil
	}
	tree, err := figures.Tree(t.ID)
	if err != nil {
		return nil
	}
	return []string{drawn(figure.Elevation(tree, nil)), drawn(figure.Plan(tree, nil))}
}

// hangDrawings are the drawings of a hang with what follows for it.
func (a *app) hangDrawings(s *notebook.Site, t *notebook.Tree, h assess.Hang) []string {
	figures, err := a.Notebook.Figures(s, t)
	if err != nil {
		return nil
	}
	tree, errTree := figures.Tree(t.ID)
	hang, errHang := figures.Hang(h.ID)
	if errTree != nil || errHang != nil {
		return nil // the reasons say why it is not computed
	}
	judged := figure.Judged{Figure: hang, Assessed: h}
	var list []string
	if swing, err := figure.Swing(judged); err == nil {
		list = append(list, drawn(swing))
	}
	list = append(list, drawn(figure.Elevation(tree, &judged)), drawn(figure.Plan(tree, &judged)), drawn(figure.Bending(judged)))
	if rig, err := figure.Rig(judged); err == nil {
		list = append(list, drawn(rig))
	}
	return list
}

func drawn(scene *draw.Scene) string { return svg.Text(scene, svg.Options{}) }
