package survey

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strconv"
	"strings"
)

// Limits of a document. A site with a thousand trees, about 6 MB, stays far
// below them.
const (
	MaxSize   = 64 << 20 // bytes
	maxDepth  = 32       // objects and lists inside one another
	maxValues = 4_000_000
)

// parser builds the generic tree of a JSON text: map[string]any, []any,
// string, float64, bool and nil.
type parser struct {
	data     []byte
	decoder  *json.Decoder
	problems []Problem
	left     int // values that may still come
	// offsets is filled with the place of every value where it is not nil.
	offsets map[path]int
}

// errStop ends the parsing after a problem that leaves nothing to go on with.
var errStop = errors.New("parsing stopped")

// parse reads one JSON value. It returns false where the text cannot be read;
// then the only problem says why. The first of two fields of one name is
// kept, the other is a problem.
func parse(data []byte, offsets map[path]int) (tree any, problems []Problem, ok bool) {
	if problem, bad := unreadable(data); bad {
		return nil, []Problem{problem}, false
	}
	p := newParser(data)
	p.offsets = offsets
	tree, err := p.value("", 0)
	if err != nil {
		return nil, p.problems[len(p.problems)-1:], false
	}
	return tree, p.problems, true
}

func newParser(data []byte) *parser {
	p := &parser{data: data, decoder: json.NewDecoder(bytes.NewReader(data)), left: maxValues}
	p.decoder.UseNumber()
	return p
}

// value reads the next value of the text, which is well-formed.
func (p *parser) value(at path, depth int) (any, error) {
	p.left--
	if p.offsets != nil {
		if _, known := p.offsets[at]; !known {
			p.offsets[at] = p.next()
		}
	}
	if depth > maxDepth || p.left < 0 {
		return nil, p.stop(at)
	}
	start := p.next()
	token, err := p.token()
	if err != nil {
		return nil, err
	}
	switch token := token.(type) {
	case json.Delim:
		if token == '{' {
			return p.object(at, depth)
		}
		return p.list(at, depth)
	case json.Number:
		return p.number(at, token), nil
	case string:
		p.checkCharacters(at, token, start)
		return token, nil
	}
	return token, nil
}

func (p *parser) token() (json.Token, error) {
	token, err := p.decoder.Token()
	if err != nil {
		p.problems = append(p.problems, syntaxProblem(p.data, p.decoder.InputOffset(), err))
		return nil, errStop
	}
	return token, nil
}

func (p *parser) object(at path, depth int) (any, error) {
	object := map[string]any{}
	for p.decoder.More() {
		start := p.next()
		token, err := p.token()
		if err != nil {
			return nil, err
		}
		name := token.(string)
		p.checkCharacters(at, name, start)
		value, err := p.value(at.field(name), depth+1)
		if err != nil {
			return nil, err
		}
		if _, twice := object[name]; twice {
			p.problems = append(p.problems, duplicateField(at.field(name), name, start))
			continue
		}
		object[name] = value
	}
	_, err := p.token()
	return object, err
}

func (p *parser) list(at path, depth int) (any, error) {
	items := []any{}
	for p.decoder.More() {
		value, err := p.value(at.item(len(items)), depth+1)
		if err != nil {
			return nil, err
		}
		items = append(items, value)
	}
	_, err := p.token()
	return items, err
}

func (p *parser) number(at path, text json.Number) any {
	x, err := strconv.ParseFloat(string(text), 64)
	if err != nil {
		p.problems = append(p.problems, Problem{
			Code: CodeOutOfRange, Path: string(at),
			Fault: "the number is too large to be read", Expected: "a finite number", Do: "correct the number",
		})
		return nil
	}
	return x
}

// checkCharacters finds escapes that stand for no character and would be
// lost, such as "\ud800" alone, in the text that was read just now.
func (p *parser) checkCharacters(at path, text string, start int) {
	replaced := strings.Count(text, "\ufffd")
	if replaced == 0 {
		return
	}
	raw := strings.ToLower(string(p.data[start:p.decoder.InputOffset()]))
	if replaced <= strings.Count(raw, "\ufffd")+strings.Count(raw, `\ufffd`) {
		return
	}
	p.problems = append(p.problems, Problem{
		Code: CodeLostCharacter, Path: string(at),
		Fault: `it holds half of a \u pair, which stands for no character`, Expected: "whole characters",
		Do: `write the character itself, or both halves of the \u pair`,
	})
}

// next is the place of the next token.
func (p *parser) next() int {
	i := int(p.decoder.InputOffset())
	for i < len(p.data) && strings.IndexByte(" \t\r\n,:", p.data[i]) >= 0 {
		i++
	}
	return i
}

func (p *parser) stop(at path) error {
	problem := Problem{
		Code: CodeNesting, Path: string(at), offset: p.next(),
		Fault:    fmt.Sprintf("more than %d objects and lists stand inside one another", maxDepth),
		Expected: "the fields of the document", Do: "check which program wrote the file",
	}
	if p.left < 0 {
		problem.Code = CodeTooLarge
		problem.Fault = fmt.Sprintf("the document holds more than %d values", maxValues)
		problem.Expected, problem.Do = "a smaller document", "split it into several"
	}
	problem.Line, problem.Column = lineAndColumn(p.data, problem.offset)
	p.problems = append(p.problems, problem)
	return errStop
}

func duplicateField(at path, name string, offset int) Problem {
	return Problem{
		Code: CodeDuplicateField, Path: string(at), offset: offset, Value: strconv.Quote(shorten(name)),
		Fault:    "the field stands twice in one object",
		Expected: "each field once", Do: "keep the right one and delete the other",
	}
}
