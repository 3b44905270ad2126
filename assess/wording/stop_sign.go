package wording

import "boughline/survey"

// testSigns says what stops a load test.
var testSigns = map[string]string{
	survey.TestSound:    "a creak or a crack was heard",
	survey.TestCrack:    "a crack opened",
	survey.TestCurve:    "the sag grew faster than the load",
	survey.TestMovement: "stem or ground moved",
}

// StopSign words a sign that stops a load test.
func StopSign(code string) string { return testSigns[code] }
