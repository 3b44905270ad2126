package web

import (
	"fmt"
	"net/http"
	"strings"

	"boughline/notebook"
	"boughline/register"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) withItem(r *http.Request, then func(*entry, *notebook.Gear, register.Item) error) error {
	return a.withGear(r, func(e *entry, g *notebook.Gear) error {
		i, err := g.Item(r.PathValue("item"))
		if err != nil {
			return errNoPage
		}
		return then(e, g, i)
	})
}

func (a *app) showItem(w http.ResponseWriter, r *http.Request) error {
	return a.withItem(r, func(e *entry, g *notebook.Gear, i register.Item) error {
		on := a.day()
		bars := g.Bars(i.ID, on)
		page := view.GearItem{
			Page: a.newPage(r, itemName(i), a.gearTrail()...), Path: a.itemLink(i.ID), Against: barTexts(bars),
			Rows: itemRows(e.units, g, i), Note: i.Note, Retired: i.Retired != nil,
		}
		codes := codesOf(bars)
		for _, d := range g.Deadlines(i, on) {
			if !d.Passed {
				page.Coming = append(page.Coming, capital(d.String())+".")
				codes = append(codes, d.Code)
			}
		}
		page.Basis = basisOf(codes)
		for n := len(i.Examinations) - 1; n >= 0; n-- {
			page.Examinations = append(page.Examinations, examinationLine(i.Examinations[n]))
		}
		uses := g.UsesOf(i.ID)
		for n := len(uses) - 1; n >= 0; n-- {
			page.Uses = append(page.Uses, view.Row{Name: uses[n].Date.String(), Value: useText(uses[n])})
		}
		return a.send(w, r, http.StatusOK, view.GearItemPage(page))
	})
}

// itemRows is all that is written about an item.
func itemRows(u units, g *notebook.Gear, i register.Item) []view.Row {
	var list []view.Row
	add := func(name, value string) {
		if value != "" {
			list = append(list, view.Row{Name: name, Value: value})
		}
	}
	field := func(name, value string) { add(words.Fields[name].Name, value) }
	field("item_kind", i.Kind+", "+i.Material)
	if i.Kind != register.Sleeve {
		add(words.TheStrength, i.Strength())
	}
	field("serial", i.Serial)
	field("item_length", say(i.Length, u.long()))
	field("thickness", say(i.Thickness, thin(u)))
	field("width", say(i.Width, thin(u)))
	field("made", i.Made.String())
	field("in_service_since", i.InServiceSince.String())
	if i.LifeYears != nil {
		field("life_years", fmt.Sprint(*i.LifeYears))
	}
	field("use_by", i.UseBy.String())
	used := daysOfUse(g.DaysUsed(i.ID))
	if n := g.Cycles(i.ID); n > 0 {
		used += ", " + fmt.Sprintf(words.RidesCounted, n)
	}
	add(words.Uses, used)
	return list
}

// thin is the unit of diameters and widths of gear.
func thin(u units) string { return u.pick("mm", "in") }

func examinationLine(e register.Examination) view.GearLine {
	text := words.ExaminedBy + " " + e.By
	if !e.Next.IsZero() {
		text += ", " + words.NextBy + " " + e.Next.String()
	}
	if e.Note != "" {
		text += ": " + e.Note
	}
	return view.GearLine{Name: e.On.String() + ", " + e.Found, Sub: text}
}

func useText(u register.Use) string {
	var parts []string
	add := func(is bool, text string) {
		if is {
			parts = append(parts, text)
		}
	}
	add(u.Outing != "", u.Outing)
	add(u.Cycles > 0, fmt.Sprintf(words.RidesCounted, u.Cycles))
	add(u.Wet, words.UsedWet)
	add(u.Shock, words.UsedShock)
	add(u.Note != "", u.Note)
	return strings.Join(parts, ", ")
}
