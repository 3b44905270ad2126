package survey

import (
	"bytes"
	"encoding/json"
	"unicode/utf8"
)

// lineAndColumn counts both from 1, columns in characters.
func lineAndColumn(data []byte, offset int) (line, column int) {
	before := data[:min(offset, len(data))]
	start := bytes.LastIndexByte(before, '\n') + 1
	return bytes.Count(before, []byte{'\n'}) + 1, utf8.RuneCount(before[start:]) + 1
}

// locate gives every problem its place in the text and the value that stands
// there, and sorts them. A problem of a missing field stands where the object
// does that should hold it.
func locate(problems []Problem, data []byte) {
	offsets := map[path]int{}
	parse(data, offsets)
	for i := range problems {
		p := &problems[i]
		at := path(p.Path)
		offset, found := offsets[at]
		if found && p.Value == "" {
			p.Value = written(data[offset:])
		}
		for !found && at != "" {
			at = at.parent()
			offset, found = offsets[at]
		}
		if p.offset == 0 { // a second field of one name knows its own place
			p.offset = offset
		}
	}
	sortProblems(problems)
	number(problems, data)
}

// number fills in lines and columns of sorted problems, going through the
// text once.
func number(problems []Problem, data []byte) {
	line, start, done := 1, 0, 0
	for i := range problems {
		p := &problems[i]
		passed := data[done:p.offset]
		line += bytes.Count(passed, []byte{'\n'})
		if last := bytes.LastIndexByte(passed, '\n'); last >= 0 {
			start = done + last + 1
		}
		done = p.offset
		p.Line, p.Column = line, utf8.RuneCount(data[start:p.offset])+1
	}
}

// written is the value at the front of a text, shortened.
func written(text []byte) string {
	switch text[0] {
	case '{':
		return "an object"
	case '[':
		return "a list"
	}
	var raw json.RawMessage
	if json.NewDecoder(bytes.NewReader(text)).Decode(&raw) != nil {
		return ""
	}
	return shorten(string(raw))
}
