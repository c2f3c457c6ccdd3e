package climate

import (
	"bufio"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"
)

// middleLatitude is used for sunrise where a file of figures comes without a
// position: the middle of the US and southern Canada, or as far south of the
// line where July is colder than January.
const middleLatitude = 43.0

// FromCSV reads a project's own monthly figures: a heading line with month,
// tmax, tmin and, where known, sd (standard deviation of the daily level) and
// dew; twelve lines, January to December in any order, months as numbers or
// names. A heading that ends in _f holds °F, else °C. Lines that begin with #
// are notes. The place gives the latitude (for sunrise) and the names; a zero
// place is taken at 43° north, or south where July is colder than January. Errors name the line and what to write there.
func FromCSV(r io.Reader, at Place) (*Site, error) {
	c := csv.NewReader(r)
	c.Comment, c.TrimLeadingSpace, c.FieldsPerRecord = '#', true, -1
	head, err := c.Read()
	if err != nil {
		return nil, fmt.Errorf("monthly figures: no heading line month,tmax,tmin: %w", err)
	}
	cols, err := csvColumns(head)
	if err != nil {
		return nil, err
	}
	rec := &record{lat: at.Lat, lon: at.Lon, elev: at.ElevM, name: at.Station}
	seen := [12]bool{}
	var sd, dew [12]float64
	hasDew := true
	for {
		row, err := c.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, fmt.Errorf("monthly figures: %w", err)
		}
		line, _ := c.FieldPos(0)
		m, err := monthOf(row[cols["month"].at])
		if err != nil || seen[m] {
			return nil, fmt.Errorf("monthly figures, line %d: %q is not a month that was missing yet; write 1 to 12, each once", line, row[cols["month"].at])
		}
		seen[m] = true
		if err := csvRow(row, cols, line, m, rec, &sd, &dew); err != nil {
			return nil, err
		}
		hasDew = hasDew && !math.IsNaN(dew[m])
	}
	for m, ok := range seen {
		if !ok {
			return nil, fmt.Errorf("monthly figures: %s is missing; give all twelve months", time.Month(m+1))
		}
	}
	model, err := theModel()
	if err != nil {
		return nil, err
	}
	return model.ownSite(rec, at, sd, dew, hasDew), nil
}

func (c *constants) ownSite(rec *record, at Place, sd, dew [12]float64, hasDew bool) *Site {
	if at.Lat == 0 && at.Lon == 0 {
		at.Lat, at.Note = middleLatitude, "no position given; sunrise is taken at 43° north"
		if rec.tmax[time.July-1]+rec.tmin[time.July-1] < rec.tmax[0]+rec.tmin[0] {
			at.Lat, at.Note = -middleLatitude, "no position given, July colder than January; sunrise is taken at 43° south"
		}
		rec.lat = at.Lat
	}
	rec.sd = &sd
	if at.Station == "" {
		at.Station = "project's own monthly figures"
	}
	at.Source, at.Period = "project's own monthly figures", "as given"
	at.rec = rec
	s := c.newSite(at, rec, c.monthScatter(rec))
	if hasDew {
		s.dew, s.DewSource = dew, "as given"
	} else {
		s.dewFromMinimum()
		s.DewSource = "estimated from the daily minimum"
	}
	return s
}

type csvColumn struct {
	at         int
	fahrenheit bool
}

func csvColumns(head []string) (map[string]csvColumn, error) {
	cols := map[string]csvColumn{"sd": {at: -1}, "dew": {at: -1}}
	for i, h := range head {
		name := strings.ToLower(strings.TrimSpace(strings.TrimPrefix(h, "\ufeff")))
		f := strings.HasSuffix(name, "_f")
		cols[strings.TrimSuffix(strings.TrimSuffix(name, "_f"), "_c")] = csvColumn{i, f}
	}
	for _, want := range []string{"month", "tmax", "tmin"} {
		if _, ok := cols[want]; !ok {
			return nil, fmt.Errorf("monthly figures: the heading has no column %q; write month,tmax,tmin and optionally sd,dew (tmax_f for °F)", want)
		}
	}
	return cols, nil
}

func csvRow(row []string, cols map[string]csvColumn, line, m int, rec *record, sd, dew *[12]float64) error {
	get := func(name string, span bool) (float64, error) {
		c := cols[name]
		if c.at < 0 || c.at >= len(row) || strings.TrimSpace(row[c.at]) == "" {
			return math.NaN(), nil
		}
		x, err := strconv.ParseFloat(strings.TrimSpace(row[c.at]), 64)
		if err != nil || math.Abs(x) > 200 {
			return 0, fmt.Errorf("monthly figures, line %d: %s %q is not a temperature", line, name, row[c.at])
		}
		switch {
		case c.fahrenheit && span:
			x /= 1.8
		case c.fahrenheit:
			x = (x - 32) / 1.8
		}
		return x, nil
	}
	var errs [4]error
	rec.tmax[m], errs[0] = get("tmax", false)
	rec.tmin[m], errs[1] = get("tmin", false)
	sd[m], errs[2] = get("sd", true)
	dew[m], errs[3] = get("dew", false)
	if err := errors.Join(errs[:]...); err != nil {
		return err
	}
	if !(rec.tmax[m] > rec.tmin[m]) {
		return fmt.Errorf("monthly figures, line %d: tmax %.1f °C is not above tmin %.1f °C", line, rec.tmax[m], rec.tmin[m])
	}
	if math.IsNaN(sd[m]) {
		sd[m] = 0
	}
	return nil
}

func monthOf(s string) (int, error) {
	s = strings.ToLower(strings.TrimSpace(s))
	if n, err := strconv.Atoi(s); err == nil && n >= 1 && n <= 12 {
		return n - 1, nil
	}
	for m := time.January; m <= time.December; m++ {
		if len(s) >= 3 && strings.HasPrefix(strings.ToLower(m.String()), s) {
			return int(m) - 1, nil
		}
	}
	return 0, fmt.Errorf("%q is not a month", s)
}

// Fields of an EPW line, counted from 0, and the marks of a missing figure.
// Source: the weather-file format description in the auxiliary programs
// reference of the building energy simulation engine of the US Department of
// Energy (LOCATION line, then seven further heading lines, then hours 1 to 24).
const (
	epwHead                       = 8
	epwMonth, epwDay, epwHour     = 1, 2, 3
	epwDry, epwDew                = 6, 7
	epwLat, epwLon, epwZone       = 6, 7, 8
	epwElev, epwFields, epwSource = 9, 10, 4
	epwMissing                    = 99.9
)

// FromEPW reads a standard hourly weather file (EPW). The odds of such a site
// are counted from its hours; hour n of the file is the hour that ends at n.
// Errors name the line.
func FromEPW(r io.Reader) (*Site, error) {
	sc := bufio.NewScanner(r)
	sc.Buffer(make([]byte, 0, 64*1024), 1<<20)
	s := &Site{hourly: &[yearDays][24]float64{}}
	for d := range s.hourly {
		for h := range s.hourly[d] {
			s.hourly[d][h] = math.NaN()
		}
	}
	var dew [12][2]float64
	n, hours := 0, 0
	for sc.Scan() {
		n++
		var err error
		switch f := strings.Split(sc.Text(), ","); {
		case n == 1:
			err = s.epwLocation(f)
		case n > epwHead && strings.TrimSpace(sc.Text()) != "":
			hours++
			err = s.epwHourLine(f, &dew)
		}
		if err != nil {
			return nil, fmt.Errorf("weather file, line %d: %w", n, err)
		}
	}
	if err := sc.Err(); err != nil {
		return nil, fmt.Errorf("weather file, line %d: %w", n+1, err)
	}
	const whole = yearDays * 24
	if hours < whole {
		return nil, fmt.Errorf("weather file: %d hours, a year has %d; give a complete hourly file", hours, whole)
	}
	if err := s.fillHours(); err != nil {
		return nil, fmt.Errorf("weather file: %w", err)
	}
	return s, s.epwMonths(dew)
}

func (s *Site) epwLocation(f []string) error {
	if len(f) < epwFields || !strings.EqualFold(strings.TrimPrefix(strings.TrimSpace(f[0]), "\ufeff"), "LOCATION") {
		return errors.New("does not begin with LOCATION and nine fields; is this an EPW file?")
	}
	p := Place{Text: f[1], Station: f[1], Region: f[2], Country: f[3], Source: "weather file, " + f[epwSource], Period: "one year of hours"}
	for i, to := range map[int]*float64{epwLat: &p.Lat, epwLon: &p.Lon, epwZone: &s.zone, epwElev: &p.ElevM} {
		x, err := strconv.ParseFloat(strings.TrimSpace(f[i]), 64)
		if err != nil {
			return fmt.Errorf("field %d, %q, is not a number", i+1, f[i])
		}
		*to = x
	}
	s.Place = p
	return nil
}

func (s *Site) epwHourLine(f []string, dew *[12][2]float64) error {
	if len(f) <= epwDew {
		return fmt.Errorf("%d fields, at least %d wanted", len(f), epwDew+1)
	}
	var when [3]int
	for i, at := range []int{epwMonth, epwDay, epwHour} {
		x, err := strconv.Atoi(strings.TrimSpace(f[at]))
		if err != nil {
			return fmt.Errorf("field %d, %q, is not a whole number", at+1, f[at])
		}
		when[i] = x
	}
	m, d, h := when[0], when[1], when[2]
	if m == 2 && d == 29 {
		return nil // the normal year has no leap day
	}
	if m < 1 || m > 12 || d < 1 || d > monthDays[m-1] || h < 1 || h > 24 {
		return fmt.Errorf("month %d, day %d, hour %d is no hour of a year", m, d, h)
	}
	dry, err := strconv.ParseFloat(strings.TrimSpace(f[epwDry]), 64)
	if err != nil || dry < -90 || dry > epwMissing {
		return fmt.Errorf("dry bulb %q is not a temperature in °C", f[epwDry])
	}
	if dry < epwMissing {
		day := time.Date(2025, time.Month(m), d, 0, 0, 0, 0, time.UTC).YearDay() - 1
		s.hourly[day][h-1] = dry
	}
	if x, err := strconv.ParseFloat(strings.TrimSpace(f[epwDew]), 64); err == nil && x < epwMissing {
		dew[m-1][0] += x
		dew[m-1][1]++
	}
	return nil
}

// epwMonths fills the monthly figures and the daily extremes from the hours.
func (s *Site) epwMonths(dew [12][2]float64) error {
	d := 0
	for m, n := range monthDays {
		for range n {
			s.dayMin[d], s.dayMax[d] = slices.Min(s.hourly[d][:]), slices.Max(s.hourly[d][:])
			s.tmin[m], s.tmax[m] = s.tmin[m]+s.dayMin[d], s.tmax[m]+s.dayMax[d]
			d++
		}
		s.tmin[m], s.tmax[m] = s.tmin[m]/float64(n), s.tmax[m]/float64(n)
	}
	s.DewSource = "the weather file"
	for m := range 12 {
		if dew[m][1] == 0 {
			s.dewFromMinimum()
			s.DewSource = "estimated from the daily minimum"
			return nil
		}
		s.dew[m] = dew[m][0] / dew[m][1]
	}
	return nil
}
