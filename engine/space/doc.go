// Package space computes the room a swing needs: clearance of seat and feet
// over the ground, height of fall, where a rider who lets go lands, the area
// to be kept clear, and whether something above could fall on people.
//
// The swing moves in one vertical plane. Along counts in that plane from the
// plumb line below the hang point, positive to one side; Height counts from
// the ground at the plumb line; angles of the line count from the downward
// vertical, positive to the positive side. The line is rigid and the rider
// does not touch the ground. Stretch of the line and sag of the limb enter
// through Swing.Lowered.
package space
