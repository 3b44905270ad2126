// Package view draws the pages as HTML. Each page takes one struct with all
// it shows; it reads nothing and decides nothing. The Go code of the views is
// made by templ and committed: make views makes it anew.
package view
