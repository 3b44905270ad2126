package web

import (
	"fmt"
	"net/http"
	"slices"
	"strings"

	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) listChains(w http.ResponseWriter, r *http.Request) error {
	s, err := a.site(r)
	if err != nil {
		return err
	}
	page := view.Chains{Page: a.newPage(r, words.Chains, a.siteTrail(s)...), New: a.link("site", s.ID, "chains", "new")}
	for _, c := range s.Head.Chains {
		parts := words.OnePart
		if len(c.Parts) != 1 {
			parts = fmt.Sprintf(words.PartsOf, len(c.Parts))
		}
		line := view.GearLine{To: a.chainLink(s, c.ID), Name: c.ID, Side: parts}
		for i, p := range c.Parts {
			if i > 0 {
				line.Sub += ", "
			}
			line.Sub += p.Name
		}
		page.List = append(page.List, line)
	}
	return a.send(w, r, http.StatusOK, view.ChainsPage(page))
}

func (a *app) chainLink(s *notebook.Site, chain string, parts ...string) string {
	return a.link(append([]string{"site", s.ID, "chain", chain}, parts...)...)
}

func (a *app) chainsTrail(s *notebook.Site) []view.Link {
	return append(a.siteTrail(s), view.Link{Text: words.Chains, To: a.link("site", s.ID, "chains")[len(a.Base):]})
}

func (a *app) chainTrail(s *notebook.Site, c *survey.Chain) []view.Link {
	return append(a.chainsTrail(s), view.Link{Text: c.ID, To: a.chainLink(s, c.ID)[len(a.Base):]})
}

func (a *app) newChain(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error { return a.newChainForm(w, r, e, s, nil) })
}

func (a *app) newChainForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, problems []string) error {
	like := []view.Choice{{Text: words.UsualParts}}
	for _, c := range s.Head.Chains {
		like = append(like, view.Choice{Value: c.ID, Text: c.ID})
	}
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.NewChain, a.chainsTrail(s)...), Back: a.link("site", s.ID, "chains"), Problems: problems, Revision: s.Revision,
		Groups: []view.Group{{Fields: []view.Field{e.field("chain_name", view.Text, ""), e.selectField("like", "", like)}}},
	})
}

func (a *app) createChain(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		g, err := a.Notebook.Gear(r.Context())
		if err != nil {
			return err
		}
		chain := startChains()[0]
		if like := chainOf(&s.Head, e.text("like")); like != nil {
			chain.Parts = partsAnew(e, g, s.Head.Day, like.Parts)
		}
		chain.ID = needText(e, "chain_name")
		return a.changeChains(w, r, e, s, words.DidAddChain+chain.ID, a.chainLink(s, chain.ID),
			func(now *survey.Survey) error { now.Chains = append(slices.Clone(now.Chains), chain); return nil },
			func(problems []string) error { return a.newChainForm(w, r, e, s, problems) })
	})
}

// partsAnew are the parts of a chain for another one: nobody has looked them
// over for it. An item against which something stands, without a reason, goes
// into no new chain.
func partsAnew(e *entry, g *notebook.Gear, on survey.Date, parts []survey.Part) []survey.Part {
	parts = slices.Clone(parts)
	for i := range parts {
		p := &parts[i]
		if p.Condition == "good" {
			p.Condition = words.StartCondition
		}
		if p.Item == "" || p.Despite != "" {
			continue
		}
		if bars := g.Bars(p.Item, on); len(bars) > 0 {
			e.faults["like"] = p.Name + " (" + p.Item + "): " + strings.ToLower(strings.Join(barTexts(bars), "; ")) + "; " + words.WantReasonThere
		}
	}
	return parts
}

// changeChains makes a change of the chains of a site and answers the form it
// came from.
func (a *app) changeChains(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, what, next string, change func(*survey.Survey) error, anew func([]string) error) error {
	err := e.taken()
	if err == nil {
		edit := e.edit(what, nil)
		edit.To = next
		err = a.Notebook.ChangeSite(r.Context(), s.ID, edit, change)
	}
	return a.saved(w, r, err, next, anew)
}

func chainOf(head *survey.Survey, id string) *survey.Chain {
	for i := range head.Chains {
		if head.Chains[i].ID == id {
			return &head.Chains[i]
		}
	}
	return nil
}
