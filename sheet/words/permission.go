package words

// The letter that asks for permission.
const (
	PermissionSays  = "a letter that asks the landowner for permission"
	PermissionTitle = "May we hang a swing from your tree?"
	PermissionTo    = "To (name and address of the landowner)"
	PermissionFrom  = "From (name, organisation, address, telephone)"
	PermissionAsk   = "We ask for your permission to hang rope swings for one day from trees at %s, for a group of people in our care. The day we have in mind is %s; another day of yours is as welcome."
	PermissionTrees = "Trees"
	PermissionShown = "Trees that we have in mind, as they were judged"
	PermissionWhat  = "What we would do"
	PermissionNeed  = "What we ask you to tell us"
	PermissionReply = "Your answer"
	PermissionWho   = "The landowner, or who may decide for the landowner"
	PermissionSent  = "Who asks"
	PermissionTick1 = "Yes, on the day named above."
	PermissionTick2 = "Yes, with the conditions below."
	PermissionTick3 = "No."
	PermissionCond  = "Conditions, other days, whom to call on the day"
)

// PermissionDo is what is done to a tree and a place.
var PermissionDo = []string{
	"We look the tree over before anything is hung, from the crown down to the ground, and hang nothing where we are in doubt.",
	"A sling with a cover goes round a limb. Nothing is nailed, screwed, bolted or cut.",
	"Before anyone rides, the limb is loaded with dead mass. If it makes a sound, cracks or stays bent, we take everything down and tell you.",
	"A person in charge is there the whole time. In more wind than our limit nobody rides.",
	"Everything comes down the same day. We leave the place as we found it, and tell you what we noticed about the tree.",
}

// PermissionTell is what only the owner knows.
var PermissionTell = []string{
	"whether the trees or the place are protected: an order, a conservation area, a reserve, a monument",
	"whether birds nest or bats roost in them, as far as you know",
	"what was done to the trees or to the ground about their roots: limbs lost, digging, building, drains, flooding",
	"whether there are cables, pipes, animals, shooting or forestry work on that day",
	"where we may park and walk, and how a rescuer would come in",
	"which insurance you wish to see",
}
