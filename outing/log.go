package outing

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/survey"
)

// Version is that of the JSON form of an outing.
const Version = 1

// Log is what is kept of an outing: what the card was asked for, the survey that
// it was issued from, and every event. It has no place for a card or a state: a
// file shows the card to other readers, and what it shows is never read back.
type Log struct {
	Version  int             `json:"boughline_outing"`
	ID       string          `json:"id"`
	Issue    Issue           `json:"issue"`
	Document json.RawMessage `json:"survey"`
	Events   []Event         `json:"events"`
}

// Outing is a log with the state that follows from it.
type Outing struct {
	Log
	State
	Judge Judge
}

// New issues a card from a survey and begins its outing. It fails with a *NoCard
// where none is issued.
func New(id string, s *survey.Survey, k *knowledge.Base, i Issue) (*Outing, error) {
	var document bytes.Buffer
	if err := survey.Write(&document, s); err != nil {
		return nil, err
	}
	return Open(Log{Version: Version, ID: id, Issue: i, Document: document.Bytes()}, k)
}

// Open judges the survey of a log anew and replays its events. It fails with a
// *NoCard where no card follows from the survey, and names the event that does
// not fit.
func Open(l Log, k *knowledge.Base) (*Outing, error) {
	if l.Version != Version {
		return nil, fmt.Errorf("boughline_outing is %d; expected %d, as this program writes it", l.Version, Version)
	}
	s, err := read(l.Document, k)
	if err != nil {
		return nil, err
	}
	judge := NewJudge(s, k, l.Issue)
	state, err := Replay(l.Events, judge)
	if err != nil {
		return nil, err
	}
	return &Outing{Log: l, State: state, Judge: judge}, nil
}

// read checks the survey of a log as any survey is.
func read(document []byte, k *knowledge.Base) (*survey.Survey, error) {
	s, problems, err := survey.Read(bytes.NewReader(document))
	if err != nil {
		return nil, err
	}
	if s != nil {
		problems = append(problems, assess.Problems(s, k)...)
	}
	if len(problems) > 0 {
		return nil, fmt.Errorf("the survey in the outing has %d problems, the first: %s", len(problems), problems[0])
	}
	return s, nil
}

// Replay is the state after a list of events. The error names the first that
// does not fit, by its number from 1 on.
func Replay(events []Event, judge Judge) (State, error) {
	s, err := Begin(judge)
	if err != nil {
		return State{}, err
	}
	for n, e := range events {
		if s, err = s.Apply(e, judge); err != nil {
			return State{}, fmt.Errorf("event %d: %w", n+1, err)
		}
	}
	return s, nil
}

// Append returns the outing with one more event and leaves this one alone.
func (o *Outing) Append(e Event) (*Outing, error) {
	state, err := o.Apply(e, o.Judge)
	if err != nil {
		return nil, err
	}
	next := *o
	next.State, next.Log.Events = state, state.Events
	return &next, nil
}

// file is a log with the card that followed from it, for readers other than
// Read.
type file struct {
	Log
	Card json.RawMessage `json:"card"`
}

// Write writes a log with its card, indented.
func Write(w io.Writer, o *Outing) error {
	card, err := json.Marshal(o.Card)
	if err != nil {
		return err
	}
	encoder := json.NewEncoder(w)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	return encoder.Encode(file{o.Log, card})
}

// Read reads a log that Write wrote and works everything out anew. altered says
// that the card in the file is another than the one that follows; it is not used.
func Read(data []byte, k *knowledge.Base) (o *Outing, altered bool, err error) {
	var f file
	if err := json.Unmarshal(data, &f); err != nil {
		return nil, false, fmt.Errorf("this is no outing: %w; expected a file that a day card was issued into", err)
	}
	o, err = Open(f.Log, k)
	if err != nil {
		return nil, false, err
	}
	card, err := json.Marshal(o.Card)
	if err != nil {
		return nil, false, err
	}
	var written bytes.Buffer
	altered = json.Compact(&written, f.Card) != nil || !bytes.Equal(written.Bytes(), card)
	return o, altered, nil
}
