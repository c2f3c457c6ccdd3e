package phrase

import (
	"slices"
	"strings"
	"testing"

	"abut/internal/knowledge"
	"abut/policies"
)

func TestSignals(t *testing.T) {
	r := reader(t)
	for _, tc := range []struct{ text, want, not string }{
		{"in a heated tent", "heated", "unheated"},
		{"read under the hoarding where hoarded", "", "heated"},
		{"55 to 60 held 48 hours before and 24 after", "heated", ""},
		{"held 2 weeks before release", "", "heated"},
		{"doors late, threshold left open till then", "", "stays_exposed"},
		{"left exposed for good", "stays_exposed", ""},
		{"jamb left bare for the trim, covered on 3 May", "", "stays_exposed"},
		{"stays exposed, never covered", "stays_exposed", ""},
		{"zinc sill on hidden clips", "", "vented"},
		{"zinc panels on clips", "vented", ""},
		{"rear leg laid over the outside of the wrap", "lap_reversed", ""},
		{"top as it is, nothing is dressed down over it", "edge_open", ""},
		{"No polyethylene or foil inside any outer wall", "one_tight_layer", ""},
		{"no mastic but K-2 on it", "", "edge_open"},
		{"a single vapour tight layer in each assembly", "one_tight_layer", ""},
		{"only one sheet below 57 ng in any wall", "one_tight_layer", ""},
		{"A single class 1 vapor retarder in any assembly", "one_tight_layer", ""},
		{"class I retarder on the studs", "", "one_tight_layer"},
		{"one layer under the coping", "", "one_tight_layer"},
		{"no finish of 0.5 perm or less on the room side", "one_tight_layer", ""},
		{"nothing of 60 ng or less inboard", "one_tight_layer", ""},
		{"nothing of 60 ng or more inboard", "", "one_tight_layer"},
		{"head tray with 3 no. weepholes", "weeps", ""},
		{"tray at level 3, no weepholes", "", "weeps"},
		{"tray on bay 3 no weepholes", "", "weeps"},
		{"noncombustible cavity insulation throughout", "noncombustible_insulation", ""},
		{"skirt left loose for the sill flashing", "", "edge_open"},
		{"skirt left loose", "edge_open", ""},
		{"top edge w/o mastic", "edge_open", ""},
		{"mastic was omitted", "edge_open", ""},
		{"bottom edge left loose over the apron of item 9", "", "edge_open"},
		{"foot kept free above the tray", "", "edge_open"},
		{"lower edge left open so water can drain", "", "edge_open"},
		{"base edge open, to weep", "", "edge_open"},
		{"bottom edge left open", "edge_open", ""},
		{"top edge open to dry", "edge_open", ""},
		{"cut square to the masonry opening, nothing turned up", "ends_open", ""},
		{"metal cut flush on both columns", "ends_open", ""},
		{"dies at the post, nothing folded up", "ends_open", ""},
		{"nothing left open", "", "ends_open"},
		{"jambs, then the sill strip comes last", "out_of_order", ""},
		{"sill goes in first and the head last", "", "out_of_order"},
		{"gravel stop ends 20 short, no touch on the sheet", "no_contact", ""},
		{"no touch-up on the paint", "", "no_contact"},
		{"keep 250 mm from any foam", "no_contact", ""},
		{"bead stands 40 mm out from the strip", "no_contact", ""},
		{"laid 25 mm back from the edge", "", "no_contact"},
		{"stopped short at the expansion joint pier", "", "ends_open"},
		{"cut flush at expansion joints", "ends_open", ""},
		{"leg 200 mm up, ends flat at column line 4", "ends_open", ""},
		{"set flat at its ends, dams soldered", "", "ends_open"},
		{"board cut square to the stud", "", "ends_open"},
		{"panels as stripped, form oil not looked at", "", "removed"},
		{"old coating stripped", "removed", ""},
		{"stone rinsed the evening before", "washed_before", ""},
		{"hose down, then primer the next morning", "washed_before", ""},
		{"washed and pointed in May", "", "washed_before"},
		{"block 21 days old, 4 % moist", "", "surface_wet"},
		{"block still moist", "surface_wet", ""},
		{"no defects found, let go", "", "bond_failed"},
		{"corner let go overnight", "bond_failed", ""},
		{"bottom piece drawn up outside the apron", "lap_reversed", ""},
		{"apron drawn down over the bottom piece", "", "lap_reversed"},
		{"bottom kept loose, stuck down later", "edge_sealed", ""},
		{"showers Monday. Moisture 11%, fine", "surface_dry", ""},
		{"moisture 26 %, too much", "", "surface_dry"},
		{"IMP on girts as rain screen", "vented", "surface_wet"},
		{"coping on continuous cleats", "", "vented"},
		{"panels on clips", "vented", ""},
		{"two days to spare, sweating this one", "", "surface_wet"},
		{"38 mils wet, 20 mils dry", "", "surface_wet surface_dry"},
		{"metal dies square at the pier, no turn-ups", "ends_open", ""},
		{"a lead tray holds the gasket clear of the sheet", "keeps_off", ""},
		{"keep the gasket off the sheet", "", "keeps_off"},
		{"nothing isolates the gasket from the sheet", "", "keeps_off"},
		{"offers shall meet or exceed every value", "equal_or_better", ""},
		{"approved equal", "", "equal_or_better"},
		{"sill sheet set last", "lap_reversed", ""},
		{"tail of the upper lift slipped behind the top of the lift below", "lap_reversed", ""},
		{"upper strip run inside the top edge of the lower one", "lap_reversed", ""},
		{"foot of upper course over head of lower course", "", "lap_reversed"},
		{"ends at both window reveals", "ends_open", ""},
		{"sheet stops at each floor", "", "ends_open"},
		{"10 °C and up; frost free for 36 h", "frost_free_hours", ""},
		{"no frost on the wall", "", "frost_free_hours"},
		{"laps are backwards along the ledger", "lap_reversed", ""},
		{"laps the right way", "", "lap_reversed"},
		{"upper edge stuck 3 in onto the roll above", "lap_reversed", ""},
		{"top edge turned over the face of the course above", "lap_reversed", ""},
		{"top edge lapped by the sheet above", "", "lap_reversed"},
		{"sheet above laps onto the face of this one", "", "lap_reversed"},
		{"top edge goes under the sheet above", "", "lap_reversed"},
		{"bead left out at the north end", "edge_open", "edge_sealed"},
		{"pressure bar not installed", "edge_open", "edge_sealed"},
		{"next roll slipped behind the roll below", "lap_reversed", ""},
		{"the roll beneath is turned up over its bottom hem", "lap_reversed", ""},
		{"strip below set first, upper one laps over its top edge", "", "lap_reversed"},
		{"next roll laps over the roll below", "", "lap_reversed"},
		{"hoar on the parapet at 7 am", "frost", ""},
		{"no time to sweep it", "dirt_stays", ""},
		{"no answer from both makers", "answer_missing", ""},
		{"compatibility letter not requested", "answer_missing", ""},
		{"no answer from the supplier on delivery", "", "answer_missing"},
		{"no letter required, same maker", "", "answer_missing"},
		{"whichever primer the sub has on the truck", "open_choice", ""},
		{"bleed test not run", "not_tried", ""},
		{"panel of our own marble looked at after 6 weeks, no staining", "", "not_tried"},
		{"clean joint, no bleed", "", "not_tried"},
		{"without a stain test", "not_tried", ""},
		{"no staining panel made", "not_tried", ""},
		{"boards stored under tarps", "", "heated"},
		{"canvas tarps tied over it from 3 Jun", "covered_otherwise", ""},
		{"tarps not laid yet", "!covered_otherwise", "covered_otherwise"},
		{"tray runs into a closed corner", "!ends_open", "ends_open"},
		{"stop ends left out, soldered end boxes", "!ends_open !end_dam", "ends_open"},
		{"copper coping, soldered corners", "", "ends_open !ends_open"},
		{"in a heated tent", "heated", ""},
		{"elevator pit, east side", "below_grade", ""},
		{"basement walls", "below_grade", ""},
		{"top run first, then the next below, lap 50 mm over the front of the one above", "lap_reversed", ""},
		{"lapped 50 mm over the front of the one below", "", "lap_reversed"},
		{"timber siding is open jointed, 12 mm", "open_cover", ""},
		{"siding with closed joints", "", "open_cover"},
		{"membrane in sunlight for good", "stays_exposed", ""},
		{"jambs and heads first", "lap_reversed", "lap_shingled"},
		{"sill first, then jambs", "lap_shingled", "lap_reversed"},
		{"bronze fascia", "dark_color", ""},
		{"light bronze cap", "light_color", "dark_color"},
		{"bronze anchors", "", "dark_color"},
		{"foam plastics prohibited outboard of the studs", "noncombustible_insulation", ""},
		{"propane heat, enclosure kept at 55 F", "heated", ""},
		{"no hoarding, no heat", "!heated unheated", "heated"},
		{"tent struck before priming", "!heated", "heated"},
		{"never sees the sun", "shaded !sun_exposed", ""},
		{"west wall in direct sun", "sun_exposed", "shaded"},
		{"second shift, after dark", "night_work", ""},
		{"rolled on at 6:45 am", "morning_work", "mid_day"},
		{"crew starts 6:30 am", "morning_work", "mid_day"},
		{"start 12 May", "", "morning_work"},
		{"the 7 am reading counts", "coldest_counts", ""},
		{"Surface: temperature at dawn decides.", "coldest_counts", ""},
		{"log the 7 am reading", "", "coldest_counts"},
		{"Cold limits are checked against the mean minimum of each month", "month_low_counts", ""},
		{"Average lows govern, not the forecast.", "month_low_counts", ""},
		{"Plan by normal highs and lows", "", "month_low_counts"},
		{"Lap 150 mm minimum, checked on site", "", "month_low_counts"},
		{"crew starts 5:45 a.m. on the east side", "morning_work", ""},
		{"10 a.m. to 2 p.m. only", "mid_day", ""},
		{"start with bed A. M joints later", "", "morning_work"},
		{"pails stored in heated trailer", "", "heated"},
		{"sausages kept warm", "", "heated"},
		{"wall kept warm", "heated", ""},
		{"rolls stored in heated trailer, work in heated tent", "heated", ""},
		{"11 am to 2 pm only", "mid_day", ""},
		{"ponding on the slab", "surface_wet", ""},
		{"no standing water", "!surface_wet", "surface_wet"},
		{"wet cured under burlap", "water_cured", "surface_wet !surface_wet"},
		{"moisture meter used", "", "surface_wet"},
		{"rolled at 1.1 mm wet", "", "surface_wet"},
		{"12 mm of water, wet", "surface_wet", ""},
		{"bone dry", "surface_dry", ""},
		{"checked by wet-film comb, wet gage at hand", "", "surface_wet"},
		{"not yet dry", "surface_wet !surface_dry", "surface_dry"},
		{"stuck dry to block", "primer_none", "surface_dry !surface_dry"},
		{"hoarfrost in the joints", "frost", ""},
		{"ice chipped off before work", "!frost", "frost"},
		{"rolled down with a heated iron", "", "heated"},
		{"hot air on the rime, wiped", "!frost", "frost"},
		{"heat off, frost by noon", "frost", "!frost"},
		{"all sheets go on from the scaffolding", "from_outside", "indoors"},
		{"sealed from the room side", "indoors", "from_outside"},
		{"inside air seal, both legs", "indoors", ""},
		{"inner bead, tooled", "indoors", ""},
		{"inside corner of the pan", "", "indoors"},
		{"dk metal cap", "dark_color", ""},
		{"copings dk", "dark_color", ""},
		{"metal dk, 38 mm, acoustic", "", "dark_color"},
		{"panel lt gry", "light_color", "dark_color"},
		{"free from frost", "!frost", "frost"},
		{"the upper edge is left bare", "edge_open", ""},
		{"stops at the slab with neither a clamp nor a bead", "edge_open", ""},
		{"the top edge is plainly marked", "", "edge_open"},
		{"rain and frost held off by sheeting", "!frost", "frost"},
		{"blankets keep frost off", "!frost", "frost"},
		{"frost on the blocks, snow swept off", "frost", ""},
		{"keep from freezing", "keep_from_freezing", "frost"},
		{"chalky, laitance not ground", "dusty", "!dusty"},
		{"dust blown off", "!dusty", "dusty"},
		{"forms oiled", "release_oil", ""},
		{"no form oil used", "!release_oil", "release_oil"},
		{"release agent: none", "!release_oil", "release_oil"},
		{"tray runs out with its ends open", "ends_open", "end_dam"},
		{"cut off at piers, ends left open", "ends_open", "stays_exposed"},
		{"flat to the jambs, no upstand at ends", "ends_open", ""},
		{"dam at the north jamb only", "!end_dam", "end_dam"},
		{"tray runs on past the pier, far end open", "!end_dam", ""},
		{"end dams at both jambs", "end_dam", "!end_dam"},
		{"kraft face put to the sheathing", "facer_outward", "!facer_outward"},
		{"foil side in, taped", "!facer_outward", "facer_outward"},
		{"backer left out at the slab", "joint_unbacked", ""},
		{"block cells filled solid", "", "joint_unbacked"},
		{"ends boxed and soldered", "!ends_open", "ends_open"},
		{"sprayed cure and seal", "curing_compound", ""},
		{"cured without compound", "!curing_compound", "curing_compound"},
		{"old mastic to remain", "left_on existing", "removed"},
		{"old mastic scraped off", "removed", "left_on"},
		{"paint not removed", "left_on !removed", "removed"},
		{"sandblasted to bare steel", "removed", "bare_metal"},
		{"primer omitted", "primer_none", "primer_ok_without"},
		{"manufacturer: no primer needed", "primer_ok_without", ""},
		{"primed and covered the same day", "same_day", ""},
		{"primed the day before", "primed_ahead", ""},
		{"top edge loose", "edge_open", "edge_sealed"},
		{"foot of the lap left open", "", "stays_exposed"},
		{"PVC roof ends short of it", "no_contact", ""},
		{"RFI 12 answered 4 May: use the acrylic sheet", "change_accepted", ""},
		{"RFI 12 pending", "", "change_accepted"},
		{"last 6 in. stay open for the flashing", "", "stays_exposed"},
		{"butyl strip 4 in. wide over the top edge", "edge_sealed", ""},
		{"insulation was on before the pull test", "covered_early", ""},
		{"never tested, pavers already in", "covered_early", ""},
		{"not to be covered before the test", "", "covered_early stays_exposed"},
		{"backfill after the flood test", "", "covered_early"},
		{"doors went in before the sill pans", "out_of_order", ""},
		{"precast sill set last", "", "out_of_order"},
		{"sill strip set last", "out_of_order", ""},
		{"pan in before the doors", "", "out_of_order"},
		{"head tape put on before the jambs", "out_of_order", ""},
		{"head tape last, after the jambs", "", "out_of_order"},
		{"heads first, jambs next, 4 in. laps", "out_of_order", ""},
		{"jambs, then the sill strip over all last", "out_of_order", ""},
		{"trim the head first, then caulk at jambs", "", "out_of_order"},
		{"sill first, jambs over it, head last", "", "out_of_order"},
		{"sills last longest in stone", "", "out_of_order"},
		{"stone already laid before the flashing was in", "out_of_order", ""},
		{"two rips at the lintel not repaired", "flaw_left", ""},
		{"no rips or punctures", "", "flaw_left"},
		{"strip laid wrong side out", "flaw_left", ""},
		{"bond test failed at the foot", "bond_failed", ""},
		{"bond test passed", "", "bond_failed"},
		{"sealant does not bond to the backer", "", "bond_failed"},
		{"bead slides on the rod by design", "", "bond_failed"},
		{"gas heater for the hose", "", "heated"},
		{"heated hose and drums", "", "heated"},
		{"gas heaters on the wall", "heated", ""},
		{"nights turning frosty", "frosty_night", ""},
		{"sharp clear nights by then", "frosty_night", ""},
		{"done before the nights get frosty", "", "frosty_night"},
		{"no frosty nights", "", "frosty_night"},
		{"brick is up, inspector booked for the following day", "covered_early", ""},
		{"boarded the same day, review booked for the next", "covered_early", ""},
		{"reviewed on Monday, wool went on the next day", "", "covered_early"},
		{"wool goes on after the review", "", "covered_early"},
		{"creases in the lap left", "flaw_left", ""},
		{"no creases or open mouths", "", "flaw_left"},
		{"each next strip bonded onto the front of the one above", "lap_reversed", ""},
		{"each new course laps over the one below", "", "lap_reversed"},
		{"upper course stuck onto the face of the one below", "", "lap_reversed"},
		{"pressed on by hand only", "not_rolled", ""},
		{"roller was left behind", "not_rolled", ""},
		{"pressed by hand, then rolled", "", "not_rolled"},
		{"rolled with a 45 lb roller", "", "not_rolled"},
		{"hand roller", "", "not_rolled"},
		{"pails had been frozen in the container", "stock_frozen", ""},
		{"thawed and stirred", "stock_frozen", ""},
		{"frozen pails sent back", "", "stock_frozen"},
		{"not on frozen ground", "", "stock_frozen"},
		{"stored above freezing", "", "stock_frozen"},
		{"tape stored outdoors overnight", "stock_cold", ""},
		{"rolls left on the scaffold overnight", "stock_cold", ""},
		{"rolls from the warm box", "", "stock_cold"},
		{"rolls kept warm overnight", "", "stock_cold"},
		{"sun reaches it always", "shows_through", ""},
		{"light falls on the coat between the boards", "shows_through", ""},
		{"no sun reaches it, ever", "", "shows_through"},
		{"blades with 2 in open gaps", "open_cover", ""},
		{"battens at 16 in centers", "", "open_cover"},
		{"left bare over the winter", "bare_for_long", ""},
		{"left bare for the inspection", "", "bare_for_long"},
		{"no thermal barrier over the foam", "room_bare", ""},
		{"foam stays exposed to the room", "room_bare", ""},
		{"no gypsum on the foam", "room_bare", ""},
		{"no foam left exposed", "", "room_bare"},
		{"pails were past their date", "past_shelf", ""},
		{"waiver is expired", "", "past_shelf"},
		{"face wiped with paint thinner", "oily_wipe", ""},
		{"diesel heater outside the tent", "", "oily_wipe"},
		{"primer stood two days", "primed_ahead", ""},
		{"wall sheet left open", "stays_exposed", ""},
		{"flange left loose, lapped over the tray after", "", "edge_open"},
		{"flange left loose", "edge_open", ""},
		{"stripped in with a 6 in. cap strip", "edge_sealed", "removed"},
		{"rear leg 3-1/2\" lapped over the face of the wrap", "lap_reversed", ""},
		{"EPDM sits on the galv. angle only", "lies_elsewhere", ""},
		{"boot bears on the steel sleeve only", "lies_elsewhere", ""},
		{"urethane sealant in the brick joint only", "lies_elsewhere", ""},
		{"EPDM sits on the galv. angle", "", "lies_elsewhere"},
		{"poly film behind the drywall", "lies_elsewhere", ""},
		{"poly film behind the sheet", "", "lies_elsewhere"},
		{"silicone between mullion and glass only", "lies_elsewhere", ""},
		{"silicone at glazing alone", "lies_elsewhere", ""},
		{"the sheet is rolled first; the back leg was then bonded to its front face", "lap_reversed", ""},
		{"the sheet is lapped over the back leg and rolled on its face", "", "lap_reversed"},
		{"the back leg was then bonded to the block", "", "lap_reversed"},
		{"silicone at glass and at the sheet edge", "", "lies_elsewhere"},
		{"silicone to frame and sheet only", "", "lies_elsewhere"},
		{"no termination bar at head", "edge_open", "edge_sealed"},
		{"flap left loose until cladding", "", "edge_open"},
		{"worm clamp and mastic", "edge_sealed", "edge_open"},
		{"field sheet slipped behind the rear leg", "lap_reversed", ""},
		{"jambs over head", "lap_reversed", ""},
		{"field sheet carried down behind the upper edge of the base strip", "lap_reversed", ""},
		{"field sheet carried down over the upper edge of the base strip", "", "lap_reversed"},
		{"head tape on face of wrap, flap cut off", "lap_reversed", ""},
		{"head tape under the wrap flap", "", "lap_reversed"},
		{"upstand lapped on the face of the sheet", "lap_reversed", ""},
		{"form oil washed & ground", "removed", ""},
		{"each lower course is set over the one above", "lap_reversed", ""},
		{"lower pieces run on over the upper ones", "lap_reversed", ""},
		{"bottom strip laid on top of the upper one", "lap_reversed", ""},
		{"lower sheet first, then drain board on top", "", "lap_reversed"},
		{"upper course laps over the lower", "", "lap_reversed"},
		{"lowest run: bottom strip 4 in. over the footing strip", "", "lap_reversed"},
		{"bottom sheet laid onto the higher one", "lap_reversed", ""},
		{"lower piece set on top of the bottom edge of its neighbor", "lap_reversed", ""},
		{"sill pan wet tested", "", "surface_wet"},
		{"damp at noon, held off three hours with heaters", "!surface_wet", ""},
		{"wrapped ahead of the rain", "", "surface_wet"},
		{"rain overnight", "surface_wet", ""},
		{"heated beneath", "", "heated"},
		{"all of the insulation outboard", "studs_empty", ""},
		{"bottom strip set 100 mm on top of the one before", "lap_reversed", ""},
		{"valve pit, hatch and lid closed", "closed_space", ""},
		{"plant room roof, open to the sky", "", "closed_space"},
		{"seams run level, bottom over top", "lap_reversed", ""},
		{"top strip stuck first, bottom tucked under it", "", "lap_reversed"},
		{"head over jambs", "lap_shingled", "lap_reversed"},
		{"back leg up behind the frame", "", "lap_reversed"},
		{"projects 1/2 in. beyond veneer face", "runs_past_face", ""},
		{"held 3/4 in. back from the stone", "held_back", "runs_past_face"},
		{"zinc slatted screen", "open_cover", ""},
		{"terracotta, open-joint panels", "open_cover", ""},
		{"closed joint panels", "!open_cover", "open_cover"},
		{"insect screen over the vent", "", "open_cover"},
		{"clear anodised frame", "", "no_contact"},
		{"copper drip bedded in mastic", "drip_edge", "!drip_edge"},
		{"no metal drip", "runs_past_face !drip_edge", "drip_edge"},
		{"kept under water two days, no drip seen from the room", "", "runs_past_face"},
		{"ends dammed", "end_dam", ""},
		{"closed-cell backer rod", "", "joint_unbacked"},
		{"no backer rod on hand, gunned straight in", "joint_unbacked", "!joint_unbacked"},
		{"rod left out at the jambs", "joint_unbacked", ""},
		{"sealant packed in against the back of the slot", "joint_unbacked", ""},
		{"pumped full depth", "joint_unbacked", ""},
		{"bead bonded on three sides", "joint_unbacked", ""},
		{"slip tape to prevent three-sided adhesion", "", "joint_unbacked"},
		{"no depth for a rod", "", "joint_unbacked"},
		{"no threaded rods here", "", "joint_unbacked"},
		{"remains visible for good", "stays_exposed", ""},
		{"never left exposed", "!stays_exposed never_exposed", "stays_exposed"},
		{"charcoal metal cap", "dark_color", ""},
		{"black mastic", "", "dark_color !dark_color"},
		{"off-white panel", "light_color", ""},
		{"no vent gap", "laid_direct !vented", "vented"},
		{"on ventilated battens", "vented", "laid_direct"},
		{"steel to steel", "metal_to_metal", ""},
		{"nowhere near the membrane", "no_contact", ""},
		{"cladding date not confirmed by the CM", "", "by_others"},
		{"flashing by the roofer", "by_others", ""},
		{"clear anodized", "", "no_contact"},
		{"nylon washers under heads", "separator", ""},
		{"slip sheet deleted", "!separator deleted", "separator"},
		{"within the glazing pocket", "inside_pocket", ""},
		{"cast into the slab", "embedded", ""},
		{"cast-in-place wall", "", "embedded !embedded"},
		{"backfilled in June", "below_grade", ""},
		{"wrapped scaffold, shade cloth", "covered_otherwise", ""},
		{"line voided by bulletin 4", "deleted", ""},
		{"alternate product in lieu of spec", "substitution", ""},
		{"using up leftover rolls", "use_up_stock", ""},
		{"probe test passed", "moisture_tested", ""},
		{"moisture test failed", "!moisture_tested", "moisture_tested"},
		{"check surface temperature with IR gun", "surface_checked", ""},
		{"deck verified above 5 °C before each roll", "surface_checked", ""},
		{"wall checked over 40 F each morning", "surface_checked", ""},
		{"surface must stay above 40 F", "", "surface_checked"},
		{"wall checked for voids above grade", "", "surface_checked"},
		{"compatibility letter received", "letter_on_file", ""},
		{"letter pending", "!letter_on_file", "letter_on_file"},
		{"letter L-7 of 3 May allows it on the sheet", "letter_on_file", ""},
		{"permitted by the sheet maker's letter", "letter_on_file", ""},
		{"letter of 3 May does not allow it", "!letter_on_file", "letter_on_file"},
		{"letter to confirm", "", "letter_on_file"},
		{"tail slipped behind course 1 upper edge", "lap_reversed", ""},
		{"lower edge of the new strip laps over the top edge", "", "lap_reversed"},
		{"bottom edge set in bead", "", "lap_reversed"},
		{"P-3 on the facer per joint maker's letter K-2", "letter_on_file", ""},
		{"per letter K-2", "letter_on_file", ""},
		{"confirm by letter", "", "letter_on_file"},
		{"per letter requested 4 May", "!letter_on_file", "letter_on_file"},
		{"maker's letter refuses EPDM", "", "letter_on_file"},
		{"not until the maker's letter permits", "", "letter_on_file"},
		{"ditto", "same_as", ""},
		{"furnished by the glazier", "by_others", ""},
		{"to be selected", "unknown", ""},
		{"set in fresh mortar", "wet_mortar", ""},
		{"uncoated steel", "bare_metal", ""},
		{"soft vinyl", "plasticized", ""},
		{"unplasticised pipe", "!plasticized", "plasticized"},
		{"batts in the studs, vinyl wallcovering", "studs_filled vapor_closed_inside", "studs_empty"},
		{"studs left empty", "studs_empty", "studs_filled"},
		{"EPDM not allowed", "!is_fine", "is_fine"},
		{"no primer on clean steel", "clean primer_none", "!clean"},
		{"free of frost at noon", "!frost mid_day", "!mid_day"},
		{"not fully dry", "!surface_dry", "surface_dry"},
		{"block 6 weeks old", "", "existing !existing"},
		{"brick veneer, 4 in. laps", "", "edge_open frost heated"},
	} {
		t.Run(tc.text, func(t *testing.T) {
			var got []string
			for _, s := range r.Signals(tc.text) {
				id := s.ID
				if s.No {
					id = "!" + id
				}
				got = append(got, id)
				if s.Text != tc.text[s.Start:s.End] {
					t.Errorf("signal %s is not at its span", id)
				}
			}
			for _, w := range strings.Fields(tc.want) {
				if !slices.Contains(got, w) {
					t.Errorf("%s is missing in %v", w, got)
				}
			}
			for _, w := range strings.Fields(tc.not) {
				if slices.Contains(got, w) {
					t.Errorf("%s is wrong in %v", w, got)
				}
			}
		})
	}
}

// TestSignalWords reads each pattern without wildcards as a text of its own:
// one that states a signal must state it, one that denies it must deny it, one
// for something else must do neither.
func TestSignalWords(t *testing.T) {
	r := reader(t)
	var words struct {
		Signals signalData `json:"signals"`
	}
	if err := knowledge.Read(policies.FS, "read word list", "knowledge/signals.json", &words); err != nil {
		t.Fatal(err)
	}
	plain := 0
	for id, s := range words.Signals.List {
		for want, patterns := range map[string][]string{"stated": s.Say, "denied": s.Deny, "silent": s.Other} {
			for _, p := range patterns {
				if strings.ContainsAny(p, "[]()|*#.,?") {
					continue
				}
				plain++
				got := "silent"
				for _, found := range r.Signals(p) {
					if found.ID == id && found.No {
						got = "denied"
					} else if found.ID == id {
						got = "stated"
					}
				}
				if got != want {
					t.Errorf("%s: %q is %s, want %s", id, p, got, want)
				}
			}
		}
	}
	if plain < 300 {
		t.Errorf("only %d plain patterns", plain)
	}
}

func TestPatterns(t *testing.T) {
	r := reader(t)
	for _, tc := range []struct {
		pattern, text string
		want          bool
	}{
		{"held [well] back", "held back", true},
		{"held [well] back", "held well back", true},
		{"held [well] back", "held far back", false},
		{"(ground|washed) off", "washed off", true},
		{"(ground|washed [right]) off", "washed right off", true},
		{"clamp* to", "clamped to", true},
		{"lap* .. over", "laps 4 in. down over", true},
		{"lap* .. over", "laps; all over", false},
		{"# am", "10 am", true},
		{"frost free", "frost-free", true},
		{"a|b", "b", true},
		{"[a] [b] c", "c", true},
	} {
		m := newMatcher()
		if err := m.add(0, tc.pattern); err != nil {
			t.Fatal(err)
		}
		if got := len(m.find(r.view(scan(tc.text)))) > 0; got != tc.want {
			t.Errorf("%q in %q: got %v", tc.pattern, tc.text, got)
		}
	}
	for _, bad := range []string{"(a", "a]", "[a]", "", ".. a", "(a|b"} {
		if err := newMatcher().add(0, bad); err == nil {
			t.Errorf("pattern %q is accepted", bad)
		}
	}
}

// A figure and the joint that a layer lies so far from: the bead of the joint does not reach
// it; what laps so far past the joint covers it.
func TestKeptFromAJoint(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"membrane 100 below the seam":            true,
		"sheet 80 mm behind bead":                true,
		"sheet laps 100 below the seam":          false,
		"membrane extends 80 mm behind the bead": false,
	} {
		got := false
		for _, s := range r.Signals(text) {
			got = got || s.ID == "no_contact" && !s.No
		}
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// Heat is told by what it comes from, by how long it is on, or by what is held; a closed
// hoarding shelters, and gas that is only laid on heats nothing.
func TestHeldHeat(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"under closed hoarding, oil heaters":   true,
		"gas heat day and night":               true,
		"10 °C kept on the deck till cured":    true,
		"within a sealed enclosure, 12 C held": true,
		"gas main passes below":                false,
		"door kept closed, no gas heat":        false,
	} {
		got := false
		for _, s := range r.Signals(text) {
			got = got || s.ID == "heated" && !s.No
		}
		if got != want {
			t.Errorf("%q: heated %v", text, got)
		}
	}
}

// A bead that is not bonded to its rod is as it should be; a sheet that is not bonded to
// the wall is not.
func TestNotBondedToARod(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"bead not adhered to the backer rod":      false,
		"sealant never bonded to closed-cell rod": false,
		"not bonded here, by design":              false,
		"sheet not adhered to block":              true,
		"lap not bonded at corner":                true,
	} {
		got := false
		for _, s := range r.Signals(text) {
			got = got || s.ID == "bond_failed" && !s.No
		}
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// Boards with open joints let daylight in, and a sheet may be said to be seen there; the
// number of a tag is no count of what stands beside it.
func TestOpenJoints(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"larch boards, 8 open joints":                  "open_cover",
		"zinc cassettes w/ 15 mm open joints":          "open_cover",
		"clay brick, open head joints at 600":          "",
		"panels, closed joints":                        "",
		"membrane seen in the gaps":                    "shows_through",
		"joints show the sheet":                        "shows_through",
		"no sheet visible at the joints":               "!shows_through",
		"sheet not visible between boards":             "!shows_through",
		"bead visible at joints":                       "",
		"tiles with sheet exposed at 10 joints":        "shows_through",
		"sheet exposed at joints until slots are shut": "shows_through",
		"RF-4 above": "lies_above",
		"4 above":    "",
	} {
		var got []string
		for _, s := range r.Signals(text) {
			if s.ID == "open_cover" || s.ID == "shows_through" || s.ID == "lies_above" {
				got = append(got, map[bool]string{true: "!"}[s.No]+s.ID)
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// Notes may let nothing meet without a letter.
func TestLettersOnly(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"no letter: no use":                          true,
		"contact only where both makers sent letter": true,
		"each pair needs its own letter":             true,
		"letters required for any other contact":     true,
		"letter on file for each sheet":              false,
		"no contact with the sheet":                  false,
	} {
		got := false
		for _, s := range r.Signals(text) {
			got = got || s.ID == "letters_only" && !s.No
		}
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// Rain on a wall nobody lets dry leaves it wet; oil of the mill is oil until it is wiped off.
func TestWetOrOilyFace(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"block dark from the showers":                      "surface_wet",
		"rained all night, crew cannot wait for it to dry": "surface_wet no:surface_dry",
		"starts before the face is dry":                    "no:surface_dry",
		"do not roll before the face is dry":               "",
		"waited two days, dry":                             "surface_dry",
		"steel deck, rolling oil on it":                    "release_oil",
		"rolling oil, acetone wipe":                        "release_oil no:release_oil",
		"oil wiped off":                                    "no:release_oil",
		"no wipe in the price":                             "",
		"oil-based paint":                                  "",
	} {
		got := map[string]bool{}
		for _, s := range r.Signals(text) {
			switch s.ID {
			case "surface_wet", "surface_dry", "release_oil":
				got[map[bool]string{true: "no:"}[s.No]+s.ID] = true
			}
		}
		for _, w := range strings.Fields(want) {
			if !got[w] {
				t.Errorf("%s: no %s in %v", text, w, got)
			}
			delete(got, w)
		}
		if len(got) > 0 {
			t.Errorf("%s: %v besides", text, got)
		}
	}
}

// A bead is fresh where the words say so, and no longer where it cured or is days old.
func TestFreshBead(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"soft bead of the glazier":           "yes",
		"tooled into one another":            "yes",
		"foam goes in before the bead skins": "yes",
		"silicone has not yet cured":         "yes",
		"bead 10 days old":                   "no",
		"foam once the silicone has cured":   "no",
		"sealant bead":                       "",
		"fresh mortar":                       "",
	} {
		got := ""
		for _, s := range r.Signals(text) {
			if s.ID == "bead_fresh" {
				got = map[bool]string{true: "no", false: "yes"}[s.No]
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

// What a row says of the face under a sheet, and of what was not tried there.
func TestFacesAndTrials(t *testing.T) {
	r := reader(t)
	ids := map[string]bool{"dirt_stays": true, "release_oil": true, "waxed_face": true, "not_tried": true}
	for text, want := range map[string]string{
		"CMU, white with chalk dust":                       "dirt_stays",
		"slab edge caked with mud":                         "dirt_stays",
		"no one brushed it":                                "dirt_stays",
		"a little dust, blown off":                         "!dirt_stays",
		"thick dust, vacuumed off first":                   "dirt_stays !dirt_stays",
		"new zinc sheet, cutting oil on it":                "release_oil",
		"steel angle with a film of grease":                "release_oil",
		"deck pan, mill oil wiped off with solvent":        "!release_oil !dirt_stays",
		"galvanized, degreased":                            "!release_oil",
		"oil canning of the panels":                        "",
		"plywood, waxed face to the weather":               "waxed_face",
		"strand board, slick side out":                     "waxed_face",
		"OSB, textured side out":                           "!waxed_face",
		"waxed release paper":                              "",
		"no bleed test made on the granite":                "not_tried",
		"stain test outstanding":                           "not_tried",
		"stain trial done, no staining on the marble":      "!not_tried",
		"no pull test yet":                                 "",
		"not tested on this marble, mock-up not asked for": "not_tried",
	} {
		var got []string
		for _, s := range r.Signals(text) {
			if id := map[bool]string{true: "!"}[s.No] + s.ID; ids[s.ID] && !slices.Contains(got, id) {
				got = append(got, id)
			}
		}
		slices.SortFunc(got, func(a, b string) int { return strings.Compare(b, a) })
		if strings.Join(got, " ") != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// A note that allows nothing tight on the room side, by its permeance or its class.
func TestOneTightLayer(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"no further film below 6 ng inside of the sheet":       true,
		"nothing under 1 perm on the room side":                true,
		"no finish on the inside face under 0.5 perm":          true,
		"no class I material inboard of WR-2":                  true,
		"no sheet under 10 perm over wood sheathing":           false,
		"no second layer of felt":                              false,
		"nothing under 40 F inside":                            false,
		"no finish coat on the room side until it is below 5%": false,
	} {
		got := false
		for _, s := range r.Signals(text) {
			got = got || s.ID == "one_tight_layer" && !s.No
		}
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// Studs that were empty and get filled are filled.
func TestStudsGetFilled(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"empty cavities to be packed with wool": "studs_filled !studs_empty",
		"stud bays stuffed":                     "studs_filled",
		"empty studs":                           "studs_empty",
	} {
		var got []string
		for _, s := range r.Signals(text) {
			if s.ID == "studs_filled" || s.ID == "studs_empty" {
				got = append(got, map[bool]string{true: "!"}[s.No]+s.ID)
			}
		}
		slices.SortFunc(got, func(a, b string) int { return strings.Compare(b, a) })
		if strings.Join(got, " ") != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// Whoever buys may choose, with and without a word on who answers for it.
func TestOpenChoice(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"PR-4 or whatever the store has":          "open_choice",
		"any similar brand is fine":               "open_choice",
		"maker left open":                         "open_choice",
		"installer's choice of sealant":           "open_choice",
		"any equal product approved by architect": "!open_choice",
		"or approved equal":                       "",
		"or equal, by submittal":                  "!open_choice",
		"no substitutes":                          "!open_choice",
		"any other sheet would be too tight":      "",
		"joints open":                             "",
		"use what is left of the roll, then SA-2": "",
		"product data open on the desk":           "",
	} {
		var got []string
		for _, s := range r.Signals(text) {
			if s.ID == "open_choice" {
				got = append(got, map[bool]string{true: "!"}[s.No]+s.ID)
			}
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// Several things that are missing at an edge, primer that waits for a night, a leg over the
// sheet that was on before it, and weeps; with words that only look like them.
func TestEdgesLegsAndWeeps(t *testing.T) {
	r := reader(t)
	watched := []string{"edge_open", "primed_ahead", "lap_reversed", "weeps"}
	for text, want := range map[string]string{
		"top: no bead or bar":                                     "edge_open",
		"no clamp, no mastic at the head":                         "edge_open",
		"leading edge was not sealed":                             "edge_open",
		"leading edges sealed each day":                           "",
		"primed 4 May, sheeted the following morning":             "primed_ahead",
		"primed the evening before, no repriming":                 "primed_ahead",
		"primed 4 May, covered the next day with wool":            "",
		"primed and sheet on same day":                            "!primed_ahead",
		"membrane was up, so the upturn was set over it":          "lap_reversed",
		"back leg face mounted on the membrane":                   "lap_reversed",
		"membrane was up, so the upturn was slipped in behind it": "",
		"leg surface mounted on block":                            "",
		"dams at both ends, weep holes not shown":                 "!weeps",
		"without weeps":                                           "!weeps",
		"weep vents at 600":                                       "weeps",
		"no weeps plugged":                                        "",
	} {
		if got := strings.Join(heard(r, text, watched), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// What British notes call an AVCL stands where they say; a metal coated for its bed is
// no bare one.
func TestBritishLayers(t *testing.T) {
	r := reader(t)
	watched := []string{"tight_warm_only", "vapor_closed_inside", "coated_in_mortar"}
	for text, want := range map[string]string{
		"VCL to the warm side only":                   "tight_warm_only",
		"vapour control layer only on the inner face": "tight_warm_only",
		"VCL on the warm side, lapped 150":            "",
		"Warm side: VCL as section":                   "vapor_closed_inside",
		"inside: plasterboard only":                   "",
		"flashing painted all sides before bedding":   "coated_in_mortar",
		"flashing painted all sides at the works":     "",
		"not painted all sides where in mortar":       "!coated_in_mortar",
	} {
		if got := strings.Join(heard(r, text, watched), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// Snow and ice that are taken off are off, whichever word stands first; work done before
// the snow meets none.
func TestTakenOffTheFace(t *testing.T) {
	r := reader(t)
	watched := []string{"frost", "surface_wet", "surface_dry"}
	for text, want := range map[string]string{
		"scrape off rime, prime":            "!frost",
		"knock the ice off first":           "!frost",
		"swept loose snow away":             "!surface_wet",
		"sweep off standing water":          "!surface_wet",
		"up b4 the snow":                    "",
		"all in before first frost":         "",
		"rime in the reveals":               "frost",
		"broom left on the snow":            "surface_wet",
		"brushed the dust, ice in the keys": "frost",
		"wipe rime with a rag, keep going":  "frost",
	} {
		if got := strings.Join(heard(r, text, watched), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// Words that a log cuts short count as the whole ones, in any pattern; a short word in
// capitals is another.
func TestWordsCutShort(t *testing.T) {
	r := reader(t)
	watched := []string{"lap_reversed", "frost", "surface_wet"}
	for text, want := range map[string]string{
		"lwr sheet lapped ovr face of upr sheet":  "lap_reversed",
		"Lwr piece set on top of btm edge of one": "lap_reversed",
		"upr laps ovr lwr":                        "",
		"HD over jambs":                           "",
		"all up b4 snow":                          "",
	} {
		if got := strings.Join(slices.Compact(heard(r, text, watched)), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// What is wet is the coat, or the sponge that finds its holes, and not the face below.
func TestWetCoat(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"30 by gauge, wet 42 avg":                    "",
		"stroked again while the film was still wet": "",
		"voids traced by a moist sponge":             "",
		"sprayed wet on wet":                         "",
		"crater stroked out while wet":               "",
		"laid while wet":                             "surface_wet",
		"sprayed on wet block":                       "surface_wet",
		"block wet 2 days":                           "surface_wet",
	} {
		if got := strings.Join(heard(r, text, []string{"surface_wet"}), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// The foot of one sheet behind the head of the next runs against the water; so does the head
// of the lower over the foot of the upper.
func TestFootBehindHead(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"foot of the roof-side strip slid behind the head of the next": "lap_reversed",
		"lower edge of upr membrane is set inside top edge of lwr":     "lap_reversed",
		"head of wall sheet stuck 4 in. over foot of parapet sheet":    "lap_reversed",
		"bottom of the parapet sheet lapped over top of wall sheet":    "",
		"head of the lower strip set behind the foot of the next":      "",
		"bottom edge of sheet sealed to top of footing":                "",
	} {
		if got := strings.Join(slices.Compact(heard(r, text, []string{"lap_reversed"})), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// End dams by their letters, and a film on the inner face.
func TestShortWordsOfDams(t *testing.T) {
	r := reader(t)
	watched := []string{"end_dam", "vapor_closed_inside"}
	for text, want := range map[string]string{
		"ends at jambs w/o E.D.":        "!end_dam",
		"pan 26 ga, e.d. 2 in.":         "end_dam",
		"10 mil poly on the inner face": "vapor_closed_inside",
		"poly int. face":                "vapor_closed_inside",
		"poly outer face":               "",
		"see Ed for the key":            "",
	} {
		if got := strings.Join(slices.Compact(heard(r, text, watched)), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// Work that starts in the morning, in short words.
func TestStartsInTheMorning(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"began a.m., sunny side first": "morning_work",
		"laid in the a.m.":             "morning_work",
		"AM shift":                     "morning_work",
		"start p.m.":                   "",
		"AM-1 set":                     "",
	} {
		if got := strings.Join(slices.Compact(heard(r, text, []string{"morning_work"})), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// heard lists the signals of a text that are watched, "!" before those that it denies.
func heard(r *Reader, text string, watched []string) []string {
	var got []string
	for _, s := range r.Signals(text) {
		if slices.Contains(watched, s.ID) {
			got = append(got, map[bool]string{true: "!"}[s.No]+s.ID)
		}
	}
	return got
}

// Primer of one day of the week and the sheet of another; both of one day are in order.
func TestPrimedOnAWeekday(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"primed Tue, sheeted Fri":                 "primed_ahead",
		"prime on Wed. pm and sheet on Saturday":  "primed_ahead",
		"primer Mon; strip Wed, not primed again": "primed_ahead",
		"primed Tue am, sheeted Tues pm":          "",
		"prime Thursday, sheet on Thu":            "",
		"sheet on Monday, cover Thursday":         "",
		"primed again Mon, sheet on the same day": "",
		"primed Mon, reprimed Wed, sheet on Wed":  "",
		"primed Mon, covered Thu with the boards": "",
	} {
		if got := strings.Join(slices.Compact(heard(r, text, []string{"primed_ahead"})), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// A sheet that ends so far short of another, or of which it is said that they do not touch,
// is kept clear; beads in the joints of a metal meet metal alone, those of other joints do not.
func TestEndsShortAndJointsOfMetal(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"roof sheet ends 35 below":        "no_contact",
		"roofing quits 2 in above":        "no_contact",
		"turned down behind it, no touch": "no_contact",
		"laps 35 below the other":         "",
		"no touch-up of the paint":        "",
		"cap joints in SL-4":              "metal_to_metal",
		"gutter seams in two beads":       "metal_to_metal",
		"sheet joints in SL-4":            "",
	} {
		got := ""
		for _, s := range r.Signals(text) {
			if (s.ID == "no_contact" || s.ID == "metal_to_metal") && !s.No {
				got = s.ID
			}
		}
		if got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// A course over the lower edge of the one before it laps against the water; a tent for rain
// or wind holds no heat.
func TestOverItsLowerEdge(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"from the top; following strip lapped onto its lower edge": "lap_reversed",
		"following strip lapped onto the one below":                "",
		"tents when raining":                                       "",
		"enclosure against wind":                                   "",
		"under a tent, 8 C":                                        "heated",
		"in a tent":                                                "heated",
	} {
		got := ""
		for _, s := range r.Signals(text) {
			if (s.ID == "lap_reversed" || s.ID == "heated") && !s.No {
				got = s.ID
			}
		}
		if got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// What is kept from the rain is not wet, and what is tented against it alone holds no heat.
func TestKeptFromRain(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"covered from the rain":     "",
		"tarped against snow":       "",
		"rain overnight":            "surface_wet",
		"tented against the rain":   "",
		"tented, 12 C":              "heated",
		"block wet from the shower": "surface_wet",
	} {
		got := ""
		for _, s := range r.Signals(text) {
			if (s.ID == "surface_wet" || s.ID == "heated") && !s.No {
				got = s.ID
			}
		}
		if got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// The facer of batts on the side of the sheathing, or out, is on the cold side.
func TestFacerOut(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"foil put at the cold side, plain face to the board": true,
		"facing outward":                       true,
		"kraft stapled at the stud faces":      false,
		"paper to the room":                    false,
		"kraft lapped on the side of the stud": false,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "facer_outward" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// At a head the wall sheet comes down over the strip; at a sill the strip goes over the sheet below it.
func TestHeadStripOnTheWrap(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"head tape taped to the face of the housewrap":       true,
		"upper edge of the flashing run over the felt":       true,
		"head flap of the wrap taped over the strip":         false,
		"sill strip laps over the felt below":                false,
		"top edge of the strip under the wrap":               false,
		"head strip set on the plywood, wrap flap over":      false,
		"top edge of strip set, housewrap brought over that": false,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "lap_reversed" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// A sheet cut short is a sheet.
func TestSheetCutShort(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"lower sht lapped over the upper": true,
		"lower shts run over the upper":   true,
		"upper sht lapped over the lower": false,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "lap_reversed" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// A wall that has nothing tight inside bars a second barrier.
func TestNothingTightInside(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"nothing vapor-tight on the room side": true,
		"no film tighter inside":               true,
		"nothing inboard but paint":            false,
		"tight film inboard":                   false,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "one_tight_layer" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// A bar presses a bead while it is soft, or the bead goes on top of it.
func TestBarAfterTheBead(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"mastic gunned and skinned over; bar to be fastened Tuesday": true,
		"termination bar fixed once the sealant has cured":           true,
		"bar pinned over the hard bead":                              true,
		"bar fixed, then a bead on its top edge":                     false,
		"bar pressed into the wet mastic":                            false,
		"bar fixed after the primer has dried":                       false,
		"bar screwed on first, bed of mastic to follow":              true,
		"bar goes up first, sealant pushed in behind it":             true,
		"mastic bed run in after the bar":                            true,
		"the bed comes first, then the bar":                          false,
		"bar first, then a bead on its top edge":                     false,
		"bar fixed first at the corners, insulation to follow":       false,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "out_of_order" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// Rolls and lengths come in courses as sheets do, the foot of the upper one behind the head
// of the lower one against the water.
func TestRollBehindTheOneBelow(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"higher length slid in behind the head of the lower length":    true,
		"upper row pushed inside the upper edge of the row below":      true,
		"upper rolls tucked behind the tops of the lower ones":         true,
		"upper roll laps the top edge of the lower one, bar behind it": false,
		"upper roll down over the top edge of the roll below":          false,
		"lower roll tucked behind the foot of the upper roll":          false,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "lap_reversed" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// What is done in a shop has the air of that and not of the site; stock that waits in one
// goes out to the site.
func TestWorkInAShop(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"unitized frames, workshop held at 65 F":      true,
		"factory @ 18 C, two shifts":                  true,
		"sealed in the fabricator's shop, 3 wk cure":  true,
		"shop glazed units":                           true,
		"tubes stored in the shop at 20 C":            false,
		"rolls from the plant at 18 C":                false,
		"shop primed steel":                           false,
		"shop drawings at 50 %":                       false,
		"metal shop bent, set on site":                false,
		"touch up at the plant gate 20 m from corner": false,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "heated" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// A bead that is kept off a finished face or a weep leaves no edge open.
func TestNoBeadOnAFinishedFace(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"no bead on the anodized face":        false,
		"no mastic over coated metal":         false,
		"no sealant at exposed edges":         true,
		"no sealant in the weeps":             false,
		"no mastic on the drip":               false,
		"no sealant at top edge":              true,
		"no bead at the head":                 true,
		"no mastic on it, painted face below": true,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "edge_open" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// Clear is the color of a sealant too, which is then kept off nothing.
func TestClearSealant(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"neutral-cure silicone, clear":        false,
		"urethane, clear, tooled":             false,
		"one-part acetoxy clear at the sill":  false,
		"clear structural silicone":           false,
		"clear lacquer on bronze":             false,
		"silicone, clear of the sheet":        true,
		"bead clear of the gasket":            true,
		"acid-cure silicone kept clear there": true,
		"sealant well clear":                  true,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "no_contact" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// A board of the room on furring has no outside air behind it, as a cladding has.
func TestRoomBoardOnFurring(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"drywall on 1-5/8 in. furring":     false,
		"gyp. board on hat channels":       false,
		"plaster on metal furring":         false,
		"fiber-cement boards on furring":   true,
		"zinc tiles on hat channels":       true,
		"gypsum sheathing, ventilated gap": true,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "vented" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// A part of a sheet is left loose with its release film on until what it laps over is in: an order of work. With no
// word of what comes after, its edge is open; and a film left on what is stuck down is a flaw.
func TestFilmLeftOnAFlap(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]string{
		"lower 200 mm kept loose with the backing paper on, then rolled down onto the tray": "",
		"skirt left loose w/ release film still on, set over the base flashing later":       "",
		"tail held loose with its liner on until the pan is in":                             "",
		"release paper left on until the sill is flashed":                                   "",
		"lower 200 mm left loose with the release film on":                                  "edge_open",
		"release film left on at the jamb":                                                  "flaw_left",
		"release film left on":                                                              "flaw_left",
		"backing paper still on under the strip":                                            "flaw_left",
	} {
		got := ""
		for _, s := range r.Signals(text) {
			if (s.ID == "edge_open" || s.ID == "flaw_left") && !s.No {
				got += s.ID
			}
		}
		if got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// What a joint's backing does not hold to is as it is to be; a sealant that does not hold is at fault.
func TestBackingDoesNotStick(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"backer rod will not bond, as it should":       false,
		"the release tape doesn't adhere":              false,
		"foam rod that must not stick":                 false,
		"sealant will not bond at the third bay":       true,
		"bead past the rod does not grip, won't stick": true,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "bond_failed" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// A sheet from above that ends behind the top of a flashing leads the water behind it.
func TestTuckedBehindTopEdge(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"wrap slips behind the upper edge of the head tape":     true,
		"felt was pushed down behind the top edge of the strip": true,
		"flashing tucked behind the lower edge of the sheet":    false,
		"sheet laps over the top edge of the flashing":          false,
		"not tucked behind the top edge of the flashing":        false,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "lap_reversed" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// Work that is free of a tent has none.
func TestTentFree(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"west wall, hoarding-free": false, "tent-free work in March": false, "free-standing tent over the bay": true, "tented, frost-free": true,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "heated" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// The lower of two sheets, put on after the upper one and over it, leads the water behind both; so does
// the leg of a flashing that is left on the face of the sheet.
func TestLowerOverTheFirst(t *testing.T) {
	r := reader(t)
	for text, want := range map[string]bool{
		"top lift stuck first, bottom lift brought up over it last":    true,
		"upper row laid first, lower row lapped up 3 in over it later": true,
		"lower lift stuck first, then the top lift brought over it":    false,
		"flashing set first, lower course run over it":                 false,
		"upper row laid first, lower row slipped up behind it":         false,
		"upstand stays on the outer face of the membrane":              true,
		"upper edge ended on the outside of the wrap":                  true,
		"top edge sealed on the outside of the frame":                  false,
		"bottom edge left on the outside of the wrap":                  false,
	} {
		got := slices.ContainsFunc(r.Signals(text), func(s Signal) bool { return s.ID == "lap_reversed" && !s.No })
		if got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}
