package words

// Label is what a form says of one field.
type Label struct{ Name, Help string }

// Fields of forms, by the name of the field.
var Fields = map[string]Label{
	"site":          {"Name of the site", ""},
	"day":           {"Day it is judged for", "Looks count for 12 months before this day."},
	"surveyor":      {"Surveyor", ""},
	"note":          {"Note", ""},
	"latitude":      {"Latitude", "Degrees north, WGS 84."},
	"longitude":     {"Longitude", "Degrees east."},
	"approach":      {"How to get there", ""},
	"access":        {"Way in for an ambulance", "Gate, track, height, who has the key."},
	"meeting_point": {"Where somebody meets it", ""},
	"terrain":       {"How open the site lies", "Terrain categories of EN 1991-1-4."},
	"in_leaf":       {"Crowns in leaf on that day", ""},
	"stop_beaufort": {"The site stops at Beaufort", "A 10-minute mean in the open at 10 m."},
	"name":          {"Name of the tree", "Such as: the gate oak"},
	"species":       {"Species", "English or scientific name"},
	"group":         {"If the tables do not know it", ""},
	"stem_girth":    {"Girth of the stem at 1.3 m", ""},
	"stem_length":   {"Length of the stem", "From the ground to where it ends or is no thicker than an arm."},
	"height":        {"Height of the tree", ""},
	"crown_base":    {"Lowest foliage above the ground", ""},
	"crown_width":   {"Width of the crown", "Mean of two."},
	"east":          {"Place east of the site's mark", ""},
	"north":         {"Place north of the site's mark", ""},
	"limb":          {"Name of the limb", "Such as: L1"},
	"parent":        {"Grows from", ""},
	"rises_at":      {"Height where it leaves the stem", "Along what it grows from."},
	"azimuth":       {"Direction it grows", "By compass, clockwise from north."},
	"inclination":   {"Rises above the horizontal", "Below the horizontal is negative."},
	"length":        {"Length", "To where it is no thicker than a thumb."},
	"tip":           {"Thickness at the end", ""},
	"bark":          {"Bark, one side", "Left out, the tables say."},
	"at":            {"Out along it", ""},
	"girth":         {"Girth there", "Or type a thickness as: 24 cm across"},
	"form_of":       {"Form of the union", "The crotch where it joins what it grows from."},
	"union_bark":    {"Bark in the union", ""},
	"above":         {"What it grows from, just above", "Thickness across."},
	"member":        {"On which part", ""},
	"along":         {"Distance along it", "From its foot; on the stem the height."},
	"side":          {"Compass side", ""},
	"spot_height":   {"Height above the ground", ""},
	"distance":      {"Distance from the stem", ""},
	"closer":        {"The closer look", ""},
	"closer_how":    {"How it was looked at", ""},
	"cleared":       {"It was taken away or mended", ""},
	"fungus":        {"Which fungus, if known", ""},
	"hang_at":       {"Hang point, out along the limb", "From the face of the stem."},
	"line":          {"Line, from limb to seat", ""},
	"swing":         {"Swings towards", "Left out: square to the limb."},
	"amplitude":     {"Swings up to", "Each side, from the plumb line."},
	"riders":        {"Riders", ""},
	"chain":         {"Gear", ""},
	"limb_height":   {"Underside of the limb above the ground", ""},
	"surface":       {"Surface below", ""},
	"depth_loose":   {"Depth of loose fill", "Where there is any."},
	"slope_ahead":   {"Ground, 12 m ahead", "Higher is positive. Towards where it swings."},
	"slope_behind":  {"Ground, 12 m behind", "Higher is positive."},
	"waiting":       {"Where people wait: direction from the stem", ""},
	"waiting_far":   {"and how far from the stem", ""},
	"way_in":        {"The way in: direction from the stem", ""},
	"sleeve":        {"Between line and bark", ""},
	"count":         {"How many ride at once", ""},
	"ages_from":     {"Youngest, years", ""},
	"ages_to":       {"Oldest, years", ""},
	"each":          {"The heaviest of them", "Weighed; left out, the ages say."},
	"seat":          {"Seat, line and connectors", ""},
	"posture":       {"How they ride", ""},
	"group_name":    {"Name of the group", ""},
	"mark":          {"Number on it", "With its unit: 22 kN"},
	"mark_kind":     {"That number is", ""},
	"standard":      {"or its standard", ""},
	"condition":     {"Condition", ""},
	"knot":          {"Knot in it", ""},
	"hitch":         {"Goes round the limb", ""},
	"load":          {"Load in all", "Type a pull with its unit: 400 N"},
	"sag":           {"Gone down under it", ""},
	"steps":         {"Steps", ""},
	"set":           {"Still down after all was taken off", "0 where nothing stayed. Without it the test does not count."},
	"tested_on":     {"Day of the test", "It counts on this day alone, and only where the site is judged for it."},
	"tested_by":     {"Who made it", ""},

	"even_out":          {"Out to", "From the stem, past where riders and let-go flights come. What stands in the rows below is replaced."},
	"even_falls":        {"It falls by", "0 for level ground."},
	"even_towards":      {"Towards", "By compass; left out for level ground."},
	"lie_azimuth":       {"Direction", "By compass, from the stem."},
	"lie_distance":      {"Distance", "Level, from the middle of the stem."},
	"lie_height":        {"Height", "Against the foot of the stem."},
	"along_at":          {"Along", ""},
	"along_height":      {"Height", ""},
	"across_at":         {"To the right", ""},
	"across_height":     {"Height", ""},
	"wait_azimuth":      {"Direction", ""},
	"wait_distance":     {"Distance", ""},
	"way_azimuth":       {"Direction", ""},
	"way_distance":      {"Distance", ""},
	"obstacle_what":     {"What it is", "Such as: stump, pond, fence, footpath"},
	"obstacle_kind":     {"To people it is", ""},
	"obstacle_azimuth":  {"Direction", "To its middle, or to its first corner."},
	"obstacle_distance": {"Distance", ""},
	"obstacle_radius":   {"Radius", "Of a line half its thickness."},
	"obstacle_shape":    {"Shape", ""},
	"obstacle_corners":  {"Its further corners", "Of a line or an area. One a line: direction and distance in deg and"},
}

// Titles and legends of forms.
const (
	AddSiteTitle    = "A new site"
	AddTreeTitle    = "A new tree"
	FirstLimb       = "One limb to begin with"
	FirstLimbHelp   = "The one a swing might hang from. More can be added later; leave it empty to begin with the stem alone."
	TheTree         = "The tree"
	ThePlace        = "Its place on the site"
	TheCrown        = "Height and crown"
	TheLimb         = "The limb"
	Girths          = "Girths along it"
	GirthsHelp      = "Tape it in at least two places; the more, the surer."
	TheUnion        = "The union"
	TheHang         = "The hang"
	TheGround       = "The ground"
	ThePeople       = "The people"
	TheWind         = "Wind"
	WhereItLies     = "Where it lies"
	TakePosition    = "Take this device's position"
	PositionBusy    = "Looking for the position"
	PositionFailed  = "This device did not say where it is. Type the position, or leave it out."
	PositionFound   = "Taken from this device, within about (m):"
	TheFinding      = "Where it is"
	AfterFinding    = "What was done about it"
	LimbTitle       = "Limb"
	HangTitle       = "Hang"
	NewRiders       = "Another group"
	RidersIntro     = "Who rides. Without a weight the oldest of the ages is taken, with room for heavy children."
	GearIntro       = "From the limb down to the seat. Each number says what kind it is: breaking strength and working limit are not the same. What is unknown is not guessed."
	StartCondition  = "unknown"
	DefaultRiders   = "one child"
	DefaultChain    = "day gear"
	AnchorSling     = "anchor sling"
	Connector       = "connector"
	SwingLine       = "swing line"
	SeatPart        = "seat"
	NotChosen       = "not said"
	SomewhereInZone = "not on a part of the tree"
	Yes, No         = "yes", "no"
)

// What was changed, for the history.
const (
	DidAddSite     = "site begun"
	DidEditSite    = "site and day changed"
	DidEditRiders  = "riders changed"
	DidEditGear    = "gear changed"
	DidAddTree     = "tree written down"
	DidEditTree    = "tree changed"
	DidEditLimb    = "limb changed: "
	DidAddLimb     = "limb added: "
	DidDeleteLimb  = "limb taken off: "
	DidAnswer      = "look answered: "
	DidAnswerRest  = "look answered, the rest not seen: "
	DidEditFinding = "finding changed: "
	DidEditHang    = "hang changed: "
	DidAddHang     = "hang asked for: "
	DidDeleteHang  = "hang taken off: "
	DidRestore     = "back to version "
	DidDelete      = "taken off the list"
	DidAddPhoto    = "photo added"
	DidDeletePhoto = "photo taken off"
	DidImport      = "taken in from a file"
)

// Terrain says in words what the categories of EN 1991-1-4 Table 4.1 mean.
var Terrain = []Choice{
	{"", NotChosen},
	{"0", "0: sea or coast"}, {"I", "I: lakes, flat land without anything on it"}, {"II", "II: grass, a few trees or houses far apart"},
	{"III", "III: woods, villages, suburbs"}, {"IV", "IV: town, high buildings close together"},
}

// Choice is one choice of a list: what is kept and what is shown.
type Choice struct{ Value, Text string }
