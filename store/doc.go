// Package store keeps documents and bytes under keys. It knows no physics and
// no trees.
//
// What is kept is a set of objects, each under one key of printable ASCII.
// Every write goes in a batch that is taken whole or not at all, and says on
// which revision of each object it rests: a batch that rests on an older one
// is refused, so nobody writes over what they have not seen. Put keeps every
// earlier version beside the newest one; deleting is a version like others.
//
// A Backend is a place where objects lie: sqlite at a desk, indexeddb in a
// browser. There is never an open transaction between two calls, because a
// transaction of IndexedDB ends as soon as nobody asks it anything.
package store
