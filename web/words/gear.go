package words

import "maps"

// The register of gear.
const (
	GearRegister     = "Register of gear"
	GearOf           = "Gear of"
	GearNobody       = "Nobody is written down yet whose gear it is."
	LOLERApplies     = "LOLER applies."
	LOLERNot         = "LOLER does not apply."
	LOLERNotSaid     = "Nobody said whether LOLER applies; it counts as if it did."
	GearDue          = "Due"
	NothingDue       = "Nothing is due by what is written down. Look every item over before each use."
	GearItems        = "Items"
	NoItems          = "No item is written down yet. Begin with what goes round the limb, the line, the connectors and the seat."
	NewItem          = "Write an item down"
	RecordUse        = "Record a use"
	GearRetired      = "Retired"
	GearOwner        = "Whose gear it is"
	ExportGear       = "Take the register out as a file"
	ImportGear       = "Take a register in"
	ImportGearIntro  = "A file of a register of gear. What it holds is laid on what is written down here: uses, examinations and retirements of both stay, and so does every earlier version."
	GearBasis        = "Where this is from"
	StandsAgainst    = "What stands against it"
	NothingAgainst   = "Nothing that is written down. That is no finding that it is sound: look it over before each use."
	UsedDespite      = "Used all the same, because:"
	Examine          = "Record a thorough examination"
	ExamineIntro     = "By a competent person, item in hand: not the look before each use. It never brings a retired item back."
	EditItem         = "Change what is written"
	Retire           = "Retire it"
	RetireIntro      = "A retirement is final. The item stays in the register with its reason, and goes into no chain without a written one. Cut it through, or mark it, so that nobody takes it by mistake."
	TheItem          = "The item"
	TheMarks         = "What is printed on it"
	TheSizes         = "Sizes"
	TheDates         = "Dates"
	TheDatesHelp     = "What is not known stays empty. Textile gear without a first day in service has no known history."
	TheStrength      = "Bears"
	Examinations     = "Thorough examinations"
	NoExaminations   = "None is written down."
	Uses             = "Days in use"
	NoUses           = "No use is recorded."
	UseIntro         = "What was used on a day. It is recorded whatever stood against it: what happened, happened."
	UsedItems        = "What was used"
	TheUse           = "The day"
	GearHistoryIntro = "Every change is kept. Going back makes an earlier version the newest one; uses and examinations recorded since then are left in the versions between."
	DaysOfUse        = "%d days in use"
	OneDayOfUse      = "1 day in use"
	RidesCounted     = "%d rides counted"
	UsedWet          = "became wet"
	UsedShock        = "took a shock load"
	ExaminedBy       = "by"
	NextBy           = "the next one by"
	WantUsed         = "tick what was used"
	DefaultOwner     = "the people of this notebook"
	RetiredOn        = "retired on"
)

// Chains of a site.
const (
	Chains          = "Chains"
	ChainsIntro     = "A chain is what holds a swing, in order from the limb down to the seat. Its weakest part is its strength."
	ChainsAside     = "Put chains together and take them apart"
	NewChain        = "Begin a new chain"
	ChainName       = "Name of the chain"
	ChainParts      = "From the limb down"
	AddFromRegister = "Add a part from the register"
	AddByHand       = "Add a part by hand"
	AddPart         = "Add a part"
	AddIt           = "Go on with this item"
	NoneInRegister  = "The register holds no part for a chain yet."
	OpenRegister    = "Open the register of gear"
	MoveUp          = "Up"
	MoveDown        = "Down"
	TakeOut         = "Take out"
	RenameChain     = "Rename the chain"
	DeleteChain     = "Take the chain apart"
	PartFromItem    = "Material, strength and sizes are those of the register."
	ItemGone        = "The register holds no item of this id: what is written here counts."
	PartDespite     = "All the same"
	PartDespiteHelp = "Something stands against this item. It goes into the chain only for a reason that is written down here, printed with the outcome and signed for. The reason makes nothing stronger."
	ThePart         = "The part"
	HowUsed         = "How it is used"
	PartsOf         = "%d parts"
	OnePart         = "1 part"
	ByHand          = "by hand, from no register"
	UsualParts      = "sling, connector, line and seat, nothing marked yet"
	HungWith        = "Hangs that are put up with it"
	Above           = "above"
	Lowest          = "lowest of all"
	WantReasonThere = "write down there why it is used all the same, or begin with the usual parts"
	WantReason      = "write down why it is used all the same, or take another item"
)

// What was changed, for the history.
const (
	DidAddItem     = "item written down: "
	DidEditItem    = "item changed: "
	DidExamine     = "examined: "
	DidRetire      = "retired: "
	DidUse         = "use recorded"
	DidEditOwner   = "owner and rules changed"
	DidImportGear  = "register taken in from a file"
	DidAddChain    = "chain begun: "
	DidRenameChain = "chain renamed: "
	DidDeleteChain = "chain taken apart: "
	DidAddPart     = "part added to "
	DidEditPart    = "part changed in "
	DidMovePart    = "part moved in "
	DidTakeOutPart = "part taken out of "
)

func init() {
	maps.Copy(Fields, map[string]Label{
		"item_id":          {"What is written on it", "A short name that tells it from the others, such as: S1"},
		"item_name":        {"What it is", "Such as: anchor sling"},
		"item_kind":        {"Kind", ""},
		"item_material":    {"Material", ""},
		"serial":           {"The maker's own number", ""},
		"printed_standard": {"Standard printed on it", ""},
		"item_length":      {"Length", ""},
		"thickness":        {"Diameter or thickness", ""},
		"width":            {"Width", ""},
		"made":             {"Made on", ""},
		"in_service_since": {"In service since", ""},
		"life_years":       {"Maker's life from first use, years", ""},
		"use_by":           {"Maker's last day of use", ""},
		"examined_on":      {"Day of the examination", ""},
		"examined_by":      {"Who examined it", ""},
		"found":            {"Found", ""},
		"next_examination": {"The next one by", "Where the examiner wants it sooner."},
		"retired_on":       {"First day out of use", ""},
		"why":              {"Why", ""},
		"owner":            {"Whose gear it is", ""},
		"loler":            {"The Lifting Operations and Lifting Equipment Regulations 1998 apply", "Then gear that lifts people is thoroughly examined every six months. Where in doubt, ask locally."},
		"used_on":          {"Day", ""},
		"outing":           {"Outing", ""},
		"wet":              {"They became wet", ""},
		"shock_loaded":     {"They took a shock load", "A fall, a jump, a slack line that went taut."},
		"cycles":           {"Rides counted", ""},
		"chain_name":       {"Name of the chain", "Such as: day gear"},
		"like":             {"Begin with", "Marks go along. Each part is to be looked over anew."},
		"item":             {"Item", ""},
		"part_name":        {"What it is", "Such as: anchor sling"},
		"choke_angle":      {"Angle in the choke", "Where it is choked round the limb. Left out: the weakest."},
		"leg_angle":        {"Angle of each leg from the level", "Where it hangs in two legs. Left out: the flattest."},
		"bend_over":        {"Bends over something this thick", ""},
		"axial_stiffness":  {"Pull for a stretch of its own length", "From the maker's sheet, with its unit: 33 kN"},
		"despite":          {"It is used all the same, because", "Only where something stands against it."},
		"position":         {"Where in the chain", ""},
	})
}
