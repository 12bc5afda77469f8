/** A work that a number rests on. One entry per work; functions and data cite by key. */
export interface Source {
  readonly cite: string
  /** What could not be confirmed: "values from memory", "abstract only". Null when the source itself was read. */
  readonly caution: string | null
}

const read = (cite: string): Source => ({ cite, caution: null })
const but = (caution: string, cite: string): Source => ({ cite, caution })

export const sources = {
  // Water and steam
  'iapws-if97': read(
    'IAPWS R7-97(2012), Revised Release on the IAPWS Industrial Formulation 1997 for the Thermodynamic Properties of Water and Steam',
  ),
  'iapws-viscosity-2008': read(
    'IAPWS R12-08, Release on the IAPWS Formulation 2008 for the Viscosity of Ordinary Water Substance',
  ),
  'iapws-conductivity-2011': read(
    'IAPWS R15-11, Release on the IAPWS Formulation 2011 for the Thermal Conductivity of Ordinary Water Substance',
  ),
  'iapws-surface-tension-2014': read(
    'IAPWS R1-76(2014), Revised Release on Surface Tension of Ordinary Water Substance',
  ),
  // Air
  'iso-2533': read('ISO 2533:1975, Standard Atmosphere (same model as the ICAO standard atmosphere)'),
  'usda-canning-guide': read('USDA, Complete Guide to Home Canning, process adjustments at high altitudes'),
  // Heat
  'choi-okos': read(
    'Choi Y., Okos M.R. (1986), Effects of temperature and composition on the thermal properties of foods, as in ASHRAE Handbook—Refrigeration 2006 ch. 9 tables 1 and 2; heat capacity of water with 4.1762 in place of 4.1289',
  ),
  levy: but(
    'formula from memory; tested for its symmetry and bounds',
    'Levy F.L. (1981), A modified Maxwell–Eucken equation for calculating the thermal conductivity of two-component solutions or mixtures, Int. J. Refrigeration 4:223',
  ),
  'sweat-chicken': but(
    'abstract',
    'Sweat V.E., Haugh C.G., Stadelman W.J. (1973), Thermal conductivity of chicken meat at temperatures between −75 and 20 °C, J. Food Science 38:158',
  ),
  'meat-refrigeration': read('James S.J., James C., Meat Refrigeration, table 13.2 (after Morley 1972)'),
  schwartzberg: but(
    'formula from memory',
    'Schwartzberg H.G. (1976), Effective heat capacities for the freezing and thawing of food, J. Food Science 41:152',
  ),
  'miles-bound-water': but(
    'as quoted from memory of the ASHRAE text',
    'Miles C.A. (1974), The ice content of frozen foods; bound water 0.4 kg per kg protein',
  ),
  pham: but(
    'method from memory',
    'Pham Q.T. (1985), A fast, unconditionally stable finite-difference scheme for heat conduction with phase change, Int. J. Heat Mass Transfer 28:2079',
  ),
  'heat-textbook': read(
    'Çengel Y.A., Ghajar A.J., Heat and Mass Transfer, ch. 4 (transient conduction), 9 and 10 (convection, boiling)',
  ),
  'thermodynamics-textbook': but(
    'attribution from memory',
    'Çengel Y.A., Boles M.A., Thermodynamics, ch. 5 (cooking with a pressure cooker)',
  ),
  'finite-volumes': but(
    'standard method',
    'Patankar S.V. (1980), Numerical Heat Transfer and Fluid Flow: implicit finite volumes in one dimension',
  ),
  rohsenow: read(
    'Rohsenow W.M. (1952), nucleate pool boiling, as in Çengel & Ghajar ch. 10 with surface coefficient 0.0130, n = 1',
  ),
  zuber: but(
    'constants 0.131 and 0.149 from memory, 0.12 in the textbook',
    'Zuber N. (1959), Lienhard J.H. & Dhir V.K. (1973), critical heat flux in pool boiling',
  ),
  'globe-dropkin': read(
    'Globe S., Dropkin D. (1959), Natural-convection heat transfer in liquids confined by two horizontal plates and heated from below, J. Heat Transfer 81:24',
  ),
  hollands: read(
    'Hollands K.G.T., Raithby G.D., Konicek L. (1975), Correlation equations for free convection heat transfer in horizontal layers of air and water, as in Çengel & Ghajar ch. 9',
  ),
  stokes: read('Stokes law for a small sphere'),
  'harper-tomato': but(
    'abstract: power law, n about 0.4',
    'Harper J.C., El Sahrigi A.F. (1965), Viscometric behavior of tomato concentrates, J. Food Science 30:470',
  ),
  'krieger-dougherty': but(
    'form from memory',
    'Krieger I.M., Dougherty T.J. (1959), non-Newtonian flow in suspensions of rigid spheres, Trans. Soc. Rheology 3:137',
  ),
  // Doneness
  'texture-review': read(
    'Lee S.H. (2017), Kinetic data for texture changes of foods during thermal processing, Food Eng. Prog. 21(4):303, table 1',
  ),
  'bourne-two-mechanisms': read(
    'Bourne M.C. (1989), ACS Symposium Series 405 ch. 9: applications of chemical kinetic theory to the rate of thermal softening',
  ),
  'silva-beans': but('as quoted in texture-review', 'Silva C.A.B. et al. (1981), cooking rate of beans'),
  'van-loey': but(
    'abstract',
    'Van Loey A. et al. (1995), kinetics of thermal softening of white beans and colour and hardness of peas, J. Food Engineering 24:361',
  ),
  'kwofie-beans': but('abstract', 'Kwofie E.M. et al. (2020), easy- and hard-to-cook beans, Processes'),
  'potato-hiroshima': but(
    'exponent of the pre-factor corrected; low confidence',
    'Cooking rate of potato, Hiroshima University repository AN10409040 32(2)',
  ),
  'rice-kinetics': but(
    'abstract; break temperature from memory',
    'Kinetic studies on cooking of rice of various polishing degrees: 17,000 cal/mol below and 9,000 above the break',
  ),
  'food-science-handbook-10.10': read(
    'Table 10.10 (after Fellows 2000) of a food-science handbook: D and z of chlorophyll, thiamin, peroxidase, Clostridium botulinum',
  ),
  'chlorophyll-peas': but('abstract', 'Ryan-Stoneham T., Tong C.H. (2000), J. Food Science 65:1296'),
  'myoglobin-geileskey': but('as quoted in a thesis', 'Geileskey A. et al. (1998), denaturation of myoglobin in beef'),
  'vandersman-water': but(
    'curve from memory, raised term changed',
    'van der Sman R.G.M. (2007), moisture transport during cooking of meat, Meat Science 76:730',
  ),
  'oillic-cubes': but('abstract', 'Oillic S. et al. (2011), cooking loss of meat cubes 1–7 cm, Meat Science'),
  'starch-ranges': but('from memory', 'Gelatinisation ranges of food starches, textbooks of food chemistry'),
  // Safety
  'fsis-appendix-a': read(
    'USDA FSIS (1999), Appendix A: compliance guidelines for meeting lethality performance standards for certain meat and poultry products',
  ),
  'fsis-poultry': but(
    'single points of the lean chicken column read; 12 % fat column from memory except 140 °F',
    'USDA FSIS, Time-temperature tables for cooking ready-to-eat poultry products',
  ),
  'fsis-minimum': read('USDA FSIS, Safe minimum internal temperatures'),
  'food-code': read('FDA Food Code 3-401.11 and 3-501.14 (editions 1999, 2005, 2009; 2017 from memory)'),
  'bad-bug-book': read('FDA, Bad Bug Book, phytohaemagglutinin (as quoted in a public notice)'),
  'bender-lectin': but('abstract', 'Bender A.E., Reaidi G.B. (1982), toxicity of kidney beans'),
  'odlaug-pflug': but('abstract', 'Odlaug T.E., Pflug I.J. (1977), Appl. Environ. Microbiol. 34:23'),
  'levenspiel-2.3': but(
    'companion text',
    'Levenspiel O., Chemical Reaction Engineering, example 2.3 (milk pasteurisation)',
  ),
  // No outside source
  assumed: but('engineering calibration; editable', 'Assumed or fitted for want of data'),
  'common-practice': but('no source', 'Common practice, no source'),
} as const satisfies Record<string, Source>

export type SourceKey = keyof typeof sources
