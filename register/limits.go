package register

import "boughline/source"

// The intervals that reminders count with where neither an examiner nor a
// maker has said otherwise.
const (
	// examinationMonths is the longest time between two thorough examinations
	// of gear that lifts people and of accessories: LOLER 1998, reg. 9(3)(a),
	// read second-hand.
	examinationMonths = 6
	// textileYears is the age at which textile gear is out of use where its
	// maker's life is not written down: ten years from making, from memory of
	// makers' instructions.
	textileYears = 10
	// noticeMonths is how long before its day a reminder shows, a house value.
	noticeMonths = 1
)

// Basis is where the rule behind a code is from.
func Basis(c Code) source.Ref {
	loler := source.Source{Key: "loler-1998", Year: "1998", Title: "The Lifting Operations and Lifting Equipment Regulations", Kind: source.SecondHand}
	recalled := loler
	recalled.Kind = source.Memory
	switch c {
	case ExaminationDue, NeverExamined:
		return source.Ref{Source: loler, Where: "reg. 9: every six months for gear that lifts people"}
	case ShockLoaded:
		return source.Ref{Source: recalled, Where: "reg. 9(3)(b): after exceptional circumstances"}
	case TextileAge:
		return source.Ref{Source: source.Source{Key: "makers-life", Title: "Makers' instructions: ten years from making at most", Kind: source.Memory}}
	case LifeOver, UseByOver:
		return source.Ref{Source: source.Source{Key: "makers-word", Title: "The maker's instructions for the item, as written in the register", Kind: source.SecondHand}}
	case MarkUnknown, HistoryUnknown, FoundUnfit, IsRetired, NotRegistered:
		return source.Ref{Source: source.Source{Key: "practice", Title: "Gear without a mark, a history or a clean examination stays out of use", Kind: source.Practice}}
	}
	return source.Ref{}
}
