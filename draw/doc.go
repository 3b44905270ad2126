// Package draw holds a drawing as a scene of lines, arcs, polygons, hatching
// and text, before anybody decides with which ink it is put on which paper.
//
// Every length of this package is in millimetres of paper: the one unit here,
// so that no field repeats it. The origin is the upper left corner, X runs to
// the right and Y down. Angles are radians from the right, growing clockwise
// as seen on the paper.
//
// A scene is a value: the same scene gives the same bytes from an ink.
package draw
