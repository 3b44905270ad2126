package wording

import (
	"fmt"

	"boughline/assess"
)

// checkEntry is what the catalogue says of one check.
type checkEntry struct {
	title   string
	formula string
	// basis is where the formula is from.
	basis string
}

var checks = map[assess.Code]checkEntry{
	assess.LimbBending: {"Bending of limb %s",
		"sigma = N/A + sqrt((M_up/W_up)^2 + (M_side/W_side)^2) <= f_d,  M = M_self + gamma_Q T l,  f_d = f_5%/gamma_M,  f_5% = 5 % fractile of f_clear k_m",
		"beam theory; pull of a pendulum T = m g (3 - 2 cos a), as in EN 1176-1 Annex B (from memory)"},
	assess.UnionBending: {"Bending at the union of limb %s",
		"M_self + gamma_Q T l <= W f_d k_form,  W = pi d_k^3/32 inside the bark, less what axial stress takes,  f_d = f_5%/gamma_M",
		"Kane 2007 for the section inside the bark; Slater & Ennos 2013 and Dahle 2022 for k_form"},
	assess.LimbShear: {"Shear along the grain of limb %s",
		"tau = 4/3 V/A + 2 T_t/(pi a b^2) <= f_vd",
		"beam theory; Saint-Venant torsion of an ellipse"},
	assess.LimbRepeated: {"Repeated load on limb %s",
		"sigma_up/min(k_1 f_mean, f_p) + sigma_side/min(k_2 f_mean, f_p) <= 1 at riding level",
		"Wood Handbook fatigue figures (from memory); added, which is cautious (house)"},
	assess.LimbAcrossGrain: {"Splitting of the bent limb %s",
		"k_90 4 M/(3 A R) <= f_t90, M the moment that straightens the bend",
		"curved beams, round form; tests of glued beams found 2 to 4 times theory (Cheung & Sorensen 1983)"},
	assess.LimbJerk: {"Jerk of a slack line on limb %s",
		"F = W (1 + sqrt(1 + 2 k s/W)),  1/k = 1/k_limb + 1/k_line;  sigma(M_self + F l) <= f_d, at a union f_d k_form",
		"impact on a spring, standard equation"},
	assess.LimbInWind: {"Bending of limb %s in motion and wind",
		"as bending of the limb, with D T for T, and gamma_W F_w square to the limb in plan",
		"full motion of the swing on the springing limb; EN 1991-1-4 profile; drag with streamlining of crowns"},
	assess.UnionInWind: {"Bending at the union of limb %s in motion and wind",
		"as bending at the union, with D T for T, and gamma_W F_w square to the limb in plan",
		"full motion of the swing on the springing limb; EN 1991-1-4 profile; drag with streamlining of crowns"},
	assess.StemBending: {"Bending of the stem",
		"|M_self + gamma_Q D_s M_swing| + gamma_W M_w <= W f_d",
		"beam theory; EN 1991-1-4 profile"},
	assess.RootPlate: {"Hold of the root plate",
		"gamma_Q D_s M_s + gamma_W M_w <= max(M_0, M_mass),  M_mass = m_stem k_r exp(-1.645 s_ln)",
		"a gust that the tree has stood, or winching tests of conifers (Byrne 2005)"},
	assess.GearLink: {"Weakest link of the gear: %s",
		"breaking strength as used: textile >= max(k_W W, k_T T), metal >= k_M T; a working limit has its maker's factor in it: textile >= max(k_W/7 W, T), metal >= k_M/4 T",
		"common rope-access practice (from memory); the 5 on the pull is house"},
	assess.LimbChance: {"Reliability of limb %s over a year",
		"beta = -Phi^-1(P[R W < S + Q | R W > S, R W K > S + M_T]) >= beta_t,  K of mean 1 and variation V_K",
		"lognormal strength, proof load as in Ditlevsen & Madsen 1996 (from memory)"},
	assess.UnionChance: {"Reliability of the union of limb %s over a year",
		"R with k_form;  beta = -Phi^-1(P[R W < S + Q | R W > S, R W K > S + M_T]) >= beta_t,  K of mean 1 and variation V_K",
		"lognormal strength, proof load as in Ditlevsen & Madsen 1996 (from memory)"},
	assess.LoadTested: {"Load test of the day on limb %s",
		"k_T D m g (3 - 2 cos a) <= F_T",
		"house factor; people are never the test mass"},
	assess.SeatClearance: {"Room under the seat",
		"least height of the seat over the ground, limb and line under load >= c_min",
		"EN 1176-2, 4.2 (read second-hand)"},
	assess.FootClearance: {"Room under the feet",
		"least height of the feet over the ground, limb and line under load >= c_f",
		"common practice, no published source"},
	assess.StemClearance: {"Room between swing and stem",
		"distance in plan from the path of the seat to the stem >= max(k L + c_0, c_b)",
		"EN 1176-2, 4.4 (read second-hand); reach of the body, house"},
	assess.Obstructed: {"Room between swing and %s",
		"distance in plan from the line of seat and let-go flights >= c_b",
		"reach of the body, house"},
	assess.LimbInPath: {"Room between swing and %s",
		"least distance from the seat, and from let-go flights to a stem, >= c_b; from the line >= c_l",
		"reach of the body, house"},
	assess.FallHeight: {"Height of fall",
		"greatest height of the seat, and of a let-go flight, over the ground below it <= h_max",
		"EN 1176-2, 4.10 (read second-hand)"},
	assess.LineClearance: {"Room under the loaded line",
		"least height of the loaded line, or of the body of a hammock, over the ground >= c_l",
		"elastic catenary with its unstretched length kept (Irvine 1981, from memory); the least room is house"},
	assess.StrapWidth: {"Width of %s round the stem",
		"w >= w_min",
		"DIN 79400, read second-hand: a norm of slack lines"},
	assess.StemAtAnchor: {"Diameter of the stem at the anchor",
		"D >= D_min",
		"DIN 79400, read second-hand: a norm of slack lines"},
}

// Check returns the title of a check, its part of the tree named.
func Check(c assess.Check) string {
	title := checks[c.Code].title
	if n := countVerbs(title); n == 1 {
		title = fmt.Sprintf(title, c.Where.Part)
	}
	if c.Where.End != "" {
		title += ", " + c.Where.End
	}
	return title
}

func countVerbs(text string) int {
	n := 0
	for i := range len(text) - 1 {
		if text[i] == '%' && text[i+1] == 's' {
			n++
		}
	}
	return n
}

// Formula returns the formula of a check.
func Formula(code assess.Code) string { return checks[code].formula }
