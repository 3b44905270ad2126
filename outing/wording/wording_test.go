package wording_test

import (
	"regexp"
	"strings"
	"testing"

	"boughline/knowledge"
	"boughline/outing"
	"boughline/outing/wording"
)

var promise = regexp.MustCompile(`(?i)\bsafe`)

// Whatever may be written down has words, and no word promises anything.
func TestEverythingHasWords(t *testing.T) {
	said := map[string]string{}
	for _, s := range []outing.Stage{outing.Issued, outing.Up, outing.Tested, outing.Ready, outing.InUse, outing.AtRest, outing.Dismounted} {
		said["stage "+string(s)] = wording.Stage(s)
	}
	for _, r := range append(outing.Reasons(), outing.Happened, outing.Failing) {
		said["reason "+string(r)] = wording.Reason(r)
	}
	for _, c := range outing.PutUp() {
		said["check "+string(c)] = wording.Check(c)
	}
	for _, b := range outing.Barks() {
		said["bark "+string(b)] = wording.Bark(b)
	}
	for _, k := range outing.Kinds() {
		e := outing.Event{Kind: k, Check: outing.PutUp()[0], Bark: outing.BarkAsBefore, Reason: outing.Rain}
		said["kind "+string(k)] = strings.TrimSpace(strings.TrimPrefix(wording.Event(e, outing.Issue{}), "00:00"))
	}
	for _, line := range wording.Rules(outing.Card{}, 0.7) {
		said[line.Head] = line.Text
	}
	for what, text := range said {
		if text == "" || promise.MatchString(text) {
			t.Errorf("%s says %q", what, text)
		}
	}
}

// The signs that a stop stands for are those of the tables.
func TestSignsOfStopsExist(t *testing.T) {
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range []outing.Reason{outing.Sound, outing.Movement} {
		if _, ok := k.Sign(outing.SignOf(r)); !ok {
			t.Errorf("%s: %q is no sign", r, outing.SignOf(r))
		}
	}
}
