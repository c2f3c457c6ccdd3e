package cli

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"time"

	"abut/internal/climate"
	"abut/internal/output"
	"abut/internal/settings"
	"abut/policies"

	"github.com/spf13/cobra"
)

// seasonOptions are the flags of the season command.
type seasonOptions struct {
	Place, Climate     string
	Lat, Lon           float64
	position, daylight bool
	From, To           string
	Limits             []string
	Hours, Format      string
}

func newSeason(s Streams) *cobra.Command {
	var o seasonOptions
	cmd := &cobra.Command{
		Use:   "season",
		Short: "Odds of working weather for a place and dates, and the mildest grade that suits",
		Long: `Season gives the share of working hours below each limit, the share of days
with four usable hours running, and the share of frost nights, for a place and
a span of days, and names the mildest membrane grade that suits. It is an
estimate from monthly normals, or a count where an hourly weather file is given.`,
		Example: `  abut season --place "Buffalo, NY" --from 2026-11-02 --to 2026-12-18
  abut season --lat 43.05 --lon -88.2 --from 2026-12-01 --to 2026-12-20 --limit 25F
  abut season --climate site.epw --from 2026-11-02 --to 2026-12-18 --format json`,
		Args: noWords,
		RunE: func(c *cobra.Command, _ []string) error {
			o.position = c.Flags().Changed("lat") || c.Flags().Changed("lon")
			switch {
			case c.Flags().Changed("lat") != c.Flags().Changed("lon"):
				return errors.New("give --lat and --lon together")
			case o.position && o.Place != "":
				return errors.New("give --place, or --lat and --lon, not both")
			}
			return runSeason(o, s)
		},
	}
	f := cmd.Flags()
	f.StringVar(&o.Place, "place", "", `city and state, or "18 mi west of Milwaukee, WI"`)
	f.Float64Var(&o.Lat, "lat", 0, "latitude in degrees, north positive")
	f.Float64Var(&o.Lon, "lon", 0, "longitude in degrees, east positive")
	f.StringVar(&o.Climate, "climate", "", "monthly figures (.csv: month,tmax,tmin[,sd]) or hourly weather file (.epw) in place of a station")
	f.StringVar(&o.From, "from", "", "first day, as 2026-11-02")
	f.StringVar(&o.To, "to", "", "last day, as 2026-12-18")
	f.StringArrayVar(&o.Limits, "limit", nil, "lowest temperature, as 40F or 4.4C; may be repeated (default: the membrane grades)")
	f.StringVar(&o.Hours, "hours", "07:00-17:00", "working hours, local standard time")
	f.BoolVar(&o.daylight, "daylight-saving", false, "read the hours as daylight-saving time")
	f.StringVar(&o.Format, "format", "text", "text or json")
	return cmd
}

// noWords refuses words that belong to no flag, and says where they may go.
func noWords(_ *cobra.Command, words []string) error {
	if len(words) == 0 {
		return nil
	}
	return fmt.Errorf("%q belongs to no flag; write a place as --place %q, in quotes where it has spaces", words[0], words[0])
}

// grade is a limit with the name of the membrane grade that works down to it.
type grade struct {
	ID     string  `json:"id"`
	Name   string  `json:"name"`
	MinC   float64 `json:"min_c"`
	Text   string  `json:"text"`
	Source string  `json:"source"`
}

// grades are the membrane grades, mildest first, and what makes one suit.
type grades struct {
	Grades []grade `json:"grades"`
	Suits  struct {
		ShareBelow float64 `json:"share_below"`
		Source     string  `json:"source"`
	} `json:"suits"`
}

func readGrades() (grades, error) {
	var g grades
	b, err := policies.FS.ReadFile("temperature/grades.json")
	if err != nil {
		return g, fmt.Errorf("grades: %w", err)
	}
	if err := json.Unmarshal(b, &g); err != nil {
		return g, fmt.Errorf("grades: %w", err)
	}
	return g, nil
}

func runSeason(o seasonOptions, s Streams) error {
	if o.Format != "text" && o.Format != "json" {
		return fmt.Errorf("--format %q: write text or json", o.Format)
	}
	span, err := seasonSpan(o.From, o.To)
	if err != nil {
		return err
	}
	hours, err := seasonHours(o.Hours)
	if err != nil {
		return fmt.Errorf("--hours %w", err)
	}
	hours.Daylight = o.daylight
	g, err := readGrades()
	if err != nil {
		return err
	}
	limits, err := seasonLimits(o.Limits, g)
	if err != nil {
		return err
	}
	site, err := seasonSite(o)
	if err != nil {
		return err
	}
	r := newSeasonReport(site, span, hours, limits, g)
	r.Hours = o.Hours
	if o.Format == "json" {
		return output.WriteJSON(s.Out, "  ", r)
	}
	_, err = fmt.Fprint(s.Out, r.text())
	return err
}

// mostYears is the longest span that is answered.
const mostYears = 5

func seasonSpan(from, to string) (climate.Span, error) {
	var span climate.Span
	if from == "" || to == "" {
		return span, errors.New("say when: --from 2026-11-02 --to 2026-12-18")
	}
	var err error
	if span.From, err = seasonDay("--from", from); err != nil {
		return span, err
	}
	if span.To, err = seasonDay("--to", to); err != nil {
		return span, err
	}
	if span.To.Before(span.From) {
		return span, fmt.Errorf("--to %s lies before --from %s", to, from)
	}
	if span.From.AddDate(mostYears, 0, 0).Before(span.To) {
		return span, fmt.Errorf("--from %s --to %s is more than %d years; ask for less", from, to, mostYears)
	}
	return span, nil
}

var dayForm = regexp.MustCompile(`^\d{4}-\d{2}-\d{2}$`)

func seasonDay(flag, text string) (time.Time, error) {
	t, err := time.Parse(time.DateOnly, text)
	switch {
	case err == nil:
		return t, nil
	case dayForm.MatchString(text):
		return t, fmt.Errorf("%s %s: no such day in the calendar; write year-month-day, as 2026-11-02", flag, text)
	}
	return t, fmt.Errorf("%s %q: write a day as 2026-11-02", flag, text)
}

const clockForm = `(\d{1,2})(?::([0-5]\d))?\s*([ap])?\.?(?:m\.?)?`

var hoursForm = regexp.MustCompile(`(?i)^` + clockForm + `\s*(?:[-–]|to)\s*` + clockForm + `$`)

func seasonHours(text string) (climate.Hours, error) {
	f := hoursForm.FindStringSubmatch(strings.TrimSpace(text))
	bad := fmt.Errorf("%q: write working hours as 07:00-17:00, or 22:00-06:00 over midnight", text)
	if f == nil {
		return climate.Hours{}, bad
	}
	clock := func(h, m, half string) float64 {
		hh, _ := strconv.Atoi(h) // the form lets only digits through
		mm, _ := strconv.Atoi("0" + m)
		switch {
		case half == "":
		case hh < 1 || hh > 12:
			hh = 99 // no hour, refused below
		case strings.EqualFold(half, "p"):
			hh = hh%12 + 12
		default:
			hh %= 12
		}
		return float64(hh) + float64(mm)/60
	}
	h := climate.Hours{Start: clock(f[1], f[2], f[3]), End: clock(f[4], f[5], f[6])}
	if h.Start >= 24 || h.End > 24 || h.Start == h.End {
		return climate.Hours{}, bad
	}
	return h, nil
}

// coldestC and hottestC bound what can be asked of air, °C: beyond the records
// of any place on earth.
const coldestC, hottestC = -100.0, 70.0

var limitForm = regexp.MustCompile(`(?i)^([-+−]?\d+(?:\.\d+)?)\s*(?:°|º|deg(?:rees?)?\.?)?\s*(F|C|K|R)(?:ahrenheit|elsius|elvin|ankine)?$`)

func seasonLimits(texts []string, g grades) ([]grade, error) {
	if len(texts) == 0 {
		return g.Grades, nil
	}
	var limits []grade
	for _, text := range texts {
		f := limitForm.FindStringSubmatch(strings.TrimSpace(text))
		if f == nil {
			return nil, fmt.Errorf("--limit %q: write a temperature as 40F or 4.4C", text)
		}
		x, err := strconv.ParseFloat(strings.Replace(f[1], "−", "-", 1), 64)
		if err != nil {
			return nil, fmt.Errorf("--limit %q: %w", text, err)
		}
		switch strings.ToUpper(f[2]) {
		case "F":
			x = (x - 32) / 1.8
		case "K":
			x -= 273.15
		case "R":
			x = x/1.8 - 273.15
		}
		if x < coldestC || x > hottestC {
			return nil, fmt.Errorf("--limit %q: no air is ever that cold or hot; write a temperature as 40F or 4.4C", text)
		}
		limits = append(limits, grade{MinC: x, Text: f[1] + " " + strings.ToUpper(f[2])})
	}
	return limits, nil
}

// seasonSite resolves the flags to a site: a file, a position or a place.
func seasonSite(o seasonOptions) (*climate.Site, error) {
	var p climate.Place
	var err error
	switch {
	case o.position:
		p, err = climate.Near(o.Lat, o.Lon, nil)
		if err != nil && o.Climate != "" { // own figures need no station
			p, err = climate.Place{Lat: o.Lat, Lon: o.Lon}, nil
		}
	case o.Place != "":
		p, err = climate.Named(o.Place)
		if err != nil && o.Climate != "" {
			p, err = climate.Place{Text: o.Place}, nil
		}
	case o.Climate == "":
		return nil, errors.New(`say where: --place "Buffalo, NY", --lat and --lon, or --climate FILE`)
	}
	if err != nil {
		return nil, orOwnFigures(err)
	}
	if o.Climate == "" {
		return p.Site()
	}
	return ownSite(o.Climate, climate.Place{Lat: p.Lat, Lon: p.Lon, Text: p.Text})
}

// orOwnFigures adds the way out that the command has where no station helps.
func orOwnFigures(err error) error {
	if nf := (*climate.NotFound)(nil); errors.As(err, &nf) {
		return fmt.Errorf("%w; or give the site's own figures with --climate FILE", err)
	}
	return err
}

// ownSite reads the project's own monthly figures or hourly weather file.
func ownSite(file string, at climate.Place) (*climate.Site, error) {
	const most = 32 << 20 // a weather file of a year has two
	data, err := settings.ReadFile(file, most)
	if err != nil {
		return nil, fmt.Errorf("read climate: %w", err)
	}
	f := bytes.NewReader(data)
	if strings.EqualFold(filepath.Ext(file), ".epw") {
		s, err := climate.FromEPW(f)
		return s, inFile(file, err)
	}
	s, err := climate.FromCSV(f, at)
	return s, inFile(file, err)
}

func inFile(name string, err error) error {
	if err == nil {
		return nil
	}
	return fmt.Errorf("%s: %w", name, err)
}
