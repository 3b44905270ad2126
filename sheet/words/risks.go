package words

// The record of risks and benefits.
const (
	RisksSays     = "hazards of a site, who can be hurt, what is done, what remains, and what it is good for"
	RisksTitle    = "Risks and benefits of swinging at %s"
	RisksAbout    = "What can hurt people here, whom, what is done about it and what remains, beside what the day is good for. Whoever is in charge fills in the empty lines, weighs both, and decides."
	Activity      = "The activity"
	ActivityText  = "A rope swing is hung from a living tree for one day, used under supervision, and taken down the same day."
	WhoIsThere    = "Who takes part, ages and needs"
	WhoSupervises = "Who supervises, how many, with what training"
	Benefits      = "What it is good for"
	BenefitLines  = "What the people get from it, in their own words where possible"
	RisksPart     = "Hazards"
	RisksShown    = "Hazards of swinging, of the trees and of the site"
	WhoHurt       = "Who can be hurt"
	IsDone        = "What is done"
	Remains       = "What remains (to fill in)"
	MoreHazards   = "Further hazards seen on the day, with what is done"
	Emergency     = "In an emergency"
	EmergencyGrid = "Place to tell a rescuer: %.5f, %.5f (WGS 84)."
	EmergencyAsk  = "Nearest road, phone signal, first aider, first-aid kit"
	Weighing      = "Weighed up"
	WeighingLines = "Why what remains is accepted, or is not"
	ReviewLines   = "To be looked at again on, or after"
	TreeOutcome   = "%s: %s"
	FromFinding   = "%s on %s, %s"
)

// Generic are the hazards that swinging itself brings: what, who, what is done.
// Common practice, no published source, but where it says otherwise.
var Generic = [][3]string{
	{"limb, union, stem or roots give way", "riders; people under the crown", "look over the tree from the crown down; checks at the unfavourable values; load test with dead mass each day; stop at any sound, crack, or movement of stem or ground"},
	{"gear gives way or comes undone", "riders", "weakest link known; parts looked over before use; a second person checks knots and connectors"},
	{"fall from the seat or a let-go", "riders", "height of fall within its limit; ground surveyed where riders can land; swing no farther than the limit"},
	{"a rider meets stem, limb, ground or a thing on the ground", "riders", "clearances checked for the path of the seat and let-go flights; one rider group at a time"},
	{"somebody walks into the swing", "waiting people, passers-by", "ground kept clear, marked; one place to wait; one person watches the ground"},
	{"something falls out of the crown", "everybody below", "findings above the people cleared, or another place; nobody below in more wind than the limit"},
	{"line round neck or limbs", "riders, small children", "no loops below the seat; no loose clothes or scarves; line taken down or tied up when nobody is with it"},
	{"wind, thunder, wet, dark", "everybody", "stop at the gust of the limits; leave the trees at thunder; down before dark"},
	{"used unattended, or left up", "anybody", "taken down the same day; never left alone"},
}
