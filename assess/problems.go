package assess

import (
	"fmt"
	"strings"

	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/survey"
)

// CodeNotInTables marks a name that the tables of the knowledge do not hold.
const CodeNotInTables = "not-in-tables"

// CodeNoGround marks spot heights that make no ground.
const CodeNoGround = "no-ground"

// Problems checks the names in a survey against the tables: signs, fungi,
// surfaces, terrain, knots, standards, and a group for every species that the
// tables do not hold. It returns all of them.
func Problems(s *survey.Survey, k *knowledge.Base) []survey.Problem {
	n := names{k: k}
	if s.Wind != nil {
		n.wind(s.Wind)
	}
	for i := range s.Chains {
		n.chain(&s.Chains[i], element("chains", i))
	}
	for i := range s.Hazards {
		n.hazard(&s.Hazards[i], element("hazards", i))
	}
	for i := range s.Trees {
		n.tree(&s.Trees[i], element("trees", i))
	}
	return n.problems
}

type names struct {
	k        *knowledge.Base
	problems []survey.Problem
}

func (n *names) report(path, value, expected, do string) {
	n.problems = append(n.problems, survey.Problem{
		Code: CodeNotInTables, Path: path, Value: fmt.Sprintf("%q", value),
		Fault: "the tables do not hold it", Expected: expected, Do: do,
	})
}

func (n *names) hazard(h *survey.Hazard, path string) {
	if _, ok := n.k.Hazard(h.Hazard); !ok {
		n.report(path+".hazard", h.Hazard, "one of "+namesOf(n.k.Hazards(), func(h signs.Hazard) string { return h.ID }), "take the row most like it, and describe it in the note")
	}
}

func (n *names) wind(w *survey.Wind) {
	if _, ok := n.k.Terrain(w.Terrain); !ok {
		n.report("wind.terrain", w.Terrain, "a terrain category: 0, I, II, III or IV", "take the category of EN 1991-1-4 that is most like the site")
	}
	if w.StopBeaufort != nil {
		if _, ok := n.k.Beaufort(*w.StopBeaufort); !ok {
			n.report("wind.stop_beaufort", fmt.Sprint(*w.StopBeaufort), "a Beaufort force from 3 to 10", "state the force at which the site stops")
		}
	}
}

func (n *names) chain(c *survey.Chain, path string) {
	for i := range c.Parts {
		part, at := &c.Parts[i], element(path+".parts", i)
		for j, end := range part.Ends {
			if _, ok := n.k.Knot(end); !ok {
				n.report(element(at+".ends", j), end, "one of "+namesOf(n.k.Knots(), func(k knowledge.Knot) string { return k.Name }), "take the name of the knot table, or leave a sewn end out")
			}
		}
		if _, ok := n.k.Gear(part.Standard); part.Standard != "" && !ok {
			n.report(at+".standard", part.Standard, "one of "+namesOf(n.k.GearList(), func(g knowledge.Gear) string { return g.Standard }), "give the mark that is printed on the part instead")
		}
	}
}

func (n *names) tree(t *survey.Tree, path string) {
	if _, ok := n.k.Species(t.Species); !ok && t.Group == "" {
		n.report(path+".species", t.Species, "a species of the tables, or a group beside it", "add \"group\": \"broadleaf\" or \"conifer\"; the lowest strength of the group is taken then")
	}
	for i := range t.Findings {
		n.finding(&t.Findings[i], element(path+".findings", i))
	}
	for i := range t.Looks {
		n.look(&t.Looks[i], element(path+".looks", i))
	}
	if t.Ground != nil {
		n.lie(t.Ground, path+".ground")
	}
	for i := range t.Hangs {
		n.hang(t, i, element(path+".hangs", i))
	}
}

func (n *names) finding(f *survey.Finding, path string) {
	if _, ok := n.k.Sign(f.Sign); !ok {
		n.sign(path+".sign", f.Sign, "")
	}
	if f.Fungus == "" || f.Fungus == unknownFungus {
		return
	}
	if _, ok := n.k.Fungus(f.Fungus); !ok {
		n.report(path+".fungus", f.Fungus, "the scientific name of a fungus of the tables, or unknown", "write unknown and describe what was seen in the note")
	}
}

func (n *names) look(l *survey.Look, path string) {
	for i, id := range l.NotVisible {
		if s, ok := n.k.Sign(id); !ok || string(s.Zone) != l.Zone {
			n.sign(element(path+".not_visible", i), id, l.Zone)
		}
	}
	for i := range l.StandIns {
		at := element(path+".stand_ins", i) + ".sign"
		id := l.StandIns[i].Sign
		if s, ok := n.k.Sign(id); !ok || string(s.Zone) != l.Zone {
			n.sign(at, id, l.Zone)
		}
	}
}

// sign reports a sign id that is none, or none of its zone.
func (n *names) sign(path, id, zone string) {
	var known []string
	for _, s := range n.k.Signs() {
		if zone == "" || string(s.Zone) == zone {
			known = append(known, s.ID)
		}
	}
	expected := "a sign id such as " + strings.Join(known[:min(4, len(known))], ", ")
	if zone != "" {
		expected = "a sign of the zone " + zone + ", such as " + strings.Join(known[:min(4, len(known))], ", ")
	}
	n.report(path, id, expected, "take the id of the sign table")
}

func (n *names) hang(t *survey.Tree, index int, path string) {
	h := &t.Hangs[index]
	if h.Ground != nil {
		n.surface(h.Ground.Surface, path+".ground.surface")
	}
	for i := range t.Members {
		if t.Members[i].ID == h.Member && t.Members[i].Parent == "" {
			n.problems = append(n.problems, survey.Problem{
				Code: survey.CodeReference, Path: path + ".member", Value: fmt.Sprintf("%q", h.Member),
				Fault: "it is the stem", Expected: "a limb", Do: "name the limb that the swing hangs from",
			})
		}
	}
}

func (n *names) surface(name, path string) {
	if _, ok := n.k.Surface(name); !ok {
		n.report(path, name, "one of "+namesOf(n.k.Surfaces(), func(s knowledge.Surface) string { return s.Name }), "take the surface most like it, the lower rated where in doubt")
	}
}

// lie wants spot heights that make a ground.
func (n *names) lie(g *survey.Lie, path string) {
	n.surface(g.Surface, path+".surface")
	if _, err := terrainOf(n.k, g); err != nil {
		n.problems = append(n.problems, survey.Problem{
			Code: CodeNoGround, Path: path + ".spots", Fault: err.Error(),
			Expected: "three or more places, not all in one line", Do: "measure a spot to the side of the others, and each place once",
		})
	}
}

func namesOf[T any](list []T, name func(T) string) string {
	var words []string
	for _, item := range list {
		words = append(words, name(item))
	}
	return strings.Join(words, ", ")
}
