// Package html writes a sheet as one page for a browser, with all it needs in
// itself: style, drawings and photos. It reads without colour and without a
// script, prints on A4 and US Letter, and every word is escaped.
package html
