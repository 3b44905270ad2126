package web

import (
	"fmt"
	"net/http"
	"slices"
	"strings"

	"boughline/quantity"
	"boughline/web/view"
	"boughline/web/words"
	"boughline/work"
)

// slow are the questions whose answer takes seconds on a phone: it is given
// when it is asked for, not with each letter.
var slow = []string{"limb-chance", "what-matters", "best-place"}

// answerQuestion works one question out from what the address holds. Nothing is
// kept.
func (a *app) answerQuestion(w http.ResponseWriter, r *http.Request) error {
	q, ok := work.QuestionByID(r.PathValue("question"))
	if !ok {
		return errNoPage
	}
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	if e.values.Has("example") {
		return a.moveOn(w, r, a.link("workbench", q.ID)+exampleQuery(q))
	}
	answered := e.answer(q)
	if wantsPart(r) {
		return a.send(w, r, http.StatusOK, answered)
	}
	page := view.Question{
		Page: a.newPage(r, q.Asks, view.Link{Text: words.Workbench, To: "workbench"}), Action: a.here(r),
		Example: a.link("workbench", q.ID) + "?example=yes", Others: a.link("workbench"), Answered: answered, Slow: slices.Contains(slow, q.ID),
	}
	if !page.Slow {
		page.From = a.here(r) + "?live=yes"
	}
	for _, in := range q.Inputs {
		page.Fields = append(page.Fields, e.inputField(in))
	}
	status := http.StatusOK
	if len(answered.Faults) > 0 {
		status = http.StatusUnprocessableEntity
	}
	return a.send(w, r, status, view.QuestionPage(page))
}

// exampleQuery fills in the examples of what is needed.
func exampleQuery(q work.Question) string {
	values := make([]string, 0, len(q.Inputs))
	for _, in := range q.Inputs {
		if in.Needed || q.ID == "fungus" || in.Path == "k" || in.Path == "k_vertical" || in.Path == "start_angle_deg" {
			values = append(values, queryEscape(in.Path)+"="+queryEscape(in.Example))
		}
	}
	return "?" + strings.Join(values, "&")
}

// answer works the question out; what cannot be taken is a fault of its field.
func (e *entry) answer(q work.Question) view.Answered {
	page := view.Answered{Formula: q.Formula, Source: q.Source}
	written, begun := map[string]string{}, false
	for _, in := range q.Inputs {
		text := e.text(in.Path)
		begun = begun || text != ""
		written[in.Path] = inUnit(in, text)
	}
	if !begun {
		return page
	}
	results, faults, err := q.Answer(written)
	for _, f := range faults {
		e.faults[f.Path] = f.Reason
		page.Faults = append(page.Faults, labelOf(q, f.Path)+": "+f.Reason)
	}
	switch {
	case err != nil:
		page.Faults = append(page.Faults, capital(plainError(q, err)))
	case len(faults) == 0:
		page.Figures = e.units.figures(results, work.ResultName{})
	}
	return page
}

func labelOf(q work.Question, path string) string {
	for _, in := range q.Inputs {
		if in.Path == path {
			return in.Label
		}
	}
	return path
}

// plainError names inputs as the form does.
func plainError(q work.Question, err error) string {
	text := strings.TrimPrefix(strings.TrimPrefix(err.Error(), fmt.Sprintf("group %q: ", q.Group)), "inputs.")
	path, reason, ok := strings.Cut(text, ": ")
	if label := labelOf(q, path); ok && label != path {
		return label + ": " + reason
	}
	return text
}

// inUnit turns a number with another unit behind it into one in the unit of its
// input. What it cannot read stays and is refused as it is.
func inUnit(in work.Input, text string) string {
	if in.Form != work.Number {
		return strings.ReplaceAll(text, "\r", "")
	}
	text = typed(text, "")
	switch in.Unit {
	case "m":
		return converted[quantity.Length](text, in.Unit)
	case "kg":
		return converted[quantity.Mass](text, in.Unit)
	case "N":
		return converted[quantity.Force](text, in.Unit)
	case "Pa":
		return converted[quantity.Stress](text, in.Unit)
	case "m/s":
		return converted[quantity.Speed](text, in.Unit)
	case "deg":
		return converted[quantity.Angle](text, in.Unit)
	}
	return strings.TrimSpace(text)
}

func converted[Q quantity.Kind](text, unit string) string {
	text = strings.TrimSpace(text)
	if !strings.Contains(text, " ") {
		return text
	}
	c, err := quantity.ParseChosen[Q](text)
	if err != nil {
		return text
	}
	return fmt.Sprint(float64(c.Value) / factor[Q](unit))
}

func (e *entry) inputField(in work.Input) view.Field {
	f := view.Field{Name: in.Path, Label: in.Label, Kind: view.Number, Value: e.values.Get(in.Path), Fault: e.faults[in.Path]}
	if in.Unit != "1" {
		f.Unit = in.Unit
	}
	var help []string
	if in.Meaning != "" {
		help = append(help, capital(in.Meaning)+".")
	}
	switch in.Form {
	case work.Flag:
		f.Kind = view.Tick
	case work.Choice:
		f.Kind, f.Choices = view.Select, choices("", in.Columns...)
	case work.Rows, work.Records:
		f.Kind, f.Unit = view.Long, ""
		help = append(help, words.SuchAs+" "+strings.ReplaceAll(in.Example, ";", " /"))
		f.Value = strings.ReplaceAll(strings.ReplaceAll(f.Value, "; ", "\n"), ";", "\n")
	default:
		if in.Form != work.Number {
			f.Kind = view.Text
		}
		help = append(help, words.SuchAs+" "+in.Example)
	}
	f.Help = strings.Join(help, " ")
	return f
}
