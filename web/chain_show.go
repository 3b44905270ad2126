package web

import (
	"fmt"
	"net/http"
	"strings"

	"boughline/notebook"
	"boughline/register"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) withChain(w http.ResponseWriter, r *http.Request, then func(*entry, *notebook.Site, *survey.Chain) error) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		c := chainOf(&s.Head, r.PathValue("chain"))
		if c == nil {
			return errNoPage
		}
		return then(e, s, c)
	})
}

func (a *app) showChain(w http.ResponseWriter, r *http.Request) error {
	return a.withChain(w, r, func(e *entry, s *notebook.Site, c *survey.Chain) error {
		g, err := a.Notebook.Gear(r.Context())
		if err != nil {
			return err
		}
		page := view.Chain{Page: a.newPage(r, c.ID, a.chainsTrail(s)...), Path: a.chainLink(s, c.ID), Hangs: a.hangsWith(s, c.ID)}
		var codes []register.Code
		for n, p := range c.Parts {
			line := view.GearLine{To: a.chainLink(s, c.ID, "part", fmt.Sprint(n)), Name: p.Name, Side: partStrength(p), Sub: aboutPart(p), Despite: p.Despite}
			if p.Item != "" {
				bars := g.Bars(p.Item, s.Head.Day)
				line.Against, codes = barTexts(bars), append(codes, codesOf(bars)...)
			}
			page.Parts = append(page.Parts, view.ChainPart{GearLine: line, Moves: a.partMoves(s, c, n)})
		}
		page.Items, page.Basis = itemChoices(g, s.Head.Day), basisOf(codes)
		if len(page.Hangs) == 0 {
			b := a.onRevision(s, words.DeleteChain, a.chainLink(s, c.ID, "delete"))
			page.Delete = &b
		}
		return a.send(w, r, http.StatusOK, view.ChainPage(page))
	})
}

// partStrength is what is said of the strength of a part.
func partStrength(p survey.Part) string {
	i := register.Item{Mark: p.Mark, Standard: p.Standard}
	return i.Strength()
}

// aboutPart is how a part is used, in one line.
func aboutPart(p survey.Part) string {
	parts := []string{p.Kind, p.Material}
	if p.Item != "" {
		parts = append([]string{words.Fields["item"].Name + " " + p.Item}, parts...)
	}
	if p.Hitch != "" {
		parts = append(parts, p.Hitch)
	}
	parts = append(parts, p.Ends...)
	condition := p.Condition
	if condition == "" {
		condition = words.NotChosen
	}
	return strings.Join(append(parts, strings.ToLower(words.Fields["condition"].Name)+" "+condition), ", ")
}

func (a *app) partMoves(s *notebook.Site, c *survey.Chain, n int) []view.Button {
	var list []view.Button
	add := func(can bool, text, move string) {
		if can {
			b := a.onRevision(s, text, a.chainLink(s, c.ID, "part", fmt.Sprint(n), move))
			list = append(list, b)
		}
	}
	add(n > 0, words.MoveUp, "up")
	add(n < len(c.Parts)-1, words.MoveDown, "down")
	add(len(c.Parts) > 1, words.TakeOut, "out")
	return list
}

// onRevision is a button that counts only for the site as it is shown.
func (a *app) onRevision(s *notebook.Site, text, action string) view.Button {
	b := a.formButton(text, action)
	b.Hidden = append(b.Hidden, view.Choice{Value: "revision", Text: fmt.Sprint(s.Revision)})
	return b
}

// itemChoices are the items of the register that a chain can have as parts,
// each with what stands against it.
func itemChoices(g *notebook.Gear, on survey.Date) []view.Choice {
	var list []view.Choice
	for _, i := range g.Items {
		if _, err := i.Part(on); err != nil {
			continue
		}
		text := itemName(i)
		if bars := g.Bars(i.ID, on); len(bars) > 0 {
			text += ": " + bars[0].String()
		}
		list = append(list, view.Choice{Value: i.ID, Text: text})
	}
	return list
}

func (a *app) hangsWith(s *notebook.Site, chain string) []view.Link {
	var list []view.Link
	for i := range s.Trees {
		for _, h := range s.Trees[i].Hangs {
			if h.Chain == chain {
				list = append(list, view.Link{Text: h.ID, To: a.treeLink(s, &s.Trees[i], "hang", h.ID)})
			}
		}
	}
	return list
}
