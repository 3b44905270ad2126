// Package words is the catalogue of every word on the screen that is not a
// sentence about an outcome; those are in assess/wording.
package words

// Where a page says which of the two hosts it is.
const (
	Name       = "boughline"
	Desk       = "At the desk: kept in a file on this computer."
	Field      = "On this device: kept in this browser, with or without signal."
	SkipToPage = "Skip to the page"
	Trail      = "Where you are"
	More       = "More"
	Caution    = "People can be hurt. What nobody saw is not in here. Local codes, the landowner's word and a consulting arborist come first; the person in charge signs."
)

// Lists and links.
const (
	Sites, NewSite, ImportFile       = "Sites", "New site", "Take in a file"
	Signs, Fungi, Species, Wood      = "Signs", "Fungi", "Species", "Wood"
	Sources, Settings                = "Sources", "Settings"
	NoSites                          = "Nothing is written down yet. Begin with a site: the wood, the park or the garden where the trees stand."
	NewTree, NoTrees                 = "New tree", "No tree is written down here yet."
	Search, SearchHelp               = "Find a tree", "Name, species, number or note"
	ShowOnly, Everything, ShowThem   = "Show only", "all trees", "Show"
	NoneFound                        = "No tree fits that."
	SiteAndDay, RidersTitle, Gear    = "Site and day", "Riders", "Gear"
	ExportSite                       = "Save the whole site as one file"
	ExportOffer                      = "After each outing, save the whole site as a file and keep it somewhere else. A browser may clear what it keeps."
	Working                          = "Being worked out"
	DeletedTrees                     = "Taken off the list"
	CannotBeRead                     = "This record cannot be read; it is kept as it is, and its earlier versions too."
	JudgedFor                        = "judged for"
	WhyNot                           = "why?"
	OutcomeOf                        = "Outcome"
	UpdateReady, UpdateNow           = "A new version of the app is ready.", "Use it now"
	OnThisTree, Stem                 = "On this tree", "Stem"
	NewLimb, NewHang, Looks, History = "Add a limb", "Ask for a hang", "The look, from the top down", "History and undo"
	Findings, Hangs, Photos          = "Findings", "Hangs", "Photos"
	NoFindings, NoHangs              = "No sign has been seen so far.", "No hang is asked for yet. Choose a limb and ask for one."
	EditTree                         = "Name, place, height, crown"
	AddPhoto, TakePhoto              = "Add a photo", "Take or choose a photo"
	PhotoShrinks                     = "It is made smaller on this device and kept with the tree."
	PhotoBusy, PhotoKept             = "Keeping the photo", "The photo is kept."
	PhotoFailed                      = "The photo was not kept. Nothing else was changed; try again."
	PhotoOf                          = "Photo of"
	DeletePhoto, DeleteTree          = "Take this photo off the tree", "Take this tree off the list"
	DeleteLimb                       = "Take this limb off"
	DeleteHang                       = "Take this hang off"
	Save, Cancel                     = "Save", "Back without saving"
)

// Where things are.
const (
	On, AlongIt, Side, Up, Away, Towards, Long = "on", "along it", "on the side", "up", "from the stem", "towards", "long"
)

// The look.
const (
	LookIntro     = "Work from the crown down to the ground. Answer each sign; every answer is kept at once. What was not looked at never counts in favour."
	MayMean       = "May mean"
	WorseIf       = "Worse if"
	CloserLook    = "Look closer"
	AnswerSeen    = "seen"
	AnswerNot     = "not seen"
	AnswerHidden  = "could not see"
	NotKept       = "not kept: try again"
	NextZone      = "Next zone"
	LookDone      = "looked at"
	LookNotDone   = "not looked at yet"
	LookBlocked   = "could not be seen"
	LookNext      = "Look next at"
	BackToTree    = "Back to the tree"
	SayWhere      = "Say where it is"
	StandIns      = "If it cannot show today, look for"
	RestNotSeen   = "None of the others here was seen"
	RestHelp      = "Answers every open sign of this zone with not seen. Press it only after looking for each of them."
	SignsAnswered = "signs answered"
)

// Outcomes and reasons.
const (
	Asked        = "Asked for"
	Within       = "Within these limits"
	Because      = "Because"
	Noted        = "Noted, changes nothing"
	InHand       = "Checks, the least in hand first"
	WouldChange  = "Would change it"
	Formula      = "Formula"
	From         = "From"
	Demand       = "Demand"
	Capacity     = "Capacity"
	Margin       = "Margin"
	MarginHelp   = "at the unfavourable 5 % values; at the favourable ones"
	ByItself     = "By itself"
	How          = "How it was got"
	DoIt         = "Do this now"
	SayMore      = "Say more about this finding"
	Measure      = "Measure"
	ChangeHang   = "Change what is asked for"
	Together     = "together"
	SeatAndLine  = "Seat and line"
	LineLength   = "Line"
	SwingsUpTo   = "To each side"
	GustsTo      = "Gusts (3 s) to, at 10 m in the open"
	RidersAtMost = "never more than %d, together at most %s"
	Beaufort     = "That is Beaufort"
	KeepClear    = "Keep clear each way along the swing line"
	FallFrom     = "Fall from up to"
	LoadTest     = "Load test first, dead mass"
	Departure    = "Stated departure, to be signed for"
	NotWorkedOut = "This cannot be worked out"
	MarginsNow   = "Margins with these numbers"
	MarginsWait  = "Change a number and the margins follow."
	Trial        = "trial"
	TrialHang    = "No hang is asked for on this limb. Shown is a trial: the site's first riders and gear, 2.5 m out, on a line of 3 m."
	NotYet       = "Not with these numbers yet"
)

// History.
const (
	HistoryIntro  = "Every change is kept. Going back to an earlier version makes it the newest one; nothing after it is thrown away."
	Newest        = "as it is now"
	Undo          = "Undo the last change"
	GoBack        = "Go back to this version"
	Compare       = "What changed since then"
	NoDifference  = "Nothing differs."
	Part          = "Part"
	Then          = "then"
	Now           = "now"
	Unreadable    = "This version cannot be read."
	Bring         = "Bring it back"
	ChangedTitle  = "Somebody changed this in between"
	ChangedIntro  = "Since you opened this page the same part was changed elsewhere. Nothing is lost: choose what shall stand. The other one stays in the history."
	YouTyped      = "what you typed"
	OpenedAs      = "as you opened it"
	KeepMine      = "Keep what I typed"
	KeepTheirs    = "Keep what is there now"
	PhotosThen    = "Photos taken up to then"
	PhotosSince   = "Photos taken since"
	NoPhotos      = "none"
	SinceVersion  = "Since version %d of %s"
	VersionNumber = "version"
)

// Knowledge.
const (
	KnowledgeIntro = "What the tables say and who says so. Rows from memory are marked; an independent arborist or mycologist has not yet checked them."
	FromMemory     = "from memory"
	PartMemory     = "partly from memory"
	OnLoadPath     = "On the load path"
	AbovePeople    = "Above people"
	Elsewhere      = "Elsewhere"
	Shedding       = "Shedding"
	LimbReputation = "Limbs"
	Bark           = "Bark"
	Diseases       = "Diseases"
	Durability     = "Durability of the heartwood"
	NoteHead       = "Note"
	GreenStrength  = "Bending strength, green"
	GreenStiffness = "Stiffness, green"
	GreenDensity   = "Density, green"
	Derived        = "worked out from dry wood or beams"
	Tested         = "tests of small green pieces"
	Hosts          = "On"
	Positions      = "Where"
	Decay          = "Decay"
	Meaning        = "What it means for people"
	ConfusedWith   = "Taken for"
	Failure        = "Usual failure"
	Kind           = "How well we know it"
	Year           = "Year"
)

// Settings and files.
const (
	Units, Metric, Feet  = "Units", "metres, kilograms", "feet, inches, pounds"
	FeetHelp             = "For what is typed, measured and said. Drawings, formulas and files stay in metres and kilograms."
	Ink, InkAuto         = "Light", "as this device says"
	InkLight, InkDark    = "light", "dark"
	InkSun               = "black on white, for sun"
	YourName             = "Your name"
	YourNameHelp         = "Written into looks."
	SettingsSaved        = "The settings are kept on this device."
	ImportIntro          = "A file that this app saved, an archive of a site, or a survey document. Trees that differ from the ones kept here become new versions; the earlier ones stay in the history."
	ChooseFile, TakeItIn = "File", "Take it in"
	ImportDone           = "The file was taken in."
	StorageKept          = "This browser has promised to keep what is written here."
	StorageMay           = "This browser may clear what is written here when room runs short. Put the app on the home screen, and save each site as a file."
)

// Errors.
const (
	NotFoundTitle  = "There is no such page"
	NotFound       = "It may have been taken off the list. The list of sites holds all there is."
	BrokenTitle    = "This did not work"
	Broken         = "Nothing that was kept before is lost. Go back and try again."
	FullTitle      = "There is no room left"
	TooLargeTitle  = "The file is too large"
	Refused        = "This request came from another site and was refused."
	PleaseMend     = "Not saved yet. Please look at these:"
	ToSites        = "To the list of sites"
	WantValue      = "a value is needed here"
	WantWhole      = "a whole number is wanted"
	WantName       = "a name is needed here"
	Expected       = "expected"
	TakenMeanwhile = "Somebody wrote here at the same moment. Look what stands there now and save again; what you typed is still in the fields."
	Afresh         = "Look at this zone afresh"
	AfreshHelp     = "Takes the answers of this zone away; findings stay until they are answered."
	NotLookedFor   = "not looked at yet:"
)

// What a field asks for that was left out.
const (
	NameTaken   = "another part of this tree has that name"
	WantDegrees = "decimal degrees are wanted, such as 52.731"
	WantGround  = "the surface and both heights belong together; 0 for level ground"
	WantBoth    = "direction and distance belong together"
)
