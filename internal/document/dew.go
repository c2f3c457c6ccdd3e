package document

import (
	"fmt"

	"abut/internal/hygro"
	"abut/internal/schedule"
)

// dewPoints completes what the site measured: the dew point where air and
// humidity are told, and the margin of the surface above it in K. Below 0 °C
// it is the frost point, which lies above the dew point and leaves less margin.
func dewPoints(lines []schedule.Line) {
	for i := range lines {
		f := lines[i].Figures
		surface, told := soundFigure(f, "reading_surface_c")
		if !told {
			continue
		}
		dew, told := soundFigure(f, "reading_dew_c")
		if !told {
			if dew, told = dewOf(f, *surface.Min); !told {
				continue
			}
			f["reading_dew_c"] = dew
		}
		if _, stated := f["reading_margin_k"]; !stated {
			f["reading_margin_k"] = derived(*surface.Min-*dew.Min, "K", surface, fmt.Sprintf("surface %s, dew point %s", surface.Text, dew.Text))
		}
	}
}

// dewOf computes the dew point from the air and the humidity that were read.
func dewOf(f map[string]schedule.Figure, surfaceC float64) (schedule.Figure, bool) {
	air, told := soundFigure(f, "reading_air_c")
	rh, also := soundFigure(f, "reading_rh")
	if !told || !also || *rh.Min <= 0 || *rh.Min > 1 {
		return schedule.Figure{}, false
	}
	c := hygro.DewPoint(*air.Min, 100**rh.Min)
	if surfaceC < 0 {
		c = hygro.FrostPoint(*air.Min, 100**rh.Min)
	}
	return derived(c, "°C", rh, fmt.Sprintf("of air at %s and %s", air.Text, rh.Text)), true
}

// derived is a figure that was computed, at the cell of one that it came from.
func derived(value float64, unit string, from schedule.Figure, text string) schedule.Figure {
	return schedule.Figure{Min: &value, Max: &value, Unit: unit, Text: text, Assumed: true, At: from.At}
}

func soundFigure(f map[string]schedule.Figure, key string) (schedule.Figure, bool) {
	x, told := f[key]
	return x, told && x.Min != nil && x.Problem == "" && !x.Disagree
}
