package web

import (
	"net/http"

	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) newSite(w http.ResponseWriter, r *http.Request) error {
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	day, err := survey.ParseDate(a.Today())
	if err != nil {
		return err
	}
	return a.newSiteForm(w, r, e, &survey.Survey{Day: day, Surveyor: a.Notebook.Settings(r.Context()).Name}, nil)
}

func (a *app) newSiteForm(w http.ResponseWriter, r *http.Request, e *entry, head *survey.Survey, problems []string) error {
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.AddSiteTitle), Back: a.Base, Problems: problems,
		Groups: siteGroups(e, head),
	})
}

func (a *app) createSite(w http.ResponseWriter, r *http.Request) error {
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	head := survey.Survey{Version: survey.Version, Riders: startRiders(), Chains: startChains()}
	a.readSite(e, &head)
	id := e.text("form")
	if err = e.taken(); err == nil {
		err = a.Notebook.AddSite(r.Context(), id, e.edit(words.DidAddSite, nil), &head)
	}
	return a.saved(w, r, err, a.link("site", id), func(problems []string) error {
		return a.newSiteForm(w, r, e, &head, problems)
	})
}

// startRiders and startChains are what a new site begins with, so that a hang
// can be asked for at once. No strength is known: the gear has to be filled
// in before anything is hung.
func startRiders() []survey.Riders {
	seat := quantity.Measured[quantity.Mass]{Value: 3, How: quantity.ByEye}
	return []survey.Riders{{ID: words.DefaultRiders, Count: 1, Ages: &survey.Ages{From: 6, To: 9}, Seat: &seat, Posture: survey.Seated}}
}

func startChains() []survey.Chain {
	return []survey.Chain{{ID: words.DefaultChain, Parts: []survey.Part{
		{Name: words.AnchorSling, Kind: "sling", Material: "textile", Hitch: "choker", Condition: words.StartCondition},
		{Name: words.Connector, Kind: "connector", Material: "metal", Condition: words.StartCondition},
		{Name: words.SwingLine, Kind: "rope", Material: "textile", Condition: words.StartCondition},
		{Name: words.SeatPart, Kind: "seat", Material: "textile", Condition: words.StartCondition},
	}}}
}
