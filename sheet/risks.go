package sheet

import (
	"fmt"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/sheet/words"
)

var risksKind = Kind{Name: "risks", Says: words.RisksSays, build: risks}

// risks is the record of risks and benefits of a site: what is known is filled
// in, the rest has lines to fill in by hand.
func risks(u *subject) (*Sheet, error) {
	s := &Sheet{Title: fmt.Sprintf(words.RisksTitle, u.Survey.Site), Subtitle: fmt.Sprintf(words.SiteJudged, u.Survey.Day)}
	s.say(words.RisksAbout)
	s.heading(1, words.Activity)
	s.say(words.ActivityText)
	var outcomes []string
	for _, h := range u.hangs {
		outcomes = append(outcomes, fmt.Sprintf(words.TreeOutcome, h.ID, wording.Brief(h.Outcome)))
	}
	s.add(&List{Items: outcomes})
	s.add(&Lines{[]Field{{words.WhoIsThere, 2}, {words.WhoSupervises, 2}}})
	s.heading(1, words.Benefits)
	s.add(&Lines{[]Field{{words.BenefitLines, 4}}})
	s.heading(1, words.RisksPart)
	s.add(riskTable(u))
	s.add(&Lines{[]Field{{words.MoreHazards, 5}}})
	s.heading(1, words.Emergency)
	if p := u.Survey.Place; p != nil {
		s.say(fmt.Sprintf(words.EmergencyGrid, p.Latitude, p.Longitude))
		if p.WayIn != "" {
			s.say(fmt.Sprintf(words.WayIn, p.WayIn))
		}
	}
	s.add(&Lines{[]Field{{words.EmergencyAsk, 3}}})
	s.heading(1, words.Weighing)
	s.add(&Lines{[]Field{{words.WeighingLines, 3}, {words.ReviewLines, 1}}})
	s.add(&Cautions{wording.Cautions()})
	s.sign(words.WhoSite, words.WhoJudged)
	return s, nil
}

// riskTable lists the hazards that swinging brings, those of the site, and the
// findings that lead to more than a remark.
func riskTable(u *subject) *Table {
	t := &Table{Caption: words.RisksShown, Columns: []Column{{Title: words.Hazard, Wide: 4}, {Title: words.WhoHurt, Wide: 2.6}, {Title: words.IsDone, Wide: 5}, {Title: words.Remains, Wide: 3.4}}}
	for _, g := range words.Generic {
		t.Rows = append(t.Rows, []string{g[0], g[1], g[2], ""})
	}
	for i := range u.Survey.Hazards {
		h := &u.Survey.Hazards[i]
		row, _ := u.Knowledge.Hazard(h.Hazard)
		t.Rows = append(t.Rows, []string{hazardName(h, row.Name, row.Means) + " (" + hazardPlace(u, h) + ")", "", row.Do, ""})
	}
	seen := map[string]bool{}
	for _, h := range u.hangs {
		for _, r := range h.Reasons {
			if key := h.Tree + r.Finding; r.Code == assess.SignFound && !r.Remark && r.OnTree == "" && !seen[key] {
				seen[key] = true
				tree := treeName(u.tree(h.Tree))
				t.Rows = append(t.Rows, []string{fmt.Sprintf(words.FromFinding, r.Sign.Name, tree, r.Finding), "", wording.Effect(r.Effect) + "; " + wording.Change(r.Change), ""})
			}
		}
	}
	return t
}
