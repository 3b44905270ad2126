package work

// groups holds every figure that can be worked out on its own.
var groups = map[string]figure{
	"rope":               rope,
	"clearance":          clearance,
	"flexlimb":           flexlimb,
	"fungus":             fungus,
	"hollow":             hollow,
	"pend_drag":          pendDrag,
	"pend_elastic":       pendElastic,
	"pend_period":        pendPeriod,
	"pend_slackjerk":     pendSlackjerk,
	"pend_spherical":     pendSpherical,
	"limb":               limbFigure,
	"measure":            measureFigure,
	"reliability":        reliability,
	"reliability_closed": reliabilityClosed,
	"place":              placeFigure,
	"section":            sectionFigure,
	"sobol":              sobol,
	"evidence":           evidence,
	"wind":               windOnTree,
}
