package main

// row is one row of the demo schedule: its cells parted by "|", in the order
// of the columns, and what a reviewer must say of it. A cell that is an ISO
// day becomes a real date. "~old~new" is a cell with the old value struck out.
type row struct {
	cells   string
	divider string // a divider across the table, instead of cells
	topic   string // topic of the mistake planted in this row, "" if none
	what    string // the mistake
	near    string // why the row is right though it looks wrong, if it does
}

// columns of the schedule: the upper heading, merged over its columns, and the
// lower one.
var columns = []struct {
	over, head string
	width      float64
}{
	{"", "Wall type", 16}, {"", "Item", 6}, {"", "Location", 25},
	{"Membrane or flashing", "Tag", 8}, {"Membrane or flashing", "Description", 31}, {"Membrane or flashing", "Thickness", 15},
	{"", "Laid on", 25}, {"", "Primer", 9},
	{"Touches", "Sealant", 9}, {"Touches", "Other materials", 25},
	{"Dates", "Concrete placed", 12}, {"Dates", "Sheet on", 12}, {"Dates", "Covered", 12},
	{"", "Edge", 21}, {"", "Remarks", 40}, {"", "Cost code", 10},
}

// 1 wall type, 2 item, 3 location, 4 tag, 5 description, 6 thickness,
// 7 laid on, 8 primer, 9 sealant, 10 other materials, 11 placed, 12 on,
// 13 covered, 14 edge, 15 remarks, 16 cost code
var rows = []row{
	{divider: "BELOW GRADE"},
	{cells: "WT-1 concrete wall|101|Footing to wall, north|SA-1|Rubberized asphalt sheet|60 mil (1.5 mm)|Concrete|P-1|S-1|Drainage board|2026-08-10|2026-09-08|2026-09-18|Bead at top edge|Wall swept, dry|07-110"},
	{cells: "|102|Footing to wall, east|SA-1|Rubberized asphalt sheet|60 mil (1.5 mm)|Concrete|P-1|S-1|Drainage board|2026-09-03|2026-09-09|2026-09-18|Bead at top edge|Wall swept, dry|07-110",
		topic: "pairing", what: "SA-1 goes on concrete six days old; note 2 asks for 14."},
	{cells: "|103|Footing to wall, south|SA-1|Rubberized asphalt sheet|60 mil (1.5 mm)|Concrete|P-1|S-1|Drainage board|2026-08-27|2026-09-10|2026-09-18|Bead at top edge|Wall swept, dry|07-110",
		near: "The concrete is 14 days old, exactly what note 2 asks for."},
	{cells: "|104|Wall field, north and east|SA-1|Rubberized asphalt sheet|60 mil (1.5 mm)|Concrete|P-1|S-1|XPS-1|2026-08-10|2026-09-11|2026-09-21|Bead at top edge|-|07-110"},
	{cells: "|105|Wall field, south|SA-1|Rubberized asphalt sheet|60 mil (1.5 mm)|Concrete, curing compound ground off|P-1|S-1|XPS-1|2026-08-10|2026-09-14|2026-09-21|Bead at top edge|Curing compound removed by grinding, surface tested|07-110",
		near: "The curing compound is removed before the sheet goes on."},
	{cells: "|106|Pipe sleeve at grid C|SA-1|Rubberized asphalt sheet|60 mil (1.5 mm)|Concrete|P-1|S-1|Sleeve, rigid PVC, unplasticized|2026-08-10|2026-09-14|2026-09-21|Bead round the sleeve|-|07-110",
		near: "The sleeve is rigid PVC without plasticizer, which gives off no oil."},
	{cells: "|107|Cold joint at grid 4|SA-1|Rubberized asphalt sheet|60 mil (1.5 mm)|Concrete|P-1|S-1|PVC waterstop, plasticized|2026-08-10|2026-09-15|2026-09-21|Bead at top edge|Waterstop fin folded onto the sheet|07-110",
		topic: "contact", what: "Plasticized PVC waterstop lies on the asphaltic sheet."},

	{divider: "HALL, BRICK ON BLOCK"},
	{cells: "WT-2 brick on CMU|201|Base of wall|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|CMU|P-1|S-1|DE-1; WT-2 sheet laps over|-|2026-09-21|2026-10-02|On DE-1, bead|Strip held 1/2 in. back from the face|04-210"},
	{cells: "|202|Wall field, lower lift|SA-2|Low-temperature rubberized asphalt sheet|40 mil (1.0 mm)|CMU|P-1|S-1|XPS-1|-|2026-09-22|2026-10-09|Lapped under upper lift|Joints struck flush|04-210"},
	{cells: "|203|Wall field, upper lift|SA-2|Low-temperature rubberized asphalt sheet|40 mil (1.0 mm)|CMU|P-1|S-1|XPS-1|-|2026-09-28|2026-10-16|Bar and bead at top|Joints struck flush|04-210"},
	{cells: "|204|Wall field, stair tower|SA-2|Low-temperature rubberized asphalt sheet|40 mil (1.0 mm)|CMU|-|S-1|XPS-1|-|2026-09-29|2026-10-16|Bar and bead at top|Joints struck flush|04-210",
		topic: "pairing", what: "SA-2 on block without primer; its data asks for P-1 or P-2 there."},
	{cells: "|205|Shelf angle, level 2|CF-1|Copper through-wall flashing|16 oz|Shelf angle, hot-dip galvanized|-|S-1|-|-|2026-10-05|2026-10-14|Hemmed drip|Laid direct on the angle|04-230",
		topic: "contact", what: "Bare copper lies directly on the galvanized angle."},
	{cells: "|206|Shelf angle, level 3|SF-1|Stainless steel through-wall flashing|26 ga.|Shelf angle, hot-dip galvanized|-|S-1|FL-1 laps over upstand|-|2026-10-06|2026-10-14|Hemmed drip|FL-1 between flashing and angle, full width of the toe|04-230",
		near: "Stainless on zinc, with a strip of FL-1 between them."},
	{cells: "|207|Control joint|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|CMU|P-1|S-1|Joint filler, closed-cell polyethylene rod|-|2026-10-06|2026-10-16|Bead both edges|-|04-210"},
	{cells: "|208|Pipe through wall, boiler room|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|CMU|P-1|S-3|-|-|2026-10-07|2026-10-16|Bead of S-3 round the pipe|S-3 bedded on the strip|04-210",
		topic: "contact", what: "The solvent-release sealant S-3 is bedded on the asphaltic strip."},
	{cells: "|209|Louver, north|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|CMU|P-1|S-1|Aluminum louver frame, anodized|-|2026-10-07|2026-10-16|Bead at frame|-|04-210"},
	{cells: "|210|Wall field, ticket office|SA-2|Low-temperature rubberized asphalt sheet|40 mil (1.0 mm)|CMU|P-1|S-1|XPS-1|-|2026-09-30|2026-12-16|Bar and bead at top|Brick stops until the crane is gone|04-210",
		topic: "exposure", what: "SA-2 stays bare 77 days; its data allows 60."},
	{cells: "|211|Wall field, waiting room|SA-2|Low-temperature rubberized asphalt sheet|40 mil (1.0 mm)|CMU|P-1|S-1|XPS-1|-|2026-09-30|2026-11-29|Bar and bead at top|-|04-210",
		near: "60 days bare, exactly what its data allows."},

	{divider: "OPENINGS"},
	{cells: "WT-3 storefront|301|Jamb, entrance|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Glass-mat sheathing|P-2|S-1|G-1 gasket of the frame|-|2026-10-08|2026-10-20|Bead at frame|Gasket presses on the strip|08-410",
		topic: "contact", what: "The EPDM gasket G-1 presses on the asphaltic strip."},
	{cells: "|302|Jamb, ticket office|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Glass-mat sheathing|P-2|S-1|G-2 gasket of the frame|-|2026-10-08|2026-10-20|Bead at frame|-|08-410",
		near: "The gasket here is silicone and not EPDM."},
	{cells: "|303|Head, entrance|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Glass-mat sheathing|P-2|S-1|G-1 kept 2 in. clear|-|2026-10-09|2026-10-20|Bead at frame|Strip ends under the clip, gasket kept 2 in. clear|08-410",
		near: "The EPDM gasket stays 2 in. clear of the strip."},
	{cells: "|304|Head, ticket office|ST-1|Silicone transition sheet|2.0 mm|Glass-mat sheathing|-|S-1|Aluminum frame, anodized|-|2026-10-09|2026-10-20|Bead of S-1 both edges|Bedded in S-1, no primer|08-410",
		near: "The silicone sheet takes no primer; it is bedded in its sealant."},
	{cells: "|305|Sill, entrance|FL-2|Butyl strip, foil face|0.9 mm (35 mil)|Plywood|P-1|S-1|Aluminum sill pan|-|2026-10-12|2026-10-20|Turned up 3 in. at the back|-|08-410"},
	{cells: "|306|Sill, ticket office|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Plywood|~P-3~P-2|S-1|-|-|2026-10-12|2026-10-20|Turned up 75 mm at the back|Primer changed, Rev. B|08-410",
		near: "P-3 is struck out; P-2 holds and suits plywood."},
	{cells: "|307|Jamb, side door|FL-9|Rubberized asphalt strip|40 mil (1.0 mm)|Glass-mat sheathing|P-2|S-1|-|-|2026-10-13|2026-10-20|Bead at frame|-|08-410",
		topic: "data", what: "FL-9 is not on the sheet of products."},
	{cells: "|308|Jamb, boat door|FL-1|Rubberized asphalt strip|30 mil (0.76 mm)|Glass-mat sheathing|P-2|S-1|-|-|2026-10-13|2026-10-20|Bead at frame|-|08-410",
		topic: "performance", what: "The strip is 30 mil; note 4 asks for 40 mil."},
	{cells: "|309|Side light|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Glass-mat sheathing|P-2|S-1|G-2|-|31 Sept 2026|2026-10-20|Bead at frame|-|08-410",
		topic: "data", what: "September has 30 days."},

	{divider: "BOAT HALL, METAL PANEL"},
	{cells: "WT-4 metal panel|401|Wall field, west|VP-1|Vapor-permeable sheet, acrylic|0.5 mm|Glass-mat sheathing|P-4|S-1|MW-1|-|2026-10-14|2026-12-04|Lapped 75 mm, rolled|-|07-420"},
	{cells: "|402|Wall field, east|VP-1|Vapor-permeable sheet, acrylic|0.5 mm|Plywood|-|S-1|MW-1|-|2026-10-15|2026-12-04|Lapped 75 mm, rolled|Clean and dry plywood|07-420",
		near: "VP-1 needs no primer on plywood by its own data."},
	{cells: "|403|Wall field, south|VP-1|Vapor-permeable sheet, acrylic|0.5 mm|Glass-mat sheathing|P-4|S-1|MW-1|-|2026-10-19|2026-12-11|Lapped 75 mm, rolled|-|07-420"},
	{cells: "|404|Base strip|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Foundation insulation XPS-1|P-1|S-1|-|-|2026-10-20|2026-11-06|Bead at top edge|-|07-420",
		topic: "pairing", what: "The solvent-borne primer P-1 goes on extruded polystyrene."},
	{cells: "|405|Base strip, return|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Foundation insulation XPS-1|P-2|S-1|-|-|2026-10-13|2026-11-06|Bead at top edge|-|07-420",
		near: "The primer here is water-borne and leaves the foam alone."},
	{cells: "|406|Wall field, north|SA-1|Rubberized asphalt sheet|60 mil (1.5 mm)|Glass-mat sheathing|P-1|S-1|MW-1|-|2026-12-07|2026-12-18|Bar and bead at top|No heat, no tent|07-420",
		topic: "temperature", what: "SA-1 goes on from 40 F; most working hours of that week are colder."},
	{cells: "|407|Wall field, north gable|SA-2|Low-temperature rubberized asphalt sheet|40 mil (1.0 mm)|Glass-mat sheathing|P-1|S-1|MW-1|-|2026-11-09|2026-12-18|Bar and bead at top|Mid-day work|07-420",
		near: "SA-2 goes on from 20 F, and the hours below are few in early November."},
	{cells: "|408|Panel joint, west|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Aluminum angle|-|S-1|-|-|2026-10-21|2026-11-20|Bead both edges|-|07-420",
		near: "FL-1 needs no primer on clean metal by its own data."},
	{cells: "|409|Wall field, workshop|VP-1|Vapor-permeable sheet, acrylic|0.5 mm|Glass-mat sheathing|P-4|S-1|MW-1|-|2026-10-22|2026-10-15|Lapped 75 mm, rolled|-|07-420",
		topic: "sequence", what: "Covered a week before the sheet goes on."},
	{cells: "|410|Canopy roof upturn|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Plywood|P-1|S-1|PVC roof sheet separated by 6 mil polyethylene film|-|2026-10-22|2026-11-20|Bead both edges|Film laps 50 mm past the sheet|07-420",
		near: "The film keeps the plasticized roof sheet off the strip."},

	{divider: "ROOF EDGES"},
	{cells: "WT-5 parapet|501|Under coping, hall|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Plywood|P-1|S-1|Black aluminum coping, laid direct|-|2026-10-23|2026-11-02|Turned down 75 mm|No insulation between|07-710",
		topic: "temperature", what: "FL-1 serves to 160 F; note 5 asks for 185 F under black metal laid direct."},
	{cells: "|502|Under coping, boat hall|FL-2|Butyl strip, foil face|0.9 mm (35 mil)|Plywood|P-1|S-1|Black aluminum coping, laid direct|-|2026-10-23|2026-11-02|Turned down 75 mm|-|07-710",
		near: "FL-2 serves to 240 F."},
	{cells: "|503|Parapet wall, inner face|SA-2|Low-temperature rubberized asphalt sheet|40 mil (1.0 mm)|Plywood|P-1|S-1|PI-1|-|2026-10-26|2026-11-06|Bar and bead at top|-|07-710"},
	{cells: "|504|Roof curb|SA-2|Low-temperature rubberized asphalt sheet|40 mil (1.0 mm)|Plywood|P-1|S-1|PI-1|-|2026-10-26|2026-11-06|Bar and bead at top|-|07-710"},
	{cells: "|505|Gutter bracket line|FL-1|Rubberized asphalt strip|40 mil (1.0 mm)|Plywood|P-1|S-1|Stainless brackets|-|2026-10-27|2026-11-06|Bead at top edge|Primed 10/19, strip laid 10/27|07-710",
		topic: "sequence", what: "The primer lies open eight days; note 3 wants it covered the same day."},
	{cells: "|506|Canopy ledge|ST-1|Silicone transition sheet|2.0 mm|Aluminum angle|-|S-1|Aluminum cover plate|-|2026-10-28|open|Bead of S-1 both edges|Stays exposed|07-710",
		near: "The silicone sheet may stay exposed by its own data."},
}
