// Package rootplate gives what holds a tree upright: resistance to overturning
// from the mass of its stem, the evidence of a gust it has stood, the swing's
// moment told as a gust, and how much of the roots' circle has been cut.
//
// A plate that moves, heaves, cracks the soil or has pockets under its roots is
// outside of it: no figure here speaks for such a tree.
package rootplate
