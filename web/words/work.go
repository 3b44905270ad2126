package words

// The workbench: one figure by itself.
const (
	Workbench      = "Workbench"
	WorkbenchIntro = "One figure by itself, as the assessment works it out. Choose what you want to know. Nothing is kept; the address holds what was typed, so that it can be passed on."
	QuestionIntro  = "Numbers are taken in the units shown; another unit behind a number is turned into it, such as 10 ft. A field can stay empty where its help says what counts then."
	FillExample    = "Fill in an example"
	OtherQuestions = "Other questions"
	Answer         = "Answer"
	AnswerWait     = "Fill in the form and the answer follows."
	AnswerSlow     = "This one takes some seconds, longer on a phone."
	AnswerAlone    = "One figure is no assessment: it knows nothing of the tree."
	SuchAs         = "Such as:"
	NoneOfThem     = "none"
	MeasureKinds   = "How high, how thick, how far, how steep: measuring"
	FungusKeyToo   = "Which fungus is it, one question at a time"
)

// Topics are the subjects of the workbench.
var Topics = map[string]string{
	"swing": "A swing in motion", "limb": "What a limb bears", "line": "Lines, wraps and gear", "room": "Room and place",
	"wind": "Wind", "chance": "Chances", "measuring": "What was read",
}

// What stands on the page after a change.
const (
	KeptNow  = "Kept"
	UndoThis = "Undo this"
)

// OnlyDue leaves the trees of a list that ask for a look.
const OnlyDue = "a look is due"
