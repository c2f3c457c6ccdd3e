package phrase

type signalData struct{}

type signalTable struct{}

func newSignalTable(signalData) (*signalTable, error) { return &signalTable{}, nil }
