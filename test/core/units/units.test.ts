import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  atmosphere_Pa,
  celsiusFromFahrenheit,
  celsiusFromKelvin,
  dKelvinFromCelsiusStep,
  dKelvinFromFahrenheitStep,
  fahrenheitFromCelsius,
  fahrenheitFromKelvin,
  fahrenheitStepFromDKelvin,
  feetFromMetres,
  gasMark_K,
  gaugeFromPressure,
  gaugePa,
  inchOfMercury_Pa,
  kelvinFromCelsius,
  kelvinFromFahrenheit,
  type LengthUnit,
  labelVolumeOfUnit_m3,
  lengthOf_m,
  lengthOfUnit_m,
  type MeasureSystem,
  massOfUnit_kg,
  measureSystems,
  metresFromFeet,
  pascalFromPsi,
  pressureFromGauge_Pa,
  psiFromPascal,
  type UnitCode,
  unitCodes,
  volumeOfUnit_m3,
} from '../../../src/core/units/index.ts'
import { published } from '../../support/published.ts'

describe('units of the kitchen', () => {
  it('weigh what the law says', () => {
    for (const row of published('units/mass.csv').rows)
      row.agrees('mass_g', massOfUnit_kg(row.text('unit') as UnitCode)! * 1e3)
  })
  it('hold what the law says, by country', () => {
    for (const row of published('units/volume.csv').rows) {
      const unit = row.text('unit') as UnitCode
      const system = row.text('system')
      const volume_m3 = system === 'label' ? labelVolumeOfUnit_m3(unit) : volumeOfUnit_m3(unit, system as MeasureSystem)
      row.agrees('volume_mL', volume_m3! * 1e6)
    }
  })
  it('take US measures when none are named', () => {
    expect(volumeOfUnit_m3('cup')).toBe(volumeOfUnit_m3('cup', 'us'))
  })
  it('are each of one kind or of none', () => {
    for (const unit of unitCodes) {
      const kinds = [massOfUnit_kg(unit), volumeOfUnit_m3(unit), lengthOfUnit_m(unit)].filter((x) => x !== null)
      expect(kinds.length, unit).toBeLessThanOrEqual(1)
      for (const size of kinds) expect(size).toBeGreaterThan(0)
    }
    for (const unit of ['clove', 'can', 'bunch', 'leaf'] as const) expect(volumeOfUnit_m3(unit)).toBeNull()
  })
  it('keep the household order of sizes everywhere', () => {
    const order = [
      'drop',
      'pinch',
      'dash',
      'tsp',
      'dessertspoon',
      'tbsp',
      'gill',
      'cup',
      'pint',
      'quart',
      'gallon',
      'peck',
    ] as const
    for (const system of measureSystems) {
      const sizes = order.map((unit) => volumeOfUnit_m3(unit, system)!)
      expect(sizes, system).toEqual([...sizes].sort((a, b) => a - b))
    }
  })
  it('measure what the law says', () => {
    for (const row of published('units/length.csv').rows)
      row.agrees('length_mm', lengthOf_m(row.text('unit') as LengthUnit) * 1e3)
    expect(lengthOfUnit_m('inch')).toBe(lengthOf_m('inch'))
    expect(lengthOfUnit_m('cup')).toBeNull()
    expect(feetFromMetres(metresFromFeet(5250))).toBeCloseTo(5250, 9)
  })
})

describe('temperature', () => {
  it('agrees with the fixed points and with printed pairs', () => {
    for (const row of published('units/temperature.csv').rows) {
      row.agrees('celsius', celsiusFromFahrenheit(row.number('fahrenheit')))
      row.agrees('celsius', celsiusFromKelvin(kelvinFromFahrenheit(row.number('fahrenheit'))))
    }
  })
  it('knows gas marks, and no others', () => {
    for (const row of published('units/gas-mark.csv').rows) {
      row.agrees('fahrenheit', fahrenheitFromKelvin(gasMark_K(row.number('mark'))!))
    }
    for (const mark of [0, 0.75, 11, -1, Number.NaN]) expect(gasMark_K(mark)).toBeNull()
  })
  it('converts levels there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: -250, max: 2000, noNaN: true }), (x) => {
        expect(celsiusFromFahrenheit(fahrenheitFromCelsius(x))).toBeCloseTo(x, 8)
        expect(celsiusFromKelvin(kelvinFromCelsius(x))).toBeCloseTo(x, 8)
        expect(fahrenheitFromKelvin(kelvinFromFahrenheit(x))).toBeCloseTo(x, 8)
      }),
    )
  })
  it('converts a step without the zero', () => {
    expect(dKelvinFromFahrenheitStep(9)).toBeCloseTo(5, 12)
    expect(fahrenheitStepFromDKelvin(dKelvinFromFahrenheitStep(25))).toBeCloseTo(25, 12)
    expect(dKelvinFromCelsiusStep(10)).toBe(10)
    // A step is the difference of two levels.
    expect(kelvinFromFahrenheit(375) - kelvinFromFahrenheit(350)).toBeCloseTo(dKelvinFromFahrenheitStep(25), 9)
  })
})

describe('pressure', () => {
  it('agrees with the tables', () => {
    for (const row of published('units/pressure.csv').rows) {
      row.agrees('pressure_kPa', pascalFromPsi(row.number('psi')) / 1e3)
      expect(psiFromPascal(pascalFromPsi(row.number('psi')))).toBeCloseTo(row.number('psi'), 12)
    }
    expect(inchOfMercury_Pa / 1e3).toBeCloseTo(3.38638, 4)
  })
  it('adds the air outside to a gauge reading', () => {
    const over = gaugePa(70e3)
    expect(pressureFromGauge_Pa(over, atmosphere_Pa)).toBe(171_325)
    expect(gaugeFromPressure(171_325, atmosphere_Pa)).toBe(70e3)
  })
})
