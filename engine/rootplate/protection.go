package rootplate

import (
	"fmt"
	"math"

	"boughline/quantity"
)

const (
	protectionDiameters = 12          // radius of the root protection area, stem diameters
	protectionCap       = 15          // m, its greatest radius
	structuralDiameters = 3           // roots inside are taken to hold the tree up
	fullCircle          = 2 * math.Pi // rad
)

// ProtectionRadius returns the radius of the root protection area: 12 stem
// diameters, at most 15 m (707 m2). stem is the diameter 1.5 m above ground;
// for 2 to 5 stems pass CombinedDiameter.
// Errors: a diameter that is not positive.
// Source: BS 5837:2012, annex D, as quoted by several pages.
func ProtectionRadius(stem quantity.Length) (quantity.Length, error) {
	if !(stem > 0) || math.IsInf(float64(stem), 1) {
		return 0, fmt.Errorf("root protection: stem diameter %v m; expected more than 0", float64(stem))
	}
	return min(protectionDiameters*stem, protectionCap), nil
}

// CombinedDiameter returns the diameter that stands for a tree of several
// stems: the square root of the sum of squares.
// Source: BS 5837:2012, for 2 to 5 stems, as quoted by several pages.
func CombinedDiameter(stems []quantity.Length) quantity.Length {
	sum := 0.0
	for _, d := range stems {
		sum += float64(d) * float64(d)
	}
	return quantity.Length(math.Sqrt(sum))
}

// Cut is a straight or ring-shaped loss of roots, severed or sealed over: it
// begins at a distance from the stem's centre and takes all roots beyond within
// an angle seen from there.
type Cut struct {
	Distance quantity.Length
	Angle    quantity.Angle // 0 to a full circle
}

// Severed tells what the cuts have taken.
type Severed struct {
	Share    float64 // of the root protection area, 0 to 1
	NearStem bool    // a root cut inside 3 stem diameters, however narrow the cut
}

// SeveredRoots returns the share of the root protection area that lies behind
// the cuts, and whether any begins inside 3 stem diameters. Cuts are counted as
// if they did not overlap, up to the whole circle, which is the cautious side.
// Errors: a stem diameter that is not positive, a negative distance, an angle
// outside 0 to a full circle.
// Source: geometry on the circle of ProtectionRadius; 3 diameters from memory
// (Smiley, Fraedrich and others on cut roots, who quote 3 to 6).
func SeveredRoots(stem quantity.Length, cuts []Cut) (Severed, error) {
	radius, err := ProtectionRadius(stem)
	if err != nil {
		return Severed{}, err
	}
	near := structuralDiameters * stem
	result := Severed{}
	for i, c := range cuts {
		if !(c.Distance >= 0) || !(c.Angle >= 0 && c.Angle <= fullCircle) {
			return Severed{}, fmt.Errorf("cut %d: distance %v m, angle %v rad; expected a distance of 0 or more and at most a full circle",
				i, float64(c.Distance), float64(c.Angle))
		}
		result.Share += c.share(radius)
		result.NearStem = result.NearStem || c.Distance <= near
	}
	result.Share = min(1, result.Share)
	return result, nil
}

// share returns the part of the circle outside the distance, within the angle.
func (c Cut) share(radius quantity.Length) float64 {
	inner := math.Min(1, float64(c.Distance/radius))
	return float64(c.Angle) / fullCircle * (1 - inner*inner)
}
