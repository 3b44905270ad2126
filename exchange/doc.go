// Package exchange is what leaves the tool and comes into it: a whole site as
// one archive, its map as GeoJSON, its lists as CSV, its days.
//
// It stays light enough for the phone. What needs more lies below it:
// calendar writes iCalendar, treelist reads lists of trees of others, picture
// reads and takes away what a camera wrote into a photo.
package exchange
