package words

// The worked steps.
const (
	WorkingSays   = "every number of an assessment as worked steps, to be followed with a pocket calculator"
	WorkingTitle  = "Working of %s"
	WorkingOf     = "Working of %s"
	WorkingAbout  = "Each step is an input with where it is from, or a formula with its result. Values are in SI units, angles in degrees; set the calculator to degrees. Results were worked out with all digits and are printed with six, so that a last digit may differ. ^ is a power, sqrt a root, ln the natural logarithm, exp its inverse, abs a value without its sign, Phi the standard normal distribution, 3.14159265 pi, 9.80665 the standard gravity, 1.645 the deviate of the one-sided 5 % value."
	WorkingInputs = "Forces and stiffnesses in space frames, dynamic factors, the drag of crowns, searches in space and integrals of laws are no work for a calculator. They go in as inputs and are named as such; the program's own tests hold them against other solvers."
	WorkingNone   = "This hang cannot be worked out; its reasons say what is missing."
	WorkedSteps   = "Steps of: %s"
	Step          = "Step"
	Symbol        = "Symbol"
	What          = "What"
	HowGot        = "Formula, or where the input is from"
	Result        = "Value"
	TakenOver     = "Taken from above: %s."
	TakenOne      = "%s = %s (step %d)"
	ByFormula     = "Formula of the check: %s"
	Input         = "input"
	FromSurvey    = "survey: %s"
	WhoChecked    = "Who followed these steps"
)
