package climate

import (
	"errors"
	"math"
	"strings"
	"testing"
)

func TestLocate(t *testing.T) {
	tests := []struct {
		text, station, region string
		km                    float64 // 0: not checked
	}{
		{"Denver", "Denver", "CO", 0},
		{"Buffalo, NY", "Buffalo airport", "NY", 0},
		{"BUFFALO NY", "Buffalo airport", "NY", 0},
		{"Buffalo, New York", "Buffalo airport", "NY", 0},
		{"New York", "New York central park", "NY", 0},
		{"Waukesha, 18 mi west of Milwaukee", "Milwaukee airport", "WI", 29},
		{"Site: cold climate, Waukesha is 18 mi. west of Milwaukee. Rooms 70 F, 35% RH in winter", "Milwaukee airport", "WI", 29},
		{"Framingham, Massachusetts, 20 miles west of Boston. Work is outdoors and unheated.", "Boston airport", "MA", 32.2},
		{"Site 12 mi. west of Denver, 5,700 ft. Work is in the open", "Denver", "CO", 19.3},
		{"Jefferson County, Colorado, site 12 mi. west of Denver, 5,700 ft", "Denver", "CO", 19.3},
		{"Outpatient clinic, Framingham MA", "", "MA", 0},
		{"Contractor's submittal 07 27 13-01, air barrier, clinic, Framingham MA (near Boston)", "", "MA", 0},
		{"Drovers Yard Offices, Calgary AB", "Calgary airport", "AB", 0},
		{"TABBY ROW HOTEL, Charleston SC", "Charleston airport", "SC", 0},
		{"Winnipeg MB, pump-house", "Winnipeg airport", "MB", 0},
		{"Portland, Oregon", "Portland airport", "OR", 0},
		{"Portland ME", "Portland airport", "ME", 0},
		{"London, Ont.", "London airport", "ON", 0},
		{"Springfield, Missouri", "Springfield airport", "MO", 0},
		{"St. John's, NL", "St. John's airport", "NL", 0},
		{"Saint Paul, Minnesota", "Minneapolis/St. Paul airport", "MN", 0},
		{"Cincinnati, OH", "Cincinnati", "", 0},
		{"Montréal, QC", "Montreal", "QC", 0},
		{"Washington, DC", "Washington DC airport", "", 0},
		{"Minneapolis", "Minneapolis/St. Paul airport", "MN", 0},
		{"school about 35 km NW of Ottawa", "Ottawa", "ON", 35},
		{"20 miles north of Mobile", "Mobile airport", "AL", 32.2},
		{"Reading, PA", "", "PA", 0},
		{"Project: library, Omaha, Nebraska. Architect: Smith, Chicago, IL", "Omaha airport", "NE", 0},
		{"somewhere in Wisconsin", "Milwaukee airport", "WI", 0},
		{"lat 43.05, long -88.20", "", "WI", 0},
		{"43.05° N, 88.20° W", "", "WI", 0},
		{"51.05, -114.07", "Calgary airport", "AB", 0},
		{"just outside Toronto, Ontario", "Toronto", "ON", 0},
		{"Kansas City, Missouri", "Kansas City airport", "MO", 0},
		{"Anchorage, Alaska", "Anchorage airport", "AK", 0},
		{"1200 Main Street, Duluth, MN 55802", "Duluth airport", "MN", 0},
		{"Iqaluit, Nunavut", "Iqaluit", "NU", 0},
		{"Jackson Hole, Wyoming", "Cheyenne airport", "WY", 0},
		{"Sault Ste. Marie, ON", "Sault Ste. Marie airport", "ON", 0},
		{"Truckee CA elevation 5817 ft", "", "CA", 0},
		{"N 43.05 W 88.2", "", "WI", 0},
		{`43°03'N 88°12'W`, "", "WI", 0},
		{`Site at 51° 06' 50" N, 114° 01' 13" W, open ground`, "Calgary airport", "AB", 0},
		{"Made by a plant in Akron, Ohio. Site: Erie, PA", "Erie airport", "PA", 0},
		{"Reg. office Toronto; site Sudbury, ON", "Sudbury airport", "ON", 0},
		{"approx. 25 miles SE of Minneapolis", "Minneapolis/St. Paul airport", "MN", 40.2},
		{"Building in downtown Pittsburgh; work outdoors", "Pittsburgh airport", "PA", 0},
		{"Kodiak Island, Alaska. Drafted in Seattle.", "Kodiak", "AK", 0},
		{"Pier house, Charleston Harbor, SC", "Charleston", "SC", 0},
		{"Project: Warehouse, Milwaukee, WI", "Milwaukee airport", "WI", 0},
		{"Project: bottling plant, Omaha, NE", "Omaha airport", "NE", 0},
		{"Pier 4 Warehouse, Buffalo, NY", "Buffalo airport", "NY", 0},
		{"Project: soils laboratory, Erie, PA", "Erie airport", "PA", 0},
		{"State of Washington", "Seattle/Tacoma airport", "WA", 0},
		{"Marine Laboratory, south campus, Toledo, Ohio", "Toledo", "OH", 0},
	}
	for _, tc := range tests {
		p, err := Locate(tc.text)
		if err != nil {
			t.Errorf("%q: %v", tc.text, err)
			continue
		}
		if !strings.HasPrefix(p.Station, tc.station) || tc.region != "" && p.Region != tc.region {
			t.Errorf("%q: station %q in %q, want %q in %q", tc.text, p.Station, p.Region, tc.station, tc.region)
		}
		if tc.km > 0 && (p.DistanceKM == nil || math.Abs(*p.DistanceKM-tc.km) > 0.5) {
			t.Errorf("%q: distance %v, want %g km", tc.text, p.DistanceKM, tc.km)
		}
		t.Logf("%-50.50s %q: %s", tc.text, p.Text, p.Where())
	}
}

func TestLocateRefuses(t *testing.T) {
	tests := []struct{ text, says string }{
		{"", "no place"},
		{"Buffalo grass sod over soil", ""},
		{"Reading", "needs its state"},
		{"Mobile crane on the north side", ""},
		{"Orange", ""},
		{"Portland", "Portland, OR"},
		{"Springfield", "Springfield, IL"},
		{"London", "London, ON"},
		{"London, England", ""},
		{"portland cement plaster", "no place"},
		{"Portland cement plaster", ""},
		{"1400 Denver Street", ""},
		{"Checked by Austin", ""},
		{"PRIMER OR MEMBRANE", "no place"},
		{"white PE film, 6 mil", "no place"},
		{"alum coping, OK in place", "no place"},
		{"Membrane made in Toledo, Ohio", "address"},
		{"Plant: Toledo, Ohio", "address"},
		{"Primer from our Warehouse, Toledo, Ohio", "address"},
		{"Soils Laboratory, Erie, PA", "address"},
		{"Project sheets made by the plant, Toledo, Ohio", "address"},
		{"Architect: Foo Partners, Chicago, IL", "address"},
		{"PR-1 on CMU, SC-2 over", "no place"},
		{"Concrete 28 d, AL flashing, CO2 cure", "no place"},
		{"Quandlewick N at screws", "no place"},
		{"stone from Vermont", "no place"},
		{"Kentucky bluegrass sod", "no place"},
		{"Boston ivy on the north wall", "no place"},
		{"west of Boston St. intersection", "no place"},
		{"18 mi west of Xyzzy", "not in the table"},
		{"Sydney, Australia", "no place"},
		{"Grid 12.25, -3.50 datum", "no place"},
		{"lat 95, long -88", "not a position"},
		{"48.85, -2.35", "US and Canada"},
	}
	for _, tc := range tests {
		p, err := Locate(tc.text)
		var nf *NotFound
		if !errors.As(err, &nf) {
			t.Errorf("%q: found %q at %s, error %v", tc.text, p.Text, p.Station, err)
			continue
		}
		if !strings.Contains(err.Error(), tc.says) || !strings.Contains(err.Error(), "latitude") {
			t.Errorf("%q: %v; want %q in it", tc.text, err, tc.says)
		}
	}
}

// Of a longer text only the position is the place; a position alone stays as written.
func TestPositionInWords(t *testing.T) {
	for text, want := range map[string]string{
		"Project: Lodge at 43.05 N 88.20 W":  "43.05° N, 88.20° W",
		"Site 43°03'N 88°12'W, open ground":  "43.05° N, 88.20° W",
		"Lodge, lat 43.05, long -88.2, wind": "43.05° N, 88.20° W",
		"43.05, -88.2":                       "43.05, -88.2",
	} {
		if p, err := Locate(text); err != nil || p.Text != want {
			t.Errorf("%q: %q, %v; want %q", text, p.Text, err, want)
		}
	}
}

// What is given as a place alone may be in small letters; in prose it may not.
func TestNamed(t *testing.T) {
	for text, want := range map[string]string{
		"buffalo, ny": "Buffalo airport", "buffalo ny": "Buffalo airport", "columbus,ga": "station near Phenix City",
		"duluth, minnesota": "Duluth airport", "18 mi west of milwaukee": "Milwaukee airport", "Buffalo, NY": "Buffalo airport",
		"st. paul, minn.": "Minneapolis/St. Paul airport",
	} {
		if p, err := Named(text); err != nil || p.Station != want {
			t.Errorf("%q: %q, %v", text, p.Station, err)
		}
	}
	for _, text := range []string{"nowhere at all", "portland", "", "in the field", "é"} {
		if p, err := Named(text); err == nil {
			t.Errorf("%q: %s", text, p.Station)
		}
	}
}

// A name of several towns is taken for the one far larger, and that is said.
func TestLargestOfName(t *testing.T) {
	p, err := Locate("Columbus")
	if err != nil || p.Region != "OH" || !strings.Contains(p.Note, "Columbus, GA") {
		t.Errorf("%+v, %v", p, err)
	}
	if p, err = Locate("Columbus, OH"); err != nil || p.Note != "" {
		t.Errorf("%+v, %v", p, err)
	}
}

func TestNearHeight(t *testing.T) {
	p, err := Locate("Site 12 mi. west of Denver, 5,700 ft. Work is in the open")
	if err != nil {
		t.Fatal(err)
	}
	if p.HeightDiffM == nil || math.Abs(p.ElevM-1737.4) > 1 {
		t.Fatalf("height %v of %+v", p.HeightDiffM, p)
	}
	high := 3000.0
	top, err := Near(39.75, -105.2, &high)
	if err != nil {
		t.Fatal(err)
	}
	s, err := top.Site()
	if err != nil {
		t.Fatal(err)
	}
	q, _ := Near(39.75, -105.2, nil)
	low, _ := q.Site()
	a, _, _, _ := s.Month(7)
	b, _, _, _ := low.Month(7)
	if a > b-4 {
		t.Errorf("July maximum at 3000 m is %.1f, at the foot %.1f", a, b)
	}
}
