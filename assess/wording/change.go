package wording

import "boughline/assess"

// changes says what would alter an outcome.
var changes = map[string]string{
	assess.ChangeLighter:           "lighter or fewer riders",
	assess.ChangeCloser:            "hang closer to the union, or from a thicker limb",
	assess.ChangeLine:              "another length of line, another swing direction or another hang point",
	assess.ChangeLower:             "swing lower",
	assess.ChangeShorter:           "a shorter line, or a lower swing",
	assess.ChangeLessWind:          "ride in less wind",
	assess.ChangeMeasure:           "measure it",
	assess.ChangeLighterAndMeasure: "the lightest riders at most, and only if better measuring shows more than is known now",
	assess.ChangeMoveAway:          "have it cleared away, or another place",
	assess.ChangeAsk:               "ask those it names",
	assess.ChangeLook:              "do the look",
	assess.ChangeCloserLook:        "take the closer look that this sign asks for",
	assess.ChangeClear:             "have it cleared away, or hang elsewhere",
	assess.ChangeArborist:          "ask an arborist",
	assess.ChangeOtherTree:         "choose another tree",
	assess.ChangeOtherLimb:         "choose another limb",
	assess.ChangeGear:              "stronger gear",
	assess.ChangeOtherGear:         "a part against which nothing stands",
	assess.ChangeLookGear:          "look the part over and state its condition, or take another",
	assess.ChangeChoke:             "a sling that chokes, or a level stretch of limb",
	assess.ChangeOtherDay:          "another day, without it",
	assess.ChangeMark:              "find the mark, or take a part that has one",
	assess.ChangeDescribe:          "describe it",
	assess.ChangeDeeperFill:        "softer ground or a lower swing",
	assess.ChangeMovePeople:        "another waiting place or way in",
	assess.ChangeMoreSag:           "more sag, lighter riders, or a thicker limb or stem",
	assess.ChangeLowerAnchor:       "lower anchors",
	assess.ChangeHigherAnchor:      "higher anchors, less sag or lighter riders",
	assess.ChangeWiderStrap:        "a wider strap",
	assess.ChangeTest:              "hang the whole test mass, and read sag and set",
	assess.ChangeMoveThing:         "another swing direction, or move it",
}

// Change words the smallest change that would alter an outcome; empty where
// there is none.
func Change(c assess.Change) string { return changes[c.Code] }
