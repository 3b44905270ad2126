// Package hangsearch finds where on a tree a swing can be hung: on which limb,
// how far out, with how long a line, in which direction, for which group.
//
// It tries hangs with the checks of package assess, so that what it returns is
// what assess says. A sweep over hang points 0.5 m and directions 10 degrees
// apart finds where lines fit at all; the best by the stated aim is then
// refined to 1 cm and 2 degrees, and every limit of it is reported with the
// check that binds there. Checks are taken to be monotone between the places
// that a sweep looks at; a window between two of them is looked for where
// one place fails by too short and the next by too long a line. What is
// returned was judged as a whole, whatever the sweep took for granted.
package hangsearch
