package web

import (
	"errors"
	"net/http"
	"strconv"
	"strings"

	"boughline/assess/rigging"
	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/sheet/figure"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// showRig shows how a hang is rigged, for the wishes in the address.
func (a *app) showRig(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		page := view.Rig{
			Page: a.newPage(r, words.RigTitle+": "+h.ID, a.hangTrail(s, t, h)...), Sentence: a.outcomeSentence(s, t, h),
			Action: a.treeLink(s, t, "hang", h.ID, "rig"), Cautions: wording.RigCautions(),
		}
		status := http.StatusOK
		answers, err := rigging.Of(s.Near(t), a.Notebook.Knowledge(), h.ID, rigWishes(e))
		if len(e.faults) > 0 { // then for the wishes that could be read
			status = http.StatusUnprocessableEntity
		}
		var wish rigging.OptionError
		switch {
		case errors.As(err, &wish):
			e.faults[wish.Option], status = wish.Says, http.StatusUnprocessableEntity
		case err != nil:
			page.Fault = err.Error()
		default:
			rigView(&page, e.units.in(), answers)
			page.Drawings = a.rigDrawing(r, s, t, h.ID)
		}
		page.Fields = rigFields(e)
		for _, f := range page.Fields {
			if f.Fault != "" {
				page.Faults = append(page.Faults, f.Label+": "+f.Fault)
			}
		}
		if status != http.StatusOK {
			return a.send(w, r, status, view.RigPage(page))
		}
		return a.sendDrawn(w, r, page.Page, page.Drawings, view.RigPage(page))
	})
}

// rigWishes reads the wishes that stand in the address.
func rigWishes(e *entry) rigging.Options {
	var o rigging.Options
	for name, to := range map[string]**quantity.Length{"seat": &o.Seat, "stand": &o.Stand} {
		if length := chosen[quantity.Length](e, name, e.units.long(), nil); length != nil {
			*to = &length.Value
		}
	}
	if text := e.text("hours"); text != "" {
		hours, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
		if err != nil {
			e.faults["hours"] = words.RigHoursBad
			return o
		}
		o.Hours = &hours
	}
	return o
}

// rigFields show what was typed, as a form that is got and not sent.
func rigFields(e *entry) []view.Field {
	field := func(name, label, help, unit string) view.Field {
		return view.Field{Name: name, Label: label, Help: help, Kind: view.Number, Unit: unit, Value: e.text(name), Fault: e.faults[name]}
	}
	return []view.Field{
		field("seat", words.RigSeat, words.RigSeatHelp, e.units.long()),
		field("stand", words.RigStand, "", e.units.long()),
		field("hours", words.RigHours, "", ""),
	}
}

func rigView(page *view.Rig, in wording.Units, r rigging.Rigging) {
	if !r.Outcome.Rideable() {
		page.NotNow = wording.RigNotNow
	}
	for _, part := range wording.Rigging(r) {
		shown := view.RigPart{Key: part.Key, Title: part.Title, Help: part.Help}
		for _, item := range part.Items {
			if reason := rigReason(in, item); item.Minor {
				shown.Others = append(shown.Others, reason)
			} else {
				shown.Items = append(shown.Items, reason)
			}
		}
		page.Parts = append(page.Parts, shown)
	}
}

func rigReason(in wording.Units, item wording.RigItem) view.Reason {
	shown := view.Reason{Text: item.Text, Margin: item.Margin, Formula: item.Formula, Basis: item.Basis, Rows: termRows(in, item.Terms)}
	for _, ref := range item.Refs {
		shown.Sources = append(shown.Sources, ref.Citation())
	}
	return shown
}

// rigDrawing is the chain link by link; none where it cannot be drawn.
func (a *app) rigDrawing(r *http.Request, s *notebook.Site, t *notebook.Tree, hang string) []view.Drawing {
	figures, err := a.Notebook.Figures(s, t)
	if err != nil {
		return nil
	}
	found, err := a.Notebook.Outcomes(s, t)
	if err != nil {
		return nil
	}
	for _, judged := range judgedHangs(figures, found.Hangs) {
		if judged.Assessed.ID != hang {
			continue
		}
		if scene, err := figure.Rig(judged); err == nil {
			return []view.Drawing{easel{a, r, nil}.drawn(scene)}
		}
	}
	return nil
}
