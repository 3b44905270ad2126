// Package wind gives the speed of wind over height and its force on a tree: the
// profile and gusts of EN 1991-1-4, and the drag of a crown that gives way.
//
// Every speed says its averaging time, height and place: the basic speed is a
// 10-minute mean at 10 m in open country, a gust lasts about 3 s. No drag
// coefficients or terrain tables are held here; they come in as values.
package wind
