package marked

import (
	"fmt"
	"testing"

	"reflect"
)

// same holds two answers of a library against each other; an error must be the
// same error.
func same(t *testing.T, what string, x, y any, errX, errY error) {
	t.Helper()
	if fmt.Sprint(errX) != fmt.Sprint(errY) {
		t.Errorf("%s: %v, was %v", what, errY, errX)
	}
	if errX == nil && !reflect.DeepEqual(x, y) {
		t.Errorf("%s: %+v, was %+v", what, y, x)
	}
}
