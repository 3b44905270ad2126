package words

// zones are the names of the zones of a look.
var zones = map[string]string{
	"crown": "Crown", "limb": "Limbs", "union": "Unions", "stem": "Stem", "base": "Base of the stem",
	"root_plate": "Root plate", "ground": "Ground below", "surroundings": "Surroundings",
}

// Zone names a zone of the look.
func Zone(zone string) string {
	if name, ok := zones[zone]; ok {
		return name
	}
	return zone
}
