package hygro

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
)

// ramp runs from its cold value to its warm value with the outside temperature.
type ramp struct{ fromC, toC, cold, warm float64 }

func (r ramp) at(outC float64) float64 {
	share := (outC - r.fromC) / (r.toC - r.fromC)
	return r.cold + math.Min(1, math.Max(0, share))*(r.warm-r.cold)
}

type indoorData struct {
	Temperature struct {
		LowC     float64 `json:"low_c"`
		HighC    float64 `json:"high_c"`
		FromOutC float64 `json:"from_out_c"`
		ToOutC   float64 `json:"to_out_c"`
	} `json:"temperature"`
	Occupancy map[string]struct {
		LowRH    float64 `json:"low_rh"`
		HighRH   float64 `json:"high_rh"`
		FromOutC float64 `json:"from_out_c"`
		ToOutC   float64 `json:"to_out_c"`
	} `json:"occupancy"`
	Classes map[string]struct {
		ExcessPa     float64 `json:"excess_pa"`
		ExcessWarmPa float64 `json:"excess_warm_pa"`
	} `json:"classes"`
	ClassFromOutC float64 `json:"class_from_out_c"`
	ClassToOutC   float64 `json:"class_to_out_c"`
}

// Indoor gives the twelve monthly room temperatures in °C and humidities in
// percent for an occupancy ("low", "normal", "high") or a humidity class ("1"
// to "5") of ISO 13788 annex A, from the outside means. Room temperature
// follows the annex: constant in cold months, rising in warm ones.
func (t *Table) Indoor(class string, outC, outRH [12]float64) (inC, inRH [12]float64, err error) {
	d := t.file.Indoor
	warm := ramp{d.Temperature.FromOutC, d.Temperature.ToOutC, d.Temperature.LowC, d.Temperature.HighC}
	for m := range inC {
		inC[m] = warm.at(outC[m])
	}
	inRH, err = t.indoorRH(class, outC, outRH, inC)
	return inC, inRH, err
}

// indoorRH gives the humidity of the class in rooms of known temperature.
func (t *Table) indoorRH(class string, outC, outRH, inC [12]float64) (inRH [12]float64, err error) {
	d := t.file.Indoor
	if o, ok := d.Occupancy[class]; ok {
		r := ramp{o.FromOutC, o.ToOutC, o.LowRH, o.HighRH}
		for m := range inRH {
			inRH[m] = r.at(outC[m])
		}
		return inRH, nil
	}
	c, ok := d.Classes[class]
	if !ok {
		known := slices.Concat(slices.Sorted(maps.Keys(d.Occupancy)), slices.Sorted(maps.Keys(d.Classes)))
		return inRH, fmt.Errorf("indoor humidity class %q is not known; give one of %s", class, strings.Join(known, ", "))
	}
	r := ramp{d.ClassFromOutC, d.ClassToOutC, c.ExcessPa, c.ExcessWarmPa}
	for m := range inRH {
		vapor := outRH[m]/100*SaturationPa(outC[m]) + r.at(outC[m])
		inRH[m] = math.Min(100, 100*vapor/SaturationPa(inC[m]))
	}
	return inRH, nil
}

// EstimateOutRH estimates the twelve monthly outside humidities in percent
// where only temperatures are known: the dew point lies near the mean daily
// minimum, and lower in arid places. The second value tells the source. Who
// uses it sets Conditions.Estimated.
func (t *Table) EstimateOutRH(meanC, minC [12]float64, arid bool) (rh [12]float64, source string) {
	offset := 0.0
	if arid {
		offset = t.file.Estimate.AridOffsetC
	}
	for m := range rh {
		rh[m] = FromDewPoint(meanC[m], math.Min(minC[m]-offset, meanC[m]))
	}
	return rh, t.file.Estimate.Source
}
