package knowledge

import (
	"embed"
	"errors"
	"io/fs"

	"boughline/engine/signs"
	"boughline/source"
)

//go:embed data/*.csv
var data embed.FS

// Base is all reference data, read once. It is not changed after Load, so it
// may be used from several goroutines.
type Base struct {
	sources       []source.Source
	parameters    map[string]source.Fact
	parameterKeys []string
	wood          []WoodRow
	limbTests     []LimbTest
	greenWeights  []greenWeight
	bark          []barkRow
	species       []Species
	speciesByName map[string]int
	signs         []signs.Sign
	signByID      map[string]int
	signRules     []signs.Rule
	hazards       []signs.Hazard
	signEffects   map[signs.Urgency]signs.ByPlacement
	fungi         []Fungus
	fungusKey     fungusKey
	riders        []rider
	adults        []Adult
	gear          []Gear
	knots         []Knot
	hitches       []Hitch
	chokeAngles   []chokeAngle
	surfaces      []Surface
	terrain       []Terrain
	beaufort      []Beaufort
	methods       []method
	efforts       []Effort
	knotJobs      []KnotJob
	freeing       []Freeing
	partLengths   []PartLength
	barkCovers    []BarkCover
}

// Load reads the embedded tables. It reports every fault of every table at
// once; the tables that are built in have none.
func Load() (*Base, error) {
	files, err := fs.Sub(data, "data")
	if err != nil {
		return nil, err
	}
	return load(files)
}

func load(files fs.FS) (*Base, error) {
	l := newLoader(files)
	b := &Base{
		parameters:   map[string]source.Fact{},
		wood:         loadWood(l),
		limbTests:    loadLimbTests(l),
		greenWeights: loadGreenWeights(l),
		bark:         loadBark(l),
		species:      loadSpecies(l),
		signs:        loadSigns(l),
		signEffects:  loadSignEffects(l),
		hazards:      loadHazards(l),
		fungi:        loadFungi(l),
		riders:       loadRiders(l),
		adults:       loadAdults(l),
		gear:         loadGear(l),
		knots:        loadKnots(l),
		hitches:      loadHitches(l),
		chokeAngles:  loadChokeAngles(l),
		surfaces:     loadSurfaces(l),
		terrain:      loadTerrain(l),
		beaufort:     loadBeaufort(l),
		methods:      loadMethods(l),
		efforts:      loadEfforts(l),
		knotJobs:     loadKnotJobs(l),
		freeing:      loadFreeing(l),
		partLengths:  loadPartLengths(l),
		barkCovers:   loadBarkCovers(l),
	}
	b.parameterKeys = loadParameters(l, b.parameters)
	b.signByID = indexSigns(b.signs)
	b.signRules = loadSignRules(l, b)
	b.speciesByName = indexSpecies(l, b.species)
	b.fungusKey = loadFungusKey(l, b.fungi)
	b.sources = l.list
	l.checkAllUsed()
	if len(l.problems) > 0 {
		return nil, errors.Join(l.problems...)
	}
	return b, nil
}
