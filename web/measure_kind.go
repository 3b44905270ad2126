package web

import (
	"net/http"

	"boughline/engine/measure"
	"boughline/quantity"
	"boughline/web/view"
	"boughline/web/words"
)

// measureKind works out one kind of measuring from what the address holds.
// Nothing is kept.
func (a *app) measureKind(w http.ResponseWriter, r *http.Request) error {
	kind, ok := measure.ByName(r.PathValue("kind"))
	if !ok {
		return errNoPage
	}
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	m := a.read(e, kind)
	worked := m.worked()
	if wantsPart(r) {
		return a.send(w, r, http.StatusOK, view.WorkedPart(worked))
	}
	back, query := a.measuredFor(r)
	page := view.Measure{
		Page: a.newPage(r, capital(kind.Does), view.Link{Text: words.Measuring, To: "measure" + query}), Action: a.here(r), From: a.here(r) + "?live=yes",
		Others: a.link("measure") + query, Back: back, Worked: worked, Script: a.Base + a.asset.tilt,
	}
	if back != "" {
		page.For = e.values.Get("back")
	}
	status := http.StatusOK
	if m.begun {
		m.faultMissing()
		if len(e.faults)+len(worked.Faults) > 0 {
			status = http.StatusUnprocessableEntity
		}
	}
	for _, f := range kind.Fields {
		field := readField(e, kind, f)
		page.Tilt = page.Tilt || field.Tilt
		page.Fields = append(page.Fields, field)
	}
	return a.send(w, r, status, view.MeasurePage(page))
}

// readField is a field of a kind as the page shows it, with what was typed.
func readField(e *entry, kind measure.Kind, f measure.Field) view.ReadField {
	shown := view.ReadField{
		Field: numberField(e, f.Name, capital(f.Label), e.units.read(f)),
		Tilt:  f.Dimension == measure.Angle && f.How == quantity.Clinometer,
	}
	if f.Default != "" {
		shown.Help = words.LeftOut + " " + f.Default
	}
	shown.Hows, shown.How = hows[1:], string(f.How)
	if e.values.Has(f.Name + "_how") {
		shown.How = e.values.Get(f.Name + "_how")
	}
	sd := numberField(e, sdOf(f.Name), words.StandardError, e.units.read(f))
	sd.Help = words.StandardHelp
	names := readingsOf(f.Name)
	shown.Again = []view.Field{
		sd, numberField(e, names[1], words.SecondReading, e.units.read(f)), numberField(e, names[2], words.ThirdReading, e.units.read(f)),
	}
	shown.Open = len(kind.Fields) == 1 // repeated readings are what it is about
	for i := range shown.Again {
		again := &shown.Again[i]
		again.Pair = true
		shown.Open = shown.Open || again.Value != "" || again.Fault != ""
	}
	return shown
}

func numberField(e *entry, name, label, unit string) view.Field {
	return view.Field{Name: name, Label: label, Kind: view.Number, Value: e.values.Get(name), Unit: unit, Fault: e.faults[name]}
}

// sdOf names the field of the standard deviation of another one.
func sdOf(name string) string { return name + "_sd" }

// readingsOf names the fields that hold readings of the same thing.
func readingsOf(name string) []string { return []string{name, name + "_2", name + "_3"} }

// read is the unit in which a person reads and types a field.
func (u units) read(f measure.Field) string {
	switch {
	case f.Dimension == measure.Angle:
		return degrees
	case f.Name == "bark":
		return u.pick("mm", "in")
	case f.Name == "girth":
		return u.thick()
	}
	return u.long()
}
