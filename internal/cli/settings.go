package cli

import (
	"fmt"
	"maps"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"abut/internal/document"
	"abut/internal/output"
)

func newSettings(s Streams) *cobra.Command {
	var from projectFlags
	cmd := &cobra.Command{
		Use:   "settings [FILE]",
		Short: "Print the settings in force, and where each comes from",
		Long: `Settings prints what a check from this folder goes by, and whether each setting
comes from a flag, from a line of abut.yaml or from abut itself. With a workbook
it also says what the workbook states of the place and the rooms.`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			p, err := from.open(c.Context())
			if err != nil {
				return err
			}
			if _, err := p.engine(); err != nil { // settings that name rules are held against them
				return err
			}
			list := p.inForce(from)
			if len(args) > 0 {
				doc, err := p.readOne(c.Context(), args[0])
				if err != nil {
					return err
				}
				list = stated(list, doc)
			}
			return output.WriteSettings(s.Out, list)
		},
	}
	from.add(cmd)
	return cmd
}

// inForce lists the settings in the order of the schema.
func (p *project) inForce(flags projectFlags) []output.Setting {
	set, file := p.set, nearby(p.set.File)
	one := func(key, value, otherwise string) output.Setting {
		if value == "" {
			return output.Setting{Key: key, Value: otherwise, From: "default"}
		}
		return output.Setting{Key: key, Value: value, From: fmt.Sprintf("%s, line %d", file, set.Lines[key])}
	}
	flagged := func(s output.Setting, flag string, values ...string) output.Setting {
		if value := strings.Join(values, ", "); value != "" {
			if s.From == "default" || flag == "--place" {
				return output.Setting{Key: s.Key, Value: value, From: flag}
			}
			return output.Setting{Key: s.Key, Value: s.Value + ", " + value, From: s.From + " and " + flag}
		}
		return s
	}
	waivers := ""
	if n := len(set.Waivers); n > 0 {
		waivers = strconv.Itoa(n) + " listed"
	}
	limits := map[string]string{}
	for name, n := range set.Limits {
		limits[name] = strconv.Itoa(n)
	}
	return []output.Setting{
		flagged(one("place", set.Place, "as the workbook says"), "--place", flags.Place),
		one("country", set.Country, "not set"),
		one("climate", path(set.Climate), "the nearest weather station"),
		one("hours", set.Hours, "07:00-17:00"),
		one("fail_at", set.FailAt, "error"),
		one("columns", pairs(set.Columns), "none beside those known"),
		flagged(one("policies", paths(set.Policies), "the built-in rules alone"), "--policies", flags.Policies...),
		one("replace", strings.Join(set.Replace, ", "), "none"),
		one("off", strings.Join(set.Off, ", "), "none"),
		one("severity", pairs(set.Severity), "as each rule says"),
		one("products", paths(set.Products), "those in the workbook"),
		one("waivers", waivers, "those in the workbook"),
		one("limits", pairs(limits), "as the schema gives them"),
	}
}

func path(file string) string {
	if file == "" {
		return ""
	}
	return filepath.ToSlash(nearby(file))
}

func paths(files []string) string {
	var list []string
	for _, f := range files {
		list = append(list, path(f))
	}
	return strings.Join(list, ", ")
}

func pairs(values map[string]string) string {
	var list []string
	for _, key := range slices.Sorted(maps.Keys(values)) {
		list = append(list, key+": "+values[key])
	}
	return strings.Join(list, ", ")
}

// stated puts what a workbook says where nothing beats it, and its rooms at the
// end.
func stated(list []output.Setting, doc *document.Document) []output.Setting {
	at := func(sheet, cell string) string {
		if sheet != "" { // text files have none
			cell = "sheet " + sheet + ", cell " + cell
		}
		return doc.File + ", " + cell
	}
	for i, s := range list {
		if s.Key != "place" || s.From != "default" {
			continue
		}
		list[i] = output.Setting{Key: "place", Value: "none is stated", From: doc.File}
		if place := doc.Project.Place; place.Text != "" {
			list[i].Value, list[i].From = place.Text, at(place.At.Sheet, place.At.Cell)
		}
	}
	for _, room := range doc.Project.Indoor {
		list = append(list, output.Setting{Key: "indoor", Value: room.Text, From: at(room.At.Sheet, room.At.Cell)})
	}
	return list
}
