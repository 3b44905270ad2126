package sheet

import (
	"fmt"
	"slices"
	"strings"

	"boughline/assess/wording"
	"boughline/draw"
	"boughline/register"
	"boughline/sheet/figure"
	"boughline/sheet/words"
	"boughline/survey"
)

var gearKind = Kind{Name: "gear", Says: words.GearSays, Takes: TakesRegister, build: gearSheet}

// gearSheet is a register as it stands on a day: what is due first.
func gearSheet(u *subject) (*Sheet, error) {
	r, on := u.Register, u.On
	s := &Sheet{Title: fmt.Sprintf(words.GearTitle, r.Owner), Subtitle: fmt.Sprintf(words.GearOf, on)}
	s.gearDue(r, on)
	s.gearItems(r, on)
	s.gearRetired(r, on)
	s.gearUses(r)
	s.gearBasis(r, on)
	s.add(&Cautions{wording.Cautions()})
	s.sign(words.WhoKeeps, words.WhoExamines)
	return s, nil
}

func (s *Sheet) gearDue(r *register.Register, on survey.Date) {
	s.heading(1, words.GearDue)
	var due []string
	for _, d := range r.Due(on) {
		due = append(due, fmt.Sprintf(words.GearDueOf, d.Item, d))
	}
	if len(due) == 0 {
		s.say(words.GearNothing)
	} else {
		s.add(&List{Items: due})
	}
	if r.LOLER == nil {
		s.say(words.GearLoler)
	}
}

// inUse lists the items that are not retired on a day.
func inUse(r *register.Register, on survey.Date) []register.Item {
	var list []register.Item
	for _, i := range r.Items {
		if i.Retired == nil || i.Retired.On.After(on) {
			list = append(list, i)
		}
	}
	return list
}

func (s *Sheet) gearItems(r *register.Register, on survey.Date) {
	s.heading(1, words.GearItems)
	t := &Table{Caption: words.GearShown, Columns: []Column{{Title: words.GearItem, Wide: 1.2}, {Title: words.GearIs, Wide: 3}, {Title: words.GearBears, Wide: 2.6}, {Title: words.GearExamined, Wide: 3.4}, {Title: words.GearUsed, Wide: 3.2}, {Title: words.GearAgainst, Wide: 4.4}}}
	for _, i := range inUse(r, on) {
		var against []string
		for _, bar := range r.Bars(i.ID, on) {
			against = append(against, bar.String())
		}
		t.Rows = append(t.Rows, []string{i.ID, gearName(i), gearBears(i), gearExamined(i, on), gearUsed(r, i), strings.Join(against, "; ")})
	}
	if len(t.Rows) == 0 {
		s.say(words.GearNoItem)
		return
	}
	s.add(t)
	s.say(words.GearNoBar)
}

func gearName(i register.Item) string {
	text := i.Name
	if !strings.Contains(i.Name, i.Kind) {
		text += ", " + i.Kind
	}
	if i.Serial != "" {
		text += ", " + i.Serial
	}
	if i.Note != "" {
		text += " (" + i.Note + ")"
	}
	return text
}

// gearBears leaves out what bears nothing.
func gearBears(i register.Item) string {
	if i.Kind == register.Sleeve {
		return ""
	}
	return i.Strength()
}

func gearExamined(i register.Item, on survey.Date) string {
	e, ok := i.LastExamination(on)
	if !ok {
		return words.GearNever
	}
	text := fmt.Sprintf(words.GearFound, e.On, e.By, e.Found)
	if e.Note != "" {
		text += " (" + e.Note + ")"
	}
	return text
}

func gearUsed(r *register.Register, i register.Item) string {
	list := []string{fmt.Sprintf(words.GearDays, r.DaysUsed(i.ID))}
	if n := r.Cycles(i.ID); n > 0 {
		list = append(list, fmt.Sprintf(words.GearCycles, n))
	}
	if first := r.FirstUse(i); !first.IsZero() {
		list = append(list, fmt.Sprintf(words.GearSince, first))
	}
	return strings.Join(list, ", ")
}

func (s *Sheet) gearRetired(r *register.Register, on survey.Date) {
	var list []string
	for _, i := range r.Items {
		if i.Retired != nil && !i.Retired.On.After(on) {
			list = append(list, fmt.Sprintf(words.GearRetiredAs, i.ID, i.Name, i.Retired.On, i.Retired.Why))
		}
	}
	if len(list) > 0 {
		s.heading(1, words.GearRetired)
		s.add(&List{Items: list})
	}
}

func (s *Sheet) gearUses(r *register.Register) {
	if len(r.Uses) == 0 {
		return
	}
	t := &Table{Caption: words.GearUses, Columns: []Column{{Title: words.GearOn, Wide: 2}, {Title: words.GearOuting, Wide: 3}, {Title: words.GearItems, Wide: 4}, {Title: words.GearCounted, Wide: 1.3, Number: true}, {Title: words.GearHappened, Wide: 5}}}
	for _, use := range r.Uses {
		var happened []string
		if use.Wet {
			happened = append(happened, words.GearWet)
		}
		if use.Shock {
			happened = append(happened, words.GearShock)
		}
		if use.Note != "" {
			happened = append(happened, use.Note)
		}
		counted := ""
		if use.Cycles > 0 {
			counted = fmt.Sprint(use.Cycles)
		}
		t.Rows = append(t.Rows, []string{use.Date.String(), use.Outing, strings.Join(use.Items, ", "), counted, strings.Join(happened, "; ")})
	}
	s.heading(1, words.GearRecorded)
	s.add(t)
	s.add(&Figures{Scenes: []*draw.Scene{figure.Months(figure.MonthsInput{Key: "gear", Title: words.GearMonths, Months: monthsOf(r)})}})
}

// gearBasis cites the rules that the sheet speaks of, each once.
func (s *Sheet) gearBasis(r *register.Register, on survey.Date) {
	var list []string
	for _, d := range r.Due(on) {
		list = append(list, register.Basis(d.Code).Citation())
	}
	for _, i := range r.Items {
		for _, bar := range r.Bars(i.ID, on) {
			list = append(list, register.Basis(bar.Code).Citation())
		}
	}
	if len(list) > 0 {
		slices.Sort(list)
		s.heading(1, words.GearBasis)
		s.add(&List{Items: slices.Compact(list)})
	}
}
