package words

// The list of what is still to be looked at.
const (
	LookListSays  = "what is still to be looked at on a tree, to tick off at its foot"
	LookListTitle = "Still to look at: %s"
	LookListBring = "Bring"
	LookListDone  = "Nothing is missing for this day. Look again before use, and after any gust."
	LookListTasks = "From the crown down to the ground"
	LookListFor   = "Look for: %s"
	LookListCant  = "Can't show today"
	LookListNotes = "Seen, where, how large"
)
