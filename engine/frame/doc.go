// Package frame computes a limb, a stem or a forked crown part as a space
// frame: members with tapering elliptical sections, curved and kinked as they
// grew, loaded by their own weight, lumped masses, point loads and loads
// spread along them.
//
// The frame is a tree clamped at the first station of member 0, so it is
// statically determinate: the section forces at a cut are the sum of all loads
// beyond it (Statics), exact whatever the stiffness. Displacements, the
// stiffness at a hang point and the modes of vibration come from finite
// elements (Analysis). All of it is linear in the loads: small displacements,
// no effect of the sagged shape on the moments.
//
// Axes of a member: x runs along the centreline from root to tip; v stands
// upright, perpendicular to x in the vertical plane through x; h = x cross v
// runs across. They turn abruptly at a station where the member bends. On a
// vertical stretch v points west when x points up and east when it points
// down.
package frame
