package quantity

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestParse(t *testing.T) {
	tests := []struct {
		text string
		want Measured[Length]
	}{
		{"72 cm", Measured[Length]{Value: 0.72}},
		{"72cm", Measured[Length]{Value: 0.72}},
		{"  72\u00a0cm ", Measured[Length]{Value: 0.72}},
		{"72 cm taped", Measured[Length]{Value: 0.72, How: Taped}},
		{"4.2 m ±0.1 m clinometer", Measured[Length]{Value: 4.2, Sd: 0.1, SdStated: true, How: Clinometer}},
		{"4.2 m clinometer ±0.1 m", Measured[Length]{Value: 4.2, Sd: 0.1, SdStated: true, How: Clinometer}},
		{"4 m±25cm", Measured[Length]{Value: 4, Sd: 0.25, SdStated: true}},
		{"4 m +-25 % by eye", Measured[Length]{Value: 4, Sd: 1, SdStated: true, How: ByEye}},
		{"4 m by  eye +/- 25%", Measured[Length]{Value: 4, Sd: 1, SdStated: true, How: ByEye}},
		{"-4 m ± 25 %", Measured[Length]{Value: -4, Sd: 1, SdStated: true}},
		{"4 m ±0 m from a table", Measured[Length]{Value: 4, SdStated: true, How: FromTable}},
		{".5 m", Measured[Length]{Value: 0.5}},
		{"5. m", Measured[Length]{Value: 5}},
		{"1e3 mm", Measured[Length]{Value: 1}},
		{"+2E-1 km", Measured[Length]{Value: 200}},
		{"0 m", Measured[Length]{}},
	}
	for _, test := range tests {
		got, err := Parse[Length](test.text)
		if err != nil || got != test.want {
			t.Errorf("Parse(%q) = %+v, %v; want %+v", test.text, got, err, test.want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	tests := []struct{ text, reason string }{
		{"", "the number is missing"},
		{"   ", "the number is missing"},
		{"cm", `"cm" is not a number`},
		{"72", "it has no unit"},
		{"72 taped", `"taped" is no unit of length`},
		{"72 kg", `"kg" is no unit of length`},
		{"72 CM", `"CM" is no unit of length`},
		{"4,2 m", `"4,2" has a comma in the number`},
		{"1,000 mm", `"1,000" has a comma in the number`},
		{"1 000 mm", `"000" is no unit of length`},
		{"NaN m", `"NaN" is not a number`},
		{"nan", `"nan" is not a number`},
		{"Inf m", `"Inf" is not a number`},
		{"-Infinity m", `"-Infinity" is not a number`},
		{"1e400 m", `"1e400" is too large a number`},
		{"1e308 km", `"1e308 km" is too large a number`},
		{"0x10 m", `"x10" is no unit of length`},
		{"1_0 m", `"_0" is no unit of length`},
		{"1.2.3 m", `".3" is no unit of length`},
		{"--1 m", `"--1" is not a number`},
		{"72 cm guessed", `"guessed" is no way of measuring`},
		{"72 cm Taped", `"Taped" is no way of measuring`},
		{"72 cm taped ±1 cm by eye", `"taped by eye" is no way of measuring`},
		{"72 cm ±", "behind ±: the number is missing"},
		{"72 cm ±2", "behind ±: it has no unit"},
		{"72 cm ±2 kg", `behind ±: "kg" is no unit of length`},
		{"72 cm ±NaN cm", `behind ±: "NaN" is not a number`},
		{"72 cm ±1e400 %", `behind ±: "1e400" is too large a number`},
		{"1e300 m ±1e300 %", `behind ±: "1e300 %" is too large a number`},
		{"72 cm ±-1 cm", "the standard deviation behind ± is negative"},
		{"72 cm ±-1 %", "the standard deviation behind ± is negative"},
		{"72 cm ±1 cm ±2 cm", `"±2 cm" is no way of measuring`},
		{"±1 cm", "the number is missing"},
	}
	for _, test := range tests {
		got, err := Parse[Length](test.text)
		var reason *TextError
		if !errors.As(err, &reason) || reason.Reason != test.reason || reason.Expected == "" {
			t.Errorf("Parse(%q) = %+v, %v; want the reason %s", test.text, got, err, test.reason)
		}
		if got != (Measured[Length]{}) {
			t.Errorf("Parse(%q) gave %+v beside an error", test.text, got)
		}
	}
}

func TestParseChosenRefusesMeasurements(t *testing.T) {
	if c, err := ParseChosen[Length]("4.2 m"); err != nil || c.Value != 4.2 {
		t.Errorf("got %v, %v", c, err)
	}
	for _, text := range []string{"4.2 m taped", "4.2 m ±0 m", "4.2"} {
		if c, err := ParseChosen[Length](text); err == nil {
			t.Errorf("%q gave %v", text, c)
		}
	}
}

func TestErrorsNameUnitsAndExample(t *testing.T) {
	_, err := Parse[Angle]("45")
	want := `it has no unit; expected an angle with its unit (deg, rad), for example "1.5 deg"`
	if err == nil || err.Error() != want {
		t.Errorf("got %v, want %s", err, want)
	}
	_, err = Parse[Mass]("45 kg guessed")
	if err == nil || !strings.Contains(err.Error(), "taped, calliper, weighed") {
		t.Errorf("got %v, want the ways of measuring", err)
	}
}

func TestFormat(t *testing.T) {
	tests := []struct{ got, want string }{
		{Format(Length(4.2)), "4.2 m"},
		{Format(Length(0)), "0 m"},
		{Format(Length(-0.25)), "-0.25 m"},
		{Format(Angle(1)), "57.29577951308232 deg"},
		{Format(Force(22000)), "22000 N"},
		{Format(Mass(1e25)), "1e+25 kg"},
		{Measured[Length]{Value: 0.72, Sd: 0.01, SdStated: true, How: Taped}.String(), "0.72 m ±0.01 m taped"},
		{Measured[Length]{Value: 0.72, Sd: 0.01}.String(), "0.72 m"},
	}
	for _, test := range tests {
		if test.got != test.want {
			t.Errorf("got %s, want %s", test.got, test.want)
		}
	}
}

func TestFormatWritesRoundDegrees(t *testing.T) {
	for tenths := -3600; tenths <= 7200; tenths++ {
		text := Format(Angle(float64(tenths) / 10 * float64(Degree)))
		if !strings.HasSuffix(text, " deg") || len(text) > len("-359.9 deg") {
			t.Errorf("%d tenths of a degree are written %s", tenths, text)
		}
	}
}

// finite draws any finite float64.
func finite() *rapid.Generator[float64] { return rapid.Float64Range(-1e300, 1e300) }

func roundTrip[Q Kind](t *rapid.T) {
	m := Measured[Q]{Value: Q(finite().Draw(t, "value"))}
	if m.SdStated = rapid.Bool().Draw(t, "stated"); m.SdStated {
		m.Sd = Q(math.Abs(finite().Draw(t, "sd")))
	}
	m.How = rapid.SampledFrom(append(Hows(), NotStated)).Draw(t, "how")
	parsed, err := Parse[Q](m.String())
	if err != nil || parsed != m {
		t.Fatalf("%q gave %+v, %v; want %+v", m, parsed, err, m)
	}
	data, err := json.Marshal(m)
	if err != nil {
		t.Fatal(err)
	}
	var fromJSON Measured[Q]
	if err := json.Unmarshal(data, &fromJSON); err != nil || fromJSON != m {
		t.Fatalf("%s gave %+v, %v; want %+v", data, fromJSON, err, m)
	}
}

func TestWhatIsWrittenReadsBackTheSame(t *testing.T) {
	t.Run("length", rapid.MakeCheck(roundTrip[Length]))
	t.Run("mass", rapid.MakeCheck(roundTrip[Mass]))
	t.Run("force", rapid.MakeCheck(roundTrip[Force]))
	t.Run("stress", rapid.MakeCheck(roundTrip[Stress]))
	t.Run("angle in radians", rapid.MakeCheck(roundTrip[Angle]))
	t.Run("speed", rapid.MakeCheck(roundTrip[Speed]))
	t.Run("density", rapid.MakeCheck(roundTrip[Density]))
}

func TestChosenRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := Chosen[Angle]{Angle(finite().Draw(t, "angle"))}
		data, err := json.Marshal(want)
		if err != nil {
			t.Fatal(err)
		}
		var got Chosen[Angle]
		if err := json.Unmarshal(data, &got); err != nil || got != want {
			t.Fatalf("%s gave %v, %v; want %v", data, got, err, want)
		}
	})
}

func TestJSONRefusesWhatIsNoText(t *testing.T) {
	for _, data := range []string{"72", "{}", "[]", "true", "null", `"72"`} {
		var m Measured[Length]
		if err := json.Unmarshal([]byte(data), &m); err == nil {
			t.Errorf("%s gave %v", data, m)
		}
		var c Chosen[Length]
		if err := json.Unmarshal([]byte(data), &c); err == nil {
			t.Errorf("%s gave %v", data, c)
		}
	}
}

func TestParseNeverGivesWhatIsNotFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[+-]?[0-9]{1,3}([.][0-9]{1,2})?(e[+-]?[0-9]{1,4})? ?(m|km|in|kg) ?((±|\+-) ?[0-9]{1,3}(e[0-9]{1,3})? ?(m|%|km))?( taped| by eye)?`).Draw(t, "text")
		m, err := Parse[Length](text)
		if err != nil {
			return
		}
		for _, x := range []float64{float64(m.Value), float64(m.Sd)} {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%q gave %+v", text, m)
			}
		}
	})
}
