// Package wording is the catalogue of words of day cards and outings, for the
// command line and the app alike.
package wording
