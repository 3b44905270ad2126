package words

import "maps"

// Lines: hammocks, low traverses and climbing lines.
const (
	Lines          = "Hammocks, traverses, climbing lines"
	LinesIntro     = "Other hangs of the site. Each anchor is judged like a swing's: limb, union, stem and roots under the pull of the line in its own direction, gear, bark, ground and every finding on both trees."
	NoLines        = "None is asked for yet."
	NewHammock     = "Add a hammock"
	NewTraverse    = "Add a low traverse"
	NewClimbing    = "Add a climbing line"
	LineOf         = "Line"
	FirstAnchor    = "First anchor"
	SecondAnchor   = "Second anchor"
	TheAnchor      = "Anchor"
	TheRedirect    = "Redirect over a second limb"
	HowItHangs     = "How it hangs"
	GroundBelow    = "The ground below"
	ChangeLine     = "Change the line"
	DeleteLine     = "Take this line off"
	DidAddLine     = "line added: "
	DidEditLine    = "line changed: "
	DidDeleteLine  = "line taken off: "
	PullAt         = "Pull at"
	HangsSo        = "It hangs"
	NotInIt        = "Not worked out"
	PeopleAtMost   = "%d, %s together at most"
	OnWhat         = "On"
	WantTwoHeights = "give both heights, or neither, with a surface"
	WantAnchor     = "choose where it is made fast"
	LineNeeds      = "Add a tree, a group of riders and a chain of gear first."
	GearMass       = "Gear"
)

// fieldsOfLines are what forms say of their fields.
var fieldsOfLines = map[string]Label{
	"line_kind":      {"Kind", ""},
	"place":          {"Made fast to", "Stem or limb."},
	"anchor_at":      {"Where along it", "On a stem the height, on a limb from the face of the stem."},
	"anchor_height":  {"Height of the anchor above the ground", "Left out for a stem: the same."},
	"anchor_part":    {"Held by", "The part of the gear that goes round it here."},
	"span":           {"Span, level", "Left out: from the places of the trees."},
	"rise":           {"How much higher the second anchor is", "Lower is negative. Left out: as on level ground."},
	"sag":            {"Sag wanted", "Below the straight line between the anchors, with people at rest in the middle."},
	"pretension":     {"or pretension of the empty line", "In place of a sag."},
	"body":           {"Length of the hammock between its straps", ""},
	"line_azimuth":   {"Direction from the first anchor", "By compass. Left out: from the places of the trees."},
	"fixed":          {"Made fast", "Left out: at the base, which pulls twice on the limb."},
	"redirect_on":    {"Led over", "A limb of the same tree."},
	"redirect_at":    {"Where along it", "From the face of the stem."},
	"redirect_angle": {"Angle between its two legs there", "Left out: from the shape of the tree."},
	"ground_middle":  {"Ground half way", "Against the ground below the first anchor; higher is positive."},
	"ground_far":     {"Ground below the second anchor", "Against the ground below the first."},
	"line_with":      {"People on it at once", ""},
	"line_gear":      {"Gear", "One chain for the whole line."},
}

func init() { maps.Copy(Fields, fieldsOfLines) }
