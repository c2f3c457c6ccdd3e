package document

import (
	"errors"
	"fmt"
	"io/fs"
	"strings"

	"abut/internal/aside"
	"abut/internal/climate"
	"abut/internal/contact"
	"abut/internal/hygro"
	"abut/internal/knowledge"
	"abut/internal/schedule"
	"abut/internal/workbook"
)

// Version names the shape of the document.
const Version = "1"

// Builder turns workbooks into documents. It is safe for concurrent use.
type Builder struct {
	reader *schedule.Reader
	hygro  *hygro.Table
	sides  *sides
	graded []string // families that are sold in the grades
	grades []usualGrade
}

// usualGrade is a grade of sheet with the lowest application temperature that
// the trade means by it.
type usualGrade struct {
	ID    string  `json:"id"`
	Trait string  `json:"trait"` // the trait that names it in a material's words
	Name  string  `json:"name"`
	MinC  float64 `json:"min_c"`
	Text  string  `json:"text"`

	MaxC    *float64 `json:"max_c"` // the highest, where a grade has one
	MaxText string   `json:"max_text"`
}

// Settings are what a settings file or flags say of the project.
type Settings struct {
	Schedule schedule.Settings
	Place    string // beats what the workbook says
	Hours    climate.Hours
	Site     *climate.Site // the project's own figures or weather file, nil: a station
}

// NewBuilder loads the vocabularies and tables of a policy tree.
func NewBuilder(fsys fs.FS) (*Builder, error) {
	r, err := schedule.NewReader(fsys)
	if err != nil {
		return nil, err
	}
	h, err := hygro.Load(fsys)
	if err != nil {
		return nil, err
	}
	sides, err := loadSides(fsys)
	if err != nil {
		return nil, err
	}
	var file struct {
		Families []string     `json:"families"` // that are sold in the grades
		Grades   []usualGrade `json:"grades"`
	}
	if err := knowledge.Read(fsys, "usual grades", "temperature/grades.json", &file); err != nil {
		return nil, err
	}
	return &Builder{reader: r, hygro: h, sides: sides, graded: file.Families, grades: file.Grades}, nil
}

// Build reads a workbook into a document.
func (b *Builder) Build(book *workbook.Book, set Settings) (*Document, error) {
	set.Schedule.CountryOf = func(places []schedule.Fact) string {
		place, _ := b.locate(places, set.Place)
		return place.Country
	}
	s, err := b.reader.Read(book, set.Schedule)
	if err != nil {
		return nil, err
	}
	contacts := aside.Start(func() ([]contact.Contact, error) { return contact.Find(s), nil }, func(p any) error { return fmt.Errorf("contacts: %v", p) })
	doc := &Document{
		Version: Version, File: s.File, Project: Project{Project: s.Project}, Lines: s.Lines,
		Products: s.Products, Pours: s.Pours, Reading: s.Reading, Waivers: s.Waivers,
	}
	var site *climate.Site
	doc.Project.Place, site = b.locate(s.Project.Places, set.Place)
	if set.Site != nil {
		site, doc.Project.Place = set.Site, ownFigures(doc.Project.Place, set.Site)
	}
	if site != nil {
		doc.Project.Place.Months = bands(site)
		own := map[string]sited{}
		if set.Site == nil && set.Place == "" {
			own = b.ownSites(doc)
		}
		doc.Windows = b.windows(doc, site, own, set.Hours)
	}
	found := <-contacts
	if doc.Contacts = found.Value; found.Err != nil {
		return nil, found.Err
	}
	dewPoints(doc.Lines)
	doc.Profiles = b.profiles(doc, site)
	Complete(doc)
	return doc, nil
}

// locate finds the station of the project: the place of the settings, else the
// first text of title block, site column or notes that names one.
func (b *Builder) locate(texts []schedule.Fact, stated string) (Place, *climate.Site) {
	find := climate.Locate
	if stated != "" {
		texts, find = []schedule.Fact{{Text: stated}}, climate.Named
	}
	out := Place{Problem: "no place is stated in the title block, the notes or the settings"}
	var best climate.Place
	found := false
	for _, f := range texts {
		p, err := find(f.Text)
		if err != nil {
			if stated != "" {
				out.Problem = err.Error()
			} else if why := severalOf(err); why != "" && out.At.Row == 0 {
				out.Problem, out.At = why, f.At
			}
			continue
		}
		if !found || nearer(p, best) {
			best, found = p, true
			out.Text, out.At = p.Text, f.At
		}
	}
	if !found {
		return out, nil
	}
	site, err := best.Site()
	if err != nil {
		out.Problem = err.Error()
		return out, nil
	}
	out.Problem, out.Station, out.Region, out.Country = "", best.Station, best.Region, best.Country
	out.Latitude, out.Longitude, out.ElevationM, out.DistanceKM = &best.Lat, &best.Lon, &best.ElevM, best.DistanceKM
	out.Period, out.Source = best.Period, best.Source
	return out, site
}

// severalOf tells which places a town without its state may be; "" where that is not
// what is amiss.
func severalOf(err error) string {
	nf := (*climate.NotFound)(nil)
	if !errors.As(err, &nf) || len(nf.Candidates) < 2 {
		return ""
	}
	return nf.Reason + ": " + strings.Join(nf.Candidates, ", ")
}

// ownFigures says that the figures of a place are not those of its station.
func ownFigures(p Place, site *climate.Site) Place {
	own := Place{Text: p.Text, At: p.At, Region: p.Region, Country: p.Country, Latitude: p.Latitude, Longitude: p.Longitude}
	if site.Exact() && own.Text == "" {
		own.Text = site.Place.Station
	}
	if own.Text != "" {
		own.Station, own.Period = site.Place.Source, site.Place.Period
	}
	return own
}

// nearer prefers the text that tells the way to a station over a bare name.
func nearer(a, b climate.Place) bool {
	return a.DistanceKM != nil && b.DistanceKM == nil
}
