// Package chance gives the probability that a limb gives way: its laws, the
// figures in closed form and by quadrature, by first order and by sampling for any margin,
// and what evidence does to them.
//
// It covers the loads and strengths that were modelled, not defects nobody saw.
package chance
