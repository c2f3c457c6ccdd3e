# METADATA
# title: Words
# description: |
#   How figures are written in messages: the author's own words where there are any, else the unit the author uses.
package lib.words

# days(77) is "77 days", days(1) is "1 day".
days(n) := counted(n, "day", "days")

counted(n, one, _) := sprintf("%s %s", [number(n), one]) if n == 1

counted(n, _, many) := sprintf("%s %s", [number(n), many]) if n != 1

# number writes a figure with one decimal at most (two or three below 1): 77, 0.4, 2.5, 0.02.
number(x) := _decimals(x, 1) if abs(x) >= 1

number(x) := _decimals(x, 3) if abs(x) < 1

# percent writes a share: 0.634 is "63%".
percent(share) := sprintf("%d%%", [round(share * 100)])

# date("2026-04-13") is "13 Apr 2026".
date(day) := sprintf("%s %s", [_day_month(day), substring(day, 0, 4)])

# date_range is "13 Apr to 29 Jun 2026", "1 Dec 2026 to 3 Jan 2027", or one date.
date_range(from, to) := date(from) if from == to

date_range(from, to) := sprintf("%s to %s", [_day_month(from), date(to)]) if {
	from != to
	substring(from, 0, 4) == substring(to, 0, 4)
}

date_range(from, to) := sprintf("%s to %s", [date(from), date(to)]) if substring(from, 0, 4) != substring(to, 0, 4)

# span writes the dates of a span of a line.
span(s) := date_range(s.from, s.to)

# temperature writes degrees Celsius in the unit that the author uses in the words of `like`.
temperature(celsius, like) := sprintf("%d °F", [round(((celsius * 9) / 5) + 32)]) if uses_fahrenheit(like)

temperature(celsius, like) := sprintf("%s °C", [_decimals(celsius, 1)]) if not uses_fahrenheit(like)

uses_fahrenheit(text) if regex.match(`(?i)\d\s*(°|º|deg\w*\.?)?\s*f\b|fahrenheit`, text)

# figure writes a figure by the author's words, with the unit where the words have none; else `computed`.
figure(f, computed) := computed if f.text == ""

figure(f, _) := f.text if {
	f.text != ""
	_has_unit(f)
}

figure(f, _) := sprintf("%s %s", [f.text, f.unit]) if {
	f.text != ""
	not _has_unit(f)
}

# list joins words: "a", "a and b", "a, b and c".
list(items) := concat("", items) if count(items) < 2

list(items) := sprintf("%s and %s", [concat(", ", array.slice(items, 0, n - 1)), items[n - 1]]) if {
	n := count(items)
	n > 1
}

# be is the verb of so many things: one is, two are.
be(items) := "is" if count(items) < 2

be(items) := "are" if count(items) > 1

# quoted is the row's own words, short enough for a sentence.
quoted(text) := sprintf("\"%s\"", [text]) if count(text) <= 60

quoted(text) := sprintf("\"%s …\"", [trim_space(substring(text, 0, 57))]) if count(text) > 60

_has_unit(f) if f.unit == ""

_has_unit(f) if regex.match(`[\p{L}"″'°%]`, f.text)

_day_month(day) := sprintf("%d %s", [to_number(trim_left(substring(day, 8, 2), "0")), month]) if {
	month := _months[to_number(trim_left(substring(day, 5, 2), "0")) - 1]
}

_months := ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"]

_decimals(x, _) := sprintf("%d", [round(x)]) if x == floor(x)

_decimals(x, places) := trim_right(trim_right(written, "0"), ".") if {
	x != floor(x)
	written := sprintf(_formats[places], [x])
}

_formats := {1: "%.1f", 3: "%.3f"}
