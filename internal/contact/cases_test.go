package contact

import (
	"fmt"
	"reflect"
	"slices"
	"testing"

	"abut/internal/schedule"
)

// TestCases changes one field at a time: what is an address leaves the case as
// it is, all else makes it another.
func TestCases(t *testing.T) {
	addresses := []string{"ID", "Case", "Line", "At", "A.Item", "A.Line", "A.At", "B.Item", "B.Line", "B.At"}
	lines := []schedule.Line{{ID: "S!2", Role: "membrane"}, {ID: "other", Role: "membrane"}}
	fields := slices.Concat(names(reflect.TypeFor[Contact](), ""), names(reflect.TypeFor[End](), "A."), names(reflect.TypeFor[End](), "B."))
	for _, field := range fields {
		pair := []Contact{sample(), sample()}
		pair[1].ID = "c2"
		change(t, &pair[1], field)
		shareCases(pair, lines)
		if same := pair[0].Case == pair[1].Case; same != slices.Contains(addresses, field) {
			t.Errorf("%s changed: same case %t", field, same)
		}
	}
	pair := []Contact{sample(), sample()}
	pair[1].ID, pair[1].Line = "c2", "other"
	lines[1].Role = "flashing"
	if shareCases(pair, lines); pair[0].Case == pair[1].Case {
		t.Error("a row of another role has the same case")
	}
}

func sample() Contact {
	end := End{Item: "S!2/1", Line: "S!2", Slot: "material", Text: "sheet", Keys: []string{"asphaltic"}}
	return Contact{ID: "c1", Line: "S!2", A: end, B: end, Kind: "direct", Signals: []string{"wet"}}
}

func names(of reflect.Type, prefix string) []string {
	var out []string
	for i := range of.NumField() {
		if name := of.Field(i).Name; prefix != "" || name != "A" && name != "B" {
			out = append(out, prefix+name)
		}
	}
	return out
}

func change(t *testing.T, c *Contact, field string) {
	t.Helper()
	v := reflect.ValueOf(c).Elem()
	var side, name string
	if n, _ := fmt.Sscanf(field, "%1s.%s", &side, &name); n == 2 {
		v, field = v.FieldByName(side), name
	}
	switch f := v.FieldByName(field); f.Interface().(type) {
	case string:
		f.SetString("other")
	case bool:
		f.SetBool(true)
	case []string:
		f.Set(reflect.ValueOf([]string{"other"}))
	case *float64:
		f.Set(reflect.ValueOf(new(float64)))
	case *End:
		f.Set(reflect.ValueOf(&End{}))
	case schedule.At:
		f.Set(reflect.ValueOf(schedule.At{Row: 9}))
	default:
		t.Fatalf("no other value for %s", field)
	}
}
