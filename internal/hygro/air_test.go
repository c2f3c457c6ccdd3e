package hygro_test

import (
	"encoding/json"
	"math"
	"os"
	"testing"

	"abut/internal/hygro"
	"abut/policies"
)

type check struct {
	TC     float64  `json:"t_c"`
	RH     float64  `json:"rh"`
	SdM    float64  `json:"sd_m"`
	InC    float64  `json:"in_c"`
	OutC   float64  `json:"out_c"`
	Perm   *float64 `json:"perm"`
	NG     *float64 `json:"ng"`
	Want   any      `json:"want"`
	Abs    float64  `json:"abs"`
	Rel    float64  `json:"rel"`
	Source string   `json:"source"`
}

type checks struct {
	Saturation []check `json:"saturation_pa"`
	Dew        []check `json:"dew_point_c"`
	Frost      []check `json:"frost_point_c"`
	Class      []check `json:"vapor_class"`
	SdPerm     []check `json:"sd_to_perm"`
	Share      []check `json:"needed_share"`
	Occupied   struct {
		OutC   [12]float64 `json:"out_c"`
		InC    [12]float64 `json:"in_c"`
		InRH   [12]float64 `json:"in_rh"`
		InPa   [12]float64 `json:"in_pa"`
		Needed [12]float64 `json:"needed_f_rsi"`
		AbsC   float64     `json:"abs_c"`
		AbsRH  float64     `json:"abs_rh"`
		AbsPa  float64     `json:"abs_pa"`
		AbsF   float64     `json:"abs_f"`
	} `json:"surface_high_occupancy"`
	Constant struct {
		OutC   [12]float64 `json:"out_c"`
		InC    float64     `json:"in_c"`
		InRH   float64     `json:"in_rh"`
		Needed [12]float64 `json:"needed_f_rsi"`
		AbsF   float64     `json:"abs_f"`
	} `json:"surface_constant"`
}

func loadJSON[T any](t *testing.T, path string) (v T) {
	t.Helper()
	raw, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(raw, &v); err != nil {
		t.Fatalf("%s: %v", path, err)
	}
	return v
}

func loadTable(t *testing.T) *hygro.Table {
	t.Helper()
	table, err := hygro.Load(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	return table
}

// near compares within the tolerance that the check states.
func near(t *testing.T, what string, got, want, abs, rel float64) {
	t.Helper()
	if math.IsNaN(got) || math.Abs(got-want) > math.Max(abs, rel*math.Abs(want)) {
		t.Errorf("%s: got %.6g, want %.6g (abs %g, rel %g)", what, got, want, abs, rel)
	}
}

func each(t *testing.T, name string, rows []check, compute func(check) float64) {
	t.Run(name, func(t *testing.T) {
		if len(rows) == 0 {
			t.Fatal("no check values")
		}
		for _, c := range rows {
			if c.Source == "" || c.Abs == 0 && c.Rel == 0 {
				t.Errorf("%+v lacks a source or a tolerance", c)
			}
			near(t, c.Source, compute(c), c.Want.(float64), c.Abs, c.Rel)
		}
	})
}

func TestAir(t *testing.T) {
	all := loadJSON[checks](t, "testdata/checks.json")
	table := loadTable(t)
	each(t, "saturation", all.Saturation, func(c check) float64 { return hygro.SaturationPa(c.TC) })
	each(t, "saturation there and back", all.Saturation, func(c check) float64 {
		return hygro.SaturationPa(hygro.SaturationC(c.Want.(float64)))
	})
	each(t, "dew point", all.Dew, func(c check) float64 { return hygro.DewPoint(c.TC, c.RH) })
	each(t, "frost point", all.Frost, func(c check) float64 { return hygro.FrostPoint(c.TC, c.RH) })
	each(t, "needed share", all.Share, func(c check) float64 { return hygro.NeededShare(c.InC, c.RH, c.OutC) })
	each(t, "sd to perm", all.SdPerm, func(c check) float64 {
		r := profileOf(t, table, hygro.Layer{Name: "sheet", SdM: &c.SdM, R: ptr(0.0)})
		return *r.Layers[0].PermeanceNG / 57.2135
	})
	for _, c := range all.Dew {
		near(t, "humidity from dew point", hygro.FromDewPoint(c.TC, hygro.DewPoint(c.TC, c.RH)), c.RH, 1e-9, 0)
	}
}

func TestVaporClass(t *testing.T) {
	table := loadTable(t)
	rows := loadJSON[checks](t, "testdata/checks.json").Class
	if len(rows) == 0 {
		t.Fatal("no check values")
	}
	for _, c := range rows {
		ng := 0.0
		if c.NG != nil {
			ng = *c.NG
		} else {
			ng = *c.Perm * 57.2135
		}
		if got := table.Class(ng); got != c.Want {
			t.Errorf("%g ng: class %s, want %s (%s)", ng, got, c.Want, c.Source)
		}
	}
}

func TestNeededShareWithoutHeating(t *testing.T) {
	if got := hygro.NeededShare(20, 50, 25); got != 0 {
		t.Errorf("got %g, want 0: vapor does not drive outward", got)
	}
}

func ptr[T any](v T) *T { return &v }
