// Command renew compiles the built-in rules beforehand and writes them to a
// file in the folder it stands in: go generate ./policies
package main

import (
	"log"
	"os"

	"abut/internal/engine"
	"abut/internal/plan/build"
	"abut/policies"
)

func main() {
	log.SetFlags(0)
	text, err := engine.Renew(policies.FS, build.Program)
	if err != nil {
		log.Fatal(err)
	}
	if err := os.WriteFile("rules.plan", text, 0o644); err != nil {
		log.Fatal(err)
	}
}
