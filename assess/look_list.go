package assess

import (
	"cmp"
	"fmt"
	"slices"

	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/survey"
)

// LookList is what is still to be looked at on one tree, from the crown down.
type LookList struct {
	Format   int         `json:"look"`
	Site     string      `json:"site"`
	Day      survey.Date `json:"day"`
	Tree     string      `json:"tree"`
	TreeName string      `json:"tree_name,omitempty"`
	Species  string      `json:"species"`
	Tasks    []LookTask  `json:"tasks"`
	// StoodFor are the remarks on what could not show and is stood for.
	StoodFor []Reason `json:"stood_for,omitempty"`
	// Bring are the things to bring, in the order of the methods.
	Bring []signs.Method `json:"bring"`
}

// LookTask is one thing still to be looked at.
type LookTask struct {
	Reason Reason `json:"reason"`
	// Hangs are those for which it matters; none where the tree has none.
	Hangs []string `json:"hangs,omitempty"`
	// LookFor are the signs of a look that is to be made.
	LookFor []*signs.Sign `json:"-"`
	SignIDs []string      `json:"look_for,omitempty"`
	// NotToday are those of them that can't show on the day, or perhaps not.
	NotToday []NotToday     `json:"not_today,omitempty"`
	Methods  []signs.Method `json:"methods,omitempty"`
	// Hazards are those of a site in whose season the day lies, for the look at
	// the surroundings.
	Hazards   []signs.Hazard `json:"-"`
	HazardIDs []string       `json:"hazards,omitempty"`
}

// NotToday is a sign that can't show on the day, and what to look at instead.
type NotToday struct {
	Sign     *signs.Sign   `json:"-"`
	SignID   string        `json:"sign"`
	Needs    string        `json:"needs"`
	StandIns []*signs.Sign `json:"-"`
	StandIDs []string      `json:"stand_ins,omitempty"`
	Instead  string        `json:"instead,omitempty"`
}

// Looks lists what is still to be looked at on a tree of a survey that Read and
// Problems found no fault in.
func Looks(s *survey.Survey, k *knowledge.Base, id string) (LookList, error) {
	site, err := newSite(k, rulesOf(k), s)
	if err != nil {
		return LookList{}, err
	}
	i := slices.IndexFunc(site, func(t *tree) bool { return t.s.ID == id })
	if i < 0 {
		var ids []string
		for _, t := range site {
			ids = append(ids, t.s.ID)
		}
		return LookList{}, fmt.Errorf("%q is no tree of this survey; expected one of %q", id, ids)
	}
	return site[i].looks(), nil
}

func (t *tree) looks() LookList {
	list := LookList{Format: Format, Site: t.survey.Site, Day: t.survey.Day, Tree: t.s.ID, TreeName: t.s.Name, Species: t.s.Species, Tasks: []LookTask{}}
	for i := range t.s.Hangs {
		rig, err := t.newRig(i)
		if err != nil { // its mechanics are not known, so neither is what bears on it
			list.add(t, t.wholeLooks(), t.s.Hangs[i].ID)
			continue
		}
		list.add(t, rig.toLookAt(), t.s.Hangs[i].ID)
	}
	if len(t.s.Hangs) == 0 {
		list.add(t, t.wholeLooks(), "")
	}
	slices.SortStableFunc(list.Tasks, func(a, b LookTask) int { return cmp.Compare(zoneOrder(a.Reason.Zone), zoneOrder(b.Reason.Zone)) })
	for _, m := range signs.Methods() {
		if m.Brought() && slices.ContainsFunc(list.Tasks, func(k LookTask) bool { return slices.Contains(k.Methods, m) }) {
			list.Bring = append(list.Bring, m)
		}
	}
	return list
}

func zoneOrder(zone string) int { return slices.Index(signs.Zones(), signs.Zone(zone)) }

// wholeLooks are the looks at the tree as a whole, for no hang in particular.
func (t *tree) wholeLooks() []Reason {
	i := &inspection{rig: &rig{tree: t}, parts: map[signs.Zone][]string{}, found: map[string]bool{}, clear: map[string]bool{}, stood: map[string]*Reason{}}
	for _, zone := range signs.Zones() {
		i.parts[zone] = []string{""}
	}
	return i.lookReasons()
}

// toLookAt are the reasons of a hang that a look would answer.
func (r *rig) toLookAt() []Reason {
	people := r.people(r.clearTrial(r.asked))
	return append(r.inspectionReasons(people), r.unionReasons()...)
}

// add takes over the reasons that ask for a look, each once for all hangs.
func (l *LookList) add(t *tree, reasons []Reason, hang string) {
	for _, r := range reasons {
		if r.Code == StoodFor || r.Code == StandIn {
			l.remark(r)
		}
		asks := r.Change.Code == ChangeLook || r.Change.Code == ChangeCloserLook || r.Code == UnionNotDescribed
		if r.Remark || !asks || r.Rule != nil { // what signs mean together is settled by each
			continue
		}
		at := slices.IndexFunc(l.Tasks, func(k LookTask) bool { return sameTask(k.Reason, r) })
		if at < 0 {
			at = len(l.Tasks)
			l.Tasks = append(l.Tasks, t.task(r))
		}
		if hang != "" {
			l.Tasks[at].Hangs = append(l.Tasks[at].Hangs, hang)
		}
	}
}

// remark takes over what is stood for, each once for all hangs.
func (l *LookList) remark(r Reason) {
	same := func(known Reason) bool { return known.Text == r.Text && slices.Equal(known.SignIDs, r.SignIDs) }
	if !slices.ContainsFunc(l.StoodFor, same) {
		l.StoodFor = append(l.StoodFor, r)
	}
}

func sameTask(a, b Reason) bool {
	return a.Code == b.Code && a.Zone == b.Zone && a.SignID == b.SignID && a.Finding == b.Finding && (a.Text == b.Text || a.Finding != "")
}

// task says what to look for, how, and what of it can't show on the day.
func (t *tree) task(r Reason) LookTask {
	task := LookTask{Reason: r}
	switch {
	case r.Sign != nil:
		task.LookFor = append(task.LookFor, r.Sign)
	case r.Code == LookCovered:
		task.LookFor = r.Others
	default:
		task.LookFor = t.signsOf(r.Zone)
		task.NotToday = t.notToday(r.Zone)
		task.Hazards = t.hazardsOf(r.Zone)
	}
	for _, h := range task.Hazards {
		task.HazardIDs = append(task.HazardIDs, h.ID)
	}
	for _, s := range task.LookFor {
		task.SignIDs = append(task.SignIDs, s.ID)
	}
	for _, m := range signs.Methods() {
		if slices.ContainsFunc(task.LookFor, func(s *signs.Sign) bool { return slices.Contains(s.Methods, m) }) {
			task.Methods = append(task.Methods, m)
		}
	}
	return task
}

// signsOf lists the signs of a zone that may occur on this tree.
func (t *tree) signsOf(zone string) []*signs.Sign {
	var list []*signs.Sign
	for _, s := range t.k.Signs() {
		if string(s.Zone) == zone && s.GrowsOn(t.species.Scientific) {
			list = append(list, t.rules.sign[s.ID])
		}
	}
	return list
}

// hazardsOf lists the hazards to look for with a zone on the day.
func (t *tree) hazardsOf(zone string) []signs.Hazard {
	var list []signs.Hazard
	for _, h := range t.k.Hazards() {
		if zone == string(signs.Surroundings) && h.Expected(t.northernMonth(t.survey.Day)) {
			list = append(list, h)
		}
	}
	return list
}

// notToday lists the signs of a zone that a look on the day can't show, as far
// as the day is known; wind is known only once one stands there.
func (t *tree) notToday(zone string) []NotToday {
	var list []NotToday
	for _, h := range t.hiddenAt(&survey.Look{Zone: zone, On: t.survey.Day}) {
		list = append(list, NotToday{Sign: h.sign, SignID: h.sign.ID, Needs: h.cause, StandIns: t.standInsOf(h.sign), StandIDs: h.sign.StandIns, Instead: h.sign.Instead})
	}
	return list
}
