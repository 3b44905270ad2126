// Package rigging answers how a hang is rigged: what each link of the chain
// bears, how long a line to cut, how to throw a line over the limb from the ground and
// where the weight comes down, whether the anchor creeps and comes down again, where a
// fresh point lies when the bark is marked, which knot does which job, and what each
// cover does to the bark. It works on what assess has made ready and decides nothing: its
// figures advise, the outcome is that of the assessment.
package rigging
