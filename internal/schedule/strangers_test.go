package schedule_test

import (
	"strings"
	"testing"
)

// TestHeadingsOfStrangers reads tables whose headings say little in the words of
// the trade: as questions, in code, in another language, or for half of the columns.
func TestHeadingsOfStrangers(t *testing.T) {
	for name, tc := range map[string]struct{ grid, want string }{
		"questions": {`
Where is it? | What is it bonded to? | Which membrane is it? | Has it got primer? | How long will it sit open? | Who was the foreman?
north gable | plywood | butyl sheet | none | 21 | Ash
south gable | CMU | butyl sheet | none | 30 | Ash`,
			"place substrate material primer planned_open reference"},
		"code of a data base": {`
WallID | SubstrateType | MEMB_DESC | PRMR_CD | CoverDate | REVIEW_STAT | EXP_PLAN_DAYS
W1 | plywood | butyl sheet | none | 9 Mar 2026 | ok | 7
W1 | CMU | butyl sheet | none | 9 Mar 2026 | ok | 6`,
			"group substrate material primer cover status planned_open"},
		"French": {`
Repère | Emplacement | Membrane | Apprêt | Chevauchement | Posée le | Recouverte le
D1 | nord | butyl sheet | none | 75 mm | 2 Mar 2026 | 9 Mar 2026
D2 | sud | butyl sheet | none | 75 mm | 3 Mar 2026 | 9 Mar 2026`,
			"mark place material primer lap install cover"},
		"few words, known by where they stand": {`
Lift | Bay | Gang | Rolled out | Backer | Kind of weather | Ties into | Seen to
7 | B2 | red | butyl sheet | lots | fair | door frame | Elm
8 | B3 | red | butyl sheet | some | fair | door frame | Elm
9 | B4 | red | butyl sheet | some | fair | door frame | Elm`,
			"mark place  material  type touches "},
		"readings of a face, and a log of the work": {`
Visit | Membrane | Place | Temp. PM (deck) °C | Temp. PM °C | Dew pt. °C
1 | butyl sheet | roof A | 9 | 11 | 4
2 | butyl sheet | roof B | 8 | 10 | 3`,
			"mark material place reading_surface reading_air reading_dew"},
		"sides of an opening": {`
Opening | Backing wall | WRB | Head | Left jamb | Right jamb | Sill | Lap
101 | CMU | housewrap | butyl tape | butyl tape | butyl tape | SBS tape | 4 in
102 | CMU | housewrap | butyl tape | butyl tape | butyl tape | SBS tape | 4 in`,
			"place substrate material with with with with lap"},
		"of no concern": {`
Ref | Membrane | Substrate | £ per roll | Primer batch | Sealant color | Foreman | Photo no.
D1 | butyl sheet | plywood | 118 | 7A | gray | Oak | 14
D2 | butyl sheet | CMU | 118 | 7B | gray | Oak | 15`,
			"mark material substrate reference reference reference reference reference"},
		"answers and figures are no neighbors": {`
Ref | Membrane | Substrate | Against wind? | Next to, mm | Against
D1 | butyl sheet | plywood | yes | 40 | brick tie
D2 | butyl sheet | CMU | no | 60 | brick tie`,
			"mark material substrate   touches"},
		"days without a year": {`
Ref | Membrane | Substrate | Laid | Overclad
D1 | butyl sheet | plywood | 12-May | 20-May
D2 | butyl sheet | CMU | 14-May | 22-May`,
			"mark material substrate install cover"},
		"layers without a heading for what they are": {`
Wall | Seq. | Stuff of it | Attached to | Laps
A | 1 | butyl sheet | steel deck | 75 mm
A | 2 | mineral wool board | butyl sheet | none
A | 3 | gypsum board | mineral wool | none`,
			"group order type substrate lap"},
		"concrete over a sheet that was offered": {`
Ref | Specified | Proposed | Concrete poured | Planned exposure
P1 | butyl sheet | SBS sheet | 2 Mar 2026 | 20
P2 | butyl sheet | SBS sheet | 3 Mar 2026 | 25`,
			"mark specified material placed planned_open"},
		"a look at the work": {`
Dtl. | Membrane | Substrate | Reviewed | Det.
J1 | butyl sheet | plywood | 2 Mar 2026 | 5/A7
J2 | butyl sheet | CMU | 3 Mar 2026 | 5/A7`,
			"reference material substrate inspected mark"},
		"the codes of the rows come first": {`
Seam | Membrane | Substrate | Lap | Det.
J1 | butyl sheet | plywood | 3 in. | 5/A7
J2 | butyl sheet | CMU | 3 in. | 5/A7`,
			"mark material substrate lap reference"},
		"tags that no product has": {`
Tag | Membrane | Substrate | Lap
B-1 | butyl sheet | plywood | 3 in.
B-2 | butyl sheet | CMU | 3 in.`,
			"mark material substrate lap"},
	} {
		t.Run(name, func(t *testing.T) {
			s := read(t, strings.TrimSpace(tc.grid)+"\n")
			if got := slots(s.Reading.Tables[0]); got != tc.want {
				t.Errorf("slots %q, want %q", got, tc.want)
			}
		})
	}
}

const aSchedule = "\nRef | Membrane | Substrate | Lap\nD1 | butyl sheet | plywood | 75 mm\n"

// TestProductHeadingsOfStrangers does the same for product data.
func TestProductHeadingsOfStrangers(t *testing.T) {
	for name, tc := range map[string]struct{ grid, want string }{
		"the first column names them": {`
Mastic | Resin | Never touch | Full cure | VOC g/L
Gullseal 2 | silicone | bitumen | 7 days | 40
Gullseal 5 | polyurethane | PVC | 3 days | 90`,
			"material chemistry keep_off curing voc"},
		"a group written over its first column only": {`
Tradename | Application temp., °F | | Max. exposure
 | Min. | Max. | (days)
Gull Butyl | 20 | 110 | 60
Gull Tar | 40 | 100 | 30`,
			"alias apply_min apply_max exposure_days"},
		"figures are no marks": {`
Product | Generic type | Ridges | Perms | UV days
Gull Coat | acrylic coating | 21 | 14 | 180
Gull Film | butyl sheet | 40 | 0.1 | 60`,
			"material type  vapor exposure_days"},
	} {
		t.Run(name, func(t *testing.T) {
			s := read(t, strings.TrimSpace(tc.grid)+"\n"+aSchedule)
			if got := slots(s.Reading.Tables[0]); got != tc.want || s.Reading.Tables[0].Kind != "products" {
				t.Errorf("%s, slots %q, want %q", s.Reading.Tables[0].Kind, got, tc.want)
			}
		})
	}
}

// A limit in months is that many days, whether its heading or its cell says so.
func TestLimitInMonths(t *testing.T) {
	s := read(t, "Tag | Type | Keep off | Weather exposure (months)\nG1 | housewrap | - | 4\nG2 | housewrap | - | 90 days\n"+aSchedule)
	for tag, want := range map[string]float64{"G1": 120, "G2": 90} {
		if f := product(t, s, tag).Figures["exposure_days"]; !near(f.Min, want) {
			t.Errorf("%s: %+v, want %g days", tag, f, want)
		}
	}
}

// A row that stands alone in the data is no heading, though words of it could be
// one; nor is a comparison of two products a schedule.
func TestNoHeadings(t *testing.T) {
	s := read(t, "Mark | Description | Base | VOC (g/L) | Not on\nP-1 | primer | acrylic | 40 | -\n | | | |\nI-1 | gypsum board | item | - | solvents\nI-2 | plywood | item | - | solvents\n"+aSchedule)
	if n := len(s.Reading.Tables); n != 2 {
		t.Errorf("%d tables, want the products and the schedule", n)
	}
	s = read(t, "Characteristic | Specified: Gull Butyl | Offered: Gull Tar | Spec asks | Meets?\nthickness | 40 mil | 60 mil | 40 mil | yes\nperms | 0.1 | 0.05 | 0.1 | yes\n"+aSchedule)
	if s.Lines[0].Mark != "D1" {
		t.Errorf("first line %q of %+v", s.Lines[0].Mark, s.Reading.Tables[0])
	}
}

// A code in the full name of a product is no tag of another.
func TestCodesWithinFullNames(t *testing.T) {
	s := readPages(t, page{name: "S", grid: `
Mark | Tag | Product | Substrate | Primer | Installed
A1 | SA-1 | Weir SA-120 high-temperature asphaltic sheet, 1.2 mm | plywood | none | @2026-04-13
A2 | SA-1 | Weir SA-140 high-temperature asphaltic sheet, 1.2 mm | plywood | none | @2026-04-13`}, page{name: "P", grid: `
Tag | Product | Apply min °C
SA-1 | Weir SA-120 high-temperature asphaltic sheet, 1.2 mm | 5
SA-2 | Weir plain asphaltic sheet, 1 mm | 5`})
	for mark, want := range map[string]bool{"A1": false, "A2": true} {
		stranger := false
		for _, it := range line(t, s, mark).Items {
			stranger = stranger || it.Tag != "" && it.Product == ""
		}
		if stranger != want {
			t.Errorf("%s: %v, want a tag that is not in the list: %v", mark, stranger, want)
		}
	}
}
