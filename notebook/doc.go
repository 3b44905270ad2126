// Package notebook is what was written down about sites and trees, kept in a
// store: the head of a site, one record for each tree, the answers of looks
// that are not finished, photos. Together they are a survey; package survey
// checks every change before it is kept.
//
// Nothing that was written is lost. Every change of a tree is a new version
// beside the earlier ones. A change made on an older version is laid on the
// newest one where the two touch different parts, and refused with a *Changed
// where they touch the same.
package notebook
