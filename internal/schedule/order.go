package schedule

import (
	"fmt"
	"slices"

	"abut/internal/phrase"
	"abut/internal/workbook"
)

// dayOrder is the order of day and month in the dates of a column, and what
// decided it.
type dayOrder struct {
	phrase.DateOrder
	why string
}

// String says how dates such as 3/4/2026 were read.
func (o dayOrder) String() string {
	switch o.DateOrder {
	case phrase.YearFirst:
		return "read with the year before the month and the day, " + o.why
	case phrase.DayFirst:
		return "read with the day before the month, " + o.why
	}
	return "read with the month before the day, " + o.why
}

// dateOrders decides for each date column whether the day or the month stands
// first: by the column, by the table's other dates, by the project's country.
// The order of dates in remarks has the key "".
func (r *reader) dateOrders(t *table) map[string]dayOrder {
	orders := map[string]dayOrder{}
	all := r.dividers(t)
	for i, c := range t.cols {
		if !isDateSlot(c.Slot) {
			continue
		}
		texts := t.texts(t.nums[i])
		all = append(all, texts...)
		if order, decided := r.phrase.Order(texts); decided {
			orders[c.Slot] = dayOrder{order, "as other dates of the column show"}
		}
	}
	orders[""] = r.usualOrder(all)
	for i := range t.cols {
		c := &t.cols[i]
		if !isDateSlot(c.Slot) {
			continue
		}
		if _, known := orders[c.Slot]; !known {
			orders[c.Slot] = orders[""]
		}
		if c.parts != nil {
			for _, slot := range c.parts.slots {
				orders[slot] = orders[c.Slot]
			}
		}
		if r.eitherWay(t.texts(t.nums[i])) {
			c.Why += "; dates " + orders[c.Slot].String()
		}
	}
	return orders
}

// usualOrder is the order of a table whose columns do not tell theirs.
func (r *reader) usualOrder(texts []string) dayOrder {
	if order, decided := r.phrase.Order(texts); decided {
		return dayOrder{order, "as dates in other columns show"}
	}
	if r.bookOrder != phrase.Unknown {
		return dayOrder{r.bookOrder, "as dates in other tables show"}
	}
	country := r.country
	if country == "" && r.set.CountryOf != nil && r.eitherWay(texts) {
		country = r.set.CountryOf(r.sched.Project.Places)
	}
	if order := r.phrase.OrderOf(country); order != phrase.Unknown {
		return dayOrder{order, fmt.Sprintf("as is usual in the project's country (%s)", country)}
	}
	return dayOrder{phrase.Unknown, "since nothing tells which stands first"}
}

// texts lists the cells of a column that hold text.
func (t *table) texts(col int) []string {
	var out []string
	for row := t.first; row <= t.last; row++ {
		if c, ok := t.sheet.At(row, col); ok && c.Kind == workbook.Text && !c.Merged {
			out = append(out, c.Value)
		}
	}
	return out
}

// eitherWay holds where some date of the texts could be read in both orders.
func (r *reader) eitherWay(texts []string) bool {
	for _, text := range texts {
		if r.ambiguous.of(text, func() bool { return slices.ContainsFunc(r.phrase.ColumnDates(text, phrase.Unknown, 0), isAmbiguous) }) {
			return true
		}
	}
	return false
}

func isAmbiguous(d phrase.Date) bool { return d.Ambiguous }

// orderOfBook is the order of day and month that the dates of all schedules show
// together, for tables whose own do not.
func (r *reader) orderOfBook(all []*table) {
	var texts []string
	for _, t := range all {
		texts = append(texts, r.dividers(t)...)
		for i, c := range t.cols {
			if t.kind == kindSchedule && isDateSlot(c.Slot) {
				texts = append(texts, t.texts(t.nums[i])...)
			}
		}
	}
	r.bookOrder, _ = r.phrase.Order(texts)
}
