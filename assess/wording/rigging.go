package wording

import (
	"fmt"
	"strings"

	"boughline/assess"
	"boughline/assess/rigging"
	"boughline/quantity"
	"boughline/source"
)

// RigPart is one question of how a hang is rigged, with its answers.
type RigPart struct {
	Key, Title string
	Help       string
	Items      []RigItem
}

// RigItem is one answer that opens down to formula and sources.
type RigItem struct {
	Text    string
	Margin  string // of a link of the chain
	Formula string
	Basis   string
	Terms   []assess.Term
	Refs    []source.Ref
	Minor   bool // beside what this chain has: a page may keep it closed
}

// RigNotNow is said where nothing is hung as things stand.
const RigNotNow = "As things stand nothing is hung here. What follows is for the use asked for."

// RigCautions stand below how a hang is rigged.
func RigCautions() []string {
	return []string{
		"These figures advise whoever rigs; the outcome of the hang decides what may be hung. Go by the makers' instructions of your gear, by local rules, and by a person who is trained for work in trees.",
		"Nobody stands below the limb, or where a weight, a line or a sling may come down, while it is rigged or taken down.",
	}
}

// Rigging words how a hang is rigged, in the order in which it is done.
func Rigging(r rigging.Rigging) []RigPart {
	return []RigPart{
		chainWords(r.Chain), lineWords(r.Line), throwWords(r.Throw), creepWords(r.Creep), freeingWords(r.Freeing),
		freshWords(r.Fresh), knotWords(r.Knots), barkWords(r.Bark),
	}
}

// Metres writes a length for somebody with a tape.
func Metres(l quantity.Length) string {
	if l < 0.1 && l > -0.1 {
		return fmt.Sprintf("%.0f mm", float64(l)*1000)
	}
	return fmt.Sprintf("%.2f m", float64(l))
}

func newtons(f quantity.Force) string { return Quantity(float64(f), "N") }

func chainWords(c rigging.Chain) RigPart {
	p := RigPart{Key: "chain", Title: "The chain, link by link", Help: "From the limb down. The chain bears what its weakest link bears."}
	for _, l := range c.Links {
		p.Items = append(p.Items, linkItem(l, c))
	}
	return p
}

func linkItem(l rigging.Link, c rigging.Chain) RigItem {
	if !l.Known {
		return RigItem{Text: fmt.Sprintf("%s: strength not known, so it may be the weakest", l.Name), Basis: unknownIsNotGood}
	}
	name := l.Name
	switch {
	case l.Weakest && len(c.Unknown) == 0:
		name += ", the weakest link"
	case l.Weakest:
		name += ", the weakest of those known"
	}
	item := RigItem{
		Text: fmt.Sprintf("%s: %s; asked %s", name, stepsWords(l), newtons(l.Required)), Margin: Margin(l.Margin),
		Formula: "F = F_mark x share x share ...; asked = (k_W W or k_T T, the larger) x pull in each part",
		Basis:   "governed by the " + l.Rule + "; demands and shares by the gear tables and house, docs/decisions 0005",
		Terms: []assess.Term{
			{Symbol: "F_mark", Name: l.MarkKind + " strength as marked", Value: float64(l.Marked), Unit: "N", Path: l.Path, Refs: l.MarkFrom},
		},
	}
	if l.PartPull != 1 {
		item.Terms = append(item.Terms, assess.Term{Symbol: "t", Name: "pull in each of two parts for each unit on the chain", Value: l.PartPull, Unit: "1"})
	}
	for _, s := range l.Steps {
		item.Terms = append(item.Terms, assess.Term{Symbol: "share", Name: s.Cause, Value: s.Share, Unit: "1", Note: newtons(s.Left) + " left", Refs: s.Refs})
	}
	return item
}

// stepsWords tell what is left of a link after each cause.
func stepsWords(l rigging.Link) string {
	marked := "marked"
	if len(l.MarkFrom) > 0 {
		marked = "by its standard"
	}
	text := fmt.Sprintf("%s %s", marked, newtons(l.Marked))
	if l.MarkKind == "working limit" {
		text += " (working limit)"
	}
	for _, s := range l.Steps {
		text += fmt.Sprintf(", %s keeps %.0f\u00a0%%: %s", s.Cause, 100*s.Share, newtons(s.Left))
	}
	return text
}

func lineWords(l rigging.Line) RigPart {
	p := RigPart{Key: "line", Title: "Line to cut"}
	if l.Fault != "" {
		p.Items = []RigItem{{Text: "No length can be told: " + l.Fault, Basis: unknownIsNotGood}}
		return p
	}
	of := "as the line of the hang puts it"
	if l.Wished {
		of = "as wanted"
	}
	p.Items = []RigItem{
		{
			Text:    fmt.Sprintf("Cut %s. The adjustable end takes up to %s of it", Metres(l.Cut), Metres(l.Adjust)),
			Formula: "cut = l_95 + e_95 + t;  l = (H - s - w)/(1 + W/EA) - c",
			Basis:   "statics of a line that stretches; nine cases in ten lie in the band, independent errors added as squares; lengths of knots, tails and of parts that are not stated are house",
			Terms:   l.Terms,
		},
		{Text: fmt.Sprintf("From eye to eye %s, nine cases in ten between %s and %s; knots take %s, tails %s", Metres(l.Finished), Metres(l.FinishedLow), Metres(l.FinishedHigh), Metres(l.Knots), Metres(l.Tails)),
			Basis: "house, in thicknesses of the line: tie each knot once in this line and measure"},
		{Text: fmt.Sprintf("The seat at rest under its riders %s above the ground, %s; the limb sags %s, the line stretches %s", Metres(l.Seat), of, Metres(l.Sag), Metres(l.Stretch)),
			Basis: "statics; the sag of the load test's plan, the stretch of the checks"},
	}
	if len(l.Assumed) > 0 {
		p.Items = append(p.Items, RigItem{Text: "Not stated, so counted by house lengths with a wide band: " + strings.Join(l.Assumed, ", ") + ". Measured, they cut less line to waste", Basis: unknownIsNotGood})
	}
	return p
}

func throwWords(t rigging.Throw) RigPart {
	p := RigPart{Key: "throw", Title: "Line over the limb from the ground"}
	if t.ByHand {
		p.Items = []RigItem{{Text: fmt.Sprintf("No throw: the top of the limb is within an arm's reach, %s up", Metres(t.Top)), Basis: "geometry"}}
		return p
	}
	manage := fmt.Sprintf("which most people manage by hand (up to %s)", Quantity(float64(t.Comfortable), "m/s"))
	if !t.Comes() {
		manage = fmt.Sprintf("more than most people manage by hand (%s): stand nearer, or take a large catapult or another way up", Quantity(float64(t.Comfortable), "m/s"))
	}
	p.Items = []RigItem{
		{
			Text: fmt.Sprintf("Stand %s from the plumb line of the hang point, on %.0f deg, square to the limb, and throw %.0f deg above the level with %s: the weight passes %s above the hand, %s",
				Metres(t.Stand), t.From.Degrees(), t.Angle.Degrees(), Quantity(float64(t.Speed), "m/s"), Metres(t.Up), manage),
			Formula: "v = sqrt(2 g y + g x^2/(2 y)),  tan a = 2 y/x,  E = m v^2/2",
			Basis:   "projectile without drag, any textbook: the highest point lies over the limb. What is comfortable, and the weight: common practice, no published source, and house",
			Terms:   t.Terms,
		},
		{Text: fmt.Sprintf("Nothing reaches it with less than %s; the weight of %.2f kg leaves the hand with %.0f J; throw line of at least %s", Quantity(float64(t.Least), "m/s"), float64(t.Mass), t.Energy, Metres(t.LineAtLeast)),
			Basis: "envelope of all throws, v^2 = g (y + sqrt(x^2 + y^2)), any textbook"},
		landingWords(t),
	}
	if t.Meets != "" {
		room := fmt.Sprintf("passes member %s at %s", t.Meets, Metres(t.MeetsRoom))
		if t.MeetsRoom <= 0 {
			room = "would hit member " + t.Meets + ": stand elsewhere"
		}
		p.Items = append(p.Items, RigItem{Text: "On its way the weight " + room + ", the nearest of the surveyed wood", Basis: "geometry of the members as surveyed; twigs and limbs that nobody wrote down are not in it: look"})
	}
	return p
}

func landingWords(t rigging.Throw) RigItem {
	text := fmt.Sprintf("Left to fly it comes down %s beyond the plumb line, a little amiss between %s and %s", Metres(t.Lands), Metres(t.LandsNear), Metres(t.LandsFar))
	switch {
	case t.People == nil:
		text += ". Where people wait is not stated: nobody within that ground and well about it"
	case *t.People <= 2:
		text += fmt.Sprintf(". That is too near to people, %s from where they wait or come in: move them first", Metres(max(0, *t.People)))
	default:
		text += fmt.Sprintf(", %s from where people wait or come in. Everybody else stands behind the thrower", Metres(*t.People))
	}
	if t.Level {
		text += ". The ground there is taken as level"
	}
	return RigItem{Text: text, Basis: "projectile without drag; 5 deg and 10 % amiss are house; 2 m to people are house"}
}

func creepWords(c rigging.Creep) RigPart {
	rest, swing := "stays", "stays"
	if c.SlidesAtRest() {
		rest = "slides"
	}
	if c.SlidesInSwing() {
		swing = "slides"
	}
	text := fmt.Sprintf("The limb lies at %.0f deg here. Friction %.2f holds up to %.0f deg: at rest a part that only lies on it %s (needs %.2f), at the worst of a swing it %s (needs %.2f)",
		c.Inclination.Degrees(), c.Friction, c.Most.Degrees(), rest, c.Rest, swing, c.Swing)
	if c.Grips {
		text += ". The anchor of this chain grips the limb all round, which holds better"
	} else {
		text += ". Nothing of this chain chokes the limb"
	}
	return RigPart{Key: "creep", Title: "Does the anchor creep along the limb?", Items: []RigItem{{
		Text: text, Formula: "slides where |u . d|/sqrt(1 - (u . d)^2) > mu,  u along the limb, d along the line;  at rest tan i > mu",
		Basis: "Coulomb friction, any textbook. Friction of bark is a house value: no figure was found. That a choking sling holds better: common practice, no published source", Terms: c.Terms,
	}}}
}

func freeingWords(list []rigging.Freeing) RigPart {
	p := RigPart{Key: "freeing", Title: "Does it come down again from below?"}
	var others []RigItem
	for _, f := range list {
		item := RigItem{Text: fmt.Sprintf("%s: %s. From below: %s; %s. What remains: %s", capital(f.Anchor), f.Job, f.FromBelow, f.Pull, f.Remains), Basis: f.Ref.Citation()}
		if f.InUse {
			item.Text = "In this chain. " + item.Text
			p.Items = append(p.Items, item)
			continue
		}
		item.Minor = true
		others = append(others, item)
	}
	p.Items = append(p.Items, others...)
	return p
}

func freshWords(f rigging.Fresh) RigPart {
	p := RigPart{Key: "fresh", Title: "A fresh point when the bark is marked", Help: fmt.Sprintf("At least %s from the marked place, %s along the limb.", Metres(f.Apart), Metres(f.From))}
	const basis = "the whole hang judged anew at each place tried, up to 1 m to either side; ground, height and people taken as they are at the hang point (house). A load test of the old place says nothing of the new one"
	switch {
	case f.Fault != "":
		p.Items = []RigItem{{Text: "None is looked for: " + f.Fault, Basis: basis}}
	case len(f.Spots) == 0:
		p.Items = []RigItem{{Text: fmt.Sprintf("None within %s to either side: rest this limb", Metres(f.Searched)), Basis: basis}}
	}
	for _, s := range f.Spots {
		towards := "towards the tip"
		if s.Moved < 0 {
			towards = "towards the union"
		}
		p.Items = append(p.Items, RigItem{Text: fmt.Sprintf("%s along the limb, %s %s: %s Riders at most %s", Metres(s.Along), Metres(max(s.Moved, -s.Moved)), towards, Outcome(s.Outcome), AtMost(float64(s.Mass), "kg")), Basis: basis})
	}
	return p
}

func knotWords(list []rigging.Knot) RigPart {
	p := RigPart{Key: "knots", Title: "Knots and what each is for", Help: "Any knot counts with at most 60 % of the line unless it was tested (Saez et al. 2024)."}
	for _, k := range list {
		name := capital(k.Name)
		if len(k.In) > 0 {
			name += ", in " + strings.Join(k.In, " and ")
		}
		tail := fmt.Sprintf("Tail at least %.0f thicknesses", k.Tail)
		if k.Tail == 0 {
			tail = "No tail"
		}
		p.Items = append(p.Items, RigItem{
			Text: fmt.Sprintf("%s: %s. %s; %s", name, k.Job, tail, k.Watch), Minor: len(k.In) == 0,
			Formula: fmt.Sprintf("eats %.0f thicknesses of line; keeps %.0f %% in the table", k.Eats, 100*k.Keeps), Basis: k.Refs[0].Citation(), Refs: k.Refs[1:],
		})
	}
	return p
}

func barkWords(b rigging.Bark) RigPart {
	p := RigPart{Key: "bark", Title: "What it does to the bark"}
	if b.Fault != "" {
		p.Items = []RigItem{{Text: "Nothing can be told: " + b.Fault, Basis: unknownIsNotGood}}
		return p
	}
	season := "out of the growing season, when bark holds best"
	switch {
	case !b.Season:
		season = "the day is not known, so the growing season counts"
	case b.Growing:
		season = "in the growing season, when bark slips most easily"
	}
	p.Help = fmt.Sprintf("The gentlest first, %s, for %s of riding. These figures compare; they bar nothing.", season, hours(b.Hours))
	for _, c := range b.Covers {
		name := capital(c.Name)
		if c.InUse {
			name += ", in use"
		}
		rubs := "nothing that moves rubs on the bark"
		if c.Rubbing > 0 {
			rubs = fmt.Sprintf("saws %s in an hour, %s in the day", Quantity(float64(b.PerHour), "m"), Quantity(float64(c.Rubbing), "m"))
		}
		width := "house"
		if c.Stated {
			width = "as stated"
		}
		p.Items = append(p.Items, RigItem{
			Text:    fmt.Sprintf("%s: %s on %.0f mm (%s); along the bark %.1f %% of what holds it; %s. Needs %s", name, Quantity(float64(c.Pressure), "Pa"), float64(c.Width)*1000, width, 100*c.BondShare, rubs, c.Needs),
			Formula: "p = T/(w R),  tau = F/(w R pi),  way rubbed = 4 a R for each swing (at most)",
			Basis:   "balance of a thin belt, any textbook; widths are house; that a cover spares bark: common practice, no published source", Terms: b.Terms, Refs: []source.Ref{c.Ref},
		})
	}
	return p
}

func hours(h float64) string {
	if h == 1 {
		return "an hour"
	}
	return fmt.Sprintf("%.3g hours", h)
}
