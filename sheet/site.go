package sheet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/sheet/figure"
	"boughline/sheet/words"
	"boughline/survey"
)

var siteKind = Kind{Name: "site", Says: words.SiteSays, build: site}

// site is a whole site at a glance.
func site(u *subject) (*Sheet, error) {
	s := &Sheet{Title: fmt.Sprintf(words.SiteTitle, u.Survey.Site), Subtitle: fmt.Sprintf(words.SiteJudged, u.Survey.Day)}
	s.say(siteTotal(u))
	if p := u.Survey.Place; p != nil && p.WayIn != "" {
		s.say(fmt.Sprintf(words.WayIn, p.WayIn))
	}
	s.say(u.Survey.Note)
	s.ranked(u)
	s.hazards(u)
	s.add(&Cautions{wording.Cautions()})
	s.sitePlan(u)
	s.photos(photosOf(u.Photos, ""))
	s.sign(words.WhoJudged, words.WhoSite)
	return s, nil
}

// siteTotal counts the outcomes of a site.
func siteTotal(u *subject) string {
	var parts []string
	for _, o := range assess.Outcomes() {
		n := 0
		for _, h := range u.hangs {
			if h.Outcome == o {
				n++
			}
		}
		if n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n, o))
		}
	}
	return fmt.Sprintf(words.SiteTotal, len(u.Survey.Trees), len(u.hangs), strings.Join(parts, ", "))
}

// sitePlan draws the site from above, and the least margin of every hang.
func (s *Sheet) sitePlan(u *subject) {
	var judged []figure.Judged
	in := figure.MarginsInput{Key: "of " + u.Survey.Site, Title: words.SiteMargins}
	for _, h := range u.hangs {
		if j, ok := u.judged(h); ok {
			judged = append(judged, j)
		}
		if len(h.Checks) > 0 {
			c := h.Checks[0]
			in.Bars = append(in.Bars, figure.MarginBar{Words: h.ID + ": " + wording.Check(c), Margin: c.Margin, Best: c.Best})
		}
	}
	s.heading(1, words.SitePlan)
	s.add(&Figures{Scenes: []*draw.Scene{figure.Site(u.Survey.Site, u.figures.Trees(), judged)}, Wide: true})
	if len(in.Bars) > 0 {
		s.add(&Figures{Scenes: []*draw.Scene{figure.Margins(in)}})
	}
}

// ranked is the table of all trees and hangs, the best outcome first.
func (s *Sheet) ranked(u *subject) {
	t := &Table{Caption: words.SiteShown, Columns: []Column{{Title: words.Tree, Wide: 3}, {Title: words.Hang, Wide: 2.6}, {Title: words.Outcome, Wide: 4}, {Title: words.Governs, Wide: 6}, {Title: words.LeastMargin, Wide: 1.5, Number: true}}}
	hangs := slices.Clone(u.hangs)
	slices.SortStableFunc(hangs, func(a, b assess.Hang) int {
		return cmp.Or(cmp.Compare(a.Outcome, b.Outcome), cmp.Compare(leastMargin(b), leastMargin(a)))
	})
	for _, h := range hangs {
		least := ""
		if len(h.Checks) > 0 {
			least = wording.Margin(leastMargin(h))
		}
		t.Rows = append(t.Rows, []string{treeCell(u.tree(h.Tree)), h.ID, shaped(h.Outcome, wording.Brief(h.Outcome)), governs(h), least})
	}
	for i := range u.Survey.Trees {
		if tree := &u.Survey.Trees[i]; len(tree.Hangs) == 0 && (u.Tree == "" || u.Tree == tree.ID) {
			t.Rows = append(t.Rows, []string{treeCell(tree), "", words.NoHangHere, "", ""})
		}
	}
	s.heading(1, words.SiteTrees)
	s.add(t)
}

// leastMargin is that of the check with the least in hand, 0 without checks.
func leastMargin(h assess.Hang) float64 {
	if len(h.Checks) == 0 {
		return 0
	}
	return h.Checks[0].Margin
}

func treeCell(t *survey.Tree) string {
	return fmt.Sprintf("%s (%s, %s)", treeName(t), t.ID, t.Species)
}

// hazards is the table of the hazards that were written down.
func (s *Sheet) hazards(u *subject) {
	s.heading(1, words.SiteHazards)
	if len(u.Survey.Hazards) == 0 {
		s.say(words.NoHazard)
		return
	}
	t := &Table{Caption: words.HazardsShown, Columns: []Column{{Title: words.Hazard, Wide: 4}, {Title: words.Where, Wide: 3}, {Title: words.HazardDo, Wide: 5}, {Title: words.AskWhom, Wide: 3}}}
	for i := range u.Survey.Hazards {
		h := &u.Survey.Hazards[i]
		row, _ := u.Knowledge.Hazard(h.Hazard)
		t.Rows = append(t.Rows, []string{hazardName(h, row.Name, row.Means), hazardPlace(u, h), row.Do, row.CheckWith})
	}
	s.add(t)
}

// hazardName is a hazard with what was written of it.
func hazardName(h *survey.Hazard, name, means string) string {
	text := fmt.Sprintf("%s: %s", name, means)
	if h.Cleared != nil {
		text += "; " + fmt.Sprintf(words.ClearedOn, h.Cleared.On, h.Cleared.How)
	}
	if h.Note != "" {
		text += "; " + h.Note
	}
	return text
}

func hazardPlace(u *subject, h *survey.Hazard) string {
	switch {
	case h.Side != nil && h.Distance != nil:
		return fmt.Sprintf(words.ByTree, measured(h.Distance, "m"), treeName(u.tree(h.Tree)), wording.Quantity(float64(h.Side.Value), "rad"))
	case h.East != nil && h.North != nil:
		return fmt.Sprintf(words.StandsEast, measured(h.East, "m"), measured(h.North, "m"))
	case h.Tree != "":
		return fmt.Sprintf(words.OfTree, treeName(u.tree(h.Tree)))
	}
	return words.WholeSite
}
