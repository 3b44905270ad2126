// Package sheet makes paper of what was surveyed and worked out: a sheet is a
// value of headings, paragraphs, tables, drawings, photos and lines to fill in
// by hand, built by pure functions. How it looks is left to an ink: package
// sheet/html writes one page for a browser, package sheet/pdf pages to print.
//
// Every kind of sheet is one file here and one of its words in sheet/words; it
// is listed in kinds.go.
package sheet
