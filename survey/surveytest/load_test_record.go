package surveytest

import (
	"boughline/survey"

	"pgregory.net/rapid"
)

// loadTest draws a test of a hang with loads that grow.
func loadTest(t *rapid.T, hang string) survey.LoadTest {
	test := survey.LoadTest{Hang: hang, On: days().Draw(t, "on"), By: note(t, "by"), Set: maybe(t, "set", length(0, 0.1)), Note: note(t, "note")}
	for i := range rapid.IntRange(1, 4).Draw(t, "steps") {
		load := mass(float64(20*i+10), float64(20*i+25))(t)
		test.Steps = append(test.Steps, survey.LoadStep{Mass: &load, Sag: maybe(t, "sag", length(0.001, 0.3))})
	}
	if yesOrNo(t) {
		test.Signs = []string{rapid.SampledFrom([]string{survey.TestSound, survey.TestCrack, survey.TestCurve, survey.TestMovement}).Draw(t, "sign")}
	}
	return test
}
