package survey

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
)

// Read reads a survey and returns every problem of the document in one run,
// in the order of the text. The survey is nil where there is any problem. The
// error is that of the reader alone. No more than MaxSize bytes are read.
func Read(r io.Reader) (*Survey, []Problem, error) {
	data, err := io.ReadAll(io.LimitReader(r, MaxSize+1))
	if err != nil {
		return nil, nil, fmt.Errorf("reading a survey: %w", err)
	}
	if len(data) > MaxSize {
		return nil, []Problem{{
			Code: CodeTooLarge, Value: fmt.Sprintf("over %d MiB", MaxSize>>20),
			Fault: "the document is too large", Expected: fmt.Sprintf("at most %d MiB", MaxSize>>20),
			Do: "check that it is a survey; split it into several sites",
		}}, nil
	}
	survey, problems := check(data)
	return survey, problems, nil
}

// Validate returns every problem of a survey that was put together in the
// program, exactly as Read would of its document.
func Validate(s *Survey) []Problem {
	data, err := encode(s)
	if err != nil {
		return []Problem{{
			Code: CodeLostCharacter, Value: shorten(err.Error()),
			Fault: "the survey cannot be written", Expected: "UTF-8 text and finite numbers", Do: "correct the value",
		}}
	}
	_, problems := check(data)
	for i := range problems {
		problems[i].Line, problems[i].Column = 0, 0
	}
	return problems
}

// check goes from text to generic tree, to the schema, to the survey and to
// the rules that a schema cannot say. What one step refuses is taken out and
// muted before the next, so that one fault is one problem.
func check(data []byte) (*Survey, []Problem) {
	data = bytes.TrimPrefix(data, []byte("\ufeff")) // byte order mark of some editors
	tree, problems, ok := parse(data, nil)
	if !ok {
		return nil, problems
	}
	root, ok := tree.(map[string]any)
	if !ok {
		problems = append(problems, Problem{
			Code: CodeWrongType, Fault: "it is no object", Expected: "a survey, an object in { }", Do: "check that it is a survey",
		})
		locate(problems, data)
		return nil, problems
	}
	if problem, newer := newerVersion(root); newer {
		problems = []Problem{problem}
		locate(problems, data)
		return nil, problems
	}
	upgrade(root, steps)
	lost := newLosses(problems)
	problems = append(problems, checkSchema(root, lost)...)
	survey, err := decode(lost.prune(root, "").(map[string]any))
	if err != nil {
		problems = append(problems, Problem{
			Code: CodeMisfit, Fault: shorten(err.Error()), Expected: "values that fit the schema", Do: "correct the value and report the fault",
		})
	} else {
		problems = append(problems, checkRules(survey, lost)...)
	}
	if len(problems) > 0 {
		locate(problems, data)
		return nil, problems
	}
	return survey, nil
}

func decode(root map[string]any) (*Survey, error) {
	data, err := json.Marshal(root)
	if err != nil {
		return nil, err
	}
	var s Survey
	if err := json.Unmarshal(data, &s); err != nil {
		return nil, err
	}
	return &s, nil
}
