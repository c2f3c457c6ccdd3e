package engine

import (
	"encoding/json"
	"fmt"
)

// shared is what the engine itself reads of the data under policies/lib.
type shared struct {
	Most most `json:"most"`
	Held held `json:"held"`
}

func sharedOf(data map[string]any) (shared, error) {
	var s shared
	lib, _ := data["lib"].(map[string]any)
	text, err := json.Marshal(map[string]any{"most": lib["most"], "held": lib["held"]})
	if err == nil {
		err = json.Unmarshal(text, &s)
	}
	if err != nil {
		return shared{}, fmt.Errorf("data.lib.most and data.lib.held: %w", err)
	}
	return s, nil
}
