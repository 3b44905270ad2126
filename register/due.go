package register

import (
	"cmp"
	"slices"

	"boughline/survey"
)

// Code tells what is due for an item or stands against its use.
type Code string

// What can be due.
const (
	ExaminationDue Code = "examination-due" // the next thorough examination
	NeverExamined  Code = "never-examined"  // none is recorded
	LifeOver       Code = "life-over"       // the maker's life from first use
	UseByOver      Code = "use-by-over"     // the maker's last day
	TextileAge     Code = "textile-age"     // ten years, where the maker's life is not known
)

// Reminder is one thing that is due for an item.
type Reminder struct {
	Item string `json:"item"`
	Code Code   `json:"code"`
	// By is the day by which it is due; none where the day from which it counts
	// is not known, which counts as due at once.
	By survey.Date `json:"by,omitzero"`
	// Passed says that the day has come. Before it the reminder gives notice.
	Passed bool `json:"passed"`
}

// Due lists what is due on a day or within a month after it, what has waited
// longest first. Retired items have nothing due.
func (r Register) Due(on survey.Date) []Reminder {
	var list []Reminder
	for _, i := range r.Items {
		for _, d := range r.Deadlines(i, on) {
			if d.Passed || !d.By.After(on.AddMonths(noticeMonths)) {
				list = append(list, d)
			}
		}
	}
	slices.SortStableFunc(list, func(a, b Reminder) int {
		return cmp.Or(compareDays(a.By, b.By), cmp.Compare(a.Item, b.Item))
	})
	return list
}

// Deadlines lists all that will be due for an item, as far as it is known on a
// day: the next examination and the ends of its life.
func (r Register) Deadlines(i Item, on survey.Date) []Reminder {
	if i.retiredOn(on) {
		return nil
	}
	var list []Reminder
	add := func(code Code, by survey.Date) {
		list = append(list, Reminder{Item: i.ID, Code: code, By: by, Passed: !by.After(on)})
	}
	first := r.FirstUse(i)
	if code, by, asked := r.nextExamination(i, on); asked {
		add(code, by)
	}
	if i.LifeYears != nil && !first.IsZero() {
		add(LifeOver, first.AddMonths(12**i.LifeYears))
	}
	if !i.UseBy.IsZero() {
		add(UseByOver, i.UseBy)
	}
	if i.Material == Textile && i.LifeYears == nil && i.UseBy.IsZero() {
		from := i.Made
		if from.IsZero() {
			from = first
		}
		if !from.IsZero() {
			add(TextileAge, from.AddMonths(12*textileYears))
		}
	}
	return list
}

// nextExamination is the day of the next thorough examination: six months after
// the last one, or after first use where none is recorded, or earlier where the
// examiner said so. It is asked for where LOLER applies or an examiner wants it.
func (r Register) nextExamination(i Item, on survey.Date) (code Code, by survey.Date, asked bool) {
	last, examined := i.LastExamination(on)
	applies := (r.LOLER == nil || *r.LOLER) && i.Kind != Sleeve
	switch {
	case !examined && !applies, examined && !applies && last.Next.IsZero():
		return "", by, false
	case !examined:
		if !i.InServiceSince.IsZero() { // a use that is recorded may not have been the first
			by = r.FirstUse(i).AddMonths(examinationMonths)
		}
		return NeverExamined, by, true
	case !applies:
		return ExaminationDue, last.Next, true
	}
	by = last.On.AddMonths(examinationMonths)
	if !last.Next.IsZero() && by.After(last.Next) {
		by = last.Next
	}
	return ExaminationDue, by, true
}

func (i Item) retiredOn(on survey.Date) bool { return i.Retired != nil && !i.Retired.On.After(on) }
