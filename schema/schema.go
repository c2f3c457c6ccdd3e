// Package schema embeds the JSON Schemas (2020-12) of what abut reads and
// writes. A schema refers to another by its file name.
package schema

import "embed"

// FS holds document.schema.json (what the policies judge), findings.schema.json
// (what a check writes as JSON) and others beside them.
//
//go:embed *.schema.json
var FS embed.FS
