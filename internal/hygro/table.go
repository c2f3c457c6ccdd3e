package hygro

import (
	"fmt"
	"io/fs"

	"abut/internal/knowledge"
)

// tableFile is where the figures lie in the policy tree.
const tableFile = "knowledge/hygro.json"

// Figure is a number with the source it was taken from.
type Figure struct {
	Value  float64 `json:"value"`
	Source string  `json:"source"`
}

// Material is what the table knows of a family or a generic kind of layer.
// A nil figure is not known; WhyUnknown then says what has to be stated.
type Material struct {
	ID                string  `json:"id"`
	Name              string  `json:"name"`
	Lambda            *Figure `json:"lambda"`       // W/(m·K)
	R                 *Figure `json:"r"`            // m²K/W, whatever the thickness
	Mu                *Figure `json:"mu"`           // resistance factor, dry
	SdM               *Figure `json:"sd_m"`         // m, whatever the thickness
	PermeanceNG       *Figure `json:"permeance_ng"` // ng/(Pa·s·m²), whatever the thickness
	UsualMM           *Figure `json:"usual_mm"`     // taken where none is stated
	Set               string  `json:"set"`          // which table the vapor figure is from
	Insulation        bool    `json:"insulation"`
	MoistureSensitive bool    `json:"moisture_sensitive"`
	Air               bool    `json:"air"`
	Vented            bool    `json:"vented"`
	WhyUnknown        string  `json:"why_unknown"`
	Skip              string  `json:"skip"` // why it is not counted as a layer
	Also              string  `json:"also"` // other figures met, for the reader
}

// Table holds the figures and constants of the method. It is read-only after
// Load and safe for use by several goroutines.
type Table struct {
	file      tableData
	materials map[string]Material
}

type tableData struct {
	Sources map[string]string `json:"figure_sources"`
	Method  struct {
		Delta0NG      Figure `json:"delta0_ng"`
		PermNG        Figure `json:"perm_ng"`
		MaxSublayerR  Figure `json:"max_sublayer_r"`
		MinSdM        Figure `json:"min_sd_m"`
		FilmMM        Figure `json:"film_mm"`
		TightSdM      Figure `json:"tight_sd_m"`
		SurfaceRsi    Figure `json:"surface_rsi"`
		SurfaceRH     Figure `json:"surface_rh"`
		ColdestMonths Figure `json:"coldest_months"`
	} `json:"method"`
	Surfaces map[string]struct {
		Rsi       float64 `json:"rsi"`
		Rse       float64 `json:"rse"`
		RseVented float64 `json:"rse_vented"`
	} `json:"surfaces"`
	Indoor   indoorData `json:"indoor"`
	Estimate struct {
		AridOffsetC float64 `json:"arid_offset_c"`
		Source      string  `json:"source"`
	} `json:"outdoor_estimate"`
	Classes []struct {
		Class   string  `json:"class"`
		MaxPerm float64 `json:"max_perm"`
	} `json:"vapor_classes"`
	OpenClass    string            `json:"open_class"`
	TightClasses []string          `json:"tight_classes"`
	Notes        map[string]string `json:"notes"`
	Materials    []Material        `json:"materials"`
}

// Load reads the figures from a policy tree, such as the one that package
// policies embeds.
func Load(tree fs.FS) (*Table, error) {
	t := &Table{}
	if err := knowledge.Read(tree, "read the vapor figures", tableFile, &t.file); err != nil {
		return nil, err
	}
	t.materials = make(map[string]Material, len(t.file.Materials))
	for _, m := range t.file.Materials {
		if _, twice := t.materials[m.ID]; twice {
			return nil, fmt.Errorf("read %s: material %q is listed twice", tableFile, m.ID)
		}
		t.materials[m.ID] = m
	}
	m := t.file.Method
	if m.Delta0NG.Value <= 0 || m.PermNG.Value <= 0 || m.MaxSublayerR.Value <= 0 || m.MinSdM.Value <= 0 {
		return nil, fmt.Errorf("read %s: method needs positive delta0_ng, perm_ng, max_sublayer_r and min_sd_m", tableFile)
	}
	return t, nil
}

// Material gives the figures of a family or generic kind of layer.
func (t *Table) Material(id string) (Material, bool) {
	m, ok := t.materials[id]
	return m, ok
}

// Source spells out the key that a figure names as its source.
func (t *Table) Source(key string) string {
	if text, ok := t.file.Sources[key]; ok {
		return text
	}
	return key
}

// Class gives the vapor class of a permeance in ng/(Pa·s·m²). A limit belongs
// to the tighter class.
func (t *Table) Class(permeanceNG float64) string {
	const slack = 1e-9 // 0.1 perm converted to ng and back stays 0.1 perm
	perm := permeanceNG / t.file.Method.PermNG.Value
	for _, c := range t.file.Classes {
		if perm <= c.MaxPerm*(1+slack) {
			return c.Class
		}
	}
	return t.file.OpenClass
}
