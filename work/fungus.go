package work

import (
	"encoding/json"
	"fmt"
	"sync"

	"boughline/knowledge"
	"boughline/quantity"
)

// fungusInputs is a description of a growth on a tree. Every field may be left
// out; a name that is not of the tables is read as free words.
type fungusInputs struct {
	Host      string  `json:"host"`
	Position  texts   `json:"position"`
	Month     int     `json:"month"`
	Form      string  `json:"form"`
	Underside string  `json:"underside_type"`
	Size      float64 `json:"size_m"`
	Words     texts   `json:"words"`
}

// texts reads one text, a list of them, or nothing.
type texts []string

func (t *texts) UnmarshalJSON(data []byte) error {
	var one string
	if json.Unmarshal(data, &one) == nil {
		*t = nil
		if one != "" {
			*t = texts{one}
		}
		return nil
	}
	var list []string
	if err := json.Unmarshal(data, &list); err != nil {
		return fmt.Errorf("%s is no text or list of texts", data)
	}
	*t = list
	return nil
}

type rankedName struct {
	Name        string  `json:"name"`
	Probability float64 `json:"probability"`
}

type fungusResults struct {
	Answer    string       `json:"answer"`
	Ranked    []rankedName `json:"ranked"`
	Meaning   string       `json:"meaning"`
	AskNext   *string      `json:"ask_next"`
	Advice    string       `json:"advice"`
	Weakens   []string     `json:"weakens"`
	SomeToo   []string     `json:"some_weaken_too"`
	Remaining []string     `json:"remaining"`
	Unread    []string     `json:"unread"`
	Memory    bool         `json:"partly_from_memory"`
}

var tables = sync.OnceValues(knowledge.Load)

func fungus(inputs json.RawMessage) (any, error) {
	in, err := read[fungusInputs](inputs)
	if err != nil {
		return nil, err
	}
	if in.Month < 0 || in.Month > 12 {
		return nil, fmt.Errorf("inputs.month: %d; expected 1 to 12, or left out", in.Month)
	}
	if in.Size < 0 {
		return nil, fmt.Errorf("inputs.size_m: %g; expected a positive length, or left out", in.Size)
	}
	k, err := tables()
	if err != nil {
		return nil, err
	}
	id := k.IdentifyFungus(knowledge.Description{
		Host: in.Host, Positions: in.Position, Month: in.Month, Form: in.Form, Underside: in.Underside,
		Size: quantity.Length(in.Size), Words: in.Words,
	})
	results := fungusResults{
		Answer: string(id.Answer), Ranked: ranked(id), Meaning: id.Says, Advice: id.Meaning.Advice.String(),
		Weakens: list(id.Meaning.Shared), SomeToo: list(id.Meaning.Some), Remaining: list(id.Meaning.Remaining),
		Unread: list(id.Evidence.Unread), Memory: id.Memory,
	}
	if id.Ask != nil {
		results.AskNext = &id.AskText
	}
	return results, nil
}

func list(names []string) []string { return append([]string{}, names...) }

func ranked(id knowledge.Identification) []rankedName {
	var names []rankedName
	for _, one := range id.Ranking() {
		names = append(names, rankedName{one.Name, one.Probability})
	}
	return names
}
