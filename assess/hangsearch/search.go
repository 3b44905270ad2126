package hangsearch

import (
	"cmp"
	"context"
	"fmt"
	"runtime"
	"slices"
	"sync"
	"sync/atomic"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// Aim says which of the hangs that serve is the best.
type Aim string

// The aims.
const (
	LongestLine Aim = "longest-line"
	LowestFall  Aim = "lowest-fall"
	MostInHand  Aim = "most-in-hand"
)

// Aims lists the aims.
func Aims() []Aim { return []Aim{LongestLine, LowestFall, MostInHand} }

// Options say what is looked for. The zero value looks at every tree and every
// group for the longest line.
type Options struct {
	Aim    Aim
	Trees  []string // their ids; none means all
	Limbs  []string // their ids, on the trees looked at; none means all
	Groups []string // of riders; none means all
	// Amplitudes to each side that are tried, the widest first; none means 50,
	// 40, 30 and 20 degrees. The first at which a limb serves is taken.
	Amplitudes []quantity.Angle
	// Shortest is the shortest line worth a swing; 0 means 2 m (house).
	Shortest quantity.Length
	// Progress is called as limbs and groups are done, one call at a time.
	Progress func(done, of int)
}

func (o Options) filled(s *survey.Survey) Options {
	if o.Aim == "" {
		o.Aim = LongestLine
	}
	if len(o.Groups) == 0 {
		for _, r := range s.Riders {
			o.Groups = append(o.Groups, r.ID)
		}
	}
	if len(o.Amplitudes) == 0 {
		for _, degrees := range []quantity.Angle{50, 40, 30, 20} {
			o.Amplitudes = append(o.Amplitudes, degrees*quantity.Degree)
		}
	}
	if o.Shortest == 0 {
		o.Shortest = 2
	}
	if o.Progress == nil {
		o.Progress = func(int, int) {}
	}
	return o
}

// Result is what a search found.
type Result struct {
	Site  string      `json:"site"`
	Day   survey.Date `json:"day"`
	Aim   Aim         `json:"aim"`
	Trees []Tree      `json:"trees"` // the best first
}

// Tree is what can be hung on one tree.
type Tree struct {
	ID      string  `json:"id"`
	Name    string  `json:"name,omitempty"`
	Species string  `json:"species"`
	Places  []Place `json:"places"` // limbs and groups, the best first
	// Overlaps are the trees before this one whose best hang needs ground that
	// the best hang of this one needs too: they are not used at one time.
	Overlaps []string `json:"overlaps,omitempty"`
}

// Best returns the best place of the tree, nil where nothing can be hung.
func (t *Tree) Best() *Place {
	if len(t.Places) > 0 && t.Places[0].Best != nil {
		return &t.Places[0]
	}
	return nil
}

// Search looks for hangs on the trees of a survey that Read and Problems found
// no fault in. It stops with the error of the context where that ends. Other
// errors name a tree or group that the survey does not have, or say what can't
// be computed.
func Search(ctx context.Context, s *survey.Survey, k *knowledge.Base, options Options) (Result, error) {
	o := options.filled(s)
	if err := o.check(s); err != nil {
		return Result{}, err
	}
	prospects, err := assess.Prospects(s, k)
	if err != nil {
		return Result{}, err
	}
	prospects = slices.DeleteFunc(prospects, func(p assess.Prospect) bool {
		return len(o.Trees) > 0 && !slices.Contains(o.Trees, p.Tree().ID)
	})
	result := Result{Site: s.Site, Day: s.Day, Aim: o.Aim, Trees: make([]Tree, len(prospects))}
	areas := make([]ground, len(prospects))
	search := treeSearch{ctx: ctx, options: o, chain: chainFor(s), steps: countSteps(prospects, o)}
	err = each(len(prospects), func(i int) (err error) {
		result.Trees[i], areas[i], err = search.of(prospects[i])
		return err
	})
	if err != nil {
		return Result{}, err
	}
	byTree := map[string]ground{}
	for i, t := range result.Trees {
		byTree[t.ID] = areas[i]
	}
	result.rank(o.Aim)
	result.findOverlaps(byTree)
	return result, nil
}

// each runs a function for 0 to n-1 on all processors and returns the error of
// the first of them.
func each(n int, f func(int) error) error {
	errs := make([]error, n)
	var next atomic.Int64
	var wait sync.WaitGroup
	for range min(n, runtime.GOMAXPROCS(0)) {
		wait.Go(func() {
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				errs[i] = f(i)
			}
		})
	}
	wait.Wait()
	return cmp.Or(errs...)
}

// treeSearch is the search on one tree after another.
type treeSearch struct {
	ctx     context.Context
	options Options
	chain   string
	steps   *progress
}

// of looks at one tree and returns the ground that its best hang keeps clear.
func (s treeSearch) of(p assess.Prospect) (Tree, ground, error) {
	t := Tree{ID: p.Tree().ID, Name: p.Tree().Name, Species: p.Tree().Species}
	for _, limb := range s.options.limbsOf(p) {
		points := pointsOn(p, limb)
		for _, group := range s.options.Groups {
			if err := s.ctx.Err(); err != nil {
				return t, ground{}, err
			}
			place, err := finderFor(points, s.options, group, s.chain).place()
			if err != nil {
				return t, ground{}, fmt.Errorf("tree %q: %w", t.ID, err)
			}
			t.Places = append(t.Places, place)
			s.steps.done()
		}
	}
	t.rank(s.options.Aim)
	if best := t.Best(); best != nil {
		return t, groundOf(p.Tree(), best), nil
	}
	return t, ground{}, nil
}

// limbsOf are the limbs of a tree that are looked at.
func (o Options) limbsOf(p assess.Prospect) []assess.Limb {
	return slices.DeleteFunc(p.Limbs(), func(l assess.Limb) bool {
		return len(o.Limbs) > 0 && !slices.Contains(o.Limbs, l.ID)
	})
}

// check wants names that the survey has.
func (o Options) check(s *survey.Survey) error {
	if !slices.Contains(Aims(), o.Aim) {
		return fmt.Errorf("aim: %q is none; expected one of %v", o.Aim, Aims())
	}
	if len(o.Groups) == 0 {
		return fmt.Errorf("riders: the survey names no group; expected at least one to hang a swing for")
	}
	for _, id := range o.Groups {
		if !slices.ContainsFunc(s.Riders, func(r survey.Riders) bool { return r.ID == id }) {
			return fmt.Errorf("group: %q is none of the survey; expected one of its riders", id)
		}
	}
	for _, id := range o.Trees {
		if !slices.ContainsFunc(s.Trees, func(t survey.Tree) bool { return t.ID == id }) {
			return fmt.Errorf("tree: %q is none of the survey; expected the id of one of its trees", id)
		}
	}
	return nil
}

// chainFor is the first chain of the survey, empty where it has none.
func chainFor(s *survey.Survey) string {
	if len(s.Chains) == 0 {
		return ""
	}
	return s.Chains[0].ID
}

// progress counts limbs and groups, of trees that are searched side by side.
type progress struct {
	mu     sync.Mutex
	at, of int
	tell   func(done, of int)
}

func countSteps(prospects []assess.Prospect, o Options) *progress {
	p := &progress{tell: o.Progress}
	for _, prospect := range prospects {
		p.of += len(o.limbsOf(prospect)) * len(o.Groups)
	}
	return p
}

func (p *progress) done() {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.at++
	p.tell(p.at, p.of)
}
