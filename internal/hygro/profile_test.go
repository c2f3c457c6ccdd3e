package hygro_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"abut/internal/hygro"
)

// cold is a cold continental year, the kind in which walls get wet.
func cold() hygro.Conditions {
	return hygro.Conditions{
		OutC:  [12]float64{-12, -9, -2, 7, 14, 19, 22, 21, 15, 8, 0, -9},
		OutRH: [12]float64{75, 74, 72, 65, 64, 68, 70, 72, 73, 71, 76, 78},
		Class: "normal",
	}
}

func profileOf(t *testing.T, table *hygro.Table, layers ...hygro.Layer) hygro.Result {
	t.Helper()
	r, err := table.Profile(layers, cold())
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// of is a layer with the table's figures; thickness 0 is not stated.
func of(family string, mm float64) hygro.Layer {
	l := hygro.Layer{Name: family, Family: family}
	if mm > 0 {
		l.ThicknessMM = &mm
	}
	return l
}

func TestStatedBeatsTable(t *testing.T) {
	table := loadTable(t)
	l := of("xps", 50)
	usual := profileOf(t, table, l).Layers[0]
	l.R, l.PermeanceNG, l.Procedure = ptr(1.8), ptr(30.0), "A"
	stated := profileOf(t, table, l).Layers[0]
	near(t, "R from the table", *usual.R, 0.05/0.029, 1e-4, 0)
	near(t, "sd from the table", *usual.SdM, 7.5, 1e-9, 0)
	near(t, "R stated", *stated.R, 1.8, 1e-9, 0)
	near(t, "sd of the stated permeance", *stated.SdM, 200.0/30, 1e-4, 0)
	if usual.RBy != "table" || usual.RSource == "" || usual.VaporSource == "" || stated.RBy != "stated" || stated.VaporBy != "stated" || stated.VaporSource != "" {
		t.Errorf("origin is wrong: %+v and %+v", usual, stated)
	}
}

func TestLayerFigures(t *testing.T) {
	table := loadTable(t)
	for _, c := range []struct {
		name  string
		layer hygro.Layer
		want  []string // what is missing
		class string
	}{
		{"batt without thickness", of("glass-fiber-insulation", 0), []string{"thickness"}, ""},
		{"board of usual thickness", of("gypsum-board", 0), nil, "none"},
		{"board whose facer is not known", of("polyiso", 50), []string{"vapor"}, ""},
		{"facer known", of("polyiso-foil-faced", 50), nil, "I"},
		{"fluid of either kind", of("fluid-applied-acrylic-air-barrier", 0), []string{"vapor"}, ""},
		{"nothing known", hygro.Layer{Name: "?"}, []string{"resistance", "vapor"}, ""},
		{"family not in the table", of("no-such-family", 10), []string{"resistance", "vapor"}, ""},
		{"thin sheet of stated permeance", hygro.Layer{Name: "sheet", ThicknessMM: ptr(0.5), PermeanceNG: ptr(57.0)}, nil, "II"},
		{"thick sheet of stated permeance", hygro.Layer{Name: "sheet", ThicknessMM: ptr(5.0), PermeanceNG: ptr(57.0)}, []string{"resistance"}, "II"},
		{"stated as tight", hygro.Layer{Name: "sheet", R: ptr(0.0), PermeanceNG: ptr(0.0)}, nil, "I"},
		{"mu without thickness", hygro.Layer{Name: "slab", R: ptr(0.1), Mu: ptr(50.0)}, []string{"thickness"}, ""},
		{"mu and conductivity", hygro.Layer{Name: "slab", Lambda: ptr(2.0), Mu: ptr(100.0), ThicknessMM: ptr(100.0)}, nil, "II"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := profileOf(t, table, of("gypsum-board", 12.7), c.layer)
			var got []string
			for _, m := range r.Missing {
				if m.Layer != 1 || m.Text == "" {
					t.Errorf("missing %+v is not explained", m)
				}
				got = append(got, m.What)
			}
			if !slices.Equal(got, c.want) {
				t.Errorf("missing %v, want %v", got, c.want)
			}
			if r.Layers[1].VaporClass != c.class {
				t.Errorf("class %q, want %q", r.Layers[1].VaporClass, c.class)
			}
			if known := len(c.want) == 0; r.Known != known || (len(r.Months) == 12) != known || (r.DriesOut != nil) != known {
				t.Errorf("known %v with %d months", r.Known, len(r.Months))
			}
		})
	}
}

func TestUnknownLayerLeavesTheRest(t *testing.T) {
	r := profileOf(t, loadTable(t), of("polyethylene-sheet", 0), of("mineral-wool", 140), hygro.Layer{Name: "?"}, of("rubberized-asphalt-membrane", 0))
	if r.RTotal != nil || r.Surface != nil || r.Layers[3].RInside != nil {
		t.Error("a total was made up")
	}
	near(t, "R inside the unknown layer", *r.Layers[2].RInside, 0.13+0.14/0.036, 1e-3, 0)
	if len(r.TightPairs) != 1 || !r.TightPairs[0].HasUnknown || r.TightPairs[0].RoomSdIsMin {
		t.Errorf("pairs %+v", r.TightPairs)
	}
}

func TestTightPairs(t *testing.T) {
	table := loadTable(t)
	r := profileOf(t, table, of("vinyl-wall-covering", 0), of("gypsum-board", 0), of("mineral-wool", 140), of("rubberized-asphalt-membrane", 0), of("polyiso-foil-faced", 50))
	if len(r.TightPairs) != 2 {
		t.Fatalf("pairs %+v", r.TightPairs)
	}
	p := r.TightPairs[0]
	if p.Inner != 0 || p.Outer != 3 || !slices.Equal(p.Between, []int{1, 2}) || !slices.Equal(p.Sensitive, []int{1}) {
		t.Errorf("pair %+v", p)
	}
	near(t, "sd to the room", *p.RoomSdM, 50, 1e-6, 0)
	near(t, "permeance to the room", *p.RoomNG, 4, 1e-6, 0)
	near(t, "permeance to the outside", *p.OutsideNG, 1/(1/2.86+1/1.7), 1e-3, 0)
	near(t, "insulation between", *p.Insulation, 0.14/0.036, 1e-3, 0)
	if len(r.TightPairs[1].Between) != 0 {
		t.Errorf("nothing lies between the board and the sheet it is on: %+v", r.TightPairs[1])
	}
	if open := profileOf(t, table, of("gypsum-board", 0), of("mineral-wool", 140), of("rubberized-asphalt-membrane", 0)); len(open.TightPairs) != 0 {
		t.Errorf("one tight layer makes no pair: %+v", open.TightPairs)
	}
}

func TestVentedCladdingIsLeftOut(t *testing.T) {
	table := loadTable(t)
	wall := []hygro.Layer{of("gypsum-board", 0), of("mineral-wool", 140), of("glass-mat-gypsum-sheathing", 0)}
	vented := of("metal-cladding", 0)
	vented.Vented = true
	bySpace := profileOf(t, table, append(slices.Clone(wall), of("air-space-vented", 25), hygro.Layer{Name: "any cladding"})...)
	byLayer := profileOf(t, table, append(slices.Clone(wall), vented)...)
	closed := profileOf(t, table, append(slices.Clone(wall), of("metal-cladding", 0))...)
	if !bySpace.Known || bySpace.Layers[4].Counted || byLayer.Layers[3].Counted {
		t.Error("a layer beyond the vented space was counted")
	}
	near(t, "same wall", *bySpace.RTotal, *byLayer.RTotal, 1e-9, 0)
	near(t, "still air outside", bySpace.Conditions.Rse, 0.13, 1e-9, 0)
	if !*byLayer.DriesOut || *closed.DriesOut || *byLayer.PeakGM2 >= *closed.PeakGM2 {
		t.Errorf("vented %g, closed %g g/m2: venting must be what lets it dry", *byLayer.PeakGM2, *closed.PeakGM2)
	}
}

func TestFramingAndPrimerAreNoLayers(t *testing.T) {
	table := loadTable(t)
	with := profileOf(t, table, of("gypsum-board", 0), of("steel-stud-framing", 150), of("mineral-wool", 150), of("water-primer", 0))
	without := profileOf(t, table, of("gypsum-board", 0), of("mineral-wool", 150))
	near(t, "R", *with.RTotal, *without.RTotal, 1e-9, 0)
	if with.Layers[1].Counted || with.Layers[1].Why == "" || with.Layers[3].Why == "" || !with.Known {
		t.Errorf("layers %+v", with.Layers)
	}
}

// A class III paint, open insulation and a membrane on the cold side gather
// water on both faces of the sheathing; enough insulation outside the membrane
// stops it.
func TestInsulationOutside(t *testing.T) {
	table := loadTable(t)
	wall := []hygro.Layer{of("latex-paint", 0), of("gypsum-board", 0), of("mineral-wool", 90), of("glass-mat-gypsum-sheathing", 0), of("rubberized-asphalt-membrane", 0)}
	bare := profileOf(t, table, wall...)
	thick := profileOf(t, table, append(slices.Clone(wall), of("mineral-wool", 200))...)
	if *bare.PeakGM2 < 100 || len(bare.Planes) != 2 || bare.Planes[0].Inner != 2 || bare.Planes[1].Outer != 4 {
		t.Errorf("peak %g at %+v", *bare.PeakGM2, bare.Planes)
	}
	if *thick.PeakGM2 != 0 || !*thick.DriesOut || thick.StartMonth != 0 {
		t.Errorf("peak %g with insulation outside", *thick.PeakGM2)
	}
	for _, r := range []hygro.Result{bare, thick} {
		enough := *r.Layers[4].OutsideShare >= r.Share.Needed
		if dry := *r.PeakGM2 == 0; dry != enough {
			t.Errorf("share %g of %g needed, peak %g", *r.Layers[4].OutsideShare, r.Share.Needed, *r.PeakGM2)
		}
	}
	near(t, "insulation outside", *thick.Layers[4].InsulationShare, 200.0/290, 1e-3, 0)
}

func TestNeverDries(t *testing.T) {
	c := hygro.Conditions{OutC: fill(-5), OutRH: fill(80), InC: fill(20), InRH: fill(60)}
	r, err := loadTable(t).Profile([]hygro.Layer{of("mineral-wool", 100), of("rubberized-asphalt-membrane", 0)}, c)
	if err != nil {
		t.Fatal(err)
	}
	last := r.Months[11].Accumulated
	if *r.DriesOut || *r.LeftGM2 <= 0 || r.PeakMonth != 12 || last != *r.PeakGM2 {
		t.Errorf("dries %v, left %g, peak %g in month %d", *r.DriesOut, *r.LeftGM2, *r.PeakGM2, r.PeakMonth)
	}
	near(t, "even months", r.Months[0].GM2*365/31, last, 0, 1e-3)
}

func TestNotes(t *testing.T) {
	table := loadTable(t)
	c := cold()
	c.Estimated = true
	l := of("rubberized-asphalt-membrane", 1)
	l.PermeanceNG, l.Procedure = ptr(2.9), "B"
	r, err := table.Profile([]hygro.Layer{of("latex-paint", 0), of("gypsum-board", 0), l, of("air-space-vented", 0)}, c)
	if err != nil {
		t.Fatal(err)
	}
	var keys []string
	for _, n := range r.Notes {
		if n.Text == "" {
			t.Errorf("note %q has no text", n.Key)
		}
		keys = append(keys, n.Key)
	}
	if got, want := strings.Join(keys, " "), "method bridging dry_cup estimated assumed sets vented procedure"; got != want {
		t.Errorf("notes %q, want %q", got, want)
	}
	plain := profileOf(t, table, hygro.Layer{Name: "slab", R: ptr(1.0), PermeanceNG: ptr(500.0), Procedure: "A"})
	if len(plain.Notes) != 2 {
		t.Errorf("notes %+v, want the two that always apply", plain.Notes)
	}
}

func TestBadInput(t *testing.T) {
	table := loadTable(t)
	ok := []hygro.Layer{of("gypsum-board", 0)}
	for _, c := range []struct {
		name   string
		layers []hygro.Layer
		change func(*hygro.Conditions)
		want   string
	}{
		{"no layers", nil, func(*hygro.Conditions) {}, "no layer"},
		{"all vented", []hygro.Layer{of("air-space-vented", 0)}, func(*hygro.Conditions) {}, "no layer"},
		{"Fahrenheit", ok, func(c *hygro.Conditions) { c.OutC[6] = 85 }, "outside temperature of month 7 is 85"},
		{"fraction for percent", ok, func(c *hygro.Conditions) { c.OutRH[0] = 0 }, "outside humidity of month 1 is 0"},
		{"class", ok, func(c *hygro.Conditions) { c.Class = "9" }, `class "9" is not known; give one of high, low, normal, 1`},
		{"no room air", ok, func(c *hygro.Conditions) { c.Class = "" }, "indoor humidity of month 1 is 0"},
		{"element", ok, func(c *hygro.Conditions) { c.Element = "door" }, `element "door"`},
		{"thickness", []hygro.Layer{of("xps", -1), {Name: "slab", ThicknessMM: ptr(-1.0)}}, func(*hygro.Conditions) {}, "layer 1 (slab): thickness -1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			cond := cold()
			c.change(&cond)
			_, err := table.Profile(c.layers, cond)
			if err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("got %v, want %q", err, c.want)
			}
		})
	}
}

func TestStatedRoomTemperatureKeepsClass(t *testing.T) {
	c := cold()
	c.Class, c.InC = "3", fill(22)
	r, err := loadTable(t).Profile([]hygro.Layer{of("gypsum-board", 0)}, c)
	if err != nil {
		t.Fatal(err)
	}
	excess := r.Months[0].InPa - r.Months[0].OutPa
	near(t, "vapor excess of class 3 below 0 C", excess, 810, 0.2, 0)
	near(t, "room", r.Conditions.InC[0], 22, 1e-9, 0)
}

func TestEstimate(t *testing.T) {
	table := loadTable(t)
	humid, source := table.EstimateOutRH(fill(10), fill(5), false)
	arid, _ := table.EstimateOutRH(fill(10), fill(5), true)
	near(t, "humid", humid[0], hygro.FromDewPoint(10, 5), 1e-9, 0)
	near(t, "arid", arid[0], hygro.FromDewPoint(10, 3), 1e-9, 0)
	if odd, _ := table.EstimateOutRH(fill(5), fill(10), false); odd[0] > 100 || source == "" {
		t.Errorf("humidity %g, source %q", odd[0], source)
	}
}

func TestSameInputSameBytes(t *testing.T) {
	table := loadTable(t)
	layers := []hygro.Layer{of("latex-paint", 0), of("gypsum-board", 0), of("mineral-wool", 140), of("osb", 0), of("rubberized-asphalt-membrane", 0)}
	first, err := json.Marshal(profileOf(t, table, layers...))
	if err != nil {
		t.Fatal(err)
	}
	if second, _ := json.Marshal(profileOf(t, table, layers...)); string(first) != string(second) {
		t.Error("two runs differ")
	}
	if strings.Contains(string(first), "null,\"tight_pairs\"") || strings.Contains(string(first), `"missing":null`) {
		t.Error("an empty list is written as null")
	}
}
