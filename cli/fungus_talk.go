package cli

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"boughline/engine/fungi"
	"boughline/knowledge"
)

// fungusTalk asks what is seen, one question at a time. Every question may be
// answered by a number, by words, or not at all.
type fungusTalk struct {
	k   *knowledge.Base
	in  io.Reader
	out io.Writer
}

const (
	talkOpening = "Tell what you see. Answer by number or in words; Enter or 0 when you cannot tell; \"stop\" for what is known so far."
	ownWords    = "In your own words first: where is it, what does it look like above, underneath and inside?"
)

// run asks until nothing more would split what remains, the answers end, or
// the person stops.
func (t fungusTalk) run() (knowledge.Identification, error) {
	lines := bufio.NewScanner(t.in)
	fmt.Fprint(t.out, paragraph(talkOpening), "\n", paragraph(ownWords))
	var e fungi.Evidence
	if text, ok := t.line(lines); ok {
		e = t.k.Evidence(knowledge.Description{Words: strings.Split(text, ";")})
	}
	var skipped []string
	for {
		id := t.k.IdentifyEvidence(e, skipped)
		if id.Ask == nil {
			return id, lines.Err()
		}
		attribute := id.Ask.Attribute
		t.put(id)
		text, ok := t.line(lines)
		if !ok {
			return id, lines.Err()
		}
		after, told, understood := t.k.AnswerFungus(e, attribute, text)
		switch {
		case !understood:
			fmt.Fprint(t.out, paragraph("That could not be read as an answer; a number of the list, yes or no, or 0 can."))
		case !told:
			skipped = append(skipped, attribute)
		}
		e = after
	}
}

// put prints the question with its choices.
func (t fungusTalk) put(id knowledge.Identification) {
	var b strings.Builder
	b.WriteString("\n" + paragraph(id.AskText))
	for i, choice := range t.k.FungusChoices(id.Ask.Attribute) {
		b.WriteString(hanging(fmt.Sprintf("  %2d", i+1), choice, 6))
	}
	b.WriteString(hanging("   0", "cannot tell", 6))
	fmt.Fprint(t.out, b.String())
}

// line reads one answer; ok is false at the end or at "stop".
func (t fungusTalk) line(lines *bufio.Scanner) (text string, ok bool) {
	fmt.Fprint(t.out, "> ")
	if !lines.Scan() {
		fmt.Fprintln(t.out)
		return "", false
	}
	text = strings.TrimSpace(lines.Text())
	return text, !strings.EqualFold(text, "stop")
}
