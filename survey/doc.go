// Package survey is the document of a site: what was seen, measured and
// wished for. It knows no physics and decides nothing; package assess reads it.
//
// The JSON form is versioned (field "boughline"), strict, and meant to be
// writable by hand: a measured value is one string such as "72 cm taped" or
// "4.2 m ±0.1 m clinometer" (see package quantity). schema.json is its JSON
// Schema; Read checks a document against it and against the rules that a
// schema cannot say, and returns every problem it finds, each with its path,
// the value, what was expected and what to do.
package survey
