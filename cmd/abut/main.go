// Command abut checks building-material schedules.
package main

func main() {}
