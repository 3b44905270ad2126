// Package throw computes how a throw weight is thrown over a limb from the
// ground: without drag, in one upright plane, counted from the hand that lets
// go of it.
package throw
