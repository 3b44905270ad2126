package fungi

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func drawEvidence(t *rapid.T, k *Key) Evidence {
	e := Evidence{Month: rapid.IntRange(0, 12).Draw(t, "month"), Marks: map[string]bool{}}
	for _, q := range toyQuestions() {
		n := rapid.IntRange(0, 2).Draw(t, q.Attribute)
		for range n {
			e = e.With(q.Attribute, rapid.SampledFrom(k.answers(q.Attribute)).Draw(t, "answer"))
		}
	}
	return e
}

// Bayes' theorem by hand: two candidates that differ in the host alone. The
// first grows on A with a floor of 0.2 over both trees, the second on B.
func TestIdentifyIsBayes(t *testing.T) {
	v := Vocabulary{Hosts: []Host{{"A", "g"}, {"B", "g"}}}
	trust := toyTrust()
	trust.HostFloor, trust.DecayShare = 0.2, 1
	k, err := New(v, trust, []Candidate{
		{Name: "a", Kind: Decay, Commonness: 3, Hosts: []string{"A"}}, {Name: "b", Kind: Decay, Commonness: 1, Hosts: []string{"B"}},
	})
	if err != nil {
		t.Fatal(err)
	}
	r, err := k.Identify(Evidence{Host: "A"})
	if err != nil {
		t.Fatal(err)
	}
	want := 0.75 * 0.9 / (0.75*0.9 + 0.25*0.1)
	if r.Ranked[0].Name != "a" || math.Abs(r.Ranked[0].Probability-want) > 1e-12 || r.Rest != 0 {
		t.Errorf("got %v, want a with %.6f", r.Ranked, want)
	}
}

func TestProbabilitiesSumToOneAtMost(t *testing.T) {
	k := toyKey(t)
	rapid.Check(t, func(t *rapid.T) {
		r, err := k.Identify(drawEvidence(t, k))
		if err != nil {
			t.Fatal(err)
		}
		sum := 0.0
		for _, one := range r.Ranked {
			if one.Probability < 0 || one.Probability > 1 {
				t.Fatalf("%s has %g", one.Name, one.Probability)
			}
			sum += one.Probability
		}
		if sum > 1 || math.Abs(sum+r.Rest-1) > 1e-9 {
			t.Fatalf("the named sum to %.12f, the rest is %.12f", sum, r.Rest)
		}
	})
}

// What is believed now is the average of what will be believed after any
// question, weighted by how likely each answer is: an answer that is left out
// changes nothing, and leaving it out never makes anything surer than the
// answers would on average (law of total probability).
func TestLeavingOutIsTheAverageOfAllAnswers(t *testing.T) {
	k := toyKey(t)
	rapid.Check(t, func(t *rapid.T) {
		e := drawEvidence(t, k)
		q := rapid.SampledFrom(toyQuestions()).Draw(t, "question").Attribute
		if len(e.told(q)) > 0 || isMark(q) && len(e.Marks) > 0 { // more answers of one kind are damped
			return
		}
		now := k.posterior(e)
		average, surer := make([]float64, len(now)), 0.0
		for _, answer := range k.answers(q) {
			share := 0.0
			for i, p := range k.profiles {
				share += now[i] * p.chance(q, answer)
			}
			after := k.posterior(e.With(q, answer))
			for i := range after {
				average[i] += share * after[i]
			}
			surer += share * slices.Max(after)
		}
		for i := range now {
			if math.Abs(average[i]-now[i]) > 1e-9 {
				t.Fatalf("%s: the average after %s is %.12f, now %.12f", q, q, average[i], now[i])
			}
		}
		if surer < slices.Max(now)-1e-9 {
			t.Fatalf("%s makes less sure: %g, now %g", q, surer, slices.Max(now))
		}
	})
}

func isMark(attribute string) bool {
	_, colour := ColourAsked(attribute)
	return !colour && !slices.Contains([]string{AskHost, AskPosition, AskForm, AskUnderside}, attribute)
}

func TestOrderDoesNotMatter(t *testing.T) {
	k := toyKey(t)
	reversed := toyCandidates()
	slices.Reverse(reversed)
	back, err := New(toyVocabulary(), toyTrust(), reversed)
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		e := drawEvidence(t, k)
		turned := e
		turned.Positions, turned.Forms, turned.Colours = slices.Clone(e.Positions), slices.Clone(e.Forms), slices.Clone(e.Colours)
		slices.Reverse(turned.Positions)
		slices.Reverse(turned.Forms)
		slices.Reverse(turned.Colours)
		a, _ := k.Identify(e)
		b, err := back.Identify(turned)
		if err != nil || a.Answer != b.Answer || !slices.Equal(a.Meaning.Shared, b.Meaning.Shared) || a.Meaning.Advice != b.Meaning.Advice {
			t.Fatalf("%v; in another order %v %v", a, b, err)
		}
		for i := range a.Ranked {
			if math.Abs(a.Ranked[i].Probability-b.Ranked[i].Probability) > 1e-9 {
				t.Fatalf("%v; in another order %v", a.Ranked, b.Ranked)
			}
		}
	})
}

func TestNewRefusesFaults(t *testing.T) {
	for name, c := range map[string]struct {
		spoil func(*Candidate)
		want  string
	}{
		"form":       {func(c *Candidate) { c.Forms = []string{"roof"} }, `form "roof"`},
		"position":   {func(c *Candidate) { c.Positions = []string{"roof"} }, `position "roof"`},
		"underside":  {func(c *Candidate) { c.Undersides = []string{"wool"} }, `underside "wool"`},
		"host":       {func(c *Candidate) { c.Hosts = []string{"Ivy"} }, `host "Ivy"`},
		"wider":      {func(c *Candidate) { c.Wider = "palms" }, `wider hosts "palms"`},
		"mark":       {func(c *Candidate) { c.Marks = []string{"loud"} }, `mark "loud"`},
		"twice":      {func(c *Candidate) { c.Lacks = []string{"dust"} }, "stands twice"},
		"colour":     {func(c *Candidate) { c.Colours = map[Field][]string{Upper: {"beige"}} }, `colour "beige"`},
		"commonness": {func(c *Candidate) { c.Commonness = 0 }, "above 0"},
		"sizes":      {func(c *Candidate) { c.Smallest = 9 }, "in order"},
	} {
		list := toyCandidates()
		c.spoil(&list[0])
		if _, err := New(toyVocabulary(), toyTrust(), list); err == nil || !strings.Contains(err.Error(), c.want) || !strings.Contains(err.Error(), "Rootus bad") {
			t.Errorf("%s: got %v, want %q", name, err, c.want)
		}
	}
}

func TestIdentifyRefusesUnknownNames(t *testing.T) {
	k := toyKey(t)
	for _, e := range []Evidence{
		{Host: "Ivy"}, {Positions: []string{"roof"}}, {Forms: []string{"roof"}}, {NotForms: []string{"roof"}}, {Undersides: []string{"wool"}}, {NotUnder: []string{"wool"}},
		{Month: 13}, {Month: -1}, {Size: -1}, {Colours: []Seen{{Upper, "beige"}}}, {Colours: []Seen{{"roof", "white"}}}, {Marks: map[string]bool{"loud": true}},
	} {
		if _, err := k.Identify(e); err == nil {
			t.Errorf("%+v was taken", e)
		}
	}
}
