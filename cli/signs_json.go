package cli

import (
	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/source"
)

// signsFormat is the version of the JSON form of the signs. It may gain fields.
const signsFormat = 1

// signsDocument is the JSON form of signs, rules or hazards.
type signsDocument struct {
	Format  int          `json:"signs"`
	Signs   []signForm   `json:"list,omitempty"`
	Rules   []ruleForm   `json:"rules,omitempty"`
	Hazards []hazardForm `json:"hazards,omitempty"`
}

type signForm struct {
	ID         string         `json:"id"`
	Zone       signs.Zone     `json:"zone"`
	Name       string         `json:"name"`
	LookFor    string         `json:"look_for"`
	MayMean    string         `json:"may_mean"`
	WorseIf    string         `json:"worse_if"`
	CloserLook string         `json:"closer_look"`
	Methods    []signs.Method `json:"methods"`
	Needs      signs.Need     `json:"needs,omitempty"`
	HiddenBy   []signs.Cover  `json:"hidden_by,omitempty"`
	StandIns   []string       `json:"stand_ins,omitempty"`
	Instead    string         `json:"instead,omitempty"`
	Hosts      []string       `json:"hosts,omitempty"`
	Urgency    signs.Urgency  `json:"urgency"`
	Scope      signs.Scope    `json:"scope"`
	Effects    effectsForm    `json:"effects"`
	Departure  string         `json:"departure,omitempty"`
	Rules      []string       `json:"rules,omitempty"`
	sourceForm
}

type effectsForm struct {
	OnLoadPath  string `json:"on_load_path"`
	AbovePeople string `json:"above_people"`
	Elsewhere   string `json:"elsewhere"`
}

// sourceForm says where a row is from.
type sourceForm struct {
	Memory  string   `json:"memory,omitempty"` // all or part
	Sources []string `json:"sources"`
}

type hazardForm struct {
	ID        string  `json:"id"`
	Group     string  `json:"group"`
	Name      string  `json:"name"`
	LookFor   string  `json:"look_for"`
	Means     string  `json:"means"`
	From      int     `json:"month_from,omitempty"`
	To        int     `json:"month_to,omitempty"`
	Reach     float64 `json:"reach_m"`
	Near      string  `json:"near"`
	Beyond    string  `json:"beyond"`
	Do        string  `json:"do"`
	CheckWith string  `json:"check_with,omitempty"`
	Sign      string  `json:"sign,omitempty"`
	sourceForm
}

func signsForm(list []signs.Sign, k *knowledge.Base) signsDocument {
	doc := signsDocument{Format: signsFormat}
	for _, s := range list {
		f := signForm{
			ID: s.ID, Zone: s.Zone, Name: s.Name, LookFor: s.LookFor, MayMean: s.MayMean, WorseIf: s.WorseIf, CloserLook: s.CloserLook,
			Methods: s.Methods, Needs: s.Needs, HiddenBy: s.HiddenBy, StandIns: s.StandIns, Instead: s.Instead, Hosts: s.Hosts,
			Urgency: s.Urgency, Scope: s.Scope, Departure: s.Departure, sourceForm: sourcesOf(s.Refs, s.FromMemory, s.PartlyFromMemory),
			Effects: effectsForm{s.OnLoadPath.String(), s.AbovePeople.String(), s.Elsewhere.String()},
		}
		for _, r := range rulesWith(k, s.ID) {
			f.Rules = append(f.Rules, r.ID)
		}
		doc.Signs = append(doc.Signs, f)
	}
	return doc
}

func hazardsForm(list []signs.Hazard) signsDocument {
	doc := signsDocument{Format: signsFormat}
	for _, h := range list {
		doc.Hazards = append(doc.Hazards, hazardForm{
			ID: h.ID, Group: h.Group, Name: h.Name, LookFor: h.LookFor, Means: h.Means, From: h.From, To: h.To, Reach: float64(h.Reach),
			Near: h.Near.String(), Beyond: h.Beyond.String(), Do: h.Do, CheckWith: h.CheckWith, Sign: h.Sign,
			sourceForm: sourcesOf(h.Refs, h.FromMemory, h.PartlyFromMemory),
		})
	}
	return doc
}

func sourcesOf(refs []source.Ref, all, part bool) sourceForm {
	f := sourceForm{}
	switch {
	case all:
		f.Memory = "all"
	case part:
		f.Memory = "part"
	}
	for _, ref := range refs {
		f.Sources = append(f.Sources, ref.Citation())
	}
	return f
}
