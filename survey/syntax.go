package survey

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"
)

// unreadable says why a text is no JSON at all.
func unreadable(data []byte) (Problem, bool) {
	if len(bytes.TrimSpace(data)) == 0 {
		return Problem{
			Code: CodeSyntax, Fault: "it is empty", Expected: "a document in JSON",
			Do: "check that the file was written to its end",
		}, true
	}
	if i := firstInvalid(data); i >= 0 {
		line, column := lineAndColumn(data, i)
		return Problem{
			Code: CodeEncoding, Line: line, Column: column, offset: i, Value: fmt.Sprintf("the byte %#x", data[i]),
			Fault: "the text is not UTF-8", Expected: "UTF-8 throughout", Do: "save the file again as UTF-8",
		}, true
	}
	if json.Valid(data) {
		return Problem{}, false
	}
	var raw json.RawMessage
	if err := json.Unmarshal(data, &raw); err != nil {
		end := int64(len(data))
		var syntax *json.SyntaxError
		if errors.As(err, &syntax) {
			end = syntax.Offset
		}
		return syntaxProblem(data, end, err), true
	}
	return Problem{}, false
}

func firstInvalid(data []byte) int {
	if utf8.Valid(data) {
		return -1
	}
	for i := 0; i < len(data); {
		r, size := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && size == 1 {
			return i
		}
		i += size
	}
	return -1
}

// syntaxProblem words an error of the JSON decoder, which read up to end.
func syntaxProblem(data []byte, end int64, err error) Problem {
	offset := max(0, int(end)-1)
	p := Problem{Code: CodeSyntax, Expected: "JSON (RFC 8259)"}
	switch rest := string(data[offset:min(len(data), offset+16)]); {
	case strings.Contains(err.Error(), "max depth"):
		p.Code, p.Fault, p.Do = CodeNesting, "too many objects and lists stand inside one another", "check which program wrote the file"
	case strings.Contains(err.Error(), "unexpected end"):
		offset = len(data)
		p.Fault, p.Do = "the text ends before the document does", "look for a missing bracket or quote, or fetch the file again"
	default:
		first, _ := utf8.DecodeRuneInString(rest)
		p.Fault, p.Do = fmt.Sprintf("%q does not belong here", first), syntaxHint(rest)
	}
	p.offset = offset
	p.Line, p.Column = lineAndColumn(data, offset)
	return p
}

// syntaxHint says what most often lies behind a character out of place.
func syntaxHint(rest string) string {
	hints := []struct{ start, do string }{
		{"N", `write numbers with their unit as text, "72 cm"; there is no NaN: leave out what was not observed`},
		{"I", `write numbers with their unit as text, "72 cm"; there is no Infinity: leave out what was not observed`},
		{"/", "delete comments, JSON has none"},
		{"#", "delete comments, JSON has none"},
		{"'", `use double quotes: "`},
		{"\n", `close the text with " before the end of the line`},
		{"}", "delete the comma before it, or add what is missing"},
		{"]", "delete the comma before it, or add what is missing"},
	}
	for _, h := range hints {
		if strings.HasPrefix(rest, h.start) {
			return h.do
		}
	}
	return "look for a missing or surplus comma, quote or bracket just before it"
}
