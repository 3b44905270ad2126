// Package wood gives the strength of a living member from clear-wood values:
// its scatter and lower fractile, the effect of load duration and of repeated
// loading, and the tension across the grain in curved parts.
//
// It holds no species data: means, factors and variations come in as values.
package wood
