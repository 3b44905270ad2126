package register

import "fmt"

// String words a reminder in one line.
func (d Reminder) String() string {
	day := " on " + d.By.String()
	if d.By.IsZero() {
		day = " now: since when it is in service is not written down"
	} else if d.Passed {
		day = " since " + d.By.String()
	}
	switch d.Code {
	case ExaminationDue:
		return "thorough examination due" + day
	case NeverExamined:
		return "first thorough examination due" + day
	case LifeOver:
		return "maker's life ends" + day
	case UseByOver:
		return "maker's last day of use" + day
	case TextileAge:
		return "ten years old" + day + ", the maker's life is not written down"
	}
	return string(d.Code) + day
}

// String words a bar in one line.
func (b Bar) String() string {
	text := map[Code]string{
		NotRegistered: "not in the register", IsRetired: "retired", FoundUnfit: "found unfit by the last examination",
		ShockLoaded: "shock-loaded and not found fit since", MarkUnknown: "what it bears is not known",
		HistoryUnknown: "it ages, and since when it is in service is not written down",
		ExaminationDue: "thorough examination due", NeverExamined: "first thorough examination due", LifeOver: "maker's life over",
		UseByOver: "past the maker's last day of use", TextileAge: "ten years old, the maker's life is not written down",
	}[b.Code]
	if !b.Since.IsZero() {
		text = fmt.Sprintf("%s since %s", text, b.Since)
	}
	if b.Says != "" {
		text += " (" + b.Says + ")"
	}
	return text
}
