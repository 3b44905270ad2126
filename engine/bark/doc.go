// Package bark computes how hard a sling or line presses on the bark of a
// limb, how it pulls along it, and how far it rubs. The figures compare ways
// of protecting the bark and advise; they bar nothing. A sleeve or a wide
// strap for one day on thick bark is accepted (common practice, no published
// source).
package bark
