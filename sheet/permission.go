package sheet

import (
	"fmt"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/sheet/figure"
	"boughline/sheet/words"
)

var permissionKind = Kind{Name: "permission", Says: words.PermissionSays, build: permission}

// permission is a letter to the landowner, with the trees and a place to
// answer.
func permission(u *subject) (*Sheet, error) {
	s := &Sheet{Title: words.PermissionTitle, Subtitle: u.Survey.Site}
	s.add(&Lines{[]Field{{words.PermissionTo, 3}, {words.PermissionFrom, 3}}})
	s.say(fmt.Sprintf(words.PermissionAsk, u.Survey.Site, u.Survey.Day))
	s.heading(1, words.PermissionTrees)
	t := &Table{Caption: words.PermissionShown, Columns: []Column{{Title: words.Tree, Wide: 4}, {Title: words.StandsAt, Wide: 4}, {Title: words.Outcome, Wide: 6}}}
	for i := range u.Survey.Trees {
		tree := &u.Survey.Trees[i]
		if u.Tree != "" && u.Tree != tree.ID || u.Tree == "" && leftAlone(u.of(tree.ID)) {
			continue
		}
		at := ""
		if tree.East != nil && tree.North != nil {
			at = fmt.Sprintf(words.StandsEast, wording.Quantity(float64(tree.East.Value), "m"), wording.Quantity(float64(tree.North.Value), "m"))
		}
		t.Rows = append(t.Rows, []string{treeCell(tree), at, outcomeWords(u.of(tree.ID))})
	}
	s.add(t)
	s.heading(1, words.PermissionWhat)
	s.add(&List{Items: words.PermissionDo})
	s.heading(1, words.PermissionNeed)
	s.add(&Checklist{words.PermissionTell})
	s.heading(1, words.SitePlan)
	s.add(&Figures{Scenes: []*draw.Scene{figure.Site(u.Survey.Site, u.figures.Trees(), nil)}})
	s.photos(u.Photos)
	s.add(&Cautions{wording.Cautions()})
	s.heading(1, words.PermissionReply)
	s.add(&Checklist{[]string{words.PermissionTick1, words.PermissionTick2, words.PermissionTick3}})
	s.add(&Lines{[]Field{{words.PermissionCond, 3}}})
	s.add(&Signatures{[]string{words.PermissionWho, words.PermissionSent}})
	return s, nil
}

// best is the outcome of the hang of a tree that may soonest be put up.
func best(hangs []assess.Hang) assess.Outcome {
	best := hangs[0].Outcome
	for _, h := range hangs {
		best = min(best, h.Outcome)
	}
	return best
}

// leftAlone reports whether nothing is to be hung on a tree for which hangs
// were asked.
func leftAlone(hangs []assess.Hang) bool { return len(hangs) > 0 && best(hangs) == assess.Leave }

func outcomeWords(hangs []assess.Hang) string {
	if len(hangs) == 0 {
		return words.NoHangHere
	}
	return wording.Brief(best(hangs))
}
