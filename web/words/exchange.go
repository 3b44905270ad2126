package words

// OtherForm is what a link to a further form of a site says.
type OtherForm struct{ Text, Help string }

// Where a site leaves in further forms.
const (
	OtherForms    = "Write it for elsewhere"
	ArchiveAtDesk = "An archive of a whole site is taken in at the desk. Nothing was changed here."
)

// Forms are the further forms by their names.
var Forms = map[string]OtherForm{
	"archive":  {"Archive", "The whole site with its photos, to be taken in on another computer."},
	"stripped": {"Archive, photos without what cameras wrote", "Position, time and names are taken out of the photos; the pixels stay. The survey still says where the site lies."},
	"geojson":  {"Map (GeoJSON)", "Site, trees, findings and hazards as points, for a map program."},
	"trees":    {"List of trees (CSV)", "For a spreadsheet."},
	"hangs":    {"List of hangs (CSV)", "With what follows for each today."},
	"findings": {"List of findings (CSV)", "Every sign seen, with its place."},
	"calendar": {"Days (iCalendar)", "Examinations, looks, and when looks have to be made anew."},
}
