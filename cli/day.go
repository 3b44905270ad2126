package cli

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
	"time"

	assessed "boughline/assess/wording"
	"boughline/knowledge"
	"boughline/outing"
	"boughline/outing/wording"
	"boughline/quantity"
)

type dayCommand struct {
	Issue dayIssueCommand `cmd:"" help:"Judge a hang anew and issue its day card, with a file that the day is written into."`
	Log   dayLogCommand   `cmd:"" help:"Write an event into the file of a day."`
	Down  dayDownCommand  `cmd:"" help:"Write down that the swing is down."`
	Show  dayShowCommand  `cmd:"" help:"Print the card of a day and what happened."`
}

func (e Env) now() time.Time {
	if e.Now == nil {
		return time.Now()
	}
	return e.Now()
}

// readDay reads the file of a day and works everything in it out anew.
func readDay(env Env, name string, k *knowledge.Base) (*outing.Outing, error) {
	data, err := os.ReadFile(name)
	if err != nil {
		return nil, fmt.Errorf("cannot open the file of the day: %w", err)
	}
	o, altered, err := outing.Read(data, k)
	if err != nil {
		return nil, refusal{fmt.Errorf("%s: %w", name, err)}
	}
	if altered {
		fmt.Fprintf(env.Stderr, "boughline: the card in %s is not the one that follows from its survey and events; the one that follows holds\n", name)
	}
	return o, nil
}

// writeDay writes the file whole or not at all.
func writeDay(name string, o *outing.Outing) error {
	var data bytes.Buffer
	if err := outing.Write(&data, o); err != nil {
		return err
	}
	return replace(name, data.Bytes())
}

// addToDay adds events to the file of a day, all of them or none, and says
// where the day stands.
func addToDay(env Env, name string, events ...outing.Event) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	o, err := readDay(env, name, k)
	if err != nil {
		return err
	}
	for _, e := range events {
		e.At = e.At.In(o.Issue.At.Location())
		after, err := o.Append(e)
		var no *outing.Refused
		if errors.As(err, &no) {
			return refusal{fmt.Errorf("%s; nothing was written", no)}
		}
		if err != nil {
			return err
		}
		o = after
	}
	if err := writeDay(name, o); err != nil {
		return err
	}
	return page{env.Stdout}.dayStands(o, env.now())
}

// dayStands writes where a day stands.
func (p page) dayStands(o *outing.Outing, now time.Time) error {
	var b strings.Builder
	b.WriteString(hanging(o.Issue.Hang, wording.Stage(o.Stage), max(column, len(o.Issue.Hang)+2)))
	if o.Late(now) {
		b.WriteString(hanging("  !", "STILL UP past its time: it was to be down by "+o.Card.Until.Format("15:04"), column))
	}
	if o.Over != "" {
		b.WriteString(hanging("  !", "riding is over for today: "+wording.Reason(o.Over), column))
	}
	if sign := outing.SignOf(o.Over); sign != "" {
		b.WriteString(hanging("  !", "write the sign "+sign+" into the survey as a finding: this file does not change it", column))
	}
	if o.Over == outing.Failing {
		b.WriteString(hanging("  !", "write the load test into the survey too (boughline loadtest record): this file does not change it", column))
	}
	if until := o.Waits(now); !until.IsZero() {
		b.WriteString(hanging("  !", "lightning: everybody stays away until "+until.In(o.Issue.At.Location()).Format("15:04"), column))
	}
	b.WriteString(hanging("  carried", wording.Summary(&o.State, now), column))
	_, err := io.WriteString(p.w, b.String())
	return err
}

// dayCard writes a card.
func (p page) dayCard(c outing.Card, pace quantity.Length) error {
	var b strings.Builder
	b.WriteString(hanging("", wording.Title(c), 0))
	b.WriteString(hanging("", wording.Where(c), 0))
	b.WriteString("\n")
	for _, l := range append(wording.Limits(c), wording.Rules(c, pace)...) {
		b.WriteString(hanging(l.Head, l.Text, dayColumn))
	}
	b.WriteString("\n")
	for _, text := range append([]string{wording.Signature(c), wording.Lapses(c)}, assessed.Cautions()...) {
		b.WriteString(hanging("!", text, 2))
	}
	_, err := io.WriteString(p.w, b.String())
	return err
}

// dayColumn is where the text of a card begins.
const dayColumn = 24

// paceOf reads the length of a step.
func paceOf(text string, k *knowledge.Base) (quantity.Length, error) {
	if text == "" {
		return quantity.Length(k.Parameter(knowledge.PaceLength).Value), nil
	}
	pace, err := quantity.ParseChosen[quantity.Length](text)
	if err == nil && !(pace.Value >= 0.3 && pace.Value <= 1.5) {
		err = fmt.Errorf("%q is no step; expected 0.3 m to 1.5 m", text)
	}
	if err != nil {
		return 0, refusal{fmt.Errorf("--pace: %w", err)}
	}
	return pace.Value, nil
}
