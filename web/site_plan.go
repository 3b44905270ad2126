package web

import (
	"net/http"
	"strings"
	"sync"
	"time"

	"boughline/assess"
	"boughline/notebook"
	"boughline/sheet/figure"
	"boughline/web/view"
)

// plans keep what the plan of a site shows of its trees, so that a change to
// one tree costs the work of one.
type plans struct {
	mu    sync.Mutex
	trees map[string]planned
}

// planned is one tree on a plan with its hangs, by the revisions it was worked
// out from. Outcomes are not kept here: they rest on the trees around as well.
type planned struct {
	site, tree int
	figure     assess.TreeFigure
	spots      []figure.Spot
	drawable   bool
}

// mostPlanned bounds how many trees are remembered.
const mostPlanned = 2000

func newPlans() *plans { return &plans{trees: map[string]planned{}} }

func (p *plans) known(s *notebook.Site, t *notebook.Tree) (planned, bool) {
	p.mu.Lock()
	defer p.mu.Unlock()
	kept, ok := p.trees[s.ID+"/"+t.ID]
	return kept, ok && kept.site == s.Revision && kept.tree == t.Revision
}

func (p *plans) keep(s *notebook.Site, t *notebook.Tree, one planned) {
	p.mu.Lock()
	defer p.mu.Unlock()
	if len(p.trees) >= mostPlanned {
		clear(p.trees)
	}
	p.trees[s.ID+"/"+t.ID] = one
}

// onPlan is a tree of the list with what stands there of its hangs.
type onPlan struct {
	tree  *notebook.Tree
	hangs []view.HangLine
}

// plannedTree is what the plan shows of one tree, as far as there is time to
// work it out.
func (a *app) plannedTree(s *notebook.Site, t *notebook.Tree, until time.Time) (planned, bool) {
	if kept, ok := a.plans.known(s, t); ok {
		return kept, true
	}
	if !time.Now().Before(until) {
		return planned{}, false
	}
	one := planned{site: s.Revision, tree: t.Revision}
	if figures, err := a.Notebook.Figures(s, t); err == nil { // what cannot be drawn stands in the list
		if tree, err := figures.Tree(t.ID); err == nil {
			one.figure, one.drawable = tree, true
		}
		for i := range t.Hangs {
			if hang, err := figures.Hang(t.Hangs[i].ID); err == nil {
				one.spots = append(one.spots, figure.SpotOf(figure.Judged{Figure: hang, Assessed: assess.Hang{ID: t.Hangs[i].ID, Member: t.Hangs[i].Member}}))
			}
		}
	}
	a.plans.keep(s, t, one)
	return one, true
}

// sitePlan draws the trees that are shown, each a link; false where there was
// not time enough for all of them.
func (a *app) sitePlan(r *http.Request, s *notebook.Site, shown []onPlan, until time.Time) ([]view.Drawing, bool) {
	var trees []assess.TreeFigure
	var spots []figure.Spot
	of := map[string]*notebook.Tree{}
	for _, on := range shown {
		one, ok := a.plannedTree(s, on.tree, until)
		if !ok {
			return nil, false
		}
		if !one.drawable {
			continue
		}
		trees = append(trees, one.figure)
		for _, spot := range one.spots {
			var judged bool
			if spot.Outcome, judged = on.outcome(spot.ID); judged { // else it stands in the list alone
				spots = append(spots, spot)
				of[spot.ID] = on.tree
			}
		}
	}
	if len(trees) == 0 {
		return nil, true
	}
	e := easel{a, r, func(key string) string {
		kind, id, _ := strings.Cut(figure.Named(key), " ")
		switch kind {
		case "tree":
			return a.link("site", s.ID, "tree", id)
		case "hang":
			return a.treeLink(s, of[id], "hang", id)
		}
		return ""
	}}
	return []view.Drawing{e.drawn(figure.SiteWith(s.Head.Site, trees, spots))}, true
}

// outcome is what the list says of a hang.
func (o onPlan) outcome(hang string) (assess.Outcome, bool) {
	for _, h := range o.hangs {
		for _, outcome := range assess.Outcomes() {
			if h.Name == hang && h.Code == outcome.String() {
				return outcome, true
			}
		}
	}
	return 0, false
}
