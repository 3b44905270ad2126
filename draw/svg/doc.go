// Package svg draws a scene as SVG. Text stays text. Look and colour hang on a
// few classes with presentation attributes as default: no style element, no
// style attribute and no script, so that it works under a strict content
// security policy, alone in a file as well as inside a page.
//
// Ink is currentColor, so that a drawing follows the colour of the page around
// it; Stylesheet gives the rest for dark, high contrast and print.
package svg
