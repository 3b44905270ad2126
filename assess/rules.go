package assess

import (
	"boughline/engine/signs"
	"boughline/engine/union"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
)

// rules are the numbers of the model that checks use, each with its source.
type rules struct {
	// Strength and loads.
	memberFactor, memberCoV, materialFactor source.Fact
	shearCoV                                source.Fact
	rideFactor, windFactor                  source.Fact
	designAmplitude, slack                  source.Fact
	oneWayShare, reversingShare             source.Fact
	includedFactor, expertAspect            source.Fact
	formFirst, formLast                     source.Fact
	form                                    union.FormCurve
	// The limb's own weight.
	ownMassFactor, sideBranchStart, tipShare source.Fact
	ownMassCoV, ownMassLogError              source.Fact
	// Chance and evidence.
	modelMean, modelCoV, targetBeta, testFactor, lastingCoV source.Fact
	testSteps, testHold, testSet, stiffnessCoV              source.Fact
	diameterCorrelation, weighedCoV                         source.Fact
	amplitudeSd, slackMean, gustBeyond, gustCoV             source.Fact
	ridesPerOuting, groupsPerOuting, outingsPerSeason       source.Fact
	// Space.
	spaceAmplitude, allowance, leastSpace source.Fact // deg
	seatClearance, footClearance          source.Fact // m
	sideShare, sideConstant, bodyOutline  source.Fact
	fallLimit                             source.Fact // m
	clearShare, clearFirm, clearLoose     source.Fact
	clearWidth                            source.Fact // m
	sidewaysLaunch                        source.Fact // deg
	// Smaller uses.
	lightestRider source.Fact // kg
	calmGust      source.Fact // m/s
	// Signs and looks.
	fallingReach, loadPathBeyond source.Fact // m
	waitingRadius, wayHalfWidth  source.Fact // m
	lookMonths, leafMonths       source.Fact
	toadstoolsFrom, toadstoolsTo source.Fact // months
	lookedFor                    map[signs.Zone][]*signs.Sign
	sign                         map[string]*signs.Sign
	signRules                    []signs.Rule
}

func rulesOf(k *knowledge.Base) rules {
	p := k.Parameter
	r := rules{
		memberFactor: p(knowledge.MemberFactor), memberCoV: p(knowledge.MemberVariation), materialFactor: p(knowledge.MaterialFactor),
		shearCoV:   p(knowledge.ShearVariation),
		rideFactor: p(knowledge.LoadFactorRiders), windFactor: p(knowledge.LoadFactorWind),
		designAmplitude: p(knowledge.DesignAmplitude), slack: p(knowledge.MountingSlack),
		oneWayShare: p(knowledge.FatigueShareOneWay), reversingShare: p(knowledge.FatigueShareReversed),
		includedFactor: p(knowledge.IncludedBarkForm), expertAspect: p(knowledge.UnionArboristAspect),
		formFirst: p(knowledge.UnionFullForm), formLast: p(knowledge.UnionPlateauForm),

		ownMassFactor: p(knowledge.LimbMassFactor), sideBranchStart: p(knowledge.SideBranchStart), tipShare: p(knowledge.TipShare),
		ownMassCoV: p(knowledge.OwnMassVariationGirths), ownMassLogError: p(knowledge.LimbVolumeLogError),

		modelMean: p(knowledge.ModelErrorMean), modelCoV: p(knowledge.ModelErrorVariation), targetBeta: p(knowledge.TargetReliability),
		testFactor: p(knowledge.LoadTestFactor), lastingCoV: p(knowledge.LastingVariation),
		testSteps: p(knowledge.LoadTestSteps), testHold: p(knowledge.LoadTestHold), testSet: p(knowledge.LoadTestSet),
		stiffnessCoV:        p(knowledge.StiffnessVariation),
		diameterCorrelation: p(knowledge.DiameterCorrelation), weighedCoV: p(knowledge.RiderWeighedVariation),
		amplitudeSd: p(knowledge.AmplitudeDeviation), slackMean: p(knowledge.SlackMean),
		gustBeyond: p(knowledge.GustBeyondStop), gustCoV: p(knowledge.GustVariation),
		ridesPerOuting: p(knowledge.RidesPerOuting), groupsPerOuting: p(knowledge.GroupsPerOuting), outingsPerSeason: p(knowledge.OutingsPerSeason),

		spaceAmplitude: p(knowledge.SpaceAmplitude), allowance: p(knowledge.AmplitudeAllowance), leastSpace: p(knowledge.LeastSpaceAmplitude),
		seatClearance: p(knowledge.GroupSeatClearance), footClearance: p(knowledge.FootClearance),
		sideShare: p(knowledge.SideClearanceShare), sideConstant: p(knowledge.SideClearance), bodyOutline: p(knowledge.BodyOutline),
		fallLimit:  p(knowledge.GreatestFall),
		clearShare: p(knowledge.KeptClearShare), clearFirm: p(knowledge.KeptClearFirm), clearLoose: p(knowledge.KeptClearLoose),
		clearWidth: p(knowledge.KeptClearWidth), sidewaysLaunch: p(knowledge.SidewaysLaunch),

		lightestRider: p(knowledge.LightestRider), calmGust: p(knowledge.CalmGust),

		fallingReach: p(knowledge.FallingReach), loadPathBeyond: p(knowledge.LoadPathBeyond),
		waitingRadius: p(knowledge.WaitingRadius), wayHalfWidth: p(knowledge.WayHalfWidth),
		lookMonths: p(knowledge.DatedLookMonths), leafMonths: p(knowledge.LeafMonths),
		toadstoolsFrom: p(knowledge.ToadstoolsFrom), toadstoolsTo: p(knowledge.ToadstoolsTo),
		signRules: k.SignRules(),
	}
	all := k.Signs()
	r.sign, r.lookedFor = signsByID(all), lookedFor(all)
	r.form = union.FormCurve{
		{Aspect: p(knowledge.UnionFullAspect).Value, Factor: r.formFirst.Value},
		{Aspect: p(knowledge.UnionPlateauAspect).Value, Factor: r.formLast.Value},
	}
	return r
}

// angle returns a rule as an angle.
func angle(f source.Fact) quantity.Angle { return quantity.Angle(f.Value) }
