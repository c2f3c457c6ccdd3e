package html

import (
	"encoding/json"
	"fmt"
	"slices"
)

// kind is a class of material as it is drawn. An empty list fits all.
type kind struct {
	ID      string   `json:"id"`
	Label   string   `json:"label"`
	Classes []string `json:"classes"`
	Keys    []string `json:"keys"`
}

// kinds is the drawing key, in the order in which it is asked, with the kinds
// that the page has used.
type kinds struct {
	List []kind `json:"kinds"`
	used map[string]bool
}

func readKinds() (*kinds, error) {
	raw, err := files.ReadFile("kinds.json")
	if err != nil {
		return nil, err
	}
	k := &kinds{used: map[string]bool{}}
	if err := json.Unmarshal(raw, k); err != nil {
		return nil, fmt.Errorf("drawing key kinds.json: %w", err)
	}
	return k, nil
}

// of is the first kind that fits a material; the last of the list fits all.
func (k *kinds) of(class string, keys []string) string {
	for _, one := range k.List {
		inClass := len(one.Classes) == 0 || slices.Contains(one.Classes, class)
		hasKey := len(one.Keys) == 0 || slices.ContainsFunc(one.Keys, func(key string) bool { return slices.Contains(keys, key) })
		if inClass && hasKey {
			k.used[one.ID] = true
			return one.ID
		}
	}
	return ""
}

// drawn lists the kinds that the page shows.
func (k *kinds) drawn() []kind {
	var out []kind
	for _, one := range k.List {
		told := slices.ContainsFunc(out, func(o kind) bool { return o.ID == one.ID })
		if k.used[one.ID] && !told {
			out = append(out, one)
		}
	}
	return out
}
