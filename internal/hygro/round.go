package hygro

import "math"

// round keeps what the reader can use, and avoids a negative zero.
func round(v float64, digits int) float64 {
	p := math.Pow10(digits)
	return math.Round(v*p)/p + 0
}

// round trims the figures of the result, so that the same input gives the same
// text everywhere. The pointers are replaced, since some are the caller's.
func (r *Result) round() {
	const digits = 4
	trim := func(ps ...**float64) {
		for _, p := range ps {
			if *p != nil {
				*p = ptr(round(**p, digits))
			}
		}
	}
	trim(&r.RTotal, &r.SdTotal, &r.LeftGM2)
	for i := range r.Layers {
		l := &r.Layers[i]
		trim(&l.ThicknessMM, &l.R, &l.SdM, &l.PermeanceNG, &l.RInside, &l.ROutside,
			&l.InsulationInside, &l.InsulationOutside, &l.OutsideShare, &l.InsulationShare)
	}
	for i := range r.TightPairs {
		p := &r.TightPairs[i]
		trim(&p.Insulation, &p.RoomSdM, &p.OutsideSdM, &p.RoomNG, &p.OutsideNG)
	}
	if s := r.Surface; s != nil {
		s.FRsi, s.Needed = round(s.FRsi, digits), round(s.Needed, digits)
		for m := range s.ByMonth {
			s.ByMonth[m] = round(s.ByMonth[m], digits)
		}
	}
	s := r.Share
	s.OutC, s.InC, s.InRH = round(s.OutC, digits), round(s.InC, digits), round(s.InRH, digits)
	s.DewC, s.Needed = round(s.DewC, digits), round(s.Needed, digits)
	for m := range 12 {
		r.Conditions.OutRH[m] = round(r.Conditions.OutRH[m], digits)
		r.Conditions.InC[m] = round(r.Conditions.InC[m], digits)
		r.Conditions.InRH[m] = round(r.Conditions.InRH[m], digits)
	}
}
