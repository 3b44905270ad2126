// Package quantity gives every physical quantity of the project a type of its
// own, so that a length cannot be passed where a force is meant.
//
// All types are float64 in SI base units; angles are radians. Other units
// exist only at the edges: Parse and Format in text.go. A value that was
// observed is a Measured: it carries how it was got and how exactly. The zero
// value of a quantity is the number 0, never "not observed": a field that may
// be unobserved is a pointer.
package quantity
