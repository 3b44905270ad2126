package survey_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
	"testing"
	"testing/iotest"

	"boughline/survey"
)

func meadow(t testing.TB) string {
	t.Helper()
	data, err := os.ReadFile("testdata/meadow.json")
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func read(t testing.TB, text string) (*survey.Survey, []survey.Problem) {
	t.Helper()
	s, problems, err := survey.Read(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	if (s == nil) != (len(problems) > 0) {
		t.Fatalf("a survey beside problems, or neither: %v", problems)
	}
	return s, problems
}

func TestReadMeadow(t *testing.T) {
	s, problems := read(t, meadow(t))
	for _, p := range problems {
		t.Error(p)
	}
	if len(problems) > 0 {
		t.FailNow()
	}
	oak := s.Trees[0]
	if got := oak.Members[1].Stations[0].Girth.Value; got != 0.88 {
		t.Errorf("girth %v, want 0.88 m", got)
	}
	if got := s.Chains[0].Parts[0].Mark.Strength.Value; got != 2000*9.80665 {
		t.Errorf("mark %v, want 2000 kgf", got)
	}
	if got := oak.Hangs[0].Slack.Value; got != 0.1 {
		t.Errorf("slack %v, want 0.1 m", got)
	}
}

// A document of version 1 reads as one of the present version. What it could
// not say of its looks stays unsaid.
func TestReadUpgradesVersion1(t *testing.T) {
	s, problems := read(t, meadow(t))
	if len(problems) > 0 || s.Version != survey.Version {
		t.Fatalf("version %d, problems %v", s.Version, problems)
	}
	for _, l := range s.Trees[0].Looks {
		if l.Leaves != "" || l.Air != "" || l.InTheWay != nil {
			t.Errorf("a look of version 1 says %q, %q, %v", l.Leaves, l.Air, l.InTheWay)
		}
	}
	if len(s.Hazards) > 0 {
		t.Errorf("hazards out of nothing: %v", s.Hazards)
	}
	var b bytes.Buffer
	if err := survey.Write(&b, s); err != nil {
		t.Fatal(err)
	}
	if again, problems := read(t, b.String()); len(problems) > 0 || again.Version != survey.Version {
		t.Errorf("written again it does not read: %v", problems)
	}
}

func TestReadTakesAByteOrderMark(t *testing.T) {
	if _, problems := read(t, "\ufeff"+meadow(t)); len(problems) > 0 {
		t.Error(problems)
	}
}

// wanted is a problem by its code and place.
type wanted struct {
	code, path   string
	line, column int
}

func wantOne(t *testing.T, problems []survey.Problem, want wanted) {
	t.Helper()
	if len(problems) != 1 {
		t.Fatalf("%d problems, want %v: %v", len(problems), want, problems)
	}
	p := problems[0]
	got := wanted{p.Code, p.Path, p.Line, p.Column}
	if want.line == 0 {
		got.line, got.column = 0, 0
	}
	if got != want {
		t.Errorf("got %v, want %v: %v", got, want, p)
	}
	if p.Fault == "" || p.Expected == "" || p.Do == "" {
		t.Errorf("a part of it is not worded: %#v", p)
	}
}

// JSON texts that RFC 8259 does not allow, and texts that it leaves open.
func TestReadRefusesWhatCannotBeRead(t *testing.T) {
	tests := []struct {
		name, text string
		want       wanted
	}{
		{"empty", "", wanted{survey.CodeSyntax, "", 0, 0}},
		{"blank", " \n\t", wanted{survey.CodeSyntax, "", 0, 0}},
		{"cut off in an object", "{\n  \"boughline\": 1,", wanted{survey.CodeSyntax, "", 2, 18}},
		{"cut off in a text", `{"site": "Bro`, wanted{survey.CodeSyntax, "", 1, 14}},
		{"surplus comma", "{\n  \"site\": \"x\",\n}", wanted{survey.CodeSyntax, "", 3, 1}},
		{"missing comma", "{\"a\": 1\n \"b\": 2}", wanted{survey.CodeSyntax, "", 2, 2}},
		{"comment", "{ // site\n}", wanted{survey.CodeSyntax, "", 1, 3}},
		{"single quotes", "{'site': 1}", wanted{survey.CodeSyntax, "", 1, 2}},
		{"NaN", `{"each": NaN}`, wanted{survey.CodeSyntax, "", 1, 10}},
		{"minus Infinity", `{"each": -Infinity}`, wanted{survey.CodeSyntax, "", 1, 11}},
		{"two documents", "{}\n{}", wanted{survey.CodeSyntax, "", 2, 1}},
		{"not UTF-8", "{\"site\": \"ä\xff\"}", wanted{survey.CodeEncoding, "", 1, 12}},
		{"UTF-16", "\xff\xfe{\x00", wanted{survey.CodeEncoding, "", 1, 1}},
		{"deep", strings.Repeat("[", 40) + strings.Repeat("]", 40), wanted{survey.CodeNesting, strings.Repeat("[0]", 33), 1, 34}},
		{"very deep", strings.Repeat("[", 100000) + strings.Repeat("]", 100000), wanted{survey.CodeNesting, "", 0, 0}},
		{"a list", "[]", wanted{survey.CodeWrongType, "", 1, 1}},
		{"null", "null", wanted{survey.CodeWrongType, "", 1, 1}},
		{"a later version", "{\n\"boughline\": 3, \"limbs\": []}", wanted{survey.CodeNewer, "boughline", 2, 14}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, problems := read(t, test.text)
			wantOne(t, problems, test.want)
		})
	}
}

// endless gives blanks for ever and counts what was taken.
type endless struct{ taken int }

func (e *endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = ' '
	}
	e.taken += len(p)
	return len(p), nil
}

func TestReadStopsAtTheLargestSize(t *testing.T) {
	source := &endless{}
	_, problems, err := survey.Read(source)
	if err != nil {
		t.Fatal(err)
	}
	wantOne(t, problems, wanted{code: survey.CodeTooLarge})
	if source.taken > survey.MaxSize+1<<20 {
		t.Errorf("%d bytes were read, want about %d", source.taken, survey.MaxSize)
	}
}

func TestReadPassesOnTheErrorOfTheReader(t *testing.T) {
	broken := errors.New("the card was pulled out")
	_, problems, err := survey.Read(io.MultiReader(strings.NewReader("{"), iotest.ErrReader(broken)))
	if !errors.Is(err, broken) || problems != nil {
		t.Errorf("got %v, %v", problems, err)
	}
}

func TestWriteRefusesWhatJSONCannotHold(t *testing.T) {
	good, _ := read(t, meadow(t))
	good.Trees[0].Looks[1].Members[0] = "east \xff"
	err := survey.Write(io.Discard, good)
	if want := "trees[0].looks[1].members[0]"; err == nil || !strings.Contains(err.Error(), want) {
		t.Errorf("got %v, want an error at %s", err, want)
	}
	if problems := survey.Validate(good); len(problems) != 1 || problems[0].Code != survey.CodeLostCharacter {
		t.Errorf("got %v", problems)
	}
}

func TestWriteIsIndentedAndPlain(t *testing.T) {
	day, err := survey.ParseDate("2026-05-16")
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := survey.Write(&b, &survey.Survey{Version: 2, Site: "A & B <west>", Day: day}); err != nil {
		t.Fatal(err)
	}
	want := `{
  "boughline": 2,
  "site": "A & B <west>",
  "day": "2026-05-16",
  "trees": []
}
`
	if b.String() != want {
		t.Errorf("got %s, want %s", b.String(), want)
	}
	if s, problems := read(t, want); len(problems) > 0 || s.Trees != nil {
		t.Errorf("got %v, %v", s, problems)
	}
}

func TestValidateHasNoLines(t *testing.T) {
	good, _ := read(t, meadow(t))
	good.Trees[0].Hangs[0].Riders = "nobody"
	wantOne(t, survey.Validate(good), wanted{code: survey.CodeReference, path: "trees[0].hangs[0].riders"})
	if p := survey.Validate(good)[0]; p.Line != 0 || p.Column != 0 {
		t.Errorf("line %d of no text", p.Line)
	}
}

func TestProblemInWords(t *testing.T) {
	_, problems := read(t, strings.Replace(meadow(t), `"88 cm taped"`, `"88 taped"`, 1))
	want := `trees[0].members[1].stations[0].girth (line 32, column 176) is "88 taped": ` +
		`"taped" is no unit of length; expected a length with its unit (m, cm, mm, km, ft, in), for example "1.5 m"; write it as in "72 cm"`
	if got := fmt.Sprint(problems[0]); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}
