// Package browsertest holds the tests that need a real browser: the app at a
// desk and, in the service worker of a phone, without any network.
package browsertest
