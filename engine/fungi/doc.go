// Package fungi names what grows on a tree by likelihood: how well does each
// thing that it knows account for what was seen? It is a naive Bayes key. Every
// attribute (host, place on the tree, month, form, underside, size, colours and
// single marks) has a distribution for every candidate, with a floor for what
// the tables don't foresee and a share for one word told where another is true.
// An answer that is left out changes nothing.
//
// Among the candidates stand things that are no fungus, harmless fungi, and one
// for anything the tables do not hold, so that the shares of the named ones sum
// to less than one. Host, place, look and words come from outside as values;
// nothing here knows a single fungus by name. The shares and floors are house
// values: they say how far a description is trusted, and no study stands behind
// them. No result replaces a mycologist.
package fungi
