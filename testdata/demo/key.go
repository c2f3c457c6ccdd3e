package main

import "fmt"

// key says what must be found, and which rows are right.
type key struct {
	Workbook string    `json:"workbook"`
	Against  *string   `json:"against"`
	Rows     []place   `json:"schedule_rows"`
	Mistakes []mistake `json:"defects"`
	Near     []near    `json:"near_misses"`
	Arguable []place   `json:"arguable_rows"`
}

// place is a sheet and a row.
type place [2]any

// mistake is one planted mistake; a finding on its row or one of AlsoRows
// tells it.
type mistake struct {
	ID        string  `json:"id"`
	Sheet     string  `json:"sheet"`
	Row       int     `json:"row"`
	AlsoRows  []place `json:"also_rows"`
	Topic     string  `json:"topic"`
	Certainty string  `json:"certainty"`
	What      string  `json:"what"`
}

// near is a row that looks wrong and is right.
type near struct {
	Sheet string `json:"sheet"`
	Row   int    `json:"row"`
	Why   string `json:"why_clean"`
}

// add notes what row n of a sheet holds.
func (k *key) add(sheet string, n int, r row) {
	switch {
	case r.topic != "":
		k.Mistakes = append(k.Mistakes, mistake{
			ID: fmt.Sprintf("m%02d", len(k.Mistakes)+1), Sheet: sheet, Row: n, AlsoRows: []place{},
			Topic: r.topic, Certainty: "must", What: r.what,
		})
	case r.near != "":
		k.Near = append(k.Near, near{sheet, n, r.near})
	}
}
