package web

import (
	"fmt"
	"net/http"
	"slices"
	"strconv"
	"strings"

	"boughline/quantity"
	"boughline/survey"
	"boughline/web/words"
)

func (a *app) savePart(w http.ResponseWriter, r *http.Request, e *entry, f partForm) error {
	part := f.read(e)
	what := words.DidEditPart
	if f.at < 0 {
		what = words.DidAddPart
	}
	return a.changeChains(w, r, e, f.site, what+f.chain.ID, a.chainLink(f.site, f.chain.ID), func(now *survey.Survey) error {
		return changeParts(now, f.chain.ID, func(parts []survey.Part) []survey.Part {
			if f.at >= 0 {
				parts[f.at] = part
				return parts
			}
			at, err := strconv.Atoi(e.text("position"))
			if err != nil || at < 0 || at > len(parts) {
				at = len(parts)
			}
			return slices.Insert(parts, at, part)
		})
	}, func(problems []string) error { return a.partPage(w, r, e, f, problems) })
}

// read reads a part. What the register says of its item counts, whatever the
// form says; something that stands against the item asks for a reason.
func (f partForm) read(e *entry) survey.Part {
	p := f.part
	p.Item, p.Despite = e.text("item"), e.text("despite")
	if i, ok := f.item(p.Item); ok {
		of, _ := i.Part(f.site.Head.Day) // item says that it is one
		p.Name, p.Kind, p.Material, p.Mark, p.Standard = of.Name, of.Kind, of.Material, of.Mark, of.Standard
		p.Length, p.Thickness, p.Width, p.InServiceSince = of.Length, of.Thickness, of.Width, of.InServiceSince
		if name := e.text("part_name"); name != "" {
			p.Name = name
		}
	} else {
		readHand(e, &p)
	}
	f.readUsed(e, &p)
	if bars := f.bars(p.Item); len(bars) > 0 && p.Despite == "" {
		e.faults["despite"] = words.WantReason + " (" + strings.ToLower(strings.Join(barTexts(bars), "; ")) + ")"
	}
	return p
}

// readHand reads what a part by hand says of itself, where the form shows it.
func readHand(e *entry, p *survey.Part) {
	p.Name = needText(e, "part_name")
	if !e.values.Has("item_kind") {
		if p.Kind == "" {
			e.faults["item_kind"] = words.WantValue
		}
		return
	}
	p.Kind, p.Material, p.Mark, p.Standard = needText(e, "item_kind"), needText(e, "item_material"), readMark(e, ""), e.text("standard")
	p.Thickness = measured(e, "thickness", thin(e.units), p.Thickness)
	p.Width = measured(e, "width", thin(e.units), p.Width)
	p.Length = measured(e, "item_length", e.units.long(), p.Length)
	p.InServiceSince = e.day("in_service_since")
}

// readUsed reads how a part is used. A retired item stays retired, whatever
// condition is chosen.
func (f partForm) readUsed(e *entry, p *survey.Part) {
	p.Hitch, p.Condition = e.text("hitch"), e.text("condition")
	if i, ok := f.item(p.Item); ok {
		if of, _ := i.Part(f.site.Head.Day); of.Condition != "" {
			p.Condition = of.Condition
		}
	}
	p.ChokeAngle, p.LegAngle = chosen(e, "choke_angle", degrees, p.ChokeAngle), chosen(e, "leg_angle", degrees, p.LegAngle)
	p.BendOver = measured(e, "bend_over", thin(e.units), p.BendOver)
	p.AxialStiffness = chosen[quantity.Force](e, "axial_stiffness", "kN", nil)
	ends := slices.Clone(p.Ends[min(shownEnds, len(p.Ends)):])
	for n := shownEnds - 1; n >= 0; n-- {
		if knot := e.text(fmt.Sprintf("knot_%d", n)); knot != "" {
			ends = slices.Insert(ends, 0, knot)
		}
	}
	p.Ends = ends
}
