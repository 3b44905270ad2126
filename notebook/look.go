package notebook

import (
	"fmt"
	"slices"

	"boughline/engine/signs"
	"boughline/survey"
)

// Looker says who looks, on which day, and for which signs.
type Looker struct {
	On    survey.Date
	By    string
	Signs []signs.Sign // of every zone
}

func (l Looker) zone(zone string) []signs.Sign {
	var list []signs.Sign
	for _, s := range l.Signs {
		if string(s.Zone) == zone {
			list = append(list, s)
		}
	}
	return list
}

// AnswersOf returns what is known of each sign of a zone: the answers given
// one by one, or those that a finished look from elsewhere stands for. Signs
// without an answer are left out.
func (l Looker) AnswersOf(t *Tree, zone string) map[string]Answer {
	if given, ok := t.Answers[zone]; ok {
		return given
	}
	answers := map[string]Answer{}
	look := lookAt(t, zone)
	for _, s := range l.zone(zone) {
		switch {
		case slices.ContainsFunc(t.Findings, func(f survey.Finding) bool { return f.Sign == s.ID }):
			answers[s.ID] = Seen
		case look == nil || look.State != survey.LookDone:
		case slices.Contains(look.NotVisible, s.ID):
			answers[s.ID] = CouldNotSee
		default:
			answers[s.ID] = NotSeen
		}
	}
	return answers
}

// Answer writes one answer into a tree. A sign seen becomes a finding whose
// place is still to be said; one not seen takes its findings away.
func (l Looker) Answer(t *Tree, zone, sign string, a Answer) error {
	if !slices.ContainsFunc(l.zone(zone), func(s signs.Sign) bool { return s.ID == sign }) {
		return fmt.Errorf("%q is no sign of the zone %q", sign, zone)
	}
	if a != Seen && a != NotSeen && a != CouldNotSee {
		return fmt.Errorf("%q is no answer; expected %q, %q or %q", a, Seen, NotSeen, CouldNotSee)
	}
	l.own(t, zone)[sign] = a
	l.settleFinding(t, sign, a)
	l.settleLook(t, zone)
	return nil
}

// Rest answers every open sign of a zone with not seen.
func (l Looker) Rest(t *Tree, zone string) {
	answers := l.own(t, zone)
	for _, s := range l.zone(zone) {
		if answers[s.ID] == "" {
			answers[s.ID] = NotSeen
		}
	}
	l.settleLook(t, zone)
}

// Afresh takes all answers of a zone away, so that it is looked at anew. The
// findings stay.
func (l Looker) Afresh(t *Tree, zone string) {
	if t.Answers == nil {
		t.Answers = map[string]map[string]Answer{}
	}
	t.Answers[zone] = map[string]Answer{}
	for _, s := range l.zone(zone) {
		if slices.ContainsFunc(t.Findings, func(f survey.Finding) bool { return f.Sign == s.ID }) {
			t.Answers[zone][s.ID] = Seen
		}
	}
	l.settleLook(t, zone)
}

// own are the answers of a zone, made from a finished look where none were
// given one by one.
func (l Looker) own(t *Tree, zone string) map[string]Answer {
	if t.Answers == nil {
		t.Answers = map[string]map[string]Answer{}
	}
	if t.Answers[zone] == nil {
		t.Answers[zone] = l.AnswersOf(t, zone)
	}
	return t.Answers[zone]
}

func (l Looker) settleFinding(t *Tree, sign string, a Answer) {
	found := func(f survey.Finding) bool { return f.Sign == sign }
	if a != Seen {
		t.Findings = slices.DeleteFunc(t.Findings, found)
		return
	}
	if !slices.ContainsFunc(t.Findings, found) {
		t.Findings = append(t.Findings, survey.Finding{ID: freeID(t), Sign: sign, SeenOn: l.On})
	}
}

// freeID is F1, F2 and so on, the first that no finding has.
func freeID(t *Tree) string {
	for i := 1; ; i++ {
		id := fmt.Sprintf("F%d", i)
		if !slices.ContainsFunc(t.Findings, func(f survey.Finding) bool { return f.ID == id }) {
			return id
		}
	}
}

// settleLook makes the look of a zone say what its answers say. It keeps the
// day of a look that was finished before: changing one answer is no new look.
func (l Looker) settleLook(t *Tree, zone string) {
	before := lookAt(t, zone)
	look := survey.Look{Zone: zone, State: survey.LookNotDone}
	answers, hidden, all := t.Answers[zone], 0, l.zone(zone)
	for _, s := range all {
		if answers[s.ID] == CouldNotSee {
			hidden++
			look.NotVisible = append(look.NotVisible, s.ID)
		}
	}
	if len(answers) >= len(all) {
		look.State, look.On, look.By = survey.LookDone, l.On, l.By
		look.Members = lookedAt(t, zone)
		if before != nil && before.State == survey.LookDone {
			look.On, look.By, look.Members, look.Note, look.StandIns = before.On, before.By, before.Members, before.Note, standIns(before, look.NotVisible)
		}
	}
	if hidden == len(all) {
		look.State, look.NotVisible = survey.LookBlocked, nil
	}
	if look.State == survey.LookNotDone {
		look.NotVisible = nil
	}
	t.Looks = slices.DeleteFunc(t.Looks, func(l survey.Look) bool { return l.Zone == zone })
	t.Looks = append(t.Looks, look)
}

// standIns keeps those of signs that still could not show.
func standIns(look *survey.Look, hidden []string) []survey.StandIn {
	var kept []survey.StandIn
	for _, s := range look.StandIns {
		if slices.Contains(hidden, s.Sign) {
			kept = append(kept, s)
		}
	}
	return kept
}

// lookedAt names the limbs that a finished look covers, so that a limb added
// later is not taken for looked at.
func lookedAt(t *Tree, zone string) []string {
	if zone != string(signs.Limb) && zone != string(signs.Union) {
		return nil
	}
	var limbs []string
	for _, m := range t.Members {
		if m.Parent != "" {
			limbs = append(limbs, m.ID)
		}
	}
	return limbs
}

// lookAt is the newest look at a zone, nil where there is none.
func lookAt(t *Tree, zone string) *survey.Look {
	var newest *survey.Look
	for i := range t.Looks {
		if l := &t.Looks[i]; l.Zone == zone && (newest == nil || !newest.On.After(l.On)) {
			newest = l
		}
	}
	return newest
}

// NewLimb makes finished looks that were made at all limbs say which limbs
// those were, before one more is added.
func NewLimb(t *Tree) {
	for i := range t.Looks {
		l := &t.Looks[i]
		limbs := lookedAt(t, l.Zone)
		perLimb := l.Zone == string(signs.Limb) || l.Zone == string(signs.Union)
		switch {
		case !perLimb || l.State != survey.LookDone || len(l.Members) > 0:
		case len(limbs) == 0:
			l.State, l.NotVisible, l.StandIns = survey.LookNotDone, nil, nil
		default:
			l.Members = limbs
		}
	}
}

// Limbless reports limbs that no finished look at a zone covers.
func Limbless(t *Tree, zone string) []string {
	var missing []string
	for _, limb := range lookedAt(t, zone) {
		covered := slices.ContainsFunc(t.Looks, func(l survey.Look) bool {
			return l.Zone == zone && l.State == survey.LookDone && (len(l.Members) == 0 || slices.Contains(l.Members, limb))
		})
		if !covered {
			missing = append(missing, limb)
		}
	}
	return missing
}

// LimbGone takes a limb out of the looks. One that covered it alone covers
// nothing any more.
func LimbGone(t *Tree, limb string) {
	for i := range t.Looks {
		l := &t.Looks[i]
		if len(l.Members) == 0 {
			continue
		}
		l.Members = slices.DeleteFunc(l.Members, func(name string) bool { return name == limb })
		if len(l.Members) == 0 {
			l.State, l.NotVisible, l.StandIns = survey.LookNotDone, nil, nil
		}
	}
}
