package output

import (
	"bytes"
	"encoding/json"
	"errors"
	"strings"
	"testing"
)

// TestWriteJSON holds the text that goes out in parts against what encoding/json
// makes of the whole.
func TestWriteJSON(t *testing.T) {
	type inner struct {
		Name string `json:"name"`
		Kept string
		left string
	}
	type outer struct {
		inner
		Gone    string             `json:"-"`
		Empty   []inner            `json:"empty,omitempty"`
		None    []inner            `json:"none"`
		Void    []string           `json:"void"`
		List    []*inner           `json:"list"`
		Words   []string           `json:"words"`
		ByName  map[string]inner   `json:"by_name"`
		Numbers map[string]float64 `json:"numbers"`
		Deep    [][]inner          `json:"deep"`
		Nothing struct{}           `json:"nothing"`
		Any     any                `json:"any"`
		Pointer *float64           `json:"pointer"`
		Yes     bool               `json:"yes"`
		N       int                `json:"n"`
	}
	half := 0.5
	value := outer{
		inner: inner{Name: `say "so" <&> \`, Kept: "é 漢 \u2028", left: "out"}, Void: []string{},
		List: []*inner{{Name: "a\tb\n"}, nil}, Words: []string{"", "plain", "\x7f", "bad \xff"},
		ByName: map[string]inner{"z": {}, "a": {Name: "first"}}, Numbers: map[string]float64{"small": 1e-9, "large": 1e30},
		Deep: [][]inner{{}, {{}, {Name: "x"}}}, Any: map[string]any{"list": []any{1, nil, inner{}}}, Pointer: &half, Yes: true, N: -3,
	}
	for _, v := range []any{value, &value, []outer{value, {}}, map[string]any{"one": value}, nil, "text", (*outer)(nil), []string(nil)} {
		var want, got bytes.Buffer
		e := json.NewEncoder(&want)
		e.SetEscapeHTML(false)
		e.SetIndent("", "  ")
		if err := errors.Join(e.Encode(v), WriteJSON(&got, "  ", v)); err != nil {
			t.Fatal(err)
		}
		if whole := strings.ReplaceAll(want.String(), "\x7f", `\u007f`); got.String() != whole {
			t.Errorf("%#v: got\n%s\nwant\n%s", v, got.String(), whole)
		}
	}
}
