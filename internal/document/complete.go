package document

import "reflect"

// Complete gives every list and object that was never filled an empty value,
// so that the JSON holds [] and {} where a policy wants to count or look up.
func Complete(doc *Document) {
	fill(reflect.ValueOf(doc).Elem())
}

func fill(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				fill(v.Field(i))
			}
		}
	case reflect.Slice:
		if v.IsNil() {
			v.Set(reflect.MakeSlice(v.Type(), 0, 0))
		}
		for i := range v.Len() {
			fill(v.Index(i))
		}
	case reflect.Array:
		for i := range v.Len() {
			fill(v.Index(i))
		}
	case reflect.Map:
		fillMap(v)
	case reflect.Pointer:
		if !v.IsNil() {
			fill(v.Elem())
		}
	case reflect.Interface:
		if !v.IsNil() {
			v.Set(filled(v.Elem()))
		}
	}
}

func fillMap(v reflect.Value) {
	if v.IsNil() {
		v.Set(reflect.MakeMap(v.Type()))
	}
	for _, key := range v.MapKeys() {
		v.SetMapIndex(key, filled(v.MapIndex(key)))
	}
}

// filled works on a copy, since what maps and interfaces hold cannot be set.
func filled(v reflect.Value) reflect.Value {
	c := reflect.New(v.Type()).Elem()
	c.Set(v)
	fill(c)
	return c
}
