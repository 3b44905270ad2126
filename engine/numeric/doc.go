// Package numeric holds the numerical methods that no well-kept library gives,
// among them an integrator of high order with a continuous extension and event
// location. Problems with exact answers stand beside it in the tests.
package numeric
