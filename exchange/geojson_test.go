package exchange_test

import (
	"bytes"
	"math"
	"os"
	"testing"

	"boughline/exchange"
	"boughline/quantity"
	"boughline/survey"
	"boughline/survey/surveytest"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/geo"
	"github.com/paulmach/orb/geojson"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"pgregory.net/rapid"
)

// geojsonSchema is written after RFC 7946, section by section.
func geojsonSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	text, err := os.ReadFile("testdata/geojson.schema.json")
	must(t, err)
	tree, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	must(t, err)
	compiler := jsonschema.NewCompiler()
	must(t, compiler.AddResource("geojson", tree))
	schema, err := compiler.Compile("geojson")
	must(t, err)
	return schema
}

func geojsonOf(t testing.TB, s *survey.Survey) []byte {
	t.Helper()
	var b bytes.Buffer
	must(t, exchange.WriteGeoJSON(&b, s, tables(t)))
	return b.Bytes()
}

// TestTreesStandWhereTheyWereMeasured reads the map with the orb library and
// measures distance and bearing on it by its own formulae, which are those of a
// sphere: within half a percent.
func TestTreesStandWhereTheyWereMeasured(t *testing.T) {
	c := demoCopy(t)
	c.Survey.Place = &survey.Place{Latitude: 51.5, Longitude: -0.12}
	t1 := &c.Survey.Trees[0]
	t1.East, t1.North = &survey.MeasuredLength{Value: 300}, &survey.MeasuredLength{Value: -400}
	t1.Findings = append(t1.Findings, survey.Finding{
		ID: "aside", Sign: "crown-06", Side: &survey.MeasuredAngle{Value: 90 * quantity.Degree}, Distance: &survey.MeasuredLength{Value: 12},
	})
	features, err := geojson.UnmarshalFeatureCollection(geojsonOf(t, c.Survey))
	must(t, err)
	origin := features.Features[0].Geometry.(orb.Point)
	if origin != (orb.Point{-0.12, 51.5}) {
		t.Errorf("the site is at %v", origin)
	}
	tree := find(t, features, "tree/"+t1.ID)
	at := tree.Geometry.(orb.Point)
	if d := geo.Distance(origin, at); math.Abs(d-500) > 2.5 {
		t.Errorf("500 m became %g", d)
	}
	if b := math.Mod(geo.Bearing(origin, at)+360, 360); math.Abs(b-143.13) > 0.3 {
		t.Errorf("a bearing of 143.13 degrees became %g", b)
	}
	if d := geo.Distance(at, find(t, features, "tree/"+t1.ID+"/finding/aside").Geometry.(orb.Point)); math.Abs(d-12) > 0.06 {
		t.Errorf("12 m became %g", d)
	}
	if got := tree.Properties.MustString("species"); got != t1.Species {
		t.Errorf("species %q", got)
	}
}

func find(t *testing.T, features *geojson.FeatureCollection, id string) *geojson.Feature {
	t.Helper()
	for _, f := range features.Features {
		if f.ID == id {
			return f
		}
	}
	t.Fatalf("no feature %q", id)
	return nil
}

func TestEverySiteIsAGoodMap(t *testing.T) {
	schema := geojsonSchema(t)
	rapid.Check(t, func(rt *rapid.T) {
		s := surveytest.Site().Draw(rt, "site")
		data := geojsonOf(t, s)
		tree, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
		if err != nil {
			rt.Fatal(err)
		}
		if err := schema.Validate(tree); err != nil {
			rt.Fatal(err)
		}
		features, err := geojson.UnmarshalFeatureCollection(data)
		if err != nil {
			rt.Fatal(err)
		}
		want := 1 + len(s.Trees) + len(s.Hazards)
		for _, t := range s.Trees {
			want += len(t.Findings)
		}
		if len(features.Features) != want {
			rt.Errorf("%d features of %d", len(features.Features), want)
		}
	})
}

// TestTheSchemaRefuses shows that the schema can refuse.
func TestTheSchemaRefuses(t *testing.T) {
	schema := geojsonSchema(t)
	for _, bad := range []string{
		`{"type":"FeatureCollection"}`, `{"type":"FeatureCollection","features":[{"type":"Feature","properties":{}}]}`,
		`{"type":"FeatureCollection","features":[{"type":"Feature","properties":{},"geometry":{"type":"Point","coordinates":[51.5,-120]}}]}`,
		`{"type":"FeatureCollection","features":[{"type":"Feature","properties":{},"geometry":{"type":"Point","coordinates":[1]}}]}`,
	} {
		tree, err := jsonschema.UnmarshalJSON(bytes.NewReader([]byte(bad)))
		must(t, err)
		if schema.Validate(tree) == nil {
			t.Errorf("taken: %s", bad)
		}
	}
}
