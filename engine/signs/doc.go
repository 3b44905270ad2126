// Package signs judges what was found on a tree by where it was found. A sign
// brings the effect it has on the load path, above the people and elsewhere;
// Judge picks the one that counts. The texts and effects come from outside as
// values, each with its sources; nothing here knows a single sign by name.
package signs
