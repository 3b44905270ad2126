package web

import (
	"fmt"
	"net/http"
	"slices"
	"strings"

	"boughline/engine/signs"
	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// looker is the person who looks today.
func (a *app) looker(name string) notebook.Looker {
	day, err := survey.ParseDate(a.Today())
	if err != nil {
		day = survey.Date{} // a look without a day counts for none
	}
	return notebook.Looker{On: day, By: name, Signs: a.Notebook.Knowledge().Signs()}
}

func (a *app) lookZone(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(_ *entry, s *notebook.Site, t *notebook.Tree) error {
		zone := r.PathValue("zone")
		if !slices.Contains(survey.Zones, zone) {
			return errNoPage
		}
		looker := a.looker("")
		answers := looker.AnswersOf(t, zone)
		page := view.Look{
			Page: a.newPage(r, words.Zone(zone), a.treeTrail(s, t)...), Path: a.treeLink(s, t, "look", zone),
			State: zoneState(looker, t, zone), Tree: a.treeLink(s, t),
		}
		for _, sign := range looker.Signs {
			if string(sign.Zone) == zone {
				page.Signs = append(page.Signs, a.signBlock(s, t, sign, answers[sign.ID]))
			}
		}
		button := a.formButton(words.RestNotSeen, page.Path+"/rest")
		page.Rest, page.RestHelp = &button, words.RestHelp
		if zoneDone(t, zone) || len(answers) == len(page.Signs) {
			button = a.formButton(words.Afresh, page.Path+"/afresh")
			page.RestHelp = words.AfreshHelp
		}
		if next := nextZone(zone); next != "" {
			page.Next = &view.Link{Text: words.Zone(next), To: a.treeLink(s, t, "look", next)}
		}
		return a.send(w, r, http.StatusOK, view.LookPage(page))
	})
}

func nextZone(zone string) string {
	i := slices.Index(survey.Zones, zone)
	if i+1 < len(survey.Zones) {
		return survey.Zones[i+1]
	}
	return ""
}

func (a *app) signBlock(s *notebook.Site, t *notebook.Tree, sign signs.Sign, answer notebook.Answer) view.Sign {
	block := view.Sign{
		ID: sign.ID, Name: capital(sign.Name), LookFor: sign.LookFor, MayMean: capital(sign.MayMean), WorseIf: sign.WorseIf,
		CloserLook: sign.CloserLook, StandIns: strings.Join(sign.StandIns, ", "), Memory: memoryNote(sign.FromMemory, sign.PartlyFromMemory),
		Sketch: a.sketchOf(sign.ID), Answer: string(answer), Action: a.treeLink(s, t, "look", string(sign.Zone)), Form: a.NewID(),
	}
	if slices.Contains(fungusSigns, sign.ID) {
		block.Key = a.lookKeyLink(s, t, sign)
	}
	for i := range t.Findings {
		if f := &t.Findings[i]; f.Sign == sign.ID {
			block.Findings = append(block.Findings, a.findingLine(s, t, f))
		}
	}
	return block
}

func memoryNote(all, part bool) string {
	switch {
	case all:
		return words.FromMemory
	case part:
		return words.PartMemory
	}
	return ""
}

// zoneDone reports whether a zone has a finished look that covers every limb.
func zoneDone(t *notebook.Tree, zone string) bool {
	finished := slices.ContainsFunc(t.Looks, func(l survey.Look) bool { return l.Zone == zone && l.State != survey.LookNotDone })
	return finished && len(notebook.Limbless(t, zone)) == 0
}

// zoneState says how far a zone is.
func zoneState(looker notebook.Looker, t *notebook.Tree, zone string) string {
	if missing := notebook.Limbless(t, zone); len(missing) > 0 && slices.ContainsFunc(t.Looks, func(l survey.Look) bool { return l.Zone == zone && l.State == survey.LookDone }) {
		return words.NotLookedFor + " " + strings.Join(missing, ", ")
	}
	for i := len(t.Looks) - 1; i >= 0; i-- {
		l := t.Looks[i]
		switch {
		case l.Zone != zone || l.State == survey.LookNotDone:
		case l.State == survey.LookBlocked:
			return words.LookBlocked + " " + l.On.String()
		default:
			return words.LookDone + " " + l.On.String()
		}
	}
	total := 0
	for _, s := range looker.Signs {
		if string(s.Zone) == zone {
			total++
		}
	}
	if answered := len(t.Answers[zone]); answered > 0 {
		return fmt.Sprintf("%d / %d %s", answered, total, words.SignsAnswered)
	}
	return words.LookNotDone
}
