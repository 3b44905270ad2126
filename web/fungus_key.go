package web

import (
	"fmt"
	"net/http"
	"slices"
	"strings"

	"boughline/engine/fungi"
	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// fungusSigns are the signs of a look that are a fungus.
var fungusSigns = []string{"crown-15", "crown-16", "limb-10", "union-07", "stem-11", "base-04", "base-09", "base-10", "base-11", "root_plate-09"}

// placeOfZone is the place of the key that a zone of a look stands for.
var placeOfZone = map[string]string{
	"crown": "crown", "limb": "limb", "union": "wound", "stem": "trunk", "base": "base", "root_plate": "away from trunk",
}

// openKey is the key by itself, from the table of fungi.
func (a *app) openKey(w http.ResponseWriter, r *http.Request) error {
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	back := view.Link{Text: words.FungusToTable, To: a.link("fungi")}
	page := view.FungusKey{Page: a.newPage(r, words.WhichFungus, view.Link{Text: words.Fungi, To: "fungi"}), Back: back, Path: a.here(r), Afresh: a.here(r)}
	talk := fungusTalkOf(a.Notebook.Knowledge(), e.values)
	_, status := a.fungusPage(&page, e, talk)
	return a.send(w, r, status, view.FungusPage(page))
}

// lookKey is the key for a sign of a look that is a fungus.
func (a *app) lookKey(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		zone := r.PathValue("zone")
		if !slices.Contains(survey.Zones, zone) {
			return errNoPage
		}
		page := view.FungusKey{
			Page: a.newPage(r, words.WhichFungus, a.treeTrail(s, t)...), Path: a.here(r), Afresh: a.begun(t, zone, "", a.here(r)),
			Back: view.Link{Text: words.FungusToLook, To: a.treeLink(s, t, "look", zone)},
		}
		talk := fungusTalkOf(a.Notebook.Knowledge(), e.values)
		_, status := a.fungusPage(&page, e, talk)
		return a.send(w, r, status, view.FungusPage(page))
	})
}

// lookKeyLink leads to the key for a sign: for the newest finding of it where
// there is one, so that the name can be written down.
func (a *app) lookKeyLink(s *notebook.Site, t *notebook.Tree, sign signs.Sign) string {
	for i := len(t.Findings) - 1; i >= 0; i-- {
		if t.Findings[i].Sign == sign.ID {
			return a.findingKeyLink(s, t, &t.Findings[i])
		}
	}
	zone := string(sign.Zone)
	return a.begun(t, zone, "", a.treeLink(s, t, "look", zone, "fungus"))
}

func (a *app) findingKeyLink(s *notebook.Site, t *notebook.Tree, f *survey.Finding) string {
	zone := ""
	if sign, ok := a.Notebook.Knowledge().Sign(f.Sign); ok {
		zone = string(sign.Zone)
	}
	return a.begun(t, zone, f.Note, a.treeLink(s, t, "finding", f.ID, "fungus"))
}

// begun is the address of a key that begins with what is written down: the
// kind of tree, the place and the note. Each can be taken back like an answer.
func (a *app) begun(t *notebook.Tree, zone, note, path string) string {
	var said []fungusSaid
	if note != "" && len(note) <= longestSaid {
		said = append(said, fungusSaid{text: note})
	}
	if _, told, _ := a.Notebook.Knowledge().AnswerFungus(fungi.Evidence{}, fungi.AskHost, t.Species); told {
		said = append(said, fungusSaid{fungi.AskHost, t.Species})
	}
	if place, ok := placeOfZone[zone]; ok {
		said = append(said, fungusSaid{fungi.AskPosition, place})
	}
	return fungusAddress(path, said)
}

// fungusPage fills the page of the key with what a talk comes to.
func (a *app) fungusPage(page *view.FungusKey, e *entry, t *fungusTalk) (knowledge.Identification, int) {
	k := a.Notebook.Knowledge()
	id := k.IdentifyEvidence(t.evidence, t.skipped)
	page.Said, page.Given, page.Unread = t.fields(), t.given(k, page.Path), t.evidence.Unread
	page.Problems = append(page.Problems, t.problems...)
	page.Words = view.Field{Name: "say", Label: words.FungusWords, Help: words.FungusWordsHelp, Kind: view.Long}
	page.First, page.Meaning, page.ReadAs = words.FungusFirst[string(id.Answer)], id.Says, t.evidence.Lines()
	page.Memory, page.Sources = memoryNote(false, id.Memory), citations(id.Refs)
	page.Begins = t.begins()
	page.Lines = fungusLines(id.Ranking())
	if id.Ask != nil {
		page.Question = a.fungusQuestion(id, t)
	}
	if len(page.Problems) > 0 {
		return id, http.StatusUnprocessableEntity
	}
	return id, http.StatusOK
}

func (a *app) fungusQuestion(id knowledge.Identification, t *fungusTalk) *view.FungusQuestion {
	attribute := id.Ask.Attribute
	q := &view.FungusQuestion{Attribute: attribute, Text: id.AskText, CannotTell: attribute + ":" + cannotTell}
	for _, name := range a.Notebook.Knowledge().FungusChoices(attribute) {
		q.Choices = append(q.Choices, view.Choice{Value: attribute + ":" + name, Text: words.FungusChoice(name)})
	}
	q.Other = view.Field{Name: "other", Label: words.FungusOther, Value: t.typed, Need: true}
	if attribute == fungi.AskHost {
		q.Other.Label = words.FungusTree
		for _, s := range a.Notebook.Knowledge().SpeciesList() {
			q.Other.Suggest = append(q.Other.Suggest, s.Common)
		}
	}
	return q
}

// leastNamed is the share below which a name is not shown.
const leastNamed = 0.01

func fungusLines(ranking []knowledge.RankedName) []view.FungusLine {
	var lines []view.FungusLine
	rest := knowledge.RankedName{Name: words.FungusElse, Probability: knowledge.Rest(ranking)}
	for _, one := range append(slices.Clone(ranking), rest) {
		if one.Probability < leastNamed {
			continue
		}
		line := view.FungusLine{
			Name: capital(one.Name), Common: strings.ReplaceAll(one.Common, ";", ", "), Share: fmt.Sprintf("%.0f %%", 100*one.Probability),
			InWords: words.FungusShare(one.Probability), Memory: memoryNote(false, one.FromMemory),
		}
		if one.Name == string(fungi.NotEnoughSeen) {
			line.InWords = words.FungusNotParted
		}
		lines = append(lines, line)
	}
	return lines
}
