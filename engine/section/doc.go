// Package section computes cross-sections of stems and limbs of any outline,
// with cavities and openings: area, centroid, second moments and the section
// modulus for a load in any direction, tension and compression side apart.
//
// Coordinates lie in the plane of the section; angles turn from x towards y.
// The wood that is left counts as sound and as one piece that stays plane when
// it bends. Buckling of thin walls, shear, and cracks are not in it.
package section
