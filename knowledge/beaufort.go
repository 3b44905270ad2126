package knowledge

import (
	"slices"

	"boughline/source"
)

// Beaufort is one number of the wind scale: a mean over 10 minutes at 10 m in
// the open, not a gust and not a reading in a wood.
type Beaufort struct {
	Number int
	What   string
	Mean   source.Fact // m/s, with the bounds of the number as Low and High
}

func loadBeaufort(l *loader) []Beaufort {
	var all []Beaufort
	for _, r := range l.read("beaufort") {
		mean := r.fact("mean_m_s", "m/s")
		mean.Low, mean.High = r.fact("low_kt", "kt").Value, r.fact("high_kt", "kt").Value
		if mean.Low > mean.Value || mean.Value > mean.High {
			r.problem("the mean %.2f m/s is outside %.2f to %.2f", mean.Value, mean.Low, mean.High)
		}
		all = append(all, Beaufort{r.whole("number"), r.text("what"), mean})
	}
	return all
}

// Beaufort returns the number of the scale; false outside the table (3 to 10).
func (b *Base) Beaufort(number int) (Beaufort, bool) {
	i := slices.IndexFunc(b.beaufort, func(f Beaufort) bool { return f.Number == number })
	if i < 0 {
		return Beaufort{}, false
	}
	return b.beaufort[i], true
}
