package measure

import (
	"math"

	hd "gonum.org/v1/gonum/num/hyperdual"

	"boughline/quantity"
)

// repeats combine readings of one thing. Any other field may be read several
// times as well.
func repeats() []Kind {
	return []Kind{
		repeated("repeated-lengths", "several readings of one length, weighted and tested",
			lengthField("reading", "one reading; give two or more", quantity.ByEye, -mostDistance, mostDistance)),
		repeated("repeated-angles", "several readings of one angle, weighted and tested",
			angleField("reading", "one reading; give two or more", quantity.ByEye, -2*math.Pi, 2*math.Pi)),
	}
}

func repeated(name, does string, f Field) Kind {
	return Kind{
		Name: name, Does: does, Fields: []Field{f},
		Gives:   []Output{{"mean", "weighted mean", f.Dimension}},
		Source:  "weights 1/sd^2; widened by the root of chi2 per degree of freedom after Birge 1932, from memory",
		Caution: "an error that all readings share is not made smaller",
		formula: func(x []hd.Number) []hd.Number { return []hd.Number{x[0]} },
	}
}
