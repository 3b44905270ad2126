package sheet

import (
	"fmt"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/sheet/figure"
	"boughline/sheet/words"
	"boughline/survey"
)

var arboristKind = Kind{Name: "arborist", Says: words.ArboristSays, NeedsTree: true, build: arborist}

// arborist is the letter in doubt: what was seen and where, what is asked, and
// nothing claimed beyond it. Outcomes and margins stay out of it, so that they
// lead nobody.
func arborist(u *subject) (*Sheet, error) {
	t := u.tree(u.Tree)
	s := &Sheet{Title: fmt.Sprintf(words.ArboristTitle, treeName(t)), Subtitle: fmt.Sprintf(words.Of, u.Survey.Site, u.Survey.Day)}
	s.add(&Lines{[]Field{{words.ArboristTo, 2}, {words.ArboristFrom, 2}}})
	s.say(words.ArboristAbout)
	for i := range t.Hangs {
		if h := &t.Hangs[i]; u.Hang == "" || u.Hang == h.ID {
			s.say(meantUse(u, h))
		}
	}
	s.heading(1, words.ArboristAsk)
	s.add(&List{Items: questions(u, t), Numbered: true})
	s.seen(u, t)
	s.looks(u, t)
	s.treeFacts(u, t)
	s.treeDrawings(u, t)
	s.photos(photosOf(u.Photos, t.ID))
	s.add(&Cautions{wording.Cautions()})
	s.heading(1, words.ArboristReply)
	s.add(&Lines{[]Field{{words.ArboristLines, 8}}})
	s.add(&Signatures{[]string{words.WhoArborist, words.WhoJudged}})
	return s, nil
}

func meantUse(u *subject, h *survey.Hang) string {
	for _, a := range u.of(u.Tree) {
		if a.ID == h.ID && a.Asked.Riders > 0 {
			return fmt.Sprintf(words.ArboristUse, wording.Use(a.Asked), h.Member, measured(&h.At, "m"))
		}
	}
	return ""
}

// questions are those that findings for an expert raise, and two that always
// stand.
func questions(u *subject, t *survey.Tree) []string {
	var list []string
	seen := map[string]bool{}
	drawn, err := u.figures.Tree(t.ID)
	for _, h := range u.of(t.ID) {
		for _, r := range h.Reasons {
			if err != nil || r.Outcome < assess.AskArborist || r.Finding == "" || r.OnTree != "" || seen[r.Finding] {
				continue
			}
			for _, f := range drawn.Findings {
				if f.Survey.ID == r.Finding {
					seen[r.Finding] = true
					list = append(list, fmt.Sprintf(words.ArboristAskOf, f.Sign.Name, f.Survey.ID, figure.FindingPlace(f), words.ArboristWhat))
				}
			}
		}
	}
	return append(list, words.ArboristAskAll, words.ArboristLimits)
}

// seen is the table of what was seen and where, without what it may mean.
func (s *Sheet) seen(u *subject, t *survey.Tree) {
	s.heading(1, words.ArboristSeen)
	drawn, err := u.figures.Tree(t.ID)
	if err != nil || len(drawn.Findings) == 0 {
		s.say(words.NoFinding)
		return
	}
	table := &Table{Caption: words.ArboristSeen, Columns: []Column{{Title: words.Mark, Wide: 1.2}, {Title: words.Sign2, Wide: 6}, {Title: words.Place, Wide: 4}, {Title: words.SeenOn, Wide: 2}}}
	for _, f := range drawn.Findings {
		table.Rows = append(table.Rows, []string{f.Survey.ID, signWords(f), figure.FindingPlace(f), f.Survey.SeenOn.String()})
	}
	s.add(table)
}
