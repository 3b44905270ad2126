// Package outing is one day's use of a hang: the card that is issued for the
// day, an append-only list of what happened, and the state that follows from
// replaying it. Everything is a pure function; the time is passed in.
//
// A card is never read from anywhere. It follows from the survey document that
// the outing carries, which is judged anew each time with the load tests of the
// day; what a file says about outcome or limits is not looked at.
//
// The stages are issued, up, tested, looked over, in use, stopped and down.
// Nobody rides before the swing is put up, its load test is passed and it has been
// looked over since the last break. An event that does not fit is refused and
// leaves the outing as it was. Nothing is ever taken out: a correction is an event too.
package outing
