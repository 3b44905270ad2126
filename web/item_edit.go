package web

import (
	"fmt"
	"net/http"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/register"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) newItem(w http.ResponseWriter, r *http.Request) error {
	return a.withGear(r, func(e *entry, g *notebook.Gear) error {
		return a.itemForm(w, r, e, g, register.Item{}, nil)
	})
}

func (a *app) editItem(w http.ResponseWriter, r *http.Request) error {
	return a.withItem(r, func(e *entry, g *notebook.Gear, i register.Item) error { return a.itemForm(w, r, e, g, i, nil) })
}

func (a *app) itemForm(w http.ResponseWriter, r *http.Request, e *entry, g *notebook.Gear, i register.Item, problems []string) error {
	f := view.Form{
		Page: a.newPage(r, words.NewItem, a.gearTrail()...), Back: a.link("gear"), Problems: problems, Revision: g.Revision,
		Groups: a.itemGroups(e, i),
	}
	if i.ID != "" {
		f.Page, f.Back = a.newPage(r, words.EditItem, a.itemTrail(i)...), a.itemLink(i.ID)
	}
	return a.form(w, r, e, f)
}

func (a *app) itemGroups(e *entry, i register.Item) []view.Group {
	strength, kind, life := "", "", ""
	if i.Mark != nil {
		strength, kind = number(i.Mark.Strength.Value, "kN")+" kN", i.Mark.Kind
	}
	if i.LifeYears != nil {
		life = fmt.Sprint(*i.LifeYears)
	}
	return []view.Group{
		{Legend: words.TheItem, Fields: []view.Field{
			e.field("item_id", view.Text, i.ID), e.field("item_name", view.Text, i.Name),
			e.selectField("item_kind", i.Kind, choices(words.NotChosen, register.Sling, register.Rope, register.Connector, register.Swivel, register.Seat, register.Ring, register.Sleeve, register.Other)),
			e.selectField("item_material", i.Material, choices(words.NotChosen, register.Textile, register.Metal)),
		}},
		{Legend: words.TheMarks, Fields: []view.Field{
			e.field("mark", view.Text, strength),
			e.selectField("mark_kind", kind, choices(words.NotChosen, survey.MarkBreaking, survey.MarkWorking, survey.MarkUnknown)),
			e.selectField("printed_standard", i.Standard, a.standards()), e.field("serial", view.Text, i.Serial),
		}},
		{Legend: words.TheDates, Help: words.TheDatesHelp, Fields: []view.Field{
			e.field("made", view.Date, i.Made.String()), e.field("in_service_since", view.Date, i.InServiceSince.String()),
			e.field("life_years", view.Number, life), e.field("use_by", view.Date, i.UseBy.String()),
		}},
		{Legend: words.TheSizes, Fields: []view.Field{
			measuredField(e, "item_length", e.units.long(), i.Length, quantity.Taped),
			measuredField(e, "thickness", thin(e.units), i.Thickness, quantity.Calliper), measuredField(e, "width", thin(e.units), i.Width, quantity.Taped),
			e.field("note", view.Long, i.Note),
		}},
	}
}

func readItem(e *entry, kept register.Item) register.Item {
	return register.Item{
		ID: needText(e, "item_id"), Name: needText(e, "item_name"), Kind: needText(e, "item_kind"), Material: needText(e, "item_material"),
		Mark: readMark(e, ""), Standard: e.text("printed_standard"), Serial: e.text("serial"),
		Made: e.day("made"), InServiceSince: e.day("in_service_since"), LifeYears: e.wholeNumber("life_years"), UseBy: e.day("use_by"),
		Length:    measured(e, "item_length", e.units.long(), kept.Length),
		Thickness: measured(e, "thickness", thin(e.units), kept.Thickness), Width: measured(e, "width", thin(e.units), kept.Width),
		Note: e.text("note"),
	}
}

func (a *app) createItem(w http.ResponseWriter, r *http.Request) error {
	return a.withGear(r, func(e *entry, g *notebook.Gear) error {
		i := readItem(e, register.Item{})
		return a.changeGear(w, r, e, words.DidAddItem+itemName(i), "", a.itemLink(i.ID),
			func(now register.Register) (register.Register, error) {
				now, err := now.Added(i)
				return now, ofItemID(e, err)
			}, func(problems []string) error { return a.itemForm(w, r, e, g, register.Item{}, problems) })
	})
}

func (a *app) saveItem(w http.ResponseWriter, r *http.Request) error {
	return a.withItem(r, func(e *entry, g *notebook.Gear, kept register.Item) error {
		i := readItem(e, kept)
		return a.changeGear(w, r, e, words.DidEditItem+itemName(i), kept.ID, a.itemLink(i.ID),
			func(now register.Register) (register.Register, error) {
				now, err := now.Edited(kept.ID, i)
				return now, ofItemID(e, err)
			}, func(problems []string) error { return a.itemForm(w, r, e, g, kept, problems) })
	})
}

// ofItemID puts what the register says against an id beside its field.
func ofItemID(e *entry, err error) error {
	if err == nil {
		return nil
	}
	e.fault("item_id", err)
	return e.taken()
}
