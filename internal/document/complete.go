package document

import "reflect"

// Complete gives every list and object that was never filled an empty value,
// so that the JSON holds [] and {} where a policy wants to count or look up.
func Complete[T Document | Comparison](of *T) {
	filler{}.fill(reflect.ValueOf(of).Elem())
}

// filler knows of the structs it met which of their fields may lack something.
type filler map[reflect.Type][]int

func (f filler) fill(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		for _, i := range f.fields(v.Type()) {
			f.fill(v.Field(i))
		}
	case reflect.Slice:
		if v.IsNil() {
			v.Set(reflect.MakeSlice(v.Type(), 0, 0))
		}
		f.fillEach(v)
	case reflect.Array:
		f.fillEach(v)
	case reflect.Map:
		f.fillMap(v)
	case reflect.Pointer:
		if !v.IsNil() {
			f.fill(v.Elem())
		}
	case reflect.Interface:
		if !v.IsNil() {
			v.Set(f.filled(v.Elem()))
		}
	}
}

func (f filler) fillEach(v reflect.Value) {
	if f.whole(v.Type().Elem()) {
		return
	}
	for i := range v.Len() {
		f.fill(v.Index(i))
	}
}

func (f filler) fillMap(v reflect.Value) {
	if v.IsNil() {
		v.Set(reflect.MakeMap(v.Type()))
	}
	if f.whole(v.Type().Elem()) {
		return
	}
	for _, key := range v.MapKeys() {
		v.SetMapIndex(key, f.filled(v.MapIndex(key)))
	}
}

// filled works on a copy, since what maps and interfaces hold cannot be set.
func (f filler) filled(v reflect.Value) reflect.Value {
	c := reflect.New(v.Type()).Elem()
	c.Set(v)
	f.fill(c)
	return c
}

// whole says that a value of the type never lacks anything.
func (f filler) whole(t reflect.Type) bool {
	switch t.Kind() {
	case reflect.Struct:
		return len(f.fields(t)) == 0
	case reflect.Pointer, reflect.Array:
		return f.whole(t.Elem())
	case reflect.Slice, reflect.Map, reflect.Interface:
		return false
	}
	return true
}

func (f filler) fields(t reflect.Type) []int {
	known, ok := f[t]
	if ok {
		return known
	}
	var list []int
	for i := range t.NumField() {
		if field := t.Field(i); field.IsExported() && !f.whole(field.Type) {
			list = append(list, i)
		}
	}
	f[t] = list
	return list
}
