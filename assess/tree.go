package assess

import (
	"boughline/engine/space"
	"boughline/engine/wood"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// tree is a tree of the survey with everything that its hangs share.
type tree struct {
	k       *knowledge.Base
	rules   rules
	survey  *survey.Survey
	s       *survey.Tree
	path    string // in the document
	shapes  map[string]*shape
	order   []*shape // parents before children
	species species
	sway    *treeSway     // worked out when first asked for
	hangs   []survey.Hang // those that load tests may speak of
	rigs    map[int]*rig
	site    []*tree // all trees of the survey, this one among them
	tall    quantity.Length
	frames  map[*shape]*limbFrame
	joined  *space.Terrain // the spot heights about the tree, joined when first asked for
}

// species is what the wood of a tree can bear.
type species struct {
	knowledge.Species
	wood     knowledge.Wood
	strength wood.Strength   // of a member
	design   quantity.Stress // what checks compare with
}

func newTree(k *knowledge.Base, r rules, s *survey.Survey, index int) (*tree, error) {
	t := &tree{k: k, rules: r, survey: s, s: &s.Trees[index], path: element("trees", index), frames: map[*shape]*limbFrame{}, rigs: map[int]*rig{}}
	t.hangs = t.s.Hangs
	t.shapes = make(map[string]*shape, len(t.s.Members))
	for i := range t.s.Members {
		t.place(i)
	}
	t.tall = t.height()
	var err error
	t.species, err = speciesOf(k, r, t.s)
	return t, err
}

// place works out the shape of member i, its parents first. Read has refused
// cycles and missing parents.
func (t *tree) place(i int) *shape {
	m := &t.s.Members[i]
	if s, done := t.shapes[m.ID]; done {
		return s
	}
	var parent *shape
	for j := range t.s.Members {
		if m.Parent != "" && t.s.Members[j].ID == m.Parent {
			parent = t.place(j)
		}
	}
	s := shapeOf(t.k, m, element(t.path+".members", i), parent)
	t.shapes[m.ID] = s
	t.order = append(t.order, s)
	return s
}

func speciesOf(k *knowledge.Base, r rules, s *survey.Tree) (species, error) {
	found, known := k.Species(s.Species)
	if !known {
		found = knowledge.Species{Common: s.Species, Group: knowledge.Group(s.Group)}
	}
	w := k.Wood(found)
	strength, err := wood.MemberStrength(wood.Member{
		Clear: quantity.Stress(w.MOR.Value), ClearCoV: w.CoV.Value,
		Factor: r.memberFactor.Value, FactorCoV: r.memberCoV.Value,
	})
	if err != nil {
		return species{}, err
	}
	duration, err := wood.DurationFactor(shortestLoad)
	if err != nil {
		return species{}, err
	}
	design, err := strength.Design(r.materialFactor.Value, duration)
	return species{found, w, strength, design}, err
}

// shortestLoad is how long the pull of a pass lasts: strength takes the
// duration of the shortest load in a combination.
const shortestLoad quantity.Time = 1

// chain lists the members that carry a hang on s: s itself, what it grows
// from, down to the stem.
func chain(s *shape) []*shape {
	var list []*shape
	for ; s != nil; s = s.parent {
		list = append(list, s)
	}
	return list
}
