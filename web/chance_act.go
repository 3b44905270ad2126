package web

import (
	"strings"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// measureAt is the form where a measurement is written down.
func (a *app) measureAt(s *notebook.Site, t *notebook.Tree, h *survey.Hang, n assess.NextMeasurement) *view.Link {
	if zone, isLook := strings.CutPrefix(n.What, knowledge.LookEffort); isLook {
		return &view.Link{Text: words.DoIt + ": " + words.Zone(zone), To: a.treeLink(s, t, "look", zone)}
	}
	switch n.What {
	case knowledge.RidersEffort:
		return &view.Link{Text: words.NextDo + ": " + words.RidersTitle, To: a.link("site", s.ID, "riders")}
	case knowledge.ArmEffort:
		return &view.Link{Text: words.NextDo + ": " + words.HangTitle + " " + h.ID, To: a.treeLink(s, t, "hang", h.ID, "edit")}
	}
	m := memberOf(t, n.Part)
	if m == nil {
		return nil
	}
	return &view.Link{Text: words.NextDo + ": " + memberName(m), To: a.treeLink(s, t, "member", m.ID)}
}
