// Command book writes a workbook with a schedule of so many lines. It is a
// program of its own since a process that was started by a large one is told to
// be as large.
package main

import (
	"log"
	"os"
	"strconv"
)

func main() {
	log.SetFlags(0)
	if len(os.Args) != 3 {
		log.Fatal("book FILE LINES")
	}
	lines, err := strconv.Atoi(os.Args[2])
	if err == nil {
		err = writeSchedule(os.Args[1], lines)
	}
	if err != nil {
		log.Fatal(err)
	}
}
