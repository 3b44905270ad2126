package web

import (
	"fmt"
	"net/http"
	"slices"
	"strconv"
	"strings"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/register"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// partForm is the form of a part: one that is added (at -1) or one that stands
// in the chain.
type partForm struct {
	site  *notebook.Site
	chain *survey.Chain
	gear  *notebook.Gear
	at    int
	part  survey.Part
}

func (a *app) newPart(w http.ResponseWriter, r *http.Request) error {
	return a.withChain(w, r, func(e *entry, s *notebook.Site, c *survey.Chain) error {
		return a.openPart(w, r, e, partForm{site: s, chain: c, at: -1, part: survey.Part{Item: r.URL.Query().Get("item")}}, a.showPart)
	})
}

func (a *app) editPart(w http.ResponseWriter, r *http.Request) error {
	return a.withPart(w, r, func(e *entry, s *notebook.Site, c *survey.Chain, n int) error {
		return a.openPart(w, r, e, partForm{site: s, chain: c, at: n, part: c.Parts[n]}, a.showPart)
	})
}

func (a *app) createPart(w http.ResponseWriter, r *http.Request) error {
	return a.withChain(w, r, func(e *entry, s *notebook.Site, c *survey.Chain) error {
		return a.openPart(w, r, e, partForm{site: s, chain: c, at: -1}, a.savePart)
	})
}

func (a *app) savePartAt(w http.ResponseWriter, r *http.Request) error {
	return a.withPart(w, r, func(e *entry, s *notebook.Site, c *survey.Chain, n int) error {
		return a.openPart(w, r, e, partForm{site: s, chain: c, at: n, part: c.Parts[n]}, a.savePart)
	})
}

func (a *app) openPart(w http.ResponseWriter, r *http.Request, e *entry, f partForm, then func(http.ResponseWriter, *http.Request, *entry, partForm) error) error {
	var err error
	if f.gear, err = a.Notebook.Gear(r.Context()); err != nil {
		return err
	}
	return then(w, r, e, f)
}

// item is the item of the register that the part is, false where it is none or
// the register does not hold it.
func (f partForm) item(id string) (register.Item, bool) {
	i, err := f.gear.Item(id)
	if err != nil {
		return i, false
	}
	_, err = i.Part(f.site.Head.Day)
	return i, err == nil
}

func (a *app) showPart(w http.ResponseWriter, r *http.Request, e *entry, f partForm) error {
	if i, ok := f.item(f.part.Item); ok && f.at < 0 {
		f.part, _ = i.Part(f.site.Head.Day) // item says that it is one
	}
	return a.partPage(w, r, e, f, nil)
}

func (a *app) partPage(w http.ResponseWriter, r *http.Request, e *entry, f partForm, problems []string) error {
	page := view.Form{
		Page: a.newPage(r, words.AddPart, a.chainTrail(f.site, f.chain)...), Back: a.chainLink(f.site, f.chain.ID), Problems: problems, Revision: f.site.Revision,
		Groups: a.partGroups(e, f),
	}
	if f.at >= 0 {
		page.Title = f.part.Name
	}
	return a.form(w, r, e, page)
}

func (a *app) partGroups(e *entry, f partForm) []view.Group {
	p := &f.part
	id := p.Item
	if e.listed {
		id = e.text("item")
	}
	_, fromRegister := f.item(id)
	items := append([]view.Choice{{Text: words.ByHand}}, itemChoices(f.gear, f.site.Head.Day)...)
	if id != "" && !fromRegister {
		items = append(items, view.Choice{Value: id, Text: id})
	}
	part := view.Group{Legend: words.ThePart, Fields: []view.Field{e.selectField("item", p.Item, items), e.field("part_name", view.Text, p.Name)}}
	if f.at < 0 {
		part.Fields = append(part.Fields, e.selectField("position", strconv.Itoa(f.usualPlace()), f.positions()))
	}
	groups := []view.Group{part}
	bars := f.bars(id)
	if len(bars) > 0 { // the reason is asked for before anything else
		groups = append(groups, despiteGroup(e, p, bars))
	}
	if fromRegister {
		groups[0].Help = words.PartFromItem
	} else {
		if id != "" {
			groups[0].Help = words.ItemGone
		}
		groups = append(groups, a.markGroup(e, p))
	}
	groups = append(groups, a.usedGroup(e, p))
	if len(bars) == 0 {
		groups = append(groups, despiteGroup(e, p, nil))
	}
	return groups
}

func despiteGroup(e *entry, p *survey.Part, bars []register.Bar) view.Group {
	g := view.Group{Legend: words.PartDespite, Fields: []view.Field{e.field("despite", view.Long, p.Despite)}}
	if len(bars) > 0 {
		g.Help = strings.Join(barTexts(bars), ". ") + ". " + words.PartDespiteHelp
	}
	return g
}

// bars are what stands against an item on the day of the site.
func (f partForm) bars(id string) []register.Bar {
	if id == "" {
		return nil
	}
	return f.gear.Bars(id, f.site.Head.Day)
}

// markGroup is what a part by hand says of itself.
func (a *app) markGroup(e *entry, p *survey.Part) view.Group {
	strength, kind := "", ""
	if p.Mark != nil {
		strength, kind = number(p.Mark.Strength.Value, "kN")+" kN", p.Mark.Kind
	}
	return view.Group{Legend: words.TheMarks, Fields: []view.Field{
		e.selectField("item_kind", p.Kind, choices(words.NotChosen, register.Sling, register.Rope, register.Connector, register.Swivel, register.Seat, register.Ring)),
		e.selectField("item_material", p.Material, choices(words.NotChosen, register.Textile, register.Metal)),
		e.field("mark", view.Text, strength),
		e.selectField("mark_kind", kind, choices(words.NotChosen, survey.MarkBreaking, survey.MarkWorking, survey.MarkUnknown)),
		e.selectField("standard", p.Standard, a.standards()),
		measuredField(e, "thickness", thin(e.units), p.Thickness, quantity.Calliper), measuredField(e, "width", thin(e.units), p.Width, quantity.Taped),
		measuredField(e, "item_length", e.units.long(), p.Length, quantity.Taped),
		e.field("in_service_since", view.Date, p.InServiceSince.String()),
	}}
}

// usedGroup is how the part is used in this chain.
func (a *app) usedGroup(e *entry, p *survey.Part) view.Group {
	stiffness := ""
	if p.AxialStiffness != nil {
		stiffness = number(p.AxialStiffness.Value, "kN") + " kN"
	}
	g := view.Group{Legend: words.HowUsed, Fields: []view.Field{
		e.selectField("hitch", p.Hitch, choices(words.NotChosen, "straight", "basket", "choker", "girth")),
		chosenField(e, "choke_angle", degrees, p.ChokeAngle), chosenField(e, "leg_angle", degrees, p.LegAngle),
	}}
	for n := range shownEnds {
		knot := ""
		if n < len(p.Ends) {
			knot = p.Ends[n]
		}
		g.Fields = append(g.Fields, e.selectField(fmt.Sprintf("knot_%d", n), knot, a.knots()))
	}
	g.Fields = append(g.Fields, measuredField(e, "bend_over", thin(e.units), p.BendOver, quantity.Calliper),
		e.field("axial_stiffness", view.Text, stiffness),
		e.selectField("condition", p.Condition, choices(words.NotChosen, "good", "worn", "retired", "unknown")))
	return g
}

// shownEnds is how many ends of a part the form shows; more are kept as they
// are.
const shownEnds = 2

// positions are the places where a new part can go.
func (f partForm) positions() []view.Choice {
	var list []view.Choice
	for n, p := range f.chain.Parts {
		list = append(list, view.Choice{Value: strconv.Itoa(n), Text: words.Above + " " + p.Name})
	}
	return append(list, view.Choice{Value: strconv.Itoa(len(f.chain.Parts)), Text: words.Lowest})
}

// usualPlace is where a part of its kind usually goes: a sling at the limb,
// anything else above the seat.
func (f partForm) usualPlace() int {
	if f.part.Kind == register.Sling {
		return 0
	}
	seat := slices.IndexFunc(f.chain.Parts, func(p survey.Part) bool { return p.Kind == register.Seat })
	if seat >= 0 && f.part.Kind != register.Seat {
		return seat
	}
	return len(f.chain.Parts)
}
