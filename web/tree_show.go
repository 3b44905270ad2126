package web

import (
	"fmt"
	"net/http"
	"strings"
	"time"

	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// withTree reads the site, the tree and the form of a request.
func (a *app) withTree(w http.ResponseWriter, r *http.Request, then func(*entry, *notebook.Site, *notebook.Tree) error) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		t, err := s.Tree(r.PathValue("tree"))
		if err != nil {
			return err
		}
		return then(e, s, t)
	})
}

func (a *app) treeLink(s *notebook.Site, t *notebook.Tree, more ...string) string {
	return a.link(append([]string{"site", s.ID, "tree", t.ID}, more...)...)
}

func (a *app) showTree(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		page := view.Tree{
			Page: a.newPage(r, treeName(t), a.siteTrail(s)...), Path: a.treeLink(s, t), About: aboutTree(e.units, t), Note: t.Note,
			PhotoForm: a.NewID(), Hangs: a.hangLines(s, t, time.Now().Add(time.Minute)),
			Sheets: a.sheetLines(s.ID, t.ID),
			Delete: a.formButton(words.DeleteTree, a.treeLink(s, t, "delete")),
		}
		page.Drawings = a.treeDrawings(r, s, t)
		a.members(&page, e.units, s, t)
		a.zones(&page, s, t)
		a.findings(&page, s, t)
		if t.Revision > 1 {
			undo := a.formButton(words.Undo, a.treeLink(s, t, "history", fmt.Sprint(t.Revision-1)))
			page.Undo, page.LastChange = &undo, t.What
		}
		photos, err := a.Notebook.Photos(r.Context(), s.ID, t.ID)
		if err != nil {
			return err
		}
		page.Photos = a.photoLines(s, t, photos)
		if page.Outings, err = a.outingLines(r, s, t.ID); err != nil {
			return err
		}
		return a.sendDrawn(w, r, page.Page, page.Drawings, view.TreePage(page))
	})
}

// formButton is a form of one button with an id of its own.
func (a *app) formButton(text, action string) view.Button {
	return view.Button{Text: text, Action: action, Hidden: []view.Choice{{Value: "form", Text: a.NewID()}}}
}

func aboutTree(u units, t *notebook.Tree) string {
	parts := []string{t.Species}
	for _, f := range []struct {
		name string
		m    *survey.MeasuredLength
	}{{words.Fields["height"].Name, t.Height}} {
		if f.m != nil {
			parts = append(parts, f.name+" "+say(f.m, u.long()))
		}
	}
	return strings.Join(parts, " · ")
}

func (a *app) members(page *view.Tree, u units, s *notebook.Site, t *notebook.Tree) {
	for i := range t.Members {
		m := &t.Members[i]
		line := view.MemberLine{Name: memberName(m), To: a.treeLink(s, t, "member", m.ID), About: aboutMember(u, m)}
		if m.Parent != "" {
			line.HangTo = a.treeLink(s, t, "hang", "new") + "?member=" + queryEscape(m.ID)
			line.PlaceTo = a.treeLink(s, t, "place") + "?limb=" + queryEscape(m.ID)
		}
		page.Members = append(page.Members, line)
	}
}

func memberName(m *survey.Member) string {
	if m.Parent == "" {
		return words.Stem
	}
	return words.LimbTitle + " " + m.ID
}

func aboutMember(u units, m *survey.Member) string {
	var parts []string
	for _, station := range m.Stations {
		if station.Girth != nil {
			parts = append(parts, say(station.Girth, u.thick()))
			break
		}
	}
	if m.RisesAt != nil {
		parts = append(parts, words.Up+" "+say(m.RisesAt, u.long()))
	}
	if m.Azimuth != nil {
		parts = append(parts, words.Towards+" "+say(m.Azimuth, degrees))
	}
	if m.Length != nil {
		parts = append(parts, words.Long+" "+say(m.Length, u.long()))
	}
	return strings.Join(parts, " · ")
}

func (a *app) zones(page *view.Tree, s *notebook.Site, t *notebook.Tree) {
	looker := a.looker("")
	for _, zone := range survey.Zones {
		line := view.ZoneLine{Name: words.Zone(zone), To: a.treeLink(s, t, "look", zone), State: zoneState(looker, t, zone)}
		if !zoneDone(t, zone) {
			page.OpenZones++
			if page.FirstOpen == "" {
				page.FirstOpen, page.FirstOpenName = line.To, line.Name
			}
		}
		page.Zones = append(page.Zones, line)
	}
}

func (a *app) findings(page *view.Tree, s *notebook.Site, t *notebook.Tree) {
	for i := range t.Findings {
		page.Findings = append(page.Findings, a.findingLine(s, t, &t.Findings[i]))
	}
}

func (a *app) findingLine(s *notebook.Site, t *notebook.Tree, f *survey.Finding) view.FindingLine {
	line := view.FindingLine{Name: f.Sign, Where: whereIs(f), To: a.treeLink(s, t, "finding", f.ID)}
	if sign, ok := a.Notebook.Knowledge().Sign(f.Sign); ok {
		line.Name = capital(sign.Name)
	}
	if f.Note != "" {
		line.Where += " · " + f.Note
	}
	return line
}

// whereIs says where a finding is, with what asks for it where nobody said.
func whereIs(f *survey.Finding) string {
	var parts []string
	if f.Member != "" {
		parts = append(parts, words.On+" "+f.Member)
	}
	if f.At != nil {
		parts = append(parts, say(f.At, "m")+" "+words.AlongIt)
	}
	if f.Side != nil {
		parts = append(parts, words.Side+" "+say(f.Side, degrees))
	}
	if f.Height != nil {
		parts = append(parts, say(f.Height, "m")+" "+words.Up)
	}
	if f.Distance != nil {
		parts = append(parts, say(f.Distance, "m")+" "+words.Away)
	}
	if len(parts) == 0 {
		return words.SayWhere
	}
	return strings.Join(parts, ", ")
}

func capital(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
