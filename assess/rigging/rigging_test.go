package rigging

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"boughline/assess"
	"boughline/demo"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

func readDemo(t testing.TB) *survey.Survey {
	t.Helper()
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return s
}

func base(t testing.TB) *knowledge.Base {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	return k
}

// rigged works a hang of the demo out, its survey changed before.
func rigged(t testing.TB, hang string, o Options, change func(*survey.Survey)) Rigging {
	t.Helper()
	s := readDemo(t)
	if change != nil {
		change(s)
	}
	r, err := Of(s, base(t), hang, o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// Every hang of the demo can be rigged or says why a part of it cannot be told,
// and the same survey gives the same answer.
func TestEveryHangOfTheDemo(t *testing.T) {
	s := readDemo(t)
	for _, tree := range s.Trees {
		for _, h := range tree.Hangs {
			r := rigged(t, h.ID, Options{}, nil)
			if r.Tree != tree.ID || len(r.Chain.Links) == 0 || r.Line.Cut < r.Line.FinishedHigh || r.Line.Adjust <= 0 || r.Line.Fault != "" {
				t.Errorf("%s: %+v", h.ID, r.Line)
			}
			if (len(r.Fresh.Spots) > 0) != r.Outcome.Rideable() {
				t.Errorf("%s: %v with fresh points %+v", h.ID, r.Outcome, r.Fresh)
			}
			if r.Throw.ByHand || r.Throw.Speed < r.Throw.Least || len(r.Bark.Covers) != 5 {
				t.Errorf("%s: throw %+v, %d covers", h.ID, r.Throw, len(r.Bark.Covers))
			}
			first, err := json.Marshal(r)
			if err != nil {
				t.Fatal(err)
			}
			if second, _ := json.Marshal(rigged(t, h.ID, Options{}, nil)); !bytes.Equal(first, second) {
				t.Errorf("%s: two answers", h.ID)
			}
		}
	}
}

func TestOptionsAreRefused(t *testing.T) {
	wrong := quantity.Length(-1)
	hours := 25.0
	for want, o := range map[string]Options{"seat": {Seat: &wrong}, "stand": {Stand: &wrong}, "hours": {Hours: &hours}} {
		if _, err := Of(readDemo(t), base(t), "oak-swing", o); err == nil || !strings.HasPrefix(err.Error(), want+":") {
			t.Errorf("%s: %v", want, err)
		}
	}
	if _, err := Of(readDemo(t), base(t), "no-swing", Options{}); err == nil {
		t.Error("a hang that is not there was rigged")
	}
}

// A link of unknown strength may be the weakest, and is said to be unknown.
func TestUnknownLinksAreNamed(t *testing.T) {
	r := rigged(t, "pine-swing", Options{}, nil)
	if !slices.Contains(r.Chain.Unknown, "found shackle") || r.Chain.Weakest == "" {
		t.Errorf("%+v", r.Chain)
	}
	for _, l := range r.Chain.Links {
		for _, s := range l.Steps {
			if len(s.Refs) == 0 || s.Refs[0].Citation() == "" {
				t.Errorf("%s: %s has no source", l.Name, s.Cause)
			}
		}
	}
}

// A hang that does not hold has no fresh point; one farther along must be judged
// no worse than the marked one, and at least the anchor's width away.
func TestFreshPoints(t *testing.T) {
	f := rigged(t, "oak-swing", Options{}, nil).Fresh
	if len(f.Spots) != 2 || f.Apart < 0.05 {
		t.Fatalf("%+v", f)
	}
	for _, s := range f.Spots {
		if moved := max(s.Moved, -s.Moved); moved < f.Apart-1e-9 || s.Outcome > assess.MayHang {
			t.Errorf("%+v", s)
		}
	}
	if f := rigged(t, "pine-swing", Options{}, nil).Fresh; f.Fault == "" || len(f.Spots) > 0 {
		t.Errorf("%+v", f)
	}
}

// The knots of the chain come first, and every job has its source.
func TestKnotsOfTheChain(t *testing.T) {
	list := rigged(t, "oak-swing", Options{}, nil).Knots
	if list[0].Name != "bowline" || !slices.Equal(list[0].In, []string{"swing line"}) || len(list) != 14 {
		t.Errorf("%+v", list[0])
	}
	for _, k := range list {
		if len(k.Refs) != 3 || k.Keeps <= 0 {
			t.Errorf("%+v", k)
		}
	}
}

// The demo's anchor chokes, and is marked as the one in use.
func TestFreeingNamesTheAnchorInUse(t *testing.T) {
	for hang, want := range map[string]string{"oak-swing": "choker", "pine-swing": "basket"} {
		for _, f := range rigged(t, hang, Options{}, nil).Freeing {
			if f.InUse != (f.Anchor == want) {
				t.Errorf("%s: %+v", hang, f)
			}
		}
	}
	line := func(s *survey.Survey) {
		s.Chains[0].Parts = s.Chains[0].Parts[2:]
		s.Chains[0].Parts[0].Hitch = "choker"
	}
	if !slices.ContainsFunc(rigged(t, "oak-swing", Options{}, line).Freeing, func(f Freeing) bool { return f.InUse && f.Anchor == "running bowline" }) {
		t.Error("a line choked round the limb is no running bowline")
	}
}
