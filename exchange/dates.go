package exchange

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"boughline/knowledge"
	"boughline/survey"
)

// Kinds of dates.
const (
	Examination  = "examination"   // the day for which the site is judged
	DatedLook    = "look"          // zones of a tree were looked at
	ReInspection = "re-inspection" // the first day after a look has lapsed
	CloserLook   = "closer-look"
	LoadTested   = "load-test"
)

// Date is one day of a site.
type Date struct {
	// ID is the same each time for the same thing, so that a calendar that
	// takes the file once more changes its entry.
	ID    string
	Kind  string
	Tree  string // id, empty for the site
	Day   survey.Date
	Title string
	Text  string
}

// Dates lists the days of a site in their order: those written down, and for
// each zone of a tree the day by which its newest look has to be made anew.
func Dates(s *survey.Survey, k *knowledge.Base) []Date {
	d := dates{site: s.Site, months: int(k.Parameter(knowledge.DatedLookMonths).Value)}
	if !s.Day.IsZero() {
		d.add(Examination, "", s.Day, "Examination: "+s.Site, "The site is judged for this day.")
	}
	for i := range s.Trees {
		d.tree(&s.Trees[i])
	}
	slices.SortStableFunc(d.list, func(a, b Date) int {
		return cmp.Or(cmp.Compare(a.Day.String(), b.Day.String()), cmp.Compare(a.ID, b.ID))
	})
	return d.list
}

type dates struct {
	site   string
	months int // after which a look lapses
	list   []Date
}

func (d *dates) add(kind, tree string, day survey.Date, title, text string) {
	id := strings.Join([]string{kind, tree, day.String()}, "/")
	if kind == Examination {
		id = kind // one for a site, whatever its day becomes
	}
	d.list = append(d.list, Date{ID: id, Kind: kind, Tree: tree, Day: day, Title: title, Text: text})
}

func (d *dates) tree(t *survey.Tree) {
	name := cmp.Or(t.Name, t.ID)
	looked, newest := map[string][]string{}, map[string]survey.Date{}
	for _, look := range t.Looks {
		if look.On.IsZero() || look.State != survey.LookDone {
			continue
		}
		looked[look.On.String()] = append(looked[look.On.String()], look.Zone)
		if look.On.After(newest[look.Zone]) {
			newest[look.Zone] = look.On
		}
	}
	for day, zones := range looked {
		on, _ := survey.ParseDate(day) // written by String
		d.add(DatedLook, t.ID, on, "Looked at: "+name, "Zones: "+zoneNames(zones)+".")
	}
	d.due(t, name, newest)
	for i := range t.Findings {
		d.closer(t, &t.Findings[i], name)
	}
	d.loadTests(t, name)
}

// due adds the days on which looks lapse, those of one day together.
func (d *dates) due(t *survey.Tree, name string, newest map[string]survey.Date) {
	lapsing := map[string][]string{}
	for zone, on := range newest {
		day := on.AddMonths(d.months).String()
		lapsing[day] = append(lapsing[day], zone)
	}
	for day, zones := range lapsing {
		on, _ := survey.ParseDate(day)
		d.add(ReInspection, t.ID, on, "Look anew: "+name,
			fmt.Sprintf("After this day a look of %d months ago no longer counts. Zones: %s.", d.months, zoneNames(zones)))
	}
}

func (d *dates) closer(t *survey.Tree, f *survey.Finding, name string) {
	if f.Closer != nil && !f.Closer.On.IsZero() {
		d.add(CloserLook+"/"+f.ID, t.ID, f.Closer.On, "Closer look: "+name, fmt.Sprintf("Finding %s (%s): %s.", f.ID, f.Sign, f.Closer.Result))
	}
}

// loadTests takes all tests of a day together.
func (d *dates) loadTests(t *survey.Tree, name string) {
	tested := map[string][]string{}
	for _, test := range t.LoadTests {
		tested[test.On.String()] = append(tested[test.On.String()], test.Hang)
	}
	for day, hangs := range tested {
		on, _ := survey.ParseDate(day)
		d.add(LoadTested, t.ID, on, "Load test: "+name, "Hangs: "+strings.Join(once(hangs), ", ")+".")
	}
}

func zoneNames(zones []string) string {
	slices.SortFunc(zones, func(a, b string) int {
		return cmp.Compare(slices.Index(survey.Zones, a), slices.Index(survey.Zones, b))
	})
	return strings.ReplaceAll(strings.Join(slices.Compact(zones), ", "), "_", " ")
}

func once(names []string) []string {
	slices.Sort(names)
	return slices.Compact(names)
}
