package web

import (
	"net/http"
	"strconv"

	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) editSite(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error { return a.siteForm(w, r, e, s, nil) })
}

// withSite reads the site and the form of a request.
func (a *app) withSite(_ http.ResponseWriter, r *http.Request, then func(*entry, *notebook.Site) error) error {
	s, err := a.site(r)
	if err != nil {
		return err
	}
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	return then(e, s)
}

func (a *app) siteForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, problems []string) error {
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.SiteAndDay, a.siteTrail(s)...), Back: a.link("site", s.ID), Problems: problems,
		Groups: siteGroups(e, &s.Head), Revision: s.Revision,
	})
}

func (a *app) saveSite(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		head := s.Head
		a.readSite(e, &head)
		err := e.taken()
		if err == nil {
			err = a.Notebook.ChangeSite(r.Context(), s.ID, e.edit(words.DidEditSite, nil), func(now *survey.Survey) error {
				a.readSite(e, now)
				return nil
			})
		}
		return a.saved(w, r, err, a.link("site", s.ID), func(problems []string) error { return a.siteForm(w, r, e, s, problems) })
	})
}

func siteGroups(e *entry, head *survey.Survey) []view.Group {
	name := e.field("site", view.Text, head.Site)
	name.Need = true
	wind := survey.Wind{}
	leaf, stop := "", ""
	if head.Wind != nil {
		wind = *head.Wind
	}
	if wind.InLeaf != nil {
		leaf = yesNo(*wind.InLeaf)
	}
	if wind.StopBeaufort != nil {
		stop = strconv.Itoa(*wind.StopBeaufort)
	}
	return []view.Group{
		{Fields: []view.Field{
			name, e.field("day", view.Date, head.Day.String()), e.field("surveyor", view.Text, head.Surveyor), e.field("note", view.Long, head.Note),
		}},
		{Legend: words.TheWind, Fields: []view.Field{
			e.selectField("terrain", wind.Terrain, terrainChoices()),
			e.selectField("in_leaf", leaf, []view.Choice{{Text: words.NotChosen}, {Value: "yes", Text: words.Yes}, {Value: "no", Text: words.No}}),
			e.field("stop_beaufort", view.Number, stop),
		}},
		{Legend: words.WhereItLies, Position: true, Fields: placeFields(e, head.Place)},
	}
}

func placeFields(e *entry, p *survey.Place) []view.Field {
	latitude, longitude := "", ""
	if p == nil {
		p = &survey.Place{}
	} else {
		latitude, longitude = decimal(p.Latitude), decimal(p.Longitude)
	}
	return []view.Field{
		e.field("latitude", view.Number, latitude), e.field("longitude", view.Number, longitude), e.field("approach", view.Text, p.WayIn),
		e.field("access", view.Text, p.Access), e.field("meeting_point", view.Text, p.MeetingPoint),
	}
}

func decimal(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// readPlace wants both coordinates or none.
func readPlace(e *entry) *survey.Place {
	if e.text("latitude") == "" && e.text("longitude") == "" {
		return nil
	}
	p := survey.Place{WayIn: e.text("approach"), Access: e.text("access"), MeetingPoint: e.text("meeting_point")}
	for name, to := range map[string]*float64{"latitude": &p.Latitude, "longitude": &p.Longitude} {
		x, err := strconv.ParseFloat(e.text(name), 64)
		if err != nil {
			e.faults[name] = words.WantDegrees
		}
		*to = x
	}
	return &p
}

func yesNo(yes bool) string {
	if yes {
		return "yes"
	}
	return "no"
}

func terrainChoices() []view.Choice {
	var list []view.Choice
	for _, c := range words.Terrain {
		list = append(list, view.Choice(c))
	}
	return list
}

// readSite writes what was typed into the head of a site.
func (a *app) readSite(e *entry, head *survey.Survey) {
	head.Site, head.Day, head.Surveyor, head.Note = e.text("site"), e.day("day"), e.text("surveyor"), e.text("note")
	if head.Site == "" {
		e.faults["site"] = words.WantName
	}
	head.Wind, head.Place = nil, readPlace(e)
	if terrain := e.text("terrain"); terrain != "" {
		head.Wind = &survey.Wind{Terrain: terrain, StopBeaufort: e.wholeNumber("stop_beaufort")}
		if leaf := e.text("in_leaf"); leaf != "" {
			yes := leaf == "yes"
			head.Wind.InLeaf = &yes
		}
	}
}
