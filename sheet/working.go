package sheet

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/sheet/words"
)

var workingKind = Kind{Name: "working", Says: words.WorkingSays, NeedsTree: true, build: workingSheet}

// workingSheet is the working of every hang of a tree, by itself.
func workingSheet(u *subject) (*Sheet, error) {
	t := u.tree(u.Tree)
	s := &Sheet{Title: fmt.Sprintf(words.WorkingTitle, treeName(t)), Subtitle: fmt.Sprintf(words.Of, u.Survey.Site, u.Survey.Day)}
	s.add(&Cautions{wording.Cautions()})
	hangs := u.of(t.ID)
	if len(hangs) == 0 {
		s.say(words.NoHang)
	}
	for _, h := range hangs {
		s.working(u, h)
	}
	s.sources(hangs)
	s.sign(words.WhoChecked, words.WhoJudged)
	return s, nil
}

// working adds every check of a hang as worked steps.
func (s *Sheet) working(u *subject, h assess.Hang) {
	s.heading(1, fmt.Sprintf(words.WorkingOf, h.ID))
	drawn, ok := u.drawn[h.ID]
	if !ok {
		s.say(words.WorkingNone)
		return
	}
	s.say(wording.Shape(h.Outcome) + " " + wording.Outcome(h.Outcome) + " " + words.Asked + ": " + wording.Use(h.Asked) + ".")
	s.say(words.WorkingAbout)
	s.say(words.WorkingInputs)
	b := &stepBook{known: map[string]numbered{}}
	for _, w := range drawn.Workings() {
		s.heading(2, wording.Check(w.Check))
		s.say(fmt.Sprintf(words.ByFormula, wording.Formula(w.Check.Code)) + " (" + wording.Basis(w.Check.Code) + ")")
		table, taken := b.steps(w)
		if len(taken) > 0 {
			s.say(fmt.Sprintf(words.TakenOver, strings.Join(taken, "; ")))
		}
		s.add(table)
	}
}

// stepBook numbers the steps of a hang. A step that a later check takes over as
// it stands is named by its number.
type stepBook struct {
	last  int
	known map[string]numbered
}

type numbered struct {
	number int
	step   assess.Step
}

// steps makes the table of one check and lists the steps that it takes over.
func (b *stepBook) steps(w assess.Working) (t *Table, taken []string) {
	t = &Table{Caption: fmt.Sprintf(words.WorkedSteps, wording.Check(w.Check)), Columns: []Column{
		{Title: words.Step, Wide: 1, Number: true}, {Title: words.Symbol, Wide: 1.8}, {Title: words.What, Wide: 5}, {Title: words.HowGot, Wide: 6}, {Title: words.Result, Wide: 3.2, Number: true}}}
	changed, used := map[string]bool{}, map[string]bool{}
	var kept []string
	for _, one := range w.Steps {
		if b.stands(one, changed) {
			kept = append(kept, one.Symbol)
			continue
		}
		b.last++
		b.known[one.Symbol] = numbered{b.last, one}
		changed[one.Symbol] = true
		for _, symbol := range symbolsOf(one.Formula) {
			used[symbol] = true
		}
		t.Rows = append(t.Rows, []string{strconv.Itoa(b.last), one.Symbol, one.Name, howGot(one), wording.Exact(one.Value, one.Unit)})
	}
	for _, symbol := range kept {
		if k := b.known[symbol]; used[symbol] {
			taken = append(taken, fmt.Sprintf(words.TakenOne, symbol, wording.Exact(k.step.Value, k.step.Unit), k.number))
		}
	}
	return t, taken
}

// stands reports whether a step is one that was numbered already, and nothing
// that it follows from has changed since.
func (b *stepBook) stands(one assess.Step, changed map[string]bool) bool {
	k, ok := b.known[one.Symbol]
	if !ok || k.step.Value != one.Value || k.step.Formula != one.Formula || k.step.Name != one.Name {
		return false
	}
	return !slices.ContainsFunc(symbolsOf(one.Formula), func(symbol string) bool { return changed[symbol] })
}

// symbolsOf lists the names in a formula.
func symbolsOf(formula string) []string {
	return strings.FieldsFunc(formula, func(r rune) bool {
		return !(r == '_' || r >= '0' && r <= '9' || r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z')
	})
}

// howGot is the formula of a result, or where an input is from.
func howGot(s assess.Step) string {
	if s.Formula != "" {
		return s.Formula
	}
	parts := []string{words.Input}
	if s.How != "" {
		parts[0] += ", " + string(s.How)
	}
	if s.Path != "" {
		parts = append(parts, fmt.Sprintf(words.FromSurvey, s.Path))
	}
	for _, ref := range s.Refs {
		parts = append(parts, ref.Citation())
	}
	if note := strings.TrimRight(s.Note, "; "); note != "" {
		parts = append(parts, note)
	}
	return strings.Join(parts, "; ")
}
