// Package pdf draws a scene on a page of a PDF: the same lines, hatching and
// words as package svg in black on white, with text as text in an embedded
// font.
package pdf
