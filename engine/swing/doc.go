// Package swing is the mechanics of a rider on a line: closed forms for the
// rigid line, and the full motion with air drag, a line that stretches, goes
// slack and jerks, a sideways launch, pumping, a limb that gives way, and a tree
// that sways with the swing.
//
// The rider is a point mass at the end of the line; lengths run to the rider's
// centre of mass. Angles count from the plumb line through the hang point. The
// closed forms take standard gravity; the motions let it be set.
package swing
