// Package gear judges the chain of parts that carries a swing, from the sling
// on the limb down to the seat: the strength each part keeps as it is used,
// the strength it must have, the weakest, and how far the chain stretches.
// With it come the statics of lines that hang between two points.
//
// A mark on gear is a number and a kind. A breaking strength and a working
// limit are held to different demands, and a part with an unknown mark has no
// strength that could be reckoned with. All factors are parameters. What a
// maker prints on or with the gear goes before anything computed here.
package gear
