// Package words holds every word on a sheet that is not about an outcome: those
// are in assess/wording.
package words

// Language is the language of all words here, BCP 47.
const Language = "en"

// The foot of every page, and the marks of a page itself.
const (
	FootOf   = "%s: %s, judged for %s"
	FootGear = "%s, judged for %s"
	FootMade = "made by %s with knowledge %s"
	PageOf   = "page %d of %s"
	Caution  = "Read this first"
	Day      = "Day"
	Name     = "Name"
	Sign     = "Signature"
	Tick     = "to tick"
)
