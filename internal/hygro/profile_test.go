package hygro_test

import (
	"testing"

	"abut/internal/hygro"
)

func profileOf(t *testing.T, table *hygro.Table, layers ...hygro.Layer) hygro.Result {
	t.Helper()
	r, err := table.Profile(layers, hygro.Conditions{OutC: fill(0), OutRH: fill(80), InC: fill(20), InRH: fill(40)})
	if err != nil {
		t.Fatal(err)
	}
	return r
}
