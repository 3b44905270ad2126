// Package place searches one limb for hangs: every hang point along it and
// every line length of a grid, against any constraints, for the best by
// stated aims and the binding constraint everywhere.
//
// A constraint is a margin: 0 on the limit, below 0 beyond it. Search works
// out every pair of the grid. Refine gives the same answer from coarse blocks
// that it refines only where they are undecided. Both keep some numbers for
// each row and column of the grid and none for each pair.
//
// Limb and Room give the margins of a level round tapered limb over ground
// that slopes along it; any other margins serve as well.
package place
