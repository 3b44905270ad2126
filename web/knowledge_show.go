package web

import (
	"net/http"
	"strings"

	"boughline/assess/wording"
	"boughline/source"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) knowledgePage(w http.ResponseWriter, r *http.Request, title string, sections ...view.Section) error {
	return a.send(w, r, http.StatusOK, view.KnowledgePage(view.Knowledge{Page: a.newPage(r, title), Sections: sections}))
}

// pairs leaves out what a table does not say.
func pairs(list ...view.Row) []view.Row {
	var kept []view.Row
	for _, p := range list {
		if p.Value != "" {
			kept = append(kept, p)
		}
	}
	return kept
}

func pair(name, value string) view.Row { return view.Row{Name: name, Value: value} }

func citations(refs []source.Ref) []string {
	var list []string
	for _, ref := range refs {
		list = append(list, ref.Citation())
	}
	return list
}

func (a *app) showSigns(w http.ResponseWriter, r *http.Request) error {
	var sections []view.Section
	for _, zone := range survey.Zones {
		section := view.Section{Title: words.Zone(zone)}
		for _, s := range a.Notebook.Knowledge().Signs() {
			if string(s.Zone) != zone {
				continue
			}
			section.Entries = append(section.Entries, view.Entry{
				ID: s.ID, Name: capital(s.Name), Sub: s.LookFor, Sketch: a.sketchOf(s.ID), Memory: memoryNote(s.FromMemory, s.PartlyFromMemory), Sources: citations(s.Refs),
				Pairs: pairs(pair(words.MayMean, s.MayMean), pair(words.WorseIf, s.WorseIf), pair(words.CloserLook, s.CloserLook),
					pair(words.StandIns, strings.Join(s.StandIns, ", ")), pair(words.OnLoadPath, s.OnLoadPath.String()),
					pair(words.AbovePeople, s.AbovePeople.String()), pair(words.Elsewhere, s.Elsewhere.String())),
			})
		}
		sections = append(sections, section)
	}
	return a.knowledgePage(w, r, words.Signs, sections...)
}

func (a *app) showFungi(w http.ResponseWriter, r *http.Request) error {
	var section view.Section
	for _, f := range a.Notebook.Knowledge().Fungi() {
		section.Entries = append(section.Entries, view.Entry{
			ID: "f-" + slug(f.Name), Name: f.Name, Sub: f.Common, Memory: memoryNote(f.FromMemory, f.PartlyFromMemory), Sources: citations(f.Refs),
			Pairs: pairs(pair(words.Meaning, f.MeaningForPeople), pair(words.Hosts, listed(f.Hosts)), pair(words.Positions, listed(f.Positions)),
				pair(words.Decay, listed(f.Decays)), pair(words.Failure, f.TypicalFailure), pair(words.ConfusedWith, listed(f.ConfusedWith)), pair(words.NoteHead, f.Note)),
		})
	}
	return a.send(w, r, http.StatusOK, view.KnowledgePage(view.Knowledge{
		Page: a.newPage(r, words.Fungi), Sections: []view.Section{section}, Key: a.link("fungi", "key"),
	}))
}

func listed(names []string) string { return strings.ReplaceAll(strings.Join(names, ", "), "_", " ") }

func slug(name string) string { return strings.ReplaceAll(strings.ToLower(name), " ", "-") }

func (a *app) showSpecies(w http.ResponseWriter, r *http.Request) error {
	var section view.Section
	for _, s := range a.Notebook.Knowledge().SpeciesList() {
		section.Entries = append(section.Entries, view.Entry{
			ID: slug(s.Scientific), Name: capital(s.Common), Sub: s.Scientific, Memory: memoryNote(s.FromMemory, s.PartlyFromMemory), Sources: citations(s.Refs),
			Pairs: pairs(pair(words.LimbReputation, s.LimbReputation), pair(words.Shedding, s.Shedding), pair(words.Bark, s.Bark),
				pair(words.Durability, s.Durability), pair(words.Diseases, listed(s.Diseases)), pair(words.NoteHead, s.Note)),
		})
	}
	return a.knowledgePage(w, r, words.Species, section)
}

func (a *app) showWood(w http.ResponseWriter, r *http.Request) error {
	var section view.Section
	for _, row := range a.Notebook.Knowledge().WoodRows() {
		basis := words.Tested
		if row.Derived {
			basis = words.Derived
		}
		section.Entries = append(section.Entries, view.Entry{
			ID: row.ID, Name: row.Name, Sub: basis, Sources: citations(row.Refs),
			Pairs: pairs(pair(words.GreenStrength, fact(row.MOR)), pair(words.GreenStiffness, fact(row.MOE)),
				pair(words.GreenDensity, fact(row.GreenDensity)), pair(words.NoteHead, row.Note)),
		})
	}
	return a.knowledgePage(w, r, words.Wood, section)
}

func fact(f *source.Fact) string {
	if f == nil {
		return ""
	}
	return wording.Quantity(f.Value, f.Unit)
}

func (a *app) showSources(w http.ResponseWriter, r *http.Request) error {
	var section view.Section
	for _, s := range a.Notebook.Knowledge().Sources() {
		section.Entries = append(section.Entries, view.Entry{
			ID: "source-" + s.Key, Name: s.Title, Sub: s.Author, Pairs: pairs(pair(words.Year, s.Year), pair(words.Kind, string(s.Kind))),
		})
	}
	return a.knowledgePage(w, r, words.Sources, section)
}
