package words

// The overview of a site.
const (
	SiteSays     = "a site at a glance: the plan, every tree and hang with its outcome"
	SiteTitle    = "Overview of %s"
	SiteJudged   = "judged for %s"
	SitePlan     = "Plan"
	SiteTrees    = "Trees and hangs"
	SiteShown    = "Every tree and hang, the ones that may be put up first, then by what is in hand"
	Tree         = "Tree"
	LeastMargin  = "Least margin"
	NoHangHere   = "no hang asked for"
	SiteHazards  = "Hazards of the site"
	HazardsShown = "Hazards that were written down"
	Hazard       = "Hazard"
	Where        = "Where"
	HazardDo     = "What to do"
	AskWhom      = "Ask"
	NoHazard     = "No hazard of the site was written down. That none is here follows from nobody's looking only."
	WholeSite    = "the whole site"
	ByTree       = "%s from %s, towards %s"
	OfTree       = "at %s"
	SiteMargins  = "Least margin of every hang"
	SiteTotal    = "%d trees, %d hangs: %s."
	WayIn        = "Way in: %s."
	WhoSite      = "Who is in charge of the site"
)
