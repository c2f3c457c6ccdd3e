// Package policies embeds the rules, their data and the knowledge that several
// topics share. It holds no code: Go computes, Rego judges, data decides.
package policies

import "embed"

// FS is the policy tree: one folder a topic with its rules (.rego) and data
// (.json), helpers under lib/, and the shared knowledge under knowledge/.
//
//go:embed */*.json */*.rego
var FS embed.FS

// Plan is the rules as they are compiled beforehand, which makes a start quick.
// Where the rules are others they are compiled at the start.
//
//go:generate go run abut/internal/engine/renew
//go:embed rules.plan
var Plan []byte
