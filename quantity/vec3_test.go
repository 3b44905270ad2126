package quantity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func vectors() *rapid.Generator[Vec3] {
	return rapid.Custom(func(t *rapid.T) Vec3 {
		x := rapid.Float64Range(-100, 100)
		return Vec3{x.Draw(t, "x"), x.Draw(t, "y"), x.Draw(t, "z")}
	})
}

func directions() *rapid.Generator[Angle] {
	return rapid.Custom(func(t *rapid.T) Angle {
		return Angle(rapid.Float64Range(-360, 720).Draw(t, "deg")) * Degree
	})
}

func near(t *rapid.T, what string, got, want, scale float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-12*(1+scale) {
		t.Fatalf("%s: got %v, want %v", what, got, want)
	}
}

// The identities of the vector algebra: the cross product is square to both
// factors, Lagrange's identity, the scalar triple product.
func TestVectorAlgebra(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u, v, w := vectors().Draw(t, "u"), vectors().Draw(t, "v"), vectors().Draw(t, "w")
		scale := u.Norm() * v.Norm()
		n := u.Cross(v)
		near(t, "square to u", n.Dot(u), 0, scale*u.Norm())
		near(t, "square to v", n.Dot(v), 0, scale*v.Norm())
		near(t, "Lagrange", n.Dot(n)+u.Dot(v)*u.Dot(v), u.Dot(u)*v.Dot(v), scale*scale)
		near(t, "triple product", n.Dot(w), v.Cross(w).Dot(u), scale*w.Norm())
		near(t, "anticommutes", n.Add(v.Cross(u)).Norm(), 0, 0)
		near(t, "sum and difference", u.Add(v).Sub(v).Sub(u).Norm(), 0, u.Norm()+v.Norm())
	})
}

func TestUnitVectorHasLengthOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := vectors().Draw(t, "v")
		if v.Norm() < 1e-100 {
			t.Skip("too short to have a direction")
		}
		near(t, "length", v.Unit().Norm(), 1, 0)
		near(t, "direction", v.Unit().Dot(v), v.Norm(), v.Norm())
	})
	if got := (Vec3{}).Unit(); got != (Vec3{}) {
		t.Errorf("the zero vector gave %v", got)
	}
}

// North, east, south and west go clockwise round the compass; an inclination
// of 90 deg points straight up whatever the azimuth.
func TestHeadingOfTheCompass(t *testing.T) {
	tests := []struct {
		azimuth, inclination Angle
		want                 Vec3
	}{
		{0, 0, Vec3{0, 1, 0}},
		{90, 0, Vec3{1, 0, 0}},
		{180, 0, Vec3{0, -1, 0}},
		{270, 0, Vec3{-1, 0, 0}},
		{37, 90, Vec3{0, 0, 1}},
		{0, -90, Vec3{0, 0, -1}},
		{90, 30, Vec3{math.Sqrt(3) / 2, 0, 0.5}},
	}
	for _, test := range tests {
		got := Heading(test.azimuth*Degree, test.inclination*Degree)
		if got.Sub(test.want).Norm() > 1e-15 {
			t.Errorf("Heading(%v, %v deg) = %v, want %v", test.azimuth, test.inclination, got, test.want)
		}
	}
}

func TestHeadingProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		azimuth := directions().Draw(t, "azimuth")
		inclination := Angle(rapid.Float64Range(-90, 90).Draw(t, "inclination")) * Degree
		h := Heading(azimuth, inclination)
		near(t, "length", h.Norm(), 1, 0)
		near(t, "height", h.Z, inclination.Sin(), 0)
		near(t, "a full turn later", Heading(azimuth+360*Degree, inclination).Sub(h).Norm(), 0, 0)
		near(t, "the other way", Heading(azimuth+180*Degree, -inclination).Add(h).Norm(), 0, 0)
		if right := Heading(azimuth+90*Degree, 0); h.Cross(right).Z > 1e-12 {
			t.Fatalf("a greater azimuth is not clockwise: %v then %v", h, right)
		}
	})
}
