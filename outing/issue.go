package outing

import (
	"fmt"
	"slices"
	"strings"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/survey"
)

// Judge works out the card of an outing with the load tests made so far, none
// at issue, and what the last of them says. It fails with a *NoCard where the hang
// may not be put up. It is pure: the same tests give the same card.
type Judge func(tests []survey.LoadTest) (Card, Verdict, error)

// Verdict is what follows from the last load test.
type Verdict string

// The verdicts. A test that was not read may be made again; a failed one bars
// the limb.
const (
	NoTest  Verdict = ""
	Passed  Verdict = "passed"
	NotRead Verdict = "not read"
	Failed  Verdict = "failed"
)

// NewJudge judges a survey that Read and assess.Problems found no fault in, on
// the day of an issue.
func NewJudge(s *survey.Survey, k *knowledge.Base, i Issue) Judge {
	return func(tests []survey.LoadTest) (Card, Verdict, error) {
		if err := i.check(); err != nil {
			return Card{}, NoTest, err
		}
		if t, _ := hangOf(s, i); t == nil {
			return Card{}, NoTest, &NoCard{Cause: NoSuchHang, Hang: i.Hang, Detail: fmt.Sprintf("the survey has no hang %q on a tree %q; expected one of its hangs", i.Hang, i.Tree)}
		}
		day, err := onDay(s, i.Day(), k)
		if err != nil {
			return Card{}, NoTest, &NoCard{Cause: Lapsed, Hang: i.Hang, Detail: err.Error()}
		}
		return judge(withTests(day, i, tests), k, i, len(tests) > 0)
	}
}

// withTests adds load tests to the tree of an issue. Whatever day a test of the
// outing states, it was made on this one.
func withTests(s *survey.Survey, i Issue, tests []survey.LoadTest) *survey.Survey {
	t, _ := hangOf(s, i)
	t.LoadTests = slices.Clone(t.LoadTests)
	for _, test := range tests {
		test.Hang, test.On = i.Hang, i.Day()
		t.LoadTests = append(t.LoadTests, test)
	}
	return s
}

func judge(s *survey.Survey, k *knowledge.Base, i Issue, tested bool) (Card, Verdict, error) {
	if problems := survey.Validate(s); len(problems) > 0 {
		return Card{}, NoTest, fmt.Errorf("load test: %s", problems[0])
	}
	judged, err := assessed(s, k, i)
	if err != nil {
		return Card{}, NoTest, err
	}
	if !judged.Outcome.Rideable() {
		return Card{}, verdictOf(judged, tested), noCard(judged)
	}
	card, err := cardOf(s, k, i, judged)
	return card, verdictOf(judged, tested), err
}

func assessed(s *survey.Survey, k *knowledge.Base, i Issue) (assess.Hang, error) {
	found, err := assess.AssessTree(s, k, i.Tree)
	if err != nil {
		return assess.Hang{}, fmt.Errorf("judging the survey: %w", err)
	}
	for _, h := range found.Hangs {
		if h.ID == i.Hang {
			return h, nil
		}
	}
	return assess.Hang{}, fmt.Errorf("hang %q is not among those judged", i.Hang)
}

func verdictOf(h assess.Hang, tested bool) Verdict {
	switch {
	case !tested:
		return NoTest
	case h.Outcome.Rideable():
		return Passed
	case h.Outcome == assess.Unfinished:
		return NotRead
	}
	return Failed
}

// noCard gathers what stands in the way.
func noCard(h assess.Hang) *NoCard {
	n := &NoCard{Cause: NotRideable, Hang: h.ID, Outcome: h.Outcome}
	for _, r := range h.Reasons {
		if r.Remark || r.Outcome.Rideable() {
			continue
		}
		n.Reasons = append(n.Reasons, r)
		if r.Code == assess.LookOld && h.Outcome == assess.Unfinished {
			n.Cause = Lapsed
		}
	}
	return n
}

// check wants a take-down later on the same day, and a name.
func (i Issue) check() error {
	switch {
	case strings.TrimSpace(i.Signed) == "":
		return &NoCard{Cause: NotSigned, Hang: i.Hang, Detail: "signed is empty; expected the name of the person in charge"}
	case !i.Until.After(i.At):
		return &NoCard{Cause: BadTime, Hang: i.Hang, Detail: fmt.Sprintf("take-down at %s is not after %s; expected a later time of the same day", clock(i.Until), clock(i.At))}
	case dayOf(i.Until.In(i.At.Location())) != i.Day() || i.Day().IsZero():
		return &NoCard{Cause: BadTime, Hang: i.Hang, Detail: fmt.Sprintf("take-down on %s is not on the day of the card, %s; a swing comes down the same day", dayOf(i.Until), i.Day())}
	}
	return nil
}
