package assess

// Code names a check, a reason or a remark. Package assess/wording makes words
// of it.
type Code string

// Checks of strength, of wind, of gear, of chance and of space.
const (
	LimbBending     Code = "limb-bending"
	LimbShear       Code = "limb-shear"
	LimbRepeated    Code = "limb-repeated-load"
	LimbAcrossGrain Code = "limb-across-grain"
	LimbJerk        Code = "limb-jerk"
	UnionBending    Code = "union-bending"
	StemBending     Code = "stem-bending"
	RootPlate       Code = "root-plate"
	LimbInWind      Code = "limb-in-wind"
	UnionInWind     Code = "union-in-wind"
	GearLink        Code = "gear-link"
	LimbChance      Code = "limb-chance"
	UnionChance     Code = "union-chance"
	SeatClearance   Code = "seat-clearance"
	FootClearance   Code = "foot-clearance"
	StemClearance   Code = "stem-clearance"
	Obstructed      Code = "obstacle-clearance"
	LimbInPath      Code = "limb-in-path"
	FallHeight      Code = "fall-height"
)

// Reasons that are no check.
const (
	SignFound         Code = "sign-found"
	FungusFound       Code = "fungus-found"
	LookMissing       Code = "look-missing"
	LookBlocked       Code = "look-blocked"
	LookOld           Code = "look-out-of-date"
	SignNotVisible    Code = "sign-not-visible"
	RidersNotKnown    Code = "riders-not-known"
	NotTogether       Code = "not-together"
	WaitingNotStated  Code = "waiting-place-not-stated"
	WaitingTooNear    Code = "waiting-too-near"
	HeightsDisagree   Code = "heights-disagree"
	NotComputed       Code = "not-computed"
	ShapeNotMeasured  Code = "shape-not-measured"
	DiameterGuessed   Code = "diameter-not-measured"
	UnionNotDescribed Code = "union-not-described"
	UnionNotSeen      Code = "union-not-seen"
	BarkIncluded      Code = "bark-included"
	UnionIsV          Code = "v-union-not-looked-into"
	AspectHigh        Code = "aspect-ratio-high"
	GroundNotSurveyed Code = "ground-not-surveyed"
	GroundGuessed     Code = "ground-not-measured"
	GroundStep        Code = "step-where-riders-land"
	GroundTooShort    Code = "ground-profile-too-short"
	CrownNotMeasured  Code = "crown-not-measured"
	WindNotDescribed  Code = "wind-not-described"
	GearUnmarked      Code = "gear-unmarked"
	GearCondition     Code = "gear-condition"
	ChainIncomplete   Code = "chain-incomplete"
	GearRetired       Code = "gear-retired"
	DepthNotMeasured  Code = "loose-depth-not-measured"
	SurfaceRating     Code = "fall-above-surface-rating"
	LineGoesSlack     Code = "line-goes-slack"
	NoUseFits         Code = "no-use-fits"
)

// Remarks: they change nothing.
const (
	BarkPressed       Code = "bark-pressed"
	BarkUncovered     Code = "bark-uncovered"
	StemSways         Code = "stem-sways"
	StandIn           Code = "stand-in-seen"
	WoodFallback      Code = "wood-not-known"
	WoodSourcesDiffer Code = "wood-sources-differ"
	OwnMassFromBase   Code = "own-mass-from-base"
	SpeciesNote       Code = "species-note"
	AnchorCreeps      Code = "anchor-creeps"
	GoodUnion         Code = "aspect-ratio-good"
	HeightAssumed     Code = "height-assumed"
	GustVoid          Code = "stood-gust-void"
	RootsByMass       Code = "root-plate-by-stem-mass"
)

// Changes that would alter an outcome.
const (
	ChangeLighter           = "lighter"
	ChangeCloser            = "closer-to-union"
	ChangeLine              = "other-line"
	ChangeLower             = "lower-amplitude"
	ChangeShorter           = "shorter-line"
	ChangeLessWind          = "less-wind"
	ChangeLighterAndMeasure = "lighter-and-measure"
	ChangeMeasure           = "measure"
	ChangeLook              = "look"
	ChangeCloserLook        = "closer-look"
	ChangeClear             = "clear-away"
	ChangeArborist          = "ask-arborist"
	ChangeOtherTree         = "other-tree"
	ChangeOtherLimb         = "other-limb"
	ChangeGear              = "stronger-gear"
	ChangeLookGear          = "look-over-gear"
	ChangeChoke             = "choke-the-sling"
	ChangeOtherDay          = "other-day"
	ChangeMark              = "find-mark"
	ChangeDescribe          = "describe"
	ChangeDeeperFill        = "softer-ground"
	ChangeMovePeople        = "move-people"
	ChangeMoveThing         = "move-obstacle"
)
