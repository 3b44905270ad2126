package assess

import (
	"boughline/knowledge"
	"boughline/survey"
)

// LoadTestResult is what follows from the newest test of a hang on its day.
type LoadTestResult struct {
	Format  int             `json:"load_test_result"`
	Hang    string          `json:"hang"`
	Outcome Outcome         `json:"outcome"`
	Reasons []Reason        `json:"reasons"` // those of load tests
	Update  *LoadTestUpdate `json:"update,omitempty"`
	Limits  *Limits         `json:"limits,omitempty"`
	LeftOut []LeftOut       `json:"leaves_out"`
}

// JudgeLoadTest works out what follows from the tests of one hang.
func JudgeLoadTest(s *survey.Survey, k *knowledge.Base, hang string) (LoadTestResult, error) {
	r, err := rigNamed(s, k, hang)
	if err != nil {
		return LoadTestResult{}, err
	}
	judged := r.assess()
	result := LoadTestResult{Format: Format, Hang: hang, Outcome: judged.Outcome, Limits: judged.Limits, LeftOut: append([]LeftOut{SidewaysRiding}, leftOut()...)}
	passed := false
	for _, reason := range judged.Reasons {
		if ofLoadTest(reason.Code) {
			result.Reasons = append(result.Reasons, reason)
			passed = passed || reason.Code == TestPassed
		}
	}
	if test, _ := r.testOfTheDay(); passed {
		update, err := r.afterTest(test)
		if err != nil {
			return LoadTestResult{}, err
		}
		result.Update = &update
	}
	return result, nil
}

func ofLoadTest(code Code) bool {
	switch code {
	case TestPassed, TestLapsed, TestNotRead, TestSags, TestSet, TestStopped, LoadTested:
		return true
	}
	return false
}
