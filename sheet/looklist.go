package sheet

import (
	"fmt"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/sheet/words"
)

var lookListKind = Kind{Name: "looklist", Says: words.LookListSays, NeedsTree: true, build: lookList}

// lookList is what is still to be looked at on one tree, to tick off.
func lookList(u *subject) (*Sheet, error) {
	list, err := assess.Looks(u.Survey, u.Knowledge, u.Tree)
	if err != nil {
		return nil, err
	}
	s := &Sheet{Title: fmt.Sprintf(words.LookListTitle, treeName(u.tree(u.Tree))), Subtitle: fmt.Sprintf(words.Of, u.Survey.Site, u.Survey.Day)}
	if len(list.Bring) > 0 {
		s.heading(1, words.LookListBring)
		s.add(&Checklist{[]string{wording.Methods(list.Bring)}})
	}
	s.heading(1, words.LookListTasks)
	if len(list.Tasks) == 0 {
		s.say(words.LookListDone)
	}
	for _, task := range list.Tasks {
		s.add(&Paragraph{Words: wording.Task(task), Strong: true})
		var items []string
		for _, sign := range task.LookFor {
			items = append(items, sign.Name+": "+sign.LookFor)
		}
		for _, n := range task.NotToday {
			items = append(items, words.LookListCant+": "+wording.NotToday(n))
		}
		if len(items) > 0 {
			s.add(&Checklist{items})
		}
	}
	s.add(&Lines{[]Field{{words.LookListNotes, 6}}})
	s.add(&Cautions{wording.Cautions()})
	s.sign(words.WhoJudged)
	return s, nil
}
