package hygro

import (
	"math"
	"slices"
)

// surface gives the temperature factor of the inside surface and the factor
// each month needs to keep the humidity there at the limit (ISO 13788 5.3).
func (t *Table) surface(res *Result, c Conditions) {
	rsi := t.file.Method.SurfaceRsi.Value
	r := *res.RTotal - res.Conditions.Rsi
	s := SurfaceResult{FRsi: r / (r + rsi), Needed: math.Inf(-1), SurfaceRH: t.file.Method.SurfaceRH.Value}
	for m := range 12 {
		s.ByMonth[m] = neededFactor(c.OutC[m], c.InC[m], c.InRH[m], s.SurfaceRH)
		if s.ByMonth[m] > s.Needed {
			s.Needed, s.Month = s.ByMonth[m], m+1
		}
	}
	res.Surface = &s
}

// neededFactor is 0 where the room is not warmer than outside.
func neededFactor(outC, inC, inRH, surfaceRH float64) float64 {
	if inC <= outC {
		return 0
	}
	least := SaturationC(inRH * SaturationPa(inC) / surfaceRH)
	return (least - outC) / (inC - outC)
}

// share gives the insulation share needed in the mean of the coldest months.
func (t *Table) share(res *Result, c Conditions) {
	months := []int{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}
	slices.SortStableFunc(months, func(a, b int) int {
		switch {
		case c.OutC[a] < c.OutC[b]:
			return -1
		case c.OutC[a] > c.OutC[b]:
			return 1
		}
		return 0
	})
	months = months[:min(12, max(1, int(t.file.Method.ColdestMonths.Value)))]
	slices.Sort(months)
	s := Share{}
	n := float64(len(months))
	for _, m := range months {
		s.Months = append(s.Months, m+1)
		s.OutC += c.OutC[m] / n
		s.InC += c.InC[m] / n
		s.InRH += c.InRH[m] / n
	}
	s.DewC, s.Needed = saturationOf(s.InC, s.InRH), NeededShare(s.InC, s.InRH, s.OutC)
	res.Share = &s
}
