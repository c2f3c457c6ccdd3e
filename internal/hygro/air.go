package hygro

import "math"

// saturation0 is the saturation pressure in Pa at 0 °C in ISO 13788 annex E.
const saturation0 = 610.5

// SaturationPa gives the saturation vapor pressure in Pa at a temperature in
// °C: over water from 0 °C up, over ice below (ISO 13788 annex E).
func SaturationPa(tempC float64) float64 {
	if tempC >= 0 {
		return saturation0 * math.Exp(17.269*tempC/(237.3+tempC))
	}
	return saturation0 * math.Exp(21.875*tempC/(265.5+tempC))
}

// SaturationC is the inverse of SaturationPa: the temperature in °C at which
// air of that vapor pressure in Pa is saturated.
func SaturationC(pressurePa float64) float64 {
	g := math.Log(pressurePa / saturation0)
	if g >= 0 {
		return 237.3 * g / (17.269 - g)
	}
	return 265.5 * g / (21.875 - g)
}

// DewPoint gives the dew point over water in °C of air at a temperature in °C
// and a relative humidity in percent over water, as weather services state
// both (WMO guide No. 8 annex 4.B: 6.112 hPa, 17.62, 243.12 °C). The humidity
// must be above 0; the result is not a number otherwise.
func DewPoint(tempC, rh float64) float64 {
	g := magnusWater(tempC) + math.Log(rh/100)
	return 243.12 * g / (17.62 - g)
}

// FrostPoint gives the temperature in °C at which the same air is saturated
// over ice; it lies above the dew point when both are below 0 °C, so a cold
// surface has less margin than the dew point tells (WMO constants over ice).
func FrostPoint(tempC, rh float64) float64 {
	g := magnusWater(tempC) + math.Log(rh/100)
	return 272.62 * g / (22.46 - g)
}

// FromDewPoint gives the relative humidity in percent over water from a
// temperature and a dew point over water, both in °C; never above 100.
func FromDewPoint(tempC, dewC float64) float64 {
	return math.Min(100, 100*math.Exp(magnusWater(dewC)-magnusWater(tempC)))
}

// NeededShare gives the share of the total thermal resistance that has to lie
// outside a plane to keep it at or above the dew point of the room: (dew - out)
// / (room - out), from 0 to 1. It is 0 where the room is not warmer than outside.
func NeededShare(roomC, roomRH, outC float64) float64 {
	if roomC <= outC {
		return 0
	}
	share := (saturationOf(roomC, roomRH) - outC) / (roomC - outC)
	return math.Min(1, math.Max(0, share))
}

// saturationOf is the dew point by the formula of the section itself, so that a
// plane and its limit are compared on one footing.
func saturationOf(tempC, rh float64) float64 {
	return SaturationC(rh / 100 * SaturationPa(tempC))
}

// magnusWater is the exponent of the WMO formula over water.
func magnusWater(tempC float64) float64 { return 17.62 * tempC / (243.12 + tempC) }
