package draw

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestWrapKeepsEveryLetterWithinTheWidth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.StringMatching(`[a-zA-ZäöüØ水 ]{0,120}`).Draw(t, "words")
		width := rapid.Float64Range(8, 100).Draw(t, "width")
		lines := Wrap(words, LabelSize, false, width)
		for _, l := range lines {
			if TextWidth(l, LabelSize, false) > width {
				t.Fatalf("%q is wider than %.1f", l, width)
			}
		}
		bare := strings.NewReplacer(" ", "")
		if got := bare.Replace(strings.Join(lines, "")); got != bare.Replace(words) {
			t.Fatalf("%q became %q", words, got)
		}
	})
}

func TestFitEndsWithDotsOnlyWhereItCut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.StringMatching(`[a-zA-Zäöü水]{1,60}`).Draw(t, "words")
		width := rapid.Float64Range(10, 200).Draw(t, "width")
		got := Fit(words, LabelSize, true, width)
		if TextWidth(got, LabelSize, true) > width {
			t.Fatalf("%q is wider than %.1f", got, width)
		}
		if got != words && !strings.HasSuffix(got, "...") {
			t.Fatalf("%q was cut to %q without saying so", words, got)
		}
	})
}

func TestNumberAndUnitStayTogether(t *testing.T) {
	for _, line := range Wrap("a line of 3.4\u00a0m", LabelSize, false, TextWidth("a line of 3.4", LabelSize, false)+0.1) {
		if line == "m" {
			t.Error("the unit stands alone")
		}
	}
}
