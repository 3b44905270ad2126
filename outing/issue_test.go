package outing_test

import (
	"bytes"
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"boughline/assess"
	"boughline/demo"
	"boughline/knowledge"
	"boughline/outing"
	"boughline/quantity"
	"boughline/survey"
)

var zone = time.FixedZone("BST", 3600)

// at is a time on the day of the demo site.
func at(hour, minute int) time.Time { return time.Date(2026, 5, 16, hour, minute, 0, 0, zone) }

func base(t testing.TB) *knowledge.Base {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	return k
}

func site(t testing.TB) *survey.Survey {
	t.Helper()
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(problems, err)
	}
	return s
}

func oak() outing.Issue {
	return outing.Issue{Tree: "T1", Hang: "oak-swing", At: at(10, 0), Until: at(17, 0), Signed: "Ann Rigger"}
}

// A card says what the assessment of the same document says, and nothing else.
func TestACardIsTheAssessment(t *testing.T) {
	k, s := base(t), site(t)
	o, err := outing.New("o1", s, k, oak())
	if err != nil {
		t.Fatal(err)
	}
	found, err := assess.AssessTree(s, k, "T1")
	if err != nil {
		t.Fatal(err)
	}
	want := *found.Hangs[0].Limits
	if got := o.Card.Limits; got.MassEach != want.MassEach || got.Amplitude != want.Amplitude || got.Gust != want.Gust || got.KeptClear != want.KeptClear {
		t.Errorf("card %+v, assessment %+v", got, want)
	}
	// A seat on a line L at an angle a has risen L (1 - cos a) and gone out L sin a.
	l, a := float64(want.Line), float64(want.Amplitude)
	if math.Abs(float64(o.Card.Rise)-l*(1-math.Cos(a))) > 1e-12 || math.Abs(float64(o.Card.Out)-l*math.Sin(a)) > 1e-12 {
		t.Errorf("rise %v, out %v", o.Card.Rise, o.Card.Out)
	}
	if c := o.Card.Clear; math.Abs(float64(max(c.Ahead, c.Behind)/want.KeptClear)-1) > 0.05 || c.Side <= 0 {
		t.Errorf("ground %+v, assessment %v", c, want.KeptClear)
	}
	if o.Card.StopBeaufort != want.Beaufort+1 || o.Card.StopSigns == "" {
		t.Errorf("stops at %d %q, holds at %d", o.Card.StopBeaufort, o.Card.StopSigns, want.Beaufort)
	}
	if o.Card.LookAgain.IsZero() || o.Card.Place == nil || o.Card.Group.ID != "small" {
		t.Errorf("card %+v", o.Card)
	}
}

// Only outcomes that may be put up get a card; every other says why not.
func TestNoCardForAnythingElse(t *testing.T) {
	k, s := base(t), site(t)
	found, err := assess.Assess(s, k)
	if err != nil {
		t.Fatal(err)
	}
	seen := map[assess.Outcome]int{}
	for _, h := range found.Hangs {
		i := oak()
		i.Tree, i.Hang = h.Tree, h.ID
		_, err := outing.New("o", s, k, i)
		var no *outing.NoCard
		seen[h.Outcome]++
		switch {
		case h.Outcome.Rideable() && err != nil:
			t.Errorf("%s is %v: %v", h.ID, h.Outcome, err)
		case !h.Outcome.Rideable() && (!errors.As(err, &no) || no.Outcome != h.Outcome || len(no.Reasons) == 0 || !strings.Contains(err.Error(), h.Outcome.String())):
			t.Errorf("%s is %v: %v", h.ID, h.Outcome, err)
		}
	}
	if len(seen) < 5 {
		t.Errorf("the demo shows only %v", seen)
	}
}

func TestACardWantsANameAndATimeOfTheSameDay(t *testing.T) {
	k, s := base(t), site(t)
	for name, c := range map[string]struct {
		change func(*outing.Issue)
		cause  outing.Cause
	}{
		"nobody signs":         {func(i *outing.Issue) { i.Signed = " " }, outing.NotSigned},
		"down before it is up": {func(i *outing.Issue) { i.Until = at(9, 59) }, outing.BadTime},
		"down at once":         {func(i *outing.Issue) { i.Until = i.At }, outing.BadTime},
		"left overnight":       {func(i *outing.Issue) { i.Until = at(24, 1) }, outing.BadTime},
		"a year later":         {func(i *outing.Issue) { i.Until = i.Until.AddDate(1, 0, 0) }, outing.BadTime},
		"no such hang":         {func(i *outing.Issue) { i.Hang = "lime-swing" }, outing.NoSuchHang},
		"no such tree":         {func(i *outing.Issue) { i.Tree = "T99" }, outing.NoSuchHang},
	} {
		i := oak()
		c.change(&i)
		var no *outing.NoCard
		if _, err := outing.New("o", s, k, i); !errors.As(err, &no) || no.Cause != c.cause {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Looks count for twelve months (assess). The day of the outing decides, not
// the day in the document, and a look without a day gets no younger by moving it.
func TestAnExaminationLapses(t *testing.T) {
	k := base(t)
	cause := func(s *survey.Survey, day time.Time) outing.Cause {
		i := oak()
		i.At, i.Until = day, day.Add(time.Hour)
		_, err := outing.New("o", s, k, i)
		var no *outing.NoCard
		if err == nil {
			return ""
		}
		if !errors.As(err, &no) {
			t.Fatal(err)
		}
		return no.Cause
	}
	old := site(t)
	for j := range old.Trees[0].Looks {
		on, err := survey.ParseDate("2025-05-20")
		if err != nil {
			t.Fatal(err)
		}
		old.Trees[0].Looks[j].On, old.Trees[0].Looks[j].Leaves = on, "in leaf"
	}
	undated := site(t)
	for j := range undated.Trees[0].Looks {
		undated.Trees[0].Looks[j].On = survey.Date{}
	}
	for name, c := range map[string]struct {
		s    *survey.Survey
		day  time.Time
		want outing.Cause
	}{
		"within the year":                   {old, at(10, 0), ""},
		"a year and a day later":            {old, at(10, 0).AddDate(0, 0, 5), outing.Lapsed},
		"a document of three weeks ago":     {site(t), at(10, 0).AddDate(0, 0, 21), ""},
		"a document of last year":           {site(t), at(10, 0).AddDate(1, 0, 0), outing.Lapsed},
		"a document for next season":        {site(t), at(10, 0).AddDate(0, -2, 0), outing.Lapsed},
		"looks without a day, on their day": {undated, at(10, 0), ""},
		"looks without a day, a week early": {undated, at(10, 0).AddDate(0, 0, -7), outing.Lapsed},
	} {
		if got := cause(c.s, c.day); got != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
	if !undated.Trees[0].Looks[0].On.IsZero() {
		t.Error("judging changed the document")
	}
}

// Steps never fall short of the distance.
func TestStepsReach(t *testing.T) {
	for _, c := range []struct {
		d, pace quantity.Length
		want    int
	}{{4.65, 0.7, 7}, {7, 0.7, 10}, {7.01, 0.7, 11}, {0, 0.7, 0}, {5, 0, 0}} {
		if got := outing.Steps(c.d, c.pace); got != c.want {
			t.Errorf("%v at %v: %d, want %d", c.d, c.pace, got, c.want)
		}
	}
}

// 52.731 deg is 52 deg and 43.86 minutes; a minute is a sixtieth of a degree.
func TestPositions(t *testing.T) {
	for want, at := range map[string][2]float64{
		"52° 43.860' N, 2° 54.840' W":   {52.731, -2.914},
		"0° 00.000' N, 180° 00.000' E":  {0, 180},
		"33° 52.080' S, 151° 12.540' E": {-33.868, 151.209},
		"1° 00.000' N, 0° 00.000' W":    {0.99999999, -0.000000001},
	} {
		if got := outing.Position(at[0], at[1]); got != want {
			t.Errorf("%v: %q, want %q", at, got, want)
		}
	}
}
