package words

// Drawings.
const (
	DrawingLarger = "Enlarge"
	DrawingAlone  = "By itself"
	ZoomIn        = "larger"
	ZoomOut       = "smaller"
	ZoomFit       = "fit"
	PanLeft       = "to the left"
	PanRight      = "to the right"
	PanUp         = "up"
	PanDown       = "down"
	InWords       = "In words"
	AloneHelp     = "As large as the page allows, wider than the screen of a phone. Enlarge it further as you do any page; scroll to see the rest. Print this page to have it on paper alone."
	BackFrom      = "Back to"
	PlanWaits     = "The plan follows as soon as everything on it is worked out."
	WholeTree     = "The tree"
	SketchOf      = "Sketch"
	SkipPlan      = "Skip the plan, to the list of trees"
)
