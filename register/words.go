package register

import (
	"fmt"
	"strings"

	"boughline/survey"
)

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

// barWords holds a sentence for each bar, with %s where its day goes.
var barWords = map[Code]string{
	NotRegistered: "not in the register", IsRetired: "retired%s", FoundUnfit: "found unfit%s and not found fit since",
	ShockLoaded: "shock-loaded%s and not found fit since", MarkUnknown: "what it bears is not known",
	HistoryUnknown: "it ages, and since when it is in service is not written down",
	ExaminationDue: "thorough examination due%s", NeverExamined: "first thorough examination due%s", LifeOver: "maker's life over%s",
	UseByOver: "past the maker's last day of use%s", TextileAge: "ten years old%s, and the maker's life is not written down",
}

// String words a bar in one line.
func (b Bar) String() string {
	day := ""
	if !b.Since.IsZero() {
		day = " since " + b.Since.String()
		if b.Code == ShockLoaded || b.Code == FoundUnfit || b.Code == IsRetired {
			day = " on " + b.Since.String()
		}
	}
	text := strings.Replace(barWords[b.Code], "%s", day, 1)
	if b.Says != "" {
		text += " (" + b.Says + ")"
	}
	return text
}

// Strength words what an item is said to bear: its mark, its standard or both.
func (i Item) Strength() string {
	var list []string
	if i.Mark != nil {
		list = append(list, markText(i.Mark))
	}
	if i.Standard != "" {
		list = append(list, i.Standard)
	}
	if len(list) == 0 {
		return "not known"
	}
	return strings.Join(list, ", ")
}

func markText(m *survey.Mark) string {
	if m == nil {
		return "none"
	}
	kind := m.Kind
	if kind == survey.MarkUnknown {
		kind = "of unknown kind"
	}
	return fmt.Sprintf("%.4g kN %s", float64(m.Strength.Value)/1000, kind)
}
