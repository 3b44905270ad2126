package wording

import "boughline/survey"

// testSigns says what stops a load test.
var testSigns = map[string]string{
	survey.TestSound:    "a creak or a crack heard",
	survey.TestCrack:    "a crack opening",
	survey.TestCurve:    "sag growing faster than the load",
	survey.TestMovement: "stem or ground moving",
}

// StopSign words a sign that stops a load test.
func StopSign(code string) string { return testSigns[code] }
