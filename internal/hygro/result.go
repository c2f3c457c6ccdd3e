package hygro

// Result is the section as computed. Pointers are null where a figure is not
// known. Layers are numbered from 0, room side first.
type Result struct {
	Known      bool           `json:"known"`   // every counted layer is known, the year was computed
	Thermal    bool           `json:"thermal"` // every counted resistance is known
	Missing    []Missing      `json:"missing"`
	Conditions Echo           `json:"conditions"`
	Layers     []LayerResult  `json:"layers"`
	RTotal     *float64       `json:"r_total_m2kw"` // with surfaces
	SdTotal    *float64       `json:"sd_total_m"`
	Share      *Share         `json:"share"`
	TightPairs []TightPair    `json:"tight_pairs"`
	Surface    *SurfaceResult `json:"surface"`
	StartMonth int            `json:"start_month"` // 1 to 12; 0 if no water gathers
	Months     []Month        `json:"months"`      // January first; empty if not known
	Planes     []Plane        `json:"planes"`
	PeakGM2    *float64       `json:"peak_g_m2"`
	PeakMonth  int            `json:"peak_month"`
	LeftGM2    *float64       `json:"left_g_m2"` // still there after twelve months
	DriesOut   *bool          `json:"dries_out"`
	Sets       []string       `json:"sets"`
	Notes      []Note         `json:"notes"`
	surfaceWet bool
}

// Missing names what is not known of a layer and what to state.
type Missing struct {
	Layer int    `json:"layer"`
	Name  string `json:"name"`
	What  string `json:"what"` // thickness, resistance, vapor
	Text  string `json:"text"`
}

// Echo repeats the conditions that were used.
type Echo struct {
	OutC      [12]float64 `json:"out_c"`
	OutRH     [12]float64 `json:"out_rh"`
	InC       [12]float64 `json:"in_c"`
	InRH      [12]float64 `json:"in_rh"`
	Class     string      `json:"class"`
	Estimated bool        `json:"estimated"`
	Element   string      `json:"element"`
	Rsi       float64     `json:"rsi_m2kw"`
	Rse       float64     `json:"rse_m2kw"`
}

// LayerResult is a layer with the figures used and where each came from.
type LayerResult struct {
	Index       int      `json:"layer"`
	Name        string   `json:"name"`
	Family      string   `json:"family"`
	Counted     bool     `json:"counted"`
	Why         string   `json:"why_not_counted"`
	Known       bool     `json:"known"`
	ThicknessMM *float64 `json:"thickness_mm"`
	ThicknessBy string   `json:"thickness_by"` // stated, resistance, usual, "" unknown or not needed
	R           *float64 `json:"r_m2kw"`
	RBy         string   `json:"r_by"` // stated, table, ""
	RSource     string   `json:"r_source"`
	SdM         *float64 `json:"sd_m"`
	PermeanceNG *float64 `json:"permeance_ng"`
	VaporBy     string   `json:"vapor_by"` // stated, table, ""
	VaporSource string   `json:"vapor_source"`
	Set         string   `json:"set"`
	Procedure   string   `json:"procedure"`
	VaporClass  string   `json:"vapor_class"` // I, II, III, none; "" unknown
	Also        string   `json:"also"`

	Insulation        bool `json:"insulation"`
	MoistureSensitive bool `json:"moisture_sensitive"`
	Air               bool `json:"air"`
	Tight             bool `json:"tight"`

	// Resistances to each side, to the faces of this layer. The R ones count
	// every layer and the surface; the insulation ones the insulation alone.
	RInside           *float64 `json:"r_inside_m2kw"`
	ROutside          *float64 `json:"r_outside_m2kw"`
	InsulationInside  *float64 `json:"insulation_inside_m2kw"`
	InsulationOutside *float64 `json:"insulation_outside_m2kw"`
	// OutsideShare is the R outside the layer's inner face over the total;
	// InsulationShare the insulation outside over all insulation.
	OutsideShare    *float64 `json:"outside_share"`
	InsulationShare *float64 `json:"insulation_share"`
}

// Share is the part of the total resistance that has to lie outside a plane to
// keep it at the dew point of the room in the mean of the coldest months.
type Share struct {
	Months []int   `json:"months"`
	OutC   float64 `json:"out_c"`
	InC    float64 `json:"in_c"`
	InRH   float64 `json:"in_rh"`
	DewC   float64 `json:"dew_c"`
	Needed float64 `json:"needed_outside_share"`
}

// TightPair is two neighboring vapor-tight layers and what lies between them.
type TightPair struct {
	Inner       int      `json:"inner"`
	Outer       int      `json:"outer"`
	InnerClass  string   `json:"inner_class"`
	OuterClass  string   `json:"outer_class"`
	Between     []int    `json:"between"`
	Sensitive   []int    `json:"moisture_sensitive_between"`
	Insulation  *float64 `json:"insulation_between_m2kw"`
	HasUnknown  bool     `json:"unknown_between"`
	RoomSdM     *float64 `json:"sd_to_room_m"`    // from the space between to the room air
	OutsideSdM  *float64 `json:"sd_to_outside_m"` // from the space between to the outside air
	RoomNG      *float64 `json:"permeance_to_room_ng"`
	OutsideNG   *float64 `json:"permeance_to_outside_ng"`
	RoomSdIsMin bool     `json:"sd_to_room_is_minimum"` // an unknown layer adds to it
	OutSdIsMin  bool     `json:"sd_to_outside_is_minimum"`
}

// SurfaceResult is the temperature factor of the inside surface.
type SurfaceResult struct {
	FRsi      float64     `json:"f_rsi"`
	Needed    float64     `json:"f_rsi_needed"` // of the worst month
	Month     int         `json:"month"`
	ByMonth   [12]float64 `json:"f_rsi_by_month"`
	SurfaceRH float64     `json:"at_rh"`
}

// Month is the section in one month. Interface 0 is the inside surface; the
// last is the outside surface or the face of the vented space.
type Month struct {
	Month       int       `json:"month"`
	InPa        float64   `json:"in_pa"`
	OutPa       float64   `json:"out_pa"`
	DewC        float64   `json:"in_dew_c"`
	TempC       []float64 `json:"temp_c"`
	SatPa       []float64 `json:"sat_pa"`
	VaporPa     []float64 `json:"vapor_pa"` // at the start of the month
	GM2         float64   `json:"g_m2"`     // gathered, or dried if below zero, at all planes
	Accumulated float64   `json:"accumulated_g_m2"`
	SurfaceWet  bool      `json:"surface_wet"`
}

// Plane is where water gathers: between two layers, or within one, in which
// case Inner and Outer are the same.
type Plane struct {
	Inner     int         `json:"inner"`
	Outer     int         `json:"outer"`
	Text      string      `json:"text"`
	GM2       [12]float64 `json:"g_m2"`           // January first
	Potential [12]float64 `json:"potential_g_m2"` // at the rate of the start of the month: below zero, what could dry
	Left      [12]float64 `json:"accumulated_g_m2"`
	PeakGM2   float64     `json:"peak_g_m2"`
}

// Note is a caution about the result, with its key in the table.
type Note struct {
	Key  string `json:"key"`
	Text string `json:"text"`
}
