package climate

import (
	"bufio"
	"compress/gzip"
	"os"
	"slices"
	"strings"
	"testing"
)

// packed gives the lines of a packed test table.
func packed(t *testing.T, name string) []string {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	z, err := gzip.NewReader(f)
	if err != nil {
		t.Fatal(err)
	}
	var l []string
	for sc := bufio.NewScanner(z); sc.Scan(); {
		l = append(l, sc.Text())
	}
	return l
}

// readLines leaves out the notes of sources.
func readLines(t *testing.T, name string) []string {
	t.Helper()
	return slices.DeleteFunc(packed(t, name), func(l string) bool { return strings.HasPrefix(l, "#") })
}

// recordOf gives the figures of a named station.
func recordOf(t *testing.T, station, region string) *record {
	t.Helper()
	a, err := theAtlas()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range a.stations {
		if r.region == region && strings.HasPrefix(r.name, station) {
			return r
		}
	}
	t.Fatalf("no station %q in %s", station, region)
	return nil
}

func siteFrom(t *testing.T, r *record) *Site {
	t.Helper()
	s, err := placeOf(r).Site()
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// siteOf gives the site of a named station.
func siteOf(t *testing.T, station, region string) *Site {
	t.Helper()
	return siteFrom(t, recordOf(t, station, region))
}

// published gives the site with the normals of the years they were published
// for, to hold against series of those years.
func published(t *testing.T, station, region string) *Site {
	t.Helper()
	r := *recordOf(t, station, region)
	r.period = "as published"
	return siteFrom(t, &r)
}
