// Package sketch holds one small line drawing for each sign that an inspection
// looks for, as data: strokes on a square of 100 by 100, y downwards. The tree
// is drawn in a plain line, the sign itself in a bold one, the ground and what
// only explains in a thin one. It knows nothing of what a sign means.
package sketch
