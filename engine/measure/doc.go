// Package measure gives what cannot be taped from what can be read: heights by
// angles, the thickness of a limb out of reach, girth to wood, lean, slopes,
// distances, and all of these from marked points in a picture.
//
// Every kind of measuring is a row of Kinds: its fields, its results and one
// formula, written once. Error is carried through the formula to first order
// with exact derivatives; the second derivatives say how far first order can be
// believed. Readings are independent; what they share, such as a tape that is
// too long, must be stated as a field of its own.
package measure
