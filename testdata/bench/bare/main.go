// Command bare opens a workbook and reads its raw values, and does nothing
// else: what abut takes is told as a multiple of what this takes.
package main

import (
	"log"
	"os"

	"github.com/xuri/excelize/v2"
)

func main() {
	log.SetFlags(0)
	for _, file := range os.Args[1:] {
		if err := read(file); err != nil {
			log.Fatal(err)
		}
	}
}

func read(file string) error {
	book, err := excelize.OpenFile(file, excelize.Options{RawCellValue: true})
	if err != nil {
		return err
	}
	defer book.Close()
	for _, sheet := range book.GetSheetList() {
		if _, err := book.GetRows(sheet); err != nil {
			return err
		}
	}
	return nil
}
