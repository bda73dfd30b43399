/** Dew and frost point, Magnus form of the WMO Guide to Instruments (WMO-No. 8), annex 4.B. Valid about −45 to 60 °C. */

interface Magnus {
	readonly slope: number;
	readonly offsetDegC: number;
}
/** Over water. Source: published, WMO-No. 8, annex 4.B, as quoted in a weather station's manual. */
const WATER: Magnus = { slope: 17.62, offsetDegC: 243.12 };
/** Over ice. Source: from memory, the same annex. */
const ICE: Magnus = { slope: 22.46, offsetDegC: 272.62 };
const TRIPLE_HPA = 6.112;

/** Saturation vapour pressure over water, hPa. */
export function saturationPressureHPa(temperatureDegC: number): number {
	return TRIPLE_HPA * Math.exp(exponent(WATER, temperatureDegC));
}

/** Dew point over water, °C, of air at a temperature and relative humidity (above 0 to 100 %). */
export function dewPointDegC(temperatureDegC: number, humidityPercent: number): number {
	return inverse(WATER, Math.log(humidityPercent / 100) + exponent(WATER, temperatureDegC));
}

/** Frost point over ice, °C, of the same air. */
export function frostPointDegC(temperatureDegC: number, humidityPercent: number): number {
	return inverse(ICE, Math.log(humidityPercent / 100) + exponent(WATER, temperatureDegC));
}

function exponent({ slope, offsetDegC }: Magnus, temperatureDegC: number): number {
	return (slope * temperatureDegC) / (offsetDegC + temperatureDegC);
}

function inverse({ slope, offsetDegC }: Magnus, logRatio: number): number {
	return (offsetDegC * logRatio) / (slope - logRatio);
}
