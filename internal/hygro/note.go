package hygro

import "slices"

// echo repeats the conditions in the result.
func echo(c Conditions) Echo {
	return Echo{
		OutC: c.OutC, OutRH: c.OutRH, InC: c.InC, InRH: c.InRH,
		Class: c.Class, Estimated: c.Estimated, Element: c.Element,
	}
}

// note adds the cautions that apply, in a fixed order, and the sets used.
func (t *Table) note(res *Result) {
	var dryCup, assumed, vented, procedure bool
	res.Sets = []string{}
	for _, l := range res.Layers {
		if !l.Counted {
			vented = vented || l.Why == ventedWhy
			continue
		}
		dryCup = dryCup || l.MoistureSensitive && l.VaporBy == byTable
		assumed = assumed || l.ThicknessBy == byUsual
		procedure = procedure || l.VaporBy == byStated && l.Procedure != "A"
		if l.Set != "" && l.Set != definitionSet && !slices.Contains(res.Sets, l.Set) {
			res.Sets = append(res.Sets, l.Set)
		}
	}
	slices.Sort(res.Sets)
	res.Notes = []Note{}
	for _, n := range []struct {
		key string
		on  bool
	}{
		{"method", true}, {"bridging", true}, {"dry_cup", dryCup}, {"estimated", res.Conditions.Estimated},
		{"assumed", assumed}, {"sets", len(res.Sets) > 1}, {"vented", vented}, {"procedure", procedure},
		{"planes", len(res.Planes) > 1}, {"surface", res.surfaceWet},
	} {
		if n.on {
			res.Notes = append(res.Notes, Note{Key: n.key, Text: t.file.Notes[n.key]})
		}
	}
}
