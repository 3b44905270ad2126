// Package pdf prints a sheet on A4 or US Letter: text as text in an embedded
// typeface, drawings as lines, bookmarks, page numbers. Headings stay with what
// follows them, tables repeat their head row, and long words are broken rather
// than cut.
//
// A block becomes pieces that are never broken, each with its height; pages.go
// puts them on pages and draws them.
package pdf
