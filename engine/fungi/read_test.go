package fungi

import (
	"math"
	"slices"
	"testing"
	"unicode/utf8"
)

func toyLexicon(t testing.TB) *Lexicon {
	t.Helper()
	l, err := NewLexicon([]Words{
		{WordColour, "white", []string{"white", "off-white"}}, {WordColour, "brown", []string{"brown", "dark brown"}}, {WordColour, "black", []string{"black"}},
		{WordField, "underside", []string{"underneath", "underside"}}, {WordField, "upper", []string{"on top", "upper"}}, {WordField, "edge", []string{"edge"}},
		{WordMark, "bruises", []string{"turns black", "black thumb"}}, {WordMark, "crumbles", []string{"crumble", "crumbly"}}, {WordMark, "pale-edge", []string{"white edge"}},
		{WordForm, "bracket", []string{"bracket", "shelf"}}, {WordUnderside, "pores", []string{"pores"}}, {WordUnderside, "gills", []string{"gills"}},
		{WordPosition, "butt", []string{"base", "foot of the trunk"}}, {WordPosition, "stem", []string{"trunk"}}, {WordHost, "Fagus", []string{"beech"}},
		{WordHost, "Quercus", []string{"oak"}}, {WordSize, "27", []string{"dinner plate"}},
		{WordNegation, "not", []string{"no", "not", "without", "doesn't"}}, {WordUnseen, "unseen", []string{"cannot tell", "could not see"}},
	})
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func TestRead(t *testing.T) {
	l := toyLexicon(t)
	for text, ok := range map[string]func(Evidence) bool{
		"underside: white": func(e Evidence) bool { return slices.Equal(e.Colours, []Seen{{Underside, "white"}}) },
		"dark brown on top, white underneath": func(e Evidence) bool {
			return slices.Equal(e.Colours, []Seen{{Underside, "white"}, {Upper, "brown"}})
		},
		"white underneath and brown on top": func(e Evidence) bool {
			return slices.Equal(e.Colours, []Seen{{Underside, "white"}, {Upper, "brown"}})
		},
		"brown":                       func(e Evidence) bool { return slices.Equal(e.Colours, []Seen{{AnyField, "brown"}}) },
		"turned black under my thumb": func(e Evidence) bool { return e.Marks["bruises"] && len(e.Colours) == 0 },
		"brown with a white edge":     func(e Evidence) bool { return e.Marks["pale-edge"] && len(e.Colours) == 1 },
		"CRUMBLY!":                    func(e Evidence) bool { return e.Marks["crumbles"] },
		"it doesn’t crumble":          func(e Evidence) bool { there, ok := e.Marks["crumbles"]; return ok && !there },
		"no pores or gills": func(e Evidence) bool {
			return slices.Equal(e.NotUnder, []string{"gills", "pores"}) && e.Undersides == nil
		},
		"shelf at the base of an oak": func(e Evidence) bool {
			return e.Host == "Quercus" && e.Positions[0] == "butt" && e.Forms[0] == "bracket"
		},
		"foot of the trunk":             func(e Evidence) bool { return slices.Equal(e.Positions, []string{"butt"}) },
		"oak or beech":                  func(e Evidence) bool { return e.Host == "" },
		"could not see the pores":       func(e Evidence) bool { return e.Answers() == 0 && len(e.Unread) == 0 },
		"bracket, could not see pores":  func(e Evidence) bool { return len(e.Forms) == 1 && e.Undersides == nil },
		"trunkk":                        func(e Evidence) bool { return slices.Equal(e.Unread, []string{"trunkk"}) },
		"undersidee of it is brown":     func(e Evidence) bool { return slices.Equal(e.Colours, []Seen{{Underside, "brown"}}) },
		"20 cm across":                  func(e Evidence) bool { return math.Abs(float64(e.Size)-0.20) < 1e-12 },
		"size: 8 in":                    func(e Evidence) bool { return math.Abs(float64(e.Size)-0.2032) < 1e-12 },
		"4 m up the trunk":              func(e Evidence) bool { return e.Size == 0 && slices.Equal(e.Positions, []string{"stem"}) },
		"big as a dinner plate":         func(e Evidence) bool { return math.Abs(float64(e.Size)-0.27) < 1e-12 },
		"the edge is white and crumbly": func(e Evidence) bool { return e.Marks["pale-edge"] && e.Marks["crumbles"] },
		"lorem ipsum":                   func(e Evidence) bool { return len(e.Unread) == 1 && e.Answers() == 0 },
		"":                              func(e Evidence) bool { return len(e.Unread) == 0 && e.Answers() == 0 },
	} {
		if e := l.Read([]string{text}); !ok(e) {
			t.Errorf("%q was read as %+v", text, e)
		}
	}
	if e := l.Read([]string{"crumbles", "does not crumble"}); len(e.Marks) != 0 {
		t.Errorf("a mark told both ways counts: %+v", e)
	}
}

func TestOverKeepsWhatWasAnswered(t *testing.T) {
	words := Evidence{Host: "Fagus", Positions: []string{"stem", Twig}, Forms: []string{"film"}, Undersides: []string{"gills"}, Month: 3, Size: 1, Marks: map[string]bool{"hard": true, "dust": true}}
	told := Evidence{Host: "Betula", Positions: []string{"butt"}, Forms: []string{"bracket"}, Undersides: []string{"pores"}, Month: 8, Size: 2, Marks: map[string]bool{"hard": false}}
	e := told.Over(words)
	if e.Host != "Betula" || !slices.Equal(e.Positions, []string{"butt", Twig}) || e.Forms[0] != "bracket" || e.Undersides[0] != "pores" || e.Month != 8 || e.Size != 2 || e.Marks["hard"] || !e.Marks["dust"] {
		t.Errorf("%+v", e)
	}
	if e := (Evidence{}).Over(words); e.Host != "Fagus" || len(e.Positions) != 2 || e.Month != 3 || e.Answers() != words.Answers() {
		t.Errorf("%+v", e)
	}
}

func TestNewLexiconRefusesEmptyWays(t *testing.T) {
	if _, err := NewLexicon([]Words{{WordMark, "hard", []string{"!"}}}); err == nil {
		t.Error("a way without words was taken")
	}
}

func FuzzRead(f *testing.F) {
	for _, text := range []string{"underside: white", "no pores, but gills", "20 cm across;:—’", "::,,", "turns black white edge", "\xff\x00", "9999999 m wide"} {
		f.Add(text)
	}
	l := toyLexicon(f)
	f.Fuzz(func(t *testing.T, text string) {
		e := l.Read([]string{text})
		if again := l.Read([]string{text}); e.Answers() != again.Answers() {
			t.Errorf("%q is read in two ways: %+v, %+v", text, e, again)
		}
		if e.Size < 0 || math.IsInf(float64(e.Size), 0) || math.IsNaN(float64(e.Size)) {
			t.Errorf("%q has size %g", text, float64(e.Size))
		}
		if utf8.ValidString(text) && len(e.Unread) > 0 && e.Unread[0] != text {
			t.Errorf("%q came back as %q", text, e.Unread[0])
		}
	})
}
