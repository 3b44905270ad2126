package register

import "boughline/survey"

// What else stands against the use of an item, beside what is due.
const (
	NotRegistered  Code = "not-registered"
	IsRetired      Code = "retired"
	FoundUnfit     Code = "found-unfit"     // by the last examination
	ShockLoaded    Code = "shock-loaded"    // and not found fit since
	MarkUnknown    Code = "mark-unknown"    // neither a strength nor a standard is readable on what bears
	HistoryUnknown Code = "history-unknown" // it ages, and since when it is in service is not written down
)

// Bar is one thing that stands against an item going into a chain on a day.
type Bar struct {
	Code Code `json:"code"`
	// Since is the day from which it stands, none where that is not known.
	Since survey.Date `json:"since,omitzero"`
	// Says is what somebody wrote about it: why it was retired, what was found.
	Says string `json:"says,omitempty"`
}

// Bars lists what stands against an item going into a chain on a day, the
// weightiest first. An item with a bar goes into a chain only for a reason that
// is written down; none means that nothing recorded stands against it, which
// is no finding that it is sound. An examination on the day of a shock load may
// have come before it and does not count.
func (r Register) Bars(id string, on survey.Date) []Bar {
	i, err := r.Item(id)
	if err != nil {
		return []Bar{{Code: NotRegistered}}
	}
	if i.retiredOn(on) {
		return []Bar{{Code: IsRetired, Since: i.Retired.On, Says: i.Retired.Why}}
	}
	var list []Bar
	last, examined := i.LastExamination(on)
	if examined && last.Found != Fit {
		list = append(list, Bar{Code: FoundUnfit, Since: last.On, Says: last.Note})
	}
	if shock := r.lastShock(id, on); !shock.IsZero() && !last.On.After(shock) {
		list = append(list, Bar{Code: ShockLoaded, Since: shock})
	}
	if i.Kind != Sleeve && i.Standard == "" && (i.Mark == nil || i.Mark.Kind == survey.MarkUnknown) {
		list = append(list, Bar{Code: MarkUnknown})
	}
	if (i.Material == Textile || i.LifeYears != nil) && i.InServiceSince.IsZero() {
		list = append(list, Bar{Code: HistoryUnknown})
	}
	for _, d := range r.Deadlines(i, on) {
		if d.Passed {
			list = append(list, Bar{Code: d.Code, Since: d.By})
		}
	}
	return list
}
