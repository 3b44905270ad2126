package work

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"testing"
)

// limbCase is what the limb files expect (CalculiX, quadrature with SciPy and
// closed forms: see the method in each file).
type limbCase struct {
	ID       string `json:"id"`
	Group    string `json:"group"`
	Expected struct {
		Displacement map[string]struct {
			U     []float64 `json:"u_m"`
			Theta []float64 `json:"theta_rad"`
		} `json:"displacement"`
		Reaction struct {
			F []float64 `json:"F_N"`
			M []float64 `json:"M_Nm"`
		} `json:"root_reaction"`
		Cuts        []limbCut          `json:"section_forces"`
		MaxFibre    limbPeak           `json:"max_fibre"`
		Sag         map[string]float64 `json:"sag_m"`
		Flexibility [][]float64        `json:"hang_flexibility_m_per_N"`
		Stiffness   [][]float64        `json:"hang_stiffness_N_per_m"`
		Frequencies []float64          `json:"frequencies_Hz"`
		Vertical    []float64          `json:"vertical_plane_Hz"`
		Horizontal  []float64          `json:"horizontal_plane_Hz"`
		ClosedHz    []float64          `json:"closed_form_Hz"`
		Closed      map[string]float64 `json:"closed_form"`
	} `json:"expected"`
	Tolerance map[string]tolerance `json:"tolerance"`
}

type limbCut struct {
	Member  string    `json:"member"`
	S       float64   `json:"s"`
	Side    string    `json:"side"`
	XYZ     []float64 `json:"xyz"`
	N       float64   `json:"N"`
	Vv      float64   `json:"V_v"`
	Vh      float64   `json:"V_h"`
	T       float64   `json:"T"`
	Mh      float64   `json:"M_h"`
	Mv      float64   `json:"M_v"`
	V       float64   `json:"V"`
	M       float64   `json:"M"`
	F       []float64 `json:"F_vec"`
	Moment  []float64 `json:"M_vec"`
	Most    float64   `json:"sigma_max"`
	Least   float64   `json:"sigma_min"`
	Torsion float64   `json:"tau_torsion_max"`
	Worst   struct {
		Sigma float64 `json:"sigma"`
		Yv    float64 `json:"y_v"`
		Yh    float64 `json:"y_h"`
	} `json:"worst"`
}

type limbPeak struct {
	Sigma  float64 `json:"sigma_Pa"`
	Abs    float64 `json:"abs_Pa"`
	Member string  `json:"member"`
	S      float64 `json:"s"`
	Side   string  `json:"side"`
	Yv     float64 `json:"y_v"`
	Yh     float64 `json:"y_h"`
}

func TestLimbCases(t *testing.T) {
	files, err := filepath.Glob("testdata/cases/limb_*.json")
	if err != nil || len(files) == 0 {
		t.Fatalf("no limb cases: %v", err)
	}
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) { checkLimb(t, file) })
	}
}

func checkLimb(t *testing.T, file string) {
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var want, got limbCase
	if err := json.Unmarshal(data, &want); err != nil {
		t.Fatal(err)
	}
	result, err := Run(data)
	if err != nil {
		t.Fatal(err)
	}
	encoded, err := json.Marshal(result.Results)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(encoded, &got.Expected); err != nil {
		t.Fatal(err)
	}
	w, g := want.Expected, got.Expected
	tol := want.Tolerance
	for name, u := range w.Displacement {
		near(t, name+" u", g.Displacement[name].U, u.U, tol["displacement"].Rel*norm(u.U))
		near(t, name+" theta", g.Displacement[name].Theta, u.Theta, tol["rotation"].Rel*norm(u.Theta))
	}
	for name, sag := range w.Sag {
		near(t, name+" sag", []float64{g.Sag[name]}, []float64{sag}, tol["displacement"].Rel*math.Abs(sag))
	}
	near(t, "reaction F", g.Reaction.F, w.Reaction.F, tol["reaction"].Rel*norm(w.Reaction.F))
	near(t, "reaction M", g.Reaction.M, w.Reaction.M, tol["reaction"].Rel*norm(w.Reaction.M))
	for _, cut := range w.Cuts {
		checkCut(t, cut, g.Cuts, tol)
	}
	checkPeak(t, g.MaxFibre, w.MaxFibre, tol)
	checkMatrices(t, got, want)
	for name, pair := range map[string][2][]float64{
		"frequencies": {g.Frequencies, w.Frequencies}, "vertical plane": {g.Vertical, w.Vertical},
		"horizontal plane": {g.Horizontal, w.Horizontal}, "closed form": {g.ClosedHz, w.ClosedHz},
	} {
		for i, f := range pair[1] {
			near(t, name, pair[0][i:i+1], []float64{f}, tol["frequency"].Rel*f)
		}
	}
	for name, value := range w.Closed {
		near(t, name, []float64{g.Closed[name]}, []float64{value}, tol["displacement"].Rel*math.Abs(value))
	}
}

func checkCut(t *testing.T, want limbCut, cuts []limbCut, tol map[string]tolerance) {
	t.Helper()
	for _, got := range cuts {
		if got.Member != want.Member || got.Side != want.Side || math.Abs(got.S-want.S) > 1e-6 {
			continue
		}
		name := want.Member + want.Side
		force, moment := tol["section_force"].Rel*norm(want.F), tol["section_force"].Rel*norm(want.Moment)
		stress := tol["stress"].Rel * math.Max(math.Abs(want.Most), math.Abs(want.Least))
		place := tol["stress_position_perimeter"].Abs
		near(t, name+" xyz", got.XYZ, want.XYZ, 1e-9)
		near(t, name+" F", got.F, want.F, force)
		near(t, name+" M", got.Moment, want.Moment, moment)
		near(t, name+" N V", []float64{got.N, got.Vv, got.Vh, got.V}, []float64{want.N, want.Vv, want.Vh, want.V}, force)
		near(t, name+" T M", []float64{got.T, got.Mh, got.Mv, got.M}, []float64{want.T, want.Mh, want.Mv, want.M}, moment)
		near(t, name+" stress", []float64{got.Most, got.Least, got.Torsion, got.Worst.Sigma},
			[]float64{want.Most, want.Least, want.Torsion, want.Worst.Sigma}, stress)
		near(t, name+" worst", []float64{got.Worst.Yv, got.Worst.Yh}, []float64{want.Worst.Yv, want.Worst.Yh}, place)
		return
	}
	t.Errorf("no cut at %s %v %s", want.Member, want.S, want.Side)
}

func checkPeak(t *testing.T, got, want limbPeak, tol map[string]tolerance) {
	t.Helper()
	if got.Member != want.Member || got.Side != want.Side {
		t.Errorf("greatest fibre on %s %s, want %s %s", got.Member, got.Side, want.Member, want.Side)
	}
	near(t, "greatest stress", []float64{got.Sigma, got.Abs}, []float64{want.Sigma, want.Abs}, tol["stress"].Rel*want.Abs)
	near(t, "its s", []float64{got.S}, []float64{want.S}, tol["stress_position_s"].Abs)
	near(t, "its place", []float64{got.Yv, got.Yh}, []float64{want.Yv, want.Yh}, tol["stress_position_perimeter"].Abs)
}

func checkMatrices(t *testing.T, got, want limbCase) {
	t.Helper()
	sum := 0.0
	for _, row := range want.Expected.Flexibility {
		sum = math.Hypot(sum, norm(row))
	}
	k := want.Expected.Stiffness
	for i, row := range want.Expected.Flexibility {
		near(t, "flexibility", got.Expected.Flexibility[i], row, want.Tolerance["flexibility"].Rel*sum)
		for j := range row {
			near(t, "stiffness", got.Expected.Stiffness[i][j:j+1], k[i][j:j+1],
				want.Tolerance["stiffness"].Rel*math.Sqrt(k[i][i]*k[j][j]))
		}
	}
}

func near(t *testing.T, what string, got, want []float64, within float64) {
	t.Helper()
	if len(got) != len(want) {
		t.Errorf("%s: got %v, want %v", what, got, want)
		return
	}
	for i := range want {
		if !(math.Abs(got[i]-want[i]) <= within) {
			t.Errorf("%s: got %v, want %v within %.3g", what, got, want, within)
			return
		}
	}
}

func norm(v []float64) float64 {
	sum := 0.0
	for _, x := range v {
		sum = math.Hypot(sum, x)
	}
	return sum
}
