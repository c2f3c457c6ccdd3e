// Package hygro computes what water vapor does in a layered wall, roof or
// floor: the monthly profile of ISO 13788 (Glaser), where water gathers and
// whether it dries, vapor classes, vapor-tight pairs, and dew points. It
// computes; whether a result is acceptable is judged elsewhere. It imports
// nothing of the project and does no I/O beyond reading its table.
package hygro

import (
	"errors"
	"fmt"
	"math"
)

// Layer is one layer of a section. Figures given here beat the table's.
type Layer struct {
	Name        string
	Family      string   // id in the table; may be empty if the figures are given
	ThicknessMM *float64 // nil: not stated
	Lambda      *float64 // W/(m·K)
	R           *float64 // m²K/W, beats Lambda
	Mu          *float64 // vapor resistance factor
	SdM         *float64 // m, beats Mu
	PermeanceNG *float64 // ng/(Pa·s·m²), beats SdM; 0 is vapor-tight
	Procedure   string   // of the stated permeance, ASTM E96: "A" dry, "B" wet, "" not stated
	Insulation  bool     // it is insulation, whatever the table says
	Vented      bool     // it has, or is, a space vented to the outside
	Framing     bool     // it stands between the insulation and is no layer of its own
}

// Conditions are the monthly means on both sides, January first.
type Conditions struct {
	OutC, OutRH [12]float64 // °C, percent
	InC, InRH   [12]float64 // °C, percent; InRH is not read if Class is given
	// Class is an occupancy or humidity class known to Table.Indoor; it gives
	// InRH, and InC as well where all of InC is zero.
	Class     string
	Estimated bool   // outside humidity was estimated
	Element   string // "wall" (also if empty), "roof" or "floor": surface resistances
	// Rsi and Rse, in m²K/W, beat those of Element.
	Rsi, Rse *float64
}

// Profile computes the section, room side first. Layers that are not known do
// not stop it: they are named under Missing, what does not depend on them is
// still computed, and nothing is guessed. An error means that the input itself
// is wrong.
func (t *Table) Profile(layers []Layer, c Conditions) (Result, error) {
	c, err := t.complete(c)
	if err != nil {
		return Result{}, err
	}
	res := Result{Conditions: echo(c), Months: []Month{}, Planes: []Plane{}}
	if err := t.resolve(&res, layers, c); err != nil {
		return Result{}, err
	}
	t.spread(&res)
	t.pair(&res)
	t.share(&res, c)
	if res.Thermal {
		t.surface(&res, c)
	}
	if res.Known {
		t.year(&res, c)
	}
	t.note(&res)
	res.round()
	return res, nil
}

// complete fills in the room air and checks every figure.
func (t *Table) complete(c Conditions) (Conditions, error) {
	if c.Element == "" {
		c.Element = "wall"
	}
	if _, ok := t.file.Surfaces[c.Element]; !ok {
		return c, fmt.Errorf("element %q has no surface resistances; give wall, roof or floor", c.Element)
	}
	if err := checkAir("outside", c.OutC, c.OutRH); err != nil {
		return c, err
	}
	if c.Class != "" {
		inC, inRH, err := t.Indoor(c.Class, c.OutC, c.OutRH)
		if err != nil {
			return c, err
		}
		if c.InC == ([12]float64{}) {
			c.InC = inC
		} else if inRH, err = t.indoorRH(c.Class, c.OutC, c.OutRH, c.InC); err != nil {
			return c, err
		}
		c.InRH = inRH
	}
	return c, checkAir("indoor", c.InC, c.InRH)
}

// checkAir refuses air that no building meets, above all units mixed up.
func checkAir(side string, tempC, rh [12]float64) error {
	for m := range tempC {
		if math.IsNaN(tempC[m]) || tempC[m] < -70 || tempC[m] > 60 {
			return fmt.Errorf("%s temperature of month %d is %g; give °C from -70 to 60", side, m+1, tempC[m])
		}
		if !(rh[m] > 0 && rh[m] <= 100) {
			return fmt.Errorf("%s humidity of month %d is %g; give percent above 0 up to 100", side, m+1, rh[m])
		}
	}
	return nil
}

var errNoLayers = errors.New("the section has no layer between the room and the outside air")
