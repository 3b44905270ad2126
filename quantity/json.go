package quantity

import "encoding/json"

// MarshalJSON writes the measured value as one string, for example
// "0.72 m ±0.01 m taped".
func (m Measured[Q]) MarshalJSON() ([]byte, error) { return json.Marshal(m.String()) }

// UnmarshalJSON reads the string form of Parse.
func (m *Measured[Q]) UnmarshalJSON(data []byte) error {
	text, err := unquote[Q](data)
	if err != nil {
		return err
	}
	parsed, err := Parse[Q](text)
	if err != nil {
		return err
	}
	*m = parsed
	return nil
}

// Chosen is a value that was decided, not measured: a line length, an
// amplitude. It has no uncertainty.
type Chosen[Q Kind] struct{ Value Q }

// MarshalJSON writes the value with its unit, for example "4.2 m".
func (c Chosen[Q]) MarshalJSON() ([]byte, error) { return json.Marshal(Format(c.Value)) }

// UnmarshalJSON reads a value with its unit and refuses anything behind it.
func (c *Chosen[Q]) UnmarshalJSON(data []byte) error {
	text, err := unquote[Q](data)
	if err != nil {
		return err
	}
	parsed, err := ParseChosen[Q](text)
	if err != nil {
		return err
	}
	*c = parsed
	return nil
}

func unquote[Q Kind](data []byte) (text string, err error) {
	if json.Unmarshal(data, &text) != nil {
		return "", &TextError{"it is no text", example[Q]()}
	}
	return text, nil
}
