// Exact definitions, each written once. Everything else in this room is computed from them.
// Source: inch, pound and US gallon by the international yard and pound agreement of 1959 and NIST Handbook 44
// appendix C; imperial gallon by the UK Weights and Measures Act 1985; standard gravity by the third CGPM of 1901.

/** 1 inch, in m. */
export const inch_m = 0.0254
/** 1 avoirdupois pound, in kg. */
export const pound_kg = 0.45359237
/** Standard gravity, in m/s2. */
export const gravity_m_per_s2 = 9.80665
/** 1 US liquid gallon = 231 cubic inches, in m3. */
export const usGallon_m3 = (231 * 16.387064) / 1e6
/** 1 imperial gallon, in m3. */
export const imperialGallon_m3 = 4.54609e-3
/** 1 US dry gallon = an eighth of the bushel of 2150.42 cubic inches, in m3. */
export const usDryGallon_m3 = ((2150.42 / 8) * 16.387064) / 1e6
/** 0 degrees Celsius, in K. */
export const iceZero_K = 273.15
