package knowledge

import "testing"

func BenchmarkIdentifyFungus(b *testing.B) {
	k, err := Load()
	if err != nil {
		b.Fatal(err)
	}
	d := Description{Host: "oak", Positions: []string{"stem"}, Month: 8, Form: "shelf_cluster", Words: []string{"upper: yellow to orange", "underside: yellow"}}
	for b.Loop() {
		k.IdentifyFungus(d)
	}
}
