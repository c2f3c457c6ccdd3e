package document

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"abut/internal/hygro"
	"abut/internal/schedule"
	"abut/schema"
)

// sample fills every field of a value: one entry a list and map, words that
// the schema allows, no null.
func sample(v reflect.Value, words map[string]string, name string) {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() {
				sample(v.Field(i), words, v.Type().Name()+"."+f.Name)
			}
		}
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 1, 1))
		sample(v.Index(0), words, name)
	case reflect.Array:
		for i := range v.Len() {
			sample(v.Index(i), words, name)
		}
	case reflect.Map:
		value := reflect.New(v.Type().Elem()).Elem()
		sample(value, words, name)
		v.Set(reflect.MakeMap(v.Type()))
		v.SetMapIndex(reflect.ValueOf("key"), value)
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		sample(v.Elem(), words, name)
	case reflect.Interface:
		result := hygro.Result{}
		sample(reflect.ValueOf(&result).Elem(), words, name)
		v.Set(reflect.ValueOf(result))
	case reflect.String:
		v.SetString("text")
		if word, ok := words[name]; ok {
			v.SetString(word)
		}
	case reflect.Int:
		v.SetInt(3)
	case reflect.Float64:
		v.SetFloat(0.5)
	case reflect.Bool:
		v.SetBool(true)
	default:
		panic("no sample for " + v.Kind().String())
	}
}

func filledDocument() *Document {
	var doc Document
	sample(reflect.ValueOf(&doc).Elem(), map[string]string{
		"Item.Polarity": "yes", "Day.State": "day", "Acceptance.Primer": "none", "Contact.Kind": "direct",
	}, "")
	return &doc
}

func TestFilledDocumentIsValid(t *testing.T) {
	if err := Validate(filledDocument()); err != nil {
		t.Error(err)
	}
}

func TestEmptyDocumentIsValid(t *testing.T) {
	doc := &Document{Lines: []schedule.Line{{Figures: map[string]schedule.Figure{"a": {}}}}, Profiles: []Profile{{Result: hygro.Result{}}}}
	Complete(doc)
	if err := Validate(doc); err != nil {
		t.Error(err)
	}
}

func TestNullListIsInvalid(t *testing.T) {
	if err := Validate(&Document{}); err == nil {
		t.Error("a null list passed")
	}
}

// TestSchemaHasNoOtherKeys: every property of the schema is a field of Go,
// since all are required or shown by the filled document.
func TestSchemaHasNoOtherKeys(t *testing.T) {
	text, err := json.Marshal(filledDocument())
	if err != nil {
		t.Fatal(err)
	}
	written := string(text)
	for _, property := range propertiesOf(t) {
		if !strings.Contains(written, `"`+property+`":`) {
			t.Errorf("the schema has %q, which no document has", property)
		}
	}
}

func TestInvalid(t *testing.T) {
	edits := map[string]struct {
		change func(map[string]any)
		want   string
	}{
		"unknown key at the top": {func(m map[string]any) { m["more"] = 1 }, "additional properties 'more' not allowed"},
		"unknown key in a line":  {func(m map[string]any) { first(m, "lines")["more"] = 1 }, "at /lines/0: additional properties 'more'"},
		"missing key":            {func(m map[string]any) { delete(first(m, "lines"), "mark") }, "at /lines/0: missing property 'mark'"},
		"wrong type":             {func(m map[string]any) { first(m, "lines")["row"] = "12" }, "at /lines/0/row: got string, want integer"},
		"word that is not known": {func(m map[string]any) { first(m, "contacts")["kind"] = "beside" }, "at /contacts/0/kind: value must be one of"},
		"null":                   {func(m map[string]any) { first(m, "lines")["items"] = nil }, "at /lines/0/items: got null, want array"},
	}
	for name, tc := range edits {
		t.Run(name, func(t *testing.T) {
			text, _ := json.Marshal(filledDocument())
			var m map[string]any
			if err := json.Unmarshal(text, &m); err != nil {
				t.Fatal(err)
			}
			tc.change(m)
			text, _ = json.Marshal(m)
			if err := ValidateJSON(text); err == nil || !strings.Contains(err.Error(), tc.want) {
				t.Errorf("got %v, want %q in it", err, tc.want)
			}
		})
	}
}

func first(m map[string]any, key string) map[string]any {
	return m[key].([]any)[0].(map[string]any)
}

func TestRepeatedIDIsInvalid(t *testing.T) {
	doc := filledDocument()
	doc.Lines = append(doc.Lines, doc.Lines[0])
	if err := Validate(doc); err == nil || !strings.Contains(err.Error(), "stands twice") {
		t.Errorf("got %v", err)
	}
}

// propertiesOf lists the names of all properties of the schema.
func propertiesOf(t *testing.T) []string {
	t.Helper()
	var value any
	text, err := schema.FS.ReadFile(schemaName)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(text, &value); err != nil {
		t.Fatal(err)
	}
	var names []string
	var walk func(any)
	walk = func(v any) {
		switch v := v.(type) {
		case map[string]any:
			if p, ok := v["properties"].(map[string]any); ok {
				for name := range p {
					names = append(names, name)
				}
			}
			for _, inner := range v {
				walk(inner)
			}
		case []any:
			for _, inner := range v {
				walk(inner)
			}
		}
	}
	walk(value)
	return names
}
