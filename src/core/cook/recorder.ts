import { airPressure_Pa, steamTables as steam } from '../steam/index.ts'
import { collagenTurned, firmnessLeft } from './group.ts'
import type { GroupSeries, Series } from './run.ts'
import { headspace_m3, liquorVolume_m3, type Vessel } from './vessel.ts'

/** Pressure in the pot, Pa: outside air while it is open, steam and trapped air when sealed. */
export function pressure_Pa(v: Vessel): number {
  if (v.lid !== 2) return v.ambient_Pa
  const air = airPressure_Pa({ mass_kg: v.air_kg, volume_m3: headspace_m3(v), temperature_K: v.liquor_K })
  return Math.max(v.ambient_Pa, steam.saturationPressure_Pa(v.liquor_K) + air)
}

class Column {
  data = new Float64Array(512)
  length = 0
  push(x: number): void {
    if (this.length === this.data.length) {
      const more = new Float64Array(this.length * 2)
      more.set(this.data)
      this.data = more
    }
    this.data[this.length++] = x
  }
  done(): Float64Array {
    return this.data.slice(0, this.length)
  }
}

const columns = [
  'time_s',
  'liquor_K',
  'base_K',
  'baseHot_K',
  'wall_K',
  'gauge_Pa',
  'liquid_m3',
  'fat_kg',
  'air_share',
  'lid',
  'power_W',
] as const
const groupColumns = ['where', 'coldest_K', 'mean_K', 'surface_K', 'done', 'mass_kg', 'brown'] as const

/** Samples of a run. The same recorder is used whether anybody draws it or not. */
export interface Recorder {
  sample(v: Vessel, time_s: number): void
  series(loads: readonly number[]): Series
}

/** For runs that nobody draws: ten thousand kitchens need the verdicts, not the curves. */
export const noRecorder: Recorder = {
  sample: () => {},
  series: () => makeRecorder(0).series([]),
}

export function makeRecorder(loadCount: number): Recorder {
  const main = Object.fromEntries(columns.map((name) => [name, new Column()])) as Record<
    (typeof columns)[number],
    Column
  >
  const groups = Array.from(
    { length: loadCount },
    () =>
      Object.fromEntries(groupColumns.map((name) => [name, new Column()])) as Record<
        (typeof groupColumns)[number],
        Column
      >,
  )
  return {
    sample(v, time_s) {
      main.time_s.push(time_s)
      main.liquor_K.push(v.liquor_K)
      main.base_K.push(v.base_K)
      main.baseHot_K.push(v.hot_K)
      main.wall_K.push(v.wall_K)
      const p = pressure_Pa(v)
      main.gauge_Pa.push(p - v.ambient_Pa)
      main.liquid_m3.push(liquorVolume_m3(v))
      main.fat_kg.push(v.liquor.fat)
      const steamPart = v.lid === 0 ? 0 : Math.min(1, steam.saturationPressure_Pa(v.liquor_K) / p)
      main.air_share.push(v.lid === 2 ? Math.max(0, 1 - steamPart) : 1 - steamPart)
      main.lid.push(v.lid)
      main.power_W.push(v.power_W)
      for (let i = 0; i < loadCount; i++) {
        const out = groups[i]
        const g = v.groups.find((one) => one.load.id === i)
        if (!g) {
          for (const name of groupColumns) out[name].push(name === 'where' ? 0 : Number.NaN)
          continue
        }
        const T = g.body.temperature_K
        out.where.push(g.where === 4 ? 0 : g.where)
        out.coldest_K.push(g.coldest_K())
        out.mean_K.push(g.mean_K())
        out.surface_K.push(T[T.length - 1])
        out.done.push(
          g.kind === 'meat'
            ? g.food.kinetics?.kind === 'collagen'
              ? collagenTurned(g).least
              : Number.NaN
            : 1 - firmnessLeft(g),
        )
        out.mass_kg.push(g.mass_kg)
        out.brown.push(g.brown)
      }
    },
    series(loads) {
      const group = (load: number): GroupSeries => {
        const c = groups[load]
        return {
          load,
          where: Uint8Array.from(c.where.done()),
          coldest_K: c.coldest_K.done(),
          mean_K: c.mean_K.done(),
          surface_K: c.surface_K.done(),
          done: c.done.done(),
          mass_kg: c.mass_kg.done(),
          brown: c.brown.done(),
        }
      }
      return {
        time_s: main.time_s.done(),
        liquor_K: main.liquor_K.done(),
        base_K: main.base_K.done(),
        baseHot_K: main.baseHot_K.done(),
        wall_K: main.wall_K.done(),
        gauge_Pa: main.gauge_Pa.done(),
        liquid_m3: main.liquid_m3.done(),
        fat_kg: main.fat_kg.done(),
        air_share: main.air_share.done(),
        lid: Uint8Array.from(main.lid.done()),
        power_W: main.power_W.done(),
        groups: loads.map(group),
      }
    },
  }
}
