package web

import (
	"fmt"
	"net/http"
	"slices"

	"boughline/notebook"
	"boughline/register"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) withGear(r *http.Request, then func(*entry, *notebook.Gear) error) error {
	g, err := a.Notebook.Gear(r.Context())
	if err != nil {
		return err
	}
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	return then(e, g)
}

// day is today, or the zero day where the host cannot say.
func (a *app) day() survey.Date {
	d, err := survey.ParseDate(a.Today())
	if err != nil {
		return survey.Date{}
	}
	return d
}

func (a *app) gearTrail() []view.Link { return []view.Link{{Text: words.GearRegister, To: "gear"}} }

func (a *app) itemTrail(i register.Item) []view.Link {
	return append(a.gearTrail(), view.Link{Text: i.ID, To: a.itemLink(i.ID)[len(a.Base):]})
}

func (a *app) itemLink(id string, parts ...string) string {
	return a.link(append([]string{"gear", "item", id}, parts...)...)
}

func (a *app) listGear(w http.ResponseWriter, r *http.Request) error {
	return a.withGear(r, func(_ *entry, g *notebook.Gear) error {
		on := a.day()
		page := view.Register{Page: a.newPage(r, words.GearRegister), Intro: gearIntro(g), Kept: g.Revision > 0}
		due, codes, err := a.dueLines(g, on)
		if err != nil {
			return err
		}
		page.Due = due
		for _, i := range g.Items {
			bars := g.Bars(i.ID, on)
			line := view.GearLine{To: a.itemLink(i.ID), Name: itemName(i), Side: daysOfUse(g.DaysUsed(i.ID)), Sub: aboutItem(i), Against: barTexts(bars)}
			if i.Retired != nil {
				page.Retired = append(page.Retired, line)
				continue
			}
			page.Items = append(page.Items, line)
			codes = append(codes, codesOf(bars)...)
		}
		page.Basis = basisOf(codes)
		return a.send(w, r, http.StatusOK, view.RegisterPage(page))
	})
}

// dueLines are the items for which something is due, each once, with the codes
// of it all.
func (a *app) dueLines(g *notebook.Gear, on survey.Date) (lines []view.GearLine, codes []register.Code, err error) {
	for _, d := range g.Due(on) {
		i, err := g.Item(d.Item)
		if err != nil {
			return nil, nil, err
		}
		codes = append(codes, d.Code)
		text, to := capital(d.String())+".", a.itemLink(i.ID)
		if at := slices.IndexFunc(lines, func(l view.GearLine) bool { return l.To == to }); at >= 0 {
			lines[at].Sub += " " + text
			continue
		}
		lines = append(lines, view.GearLine{To: to, Name: itemName(i), Sub: text})
	}
	return lines, codes, nil
}

func gearIntro(g *notebook.Gear) string {
	owner := words.GearNobody
	if g.Owner != "" {
		owner = words.GearOf + " " + g.Owner + "."
	}
	switch {
	case g.LOLER == nil:
		return owner + " " + words.LOLERNotSaid
	case *g.LOLER:
		return owner + " " + words.LOLERApplies
	}
	return owner + " " + words.LOLERNot
}

func itemName(i register.Item) string { return i.ID + " " + i.Name }

func aboutItem(i register.Item) string {
	text := i.Kind + ", " + i.Material
	if i.Kind != register.Sleeve {
		text += ", " + i.Strength()
	}
	return text
}

func daysOfUse(n int) string {
	if n == 1 {
		return words.OneDayOfUse
	}
	return fmt.Sprintf(words.DaysOfUse, n)
}

func barTexts(bars []register.Bar) []string {
	var list []string
	for _, b := range bars {
		list = append(list, capital(b.String()))
	}
	return list
}

func codesOf(bars []register.Bar) []register.Code {
	var list []register.Code
	for _, b := range bars {
		list = append(list, b.Code)
	}
	return list
}

// basisOf cites the rules behind codes, each once.
func basisOf(codes []register.Code) []string {
	var list []string
	for _, c := range codes {
		list = append(list, register.Basis(c).Citation())
	}
	slices.Sort(list)
	return slices.Compact(list)
}
