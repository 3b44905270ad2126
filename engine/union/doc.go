// Package union gives the strength of the place where a limb joins its parent:
// how far it is weakened by the proportions of the two and by included bark.
package union
