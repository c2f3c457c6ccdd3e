package hygro

// traceG is an amount in g/m² below which nothing gathered: it lies far under
// what the method means and far over what rounding leaves.
const traceG = 1e-6

// monthRun is what one month does to the water in the section.
type monthRun struct {
	temps, sat, pressure []float64
	inPa, outPa          float64
	change, potential    []float64 // g/m² by node
	surfaceWet           bool
}

// secondsOf is the length of a month, January 0, of a common year.
func secondsOf(month int) float64 {
	days := [12]float64{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}
	return days[month] * 86400
}

// month runs one month from the water that is there. Where a plane dries
// within the month the rest of the month runs without it, so that no plane
// gives away more than it holds.
func (s section) month(m int, c Echo, water []float64) monthRun {
	run := monthRun{
		temps: s.temperatures(c.OutC[m], c.InC[m]),
		outPa: c.OutRH[m] / 100 * SaturationPa(c.OutC[m]), inPa: c.InRH[m] / 100 * SaturationPa(c.InC[m]),
		change: make([]float64, len(s.nodes)), potential: make([]float64, len(s.nodes)),
	}
	for _, temp := range run.temps {
		run.sat = append(run.sat, SaturationPa(temp))
	}
	run.surfaceWet = run.inPa > run.sat[len(run.sat)-1]
	held := append([]float64(nil), water...)
	left := secondsOf(m)
	for range 8 * len(s.nodes) { // far more turns than planes can dry in
		if left <= 0 {
			break
		}
		pressure, stays := s.flow(run.sat, held, run.outPa, run.inPa)
		if run.pressure == nil {
			run.pressure = pressure
			for i, g := range stays {
				run.potential[i] = g * left
			}
		}
		left -= spend(held, stays, left)
	}
	for i := range held {
		run.change[i] = held[i] - water[i]
	}
	return run
}

// spend moves the water on until the month ends or the first plane is dry, and
// tells the seconds used.
func spend(held, stays []float64, left float64) float64 {
	step := left
	for i, g := range stays {
		if g < 0 && held[i] > 0 {
			step = min(step, held[i]/-g)
		}
	}
	for i, g := range stays {
		held[i] = max(0, held[i]+g*step)
		if held[i] < traceG && g < 0 {
			held[i] = 0
		}
	}
	return step
}

// start gives the month, January 0, after which water first gathers: the first
// wet one after the longest dry run. It is -1 if water gathers in none.
func (s section) start(c Echo) int {
	var wet [12]bool
	any, all := false, true
	for m := range 12 {
		for _, g := range s.month(m, c, make([]float64, len(s.nodes))).change {
			wet[m] = wet[m] || g > traceG
		}
		any, all = any || wet[m], all && wet[m]
	}
	if !any {
		return -1
	}
	if all {
		return 0
	}
	best, bestDry := 0, 0
	for m := range 12 {
		dry := 0
		for wet[m] && dry < 12 && !wet[(m+11-dry)%12] {
			dry++
		}
		if dry > bestDry {
			best, bestDry = m, dry
		}
	}
	return best
}

// year runs twelve months from dry, beginning where water first gathers.
func (t *Table) year(res *Result, c Conditions) {
	k, e := t.file.Method, res.Conditions
	s := newSection(res.Layers, e.Rsi, e.Rse, k.MaxSublayerR.Value, k.MinSdM.Value, k.Delta0NG.Value)
	first := s.start(e)
	res.StartMonth = first + 1
	water := make([]float64, len(s.nodes))
	runs := make([]monthRun, 12)
	held := make([][]float64, 12) // at the end of the month
	for i := range 12 {
		m := (max(first, 0) + i) % 12
		runs[m] = s.month(m, e, water)
		for n, g := range runs[m].change {
			water[n] = max(0, water[n]+g)
		}
		held[m] = append([]float64(nil), water...)
	}
	res.Months = make([]Month, 12)
	for m := range 12 {
		res.Months[m] = s.report(m, e, runs[m], sum(held[m]))
		res.surfaceWet = res.surfaceWet || runs[m].surfaceWet
	}
	res.Planes = s.planes(res.Layers, runs, held)
	res.PeakGM2, res.LeftGM2 = ptr(0.0), ptr(sum(water))
	res.DriesOut = ptr(sum(water) < traceG)
	for m, month := range res.Months {
		if month.Accumulated > *res.PeakGM2 {
			res.PeakGM2, res.PeakMonth = ptr(month.Accumulated), m+1
		}
	}
}

// report gives the month at the interfaces, room side first.
func (s section) report(m int, c Echo, run monthRun, held float64) Month {
	out := Month{
		Month: m + 1, InPa: round(run.inPa, 1), OutPa: round(run.outPa, 1), GM2: round(sum(run.change), 3),
		DewC: round(saturationOf(c.InC[m], c.InRH[m]), 2), Accumulated: round(held, 3), SurfaceWet: run.surfaceWet,
	}
	for i := len(s.nodes) - 1; i >= 0; i-- {
		if s.nodes[i].inner == s.nodes[i].outer {
			continue
		}
		out.TempC = append(out.TempC, round(run.temps[i], 2))
		out.SatPa = append(out.SatPa, round(run.sat[i], 1))
		out.VaporPa = append(out.VaporPa, round(run.pressure[i], 1))
	}
	return out
}

func sum(vs []float64) float64 {
	s := 0.0
	for _, v := range vs {
		s += v
	}
	return s
}
