package web

import (
	"net/http"

	"boughline/web/view"
	"boughline/web/words"
	"boughline/work"
)

// topics are the subjects of the workbench in the order in which they are shown.
var topics = []string{"swing", "limb", "line", "room", "wind", "chance", "measuring"}

func (a *app) listQuestions(w http.ResponseWriter, r *http.Request) error {
	page := view.Workbench{Page: a.newPage(r, words.Workbench)}
	for _, topic := range topics {
		group := view.Questions{Title: words.Topics[topic]}
		for _, q := range work.Questions() {
			if q.Topic == topic {
				group.List = append(group.List, view.Link{Text: q.Asks, To: a.link("workbench", q.ID)})
			}
		}
		page.Groups = append(page.Groups, group)
	}
	last := &page.Groups[len(page.Groups)-1]
	last.List = append(last.List, view.Link{Text: words.MeasureKinds, To: a.link("measure")}, view.Link{Text: words.FungusKeyToo, To: a.link("fungi", "key")})
	return a.send(w, r, http.StatusOK, view.WorkbenchPage(page))
}
