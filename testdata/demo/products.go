package main

// productHeads are the columns of the products sheet.
var productHeads = []string{"Tag", "Generic description", "Base", "Thickness", "Lowest temp. to apply", "Highest service temp.",
	"Days open to sun", "Air permeance", "Air test", "Vapor permeance", "VOC", "Goes on / primer", "Keep away from", "Remarks"}

// products are the rows of the products sheet, cells parted by "|".
var products = []row{
	{cells: "SA-1|Self-adhered SBS-modified asphalt sheet, polyethylene film|SBS-modified asphalt|60 mil (1.5 mm)|40 F (4 C)|160 F (71 C)|60|0.002 cfm/ft2 at 1.57 psf|ASTM E2178|0.05 perm|-|Concrete, CMU, glass-mat sheathing, plywood, with P-1 or P-2|EPDM, plasticized PVC, coal tar, creosote, solvent-borne sealants|Standard grade"},
	{cells: "SA-2|Self-adhered SBS-modified asphalt sheet, polyethylene film, low-temperature grade|SBS-modified asphalt|40 mil (1.0 mm)|20 F (-7 C)|160 F (71 C)|60|0.002 cfm/ft2 at 1.57 psf|ASTM E2178|0.05 perm|-|Concrete, CMU, glass-mat sheathing, plywood, with P-1 or P-2|EPDM, plasticized PVC, coal tar, creosote, solvent-borne sealants|Low-temperature grade"},
	{cells: "FL-1|Self-adhered SBS-modified asphalt flashing strip, polyethylene film|SBS-modified asphalt|40 mil (1.0 mm)|25 F (-4 C)|160 F (71 C)|60|0.002 cfm/ft2 at 1.57 psf|ASTM E2178|0.05 perm|-|Concrete, CMU, glass-mat sheathing, plywood, with P-1 or P-2; XPS with P-2 only; clean metal, no primer|EPDM, plasticized PVC, coal tar, creosote, solvent-borne sealants|-"},
	{cells: "FL-2|Self-adhered butyl flashing strip, aluminum foil face|Butyl rubber|0.9 mm (35 mil)|25 F (-4 C)|240 F (116 C)|90|0.001 cfm/ft2 at 1.57 psf|ASTM E2178|0.02 perm|-|Plywood, concrete, with P-1 or P-2; clean metal, no primer|Coal tar, creosote, solvent-borne sealants|High-temperature grade"},
	{cells: "VP-1|Self-adhered vapor-permeable sheet, acrylic adhesive, spunbonded polypropylene|Acrylic|0.5 mm (20 mil)|20 F (-7 C)|180 F (82 C)|150|0.003 cfm/ft2 at 1.57 psf|ASTM E2178|18 perm|-|Glass-mat sheathing with P-4; plywood, no primer|Solvent-borne sealants|-"},
	{cells: "ST-1|Extruded silicone transition sheet|Silicone|2.0 mm|-20 F (-29 C)|300 F (149 C)|No limit|0.001 cfm/ft2 at 1.57 psf|ASTM E2178|5 perm|-|Glass-mat sheathing, aluminum, no primer; bed in S-1|-|May stay exposed"},
	{cells: "CF-1|Through-wall flashing, cold-rolled copper sheet, bare|Copper|16 oz|-|-|-|-|-|-|-|-|Zinc, galvanized steel, aluminum|-"},
	{cells: "SF-1|Through-wall flashing, stainless steel sheet|Stainless steel|26 ga.|-|-|-|-|-|-|-|-|-|-"},
	{cells: "DE-1|Drip edge, stainless steel, hemmed|Stainless steel|26 ga.|-|-|-|-|-|-|-|-|-|-"},
	{cells: "P-1|Primer, synthetic rubber in solvent|Solvent|-|25 F (-4 C)|-|-|-|-|-|240 g/L|Concrete, CMU, sheathing, wood|Polystyrene foam|Flammable: no flames, fresh air"},
	{cells: "P-2|Primer, polymer emulsion in water|Water|-|40 F (4 C)|-|-|-|-|-|60 g/L|Concrete, CMU, sheathing, wood, XPS|-|Keep from freezing; cover the same day"},
	{cells: "P-3|Primer, synthetic rubber in solvent, fast|Solvent|-|0 F (-18 C)|-|-|-|-|-|245 g/L|Concrete, CMU|Polystyrene foam|Flammable: no flames, fresh air"},
	{cells: "P-4|Primer, acrylic in water|Water|-|20 F (-7 C)|-|-|-|-|-|45 g/L|Sheathing|-|-"},
	{cells: "S-1|Sealant, one-part neutral-cure silicone|Silicone|-|0 F (-18 C)|-|-|-|-|-|40 g/L|-|-|Accepted on SA-1, SA-2, FL-1, FL-2, VP-1 and ST-1 by the makers' letters of 4 May 2026"},
	{cells: "S-3|Sealant, solvent-release acrylic|Acrylic in solvent|-|40 F (4 C)|-|-|-|-|-|420 g/L|-|Asphalt|For metal joints only",
		topic: "performance", what: "S-3 has 420 g/L; note 6 allows 250 g/L."},
	{cells: "G-1|Gasket, EPDM|EPDM|-|-|-|-|-|-|-|-|-|Asphalt|-"},
	{cells: "G-2|Gasket, silicone|Silicone|-|-|-|-|-|-|-|-|-|-|-"},
	{cells: "XPS-1|Extruded polystyrene board|Polystyrene|2 in.|-|165 F (74 C)|-|-|-|-|-|-|Solvents|-"},
	{cells: "MW-1|Mineral wool board|Rock and slag fiber|4 in.|-|-|-|-|-|-|-|-|-|-"},
	{cells: "PI-1|Polyisocyanurate board, foil faces|Polyisocyanurate|3 in.|-|-|-|-|-|-|-|-|-|-"},
}

// notes stand under the schedule.
var notes = []string{
	"Notes",
	"1. Sheets and flashings: air permeance 0.004 cfm/ft2 max. at 1.57 psf (0.02 L/(s·m2) at 75 Pa), ASTM E2178.",
	"2. Concrete 14 days old at least before any sheet goes on. No curing compound under a sheet.",
	"3. Prime only what is covered the same day.",
	"4. Asphaltic sheets and strips 40 mil (1.0 mm) min.",
	"5. Under black metal laid direct on a membrane allow for 185 F (85 C) at the membrane.",
	"6. Primers and sealants: VOC 250 g/L max.",
}
