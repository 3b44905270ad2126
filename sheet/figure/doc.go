// Package figure makes drawings of what was surveyed and worked out: pure
// functions from the survey's trees and hangs, an assessment and plain numbers
// to scenes of package draw.
//
// All drawings are 120 mm wide, which fills a phone and half a page. Ink,
// pens and hatching carry the meaning; the one accent marks the line and the
// path of the riders and says nothing that the pen does not say too. Each
// scene brings its text equivalent: sentences with the figures that it shows.
//
// What finds no room beside its place is listed below the drawing: nothing is
// left out and nothing is covered.
package figure
