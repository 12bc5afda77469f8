import { requireRange } from '../numerics/index.ts'
import { apparentCp, type FreezingModel, iceShare, tempFromEnthalpy } from './freezing.ts'
import { type PieceShape, pieceGeometry } from './shape.ts'

const none = new Float64Array(0)

export interface PieceOptions extends PieceShape {
  /** Layers from core to surface; `suggestedNodes` when left out. */
  readonly nodes?: number
  readonly start_K: number
  readonly k_W_per_mK: number
  readonly rho_kg_per_m3: number
  readonly cp_J_per_kgK: number
  /** Left out, the piece never freezes. */
  readonly freezing?: FreezingModel | null
}

/** Thin pieces need fewer layers, not more: their temperature is nearly even. */
export function suggestedNodes(thickness_m: number): number {
  return thickness_m < 0.008 ? 3 : thickness_m < 0.015 ? 5 : 8
}

/**
 * One piece of food as a body of one dimension, in layers of equal depth from core to surface, stepped implicitly.
 *
 * A step is taken in two halves so that everything in the pot can be solved together. `forward(step_s, film)`
 * eliminates the body from core to surface; from then on the heat it will take from a medium at T is exactly
 * `heatFixed_J + heatPerKelvin_J_per_K × T`. Once the medium's new temperature is known, `back(T)` finishes the step
 * and returns that heat; what the body holds has grown by it but for rounding. Nothing is allocated.
 *
 * Frozen pieces carry their enthalpy along: the step is taken with the apparent heat capacity of each layer, the
 * heat that came in is added to the layer's enthalpy, and the temperature is read back from it, so that no latent
 * heat is lost however large the step (Pham's way). Because the apparent capacity changes a hundredfold within a
 * kelvin, the step is first tried with the medium's expected temperature until the capacities fit what they lead to.
 */
export class PieceBody {
  readonly nodes: number
  /** Volume and true outer surface of one piece. */
  readonly volume_m3: number
  readonly surface_m2: number
  /** Distance of each layer's middle from the core, and each layer's share of the volume. */
  readonly position_m: Float64Array
  readonly share: Float64Array
  /** Temperature of each layer, core first. */
  readonly temperature_K: Float64Array
  /** Filled by `forward`: heat taken in the step = heatFixed_J + heatPerKelvin_J_per_K × the medium's temperature. */
  heatFixed_J = 0
  heatPerKelvin_J_per_K = 0
  readonly k_W_per_mK: number
  readonly rho_kg_per_m3: number
  readonly cp_J_per_kgK: number
  readonly mass_kg: number
  /** Heat capacity of one piece above its freezing point. */
  readonly heatCapacity_J_per_K: number

  private readonly freezing: FreezingModel | null
  /** True while any layer holds ice; only then do `enthalpy_J_per_kg` and the apparent capacities matter. */
  private icy = false
  /** Enthalpy over the freezing point. */
  private readonly enthalpy_J_per_kg: Float64Array
  /** k × area / distance from each layer to the next, and from the outermost to the surface. */
  private readonly link_W_per_K: Float64Array
  private readonly thawedLink_W_per_K: Float64Array
  private readonly capacity_J_per_K: Float64Array
  private readonly thawedCapacity_J_per_K: Float64Array
  private readonly cornerLoss: number
  private readonly half_m: number
  private readonly from_K: Float64Array
  private readonly fixed: Float64Array
  private readonly factor: Float64Array
  private skinDrop_dK_per_J = 0
  private lastHeat_J = 0
  private lastMedium_K = Number.NaN

  constructor(o: PieceOptions) {
    const n = o.nodes ?? suggestedNodes(o.thickness_m)
    if (!(Number.isInteger(n) && n >= 1 && n <= 400)) throw new RangeError(`nodes = ${n}: allowed is 1 to 400, whole`)
    requireRange('conductivity', o.k_W_per_mK, 1e-3, 1e3, 'W/(m K)')
    requireRange('density', o.rho_kg_per_m3, 1, 3e4, 'kg/m3')
    requireRange('heat capacity', o.cp_J_per_kgK, 10, 1e5, 'J/(kg K)')
    const g = pieceGeometry(o)
    this.nodes = n
    this.volume_m3 = g.volume_m3
    this.surface_m2 = g.surface_m2
    this.half_m = g.half_m
    this.cornerLoss = g.cornerLoss
    this.k_W_per_mK = o.k_W_per_mK
    this.rho_kg_per_m3 = o.rho_kg_per_m3
    this.cp_J_per_kgK = o.cp_J_per_kgK
    this.mass_kg = g.volume_m3 * o.rho_kg_per_m3
    this.heatCapacity_J_per_K = this.mass_kg * o.cp_J_per_kgK
    this.freezing = o.freezing ?? null
    const array = () => new Float64Array(n)
    this.position_m = array()
    this.share = array()
    this.temperature_K = array()
    this.thawedLink_W_per_K = array()
    this.thawedCapacity_J_per_K = array()
    this.fixed = array()
    this.factor = array()
    const depth_m = g.half_m / n
    // Area at depth x is this times (x / half)^exponent; it integrates to the volume of the piece.
    const area_m2 = ((g.exponent + 1) * g.volume_m3) / g.half_m
    let inner = 0
    for (let i = 0; i < n; i++) {
      const outer = ((i + 1) / n) ** (g.exponent + 1)
      this.position_m[i] = (i + 0.5) * depth_m
      this.share[i] = outer - inner
      this.thawedCapacity_J_per_K[i] = this.share[i] * this.heatCapacity_J_per_K
      const area = area_m2 * ((i + 1) / n) ** g.exponent
      this.thawedLink_W_per_K[i] = (o.k_W_per_mK * area) / (i < n - 1 ? depth_m : depth_m / 2)
      inner = outer
    }
    // A piece that never freezes shares the arrays: nothing will be written to them.
    this.link_W_per_K = this.freezing ? array() : this.thawedLink_W_per_K
    this.enthalpy_J_per_kg = this.freezing ? array() : none
    this.from_K = this.freezing ? array() : none
    this.capacity_J_per_K = this.freezing ? array() : this.thawedCapacity_J_per_K
    this.setTemperature(o.start_K)
  }

  /** Puts the whole piece at one temperature. */
  setTemperature(even_K: number): void {
    requireRange('temperature', even_K, 203.15, 2000, 'K')
    this.temperature_K.fill(even_K)
    this.lastHeat_J = 0
    this.lastMedium_K = Number.NaN
    const m = this.freezing
    if (!m) return
    this.icy = even_K < m.freezing_K
    this.enthalpy_J_per_kg.fill(
      this.icy
        ? m.frozenCp_J_per_kgK * (even_K - m.freezing_K) - m.latent_J_per_kg * iceShare(m, even_K)
        : this.cp_J_per_kgK * (even_K - m.freezing_K),
    )
    this.link_W_per_K.set(this.thawedLink_W_per_K)
    this.capacity_J_per_K.set(this.thawedCapacity_J_per_K)
  }

  /**
   * First half of a step: fills `heatFixed_J` and `heatPerKelvin_J_per_K`. Only a frozen piece asks for
   * `expected_K`, what the medium will be at about; left out, it is what it was at the last step.
   */
  forward(step_s: number, film_W_per_m2K: number, expected_K: number = this.lastMedium_K): void {
    // Corners warm first and then take less from the film than their area.
    const biot = (film_W_per_m2K * this.half_m) / this.k_W_per_mK
    const film = film_W_per_m2K * this.surface_m2 * (1 - (this.cornerLoss * biot) / (1 + biot))
    if (this.icy) this.tryStep(step_s, film, expected_K)
    else this.eliminate(step_s, film, this.temperature_K)
  }

  /** Elimination from core to surface, each layer starting from `from_K` with its capacity of the moment. */
  private eliminate(step_s: number, film_W_per_K: number, from_K: Float64Array): void {
    const { link_W_per_K: link, capacity_J_per_K: capacity, fixed, factor } = this
    const last = this.nodes - 1
    const perStep = 1 / step_s
    let p = 0
    let q = 0
    let inwards = 0
    for (let i = 0; i < last; i++) {
      const outwards = link[i]
      const c = capacity[i] * perStep
      const d = 1 / (c + outwards + inwards * (1 - q))
      p = (c * from_K[i] + inwards * p) * d
      q = outwards * d
      fixed[i] = p
      factor[i] = q
      inwards = outwards
    }
    // Film and half a layer in a row carry the heat to the outermost node.
    const skin = link[last]
    const g = (film_W_per_K * skin) / (film_W_per_K + skin)
    const c = capacity[last] * perStep
    const d = 1 / (c + g + inwards * (1 - q))
    fixed[last] = (c * from_K[last] + inwards * p) * d
    factor[last] = g * d
    this.heatPerKelvin_J_per_K = step_s * g * (1 - factor[last])
    this.heatFixed_J = -step_s * g * fixed[last]
    this.skinDrop_dK_per_J = 1 / (skin * step_s)
  }

  /** Second half: the layers' new temperatures. Returns the heat that one piece took up, J. */
  back(medium_K: number): number {
    const { temperature_K: T, fixed, factor } = this
    this.lastMedium_K = medium_K
    this.lastHeat_J = this.heatFixed_J + this.heatPerKelvin_J_per_K * medium_K
    if (this.freezing) {
      this.backWithIce(medium_K, this.freezing)
      return this.lastHeat_J
    }
    let outer = medium_K
    for (let i = this.nodes - 1; i >= 0; i--) {
      outer = fixed[i] + factor[i] * outer
      T[i] = outer
    }
    return this.lastHeat_J
  }

  private backWithIce(medium_K: number, m: FreezingModel): void {
    const { temperature_K: T, enthalpy_J_per_kg: h, capacity_J_per_K: capacity, share, fixed, factor } = this
    const from = this.icy ? this.from_K : T
    const cp = this.cp_J_per_kgK
    let icy = false
    let outer = medium_K
    for (let i = this.nodes - 1; i >= 0; i--) {
      outer = fixed[i] + factor[i] * outer
      // Without ice the temperature may have been written to from outside; with ice the enthalpy is the state.
      const before = this.icy ? h[i] : cp * (T[i] - m.freezing_K)
      const now = before + (capacity[i] * (outer - from[i])) / (share[i] * this.mass_kg)
      h[i] = now
      T[i] = tempFromEnthalpy(m, cp, now)
      if (now < 0) icy = true
    }
    if (this.icy && !icy) {
      this.link_W_per_K.set(this.thawedLink_W_per_K)
      this.capacity_J_per_K.set(this.thawedCapacity_J_per_K)
    }
    this.icy = icy
  }

  /** A step of a piece with ice: Newton on the enthalpy of each layer, with the medium where it is expected. */
  private tryStep(step_s: number, film_W_per_K: number, expected_K: number): void {
    const m = this.freezing as FreezingModel
    const { temperature_K: T, enthalpy_J_per_kg: h, from_K, capacity_J_per_K: capacity, fixed, factor } = this
    const { share, mass_kg, cp_J_per_kgK: cp } = this
    const last = this.nodes - 1
    this.feelIce()
    from_K.set(T)
    this.eliminate(step_s, film_W_per_K, from_K)
    if (Number.isNaN(expected_K)) return
    for (let round = 0; round < 20; round++) {
      let outer = expected_K
      let worst = 0
      for (let i = last; i >= 0; i--) {
        outer = fixed[i] + factor[i] * outer
        const mass = share[i] * mass_kg
        const now = h[i] + (capacity[i] * (outer - from_K[i])) / mass
        const t = tempFromEnthalpy(m, cp, now)
        worst = Math.max(worst, Math.abs(t - outer))
        const c = apparentCp(m, cp, t, now)
        capacity[i] = mass * c
        // Where the layer would have to start for this capacity to lead it to what it holds now.
        from_K[i] = t - (now - h[i]) / c
      }
      this.eliminate(step_s, film_W_per_K, from_K)
      if (worst < 1e-4) break
    }
  }

  /** Apparent capacities and conductances of layers that hold ice. */
  private feelIce(): void {
    const m = this.freezing as FreezingModel
    const { temperature_K: T, enthalpy_J_per_kg: h, capacity_J_per_K: capacity, link_W_per_K: link } = this
    const gain = m.frozenK_W_per_mK / this.k_W_per_mK - 1
    const last = this.nodes - 1
    let here = 0
    for (let i = last; i >= 0; i--) {
      const outer = here
      here = iceShare(m, T[i])
      capacity[i] = this.share[i] * this.mass_kg * apparentCp(m, this.cp_J_per_kgK, T[i], h[i])
      link[i] = this.thawedLink_W_per_K[i] * (1 + gain * (i === last ? here : (here + outer) / 2))
    }
  }

  /**
   * Takes out what stands above a limit, layer by layer: water inside a piece cannot stay far above its boiling
   * point. Returns the heat given off by one piece, J; it has to go somewhere, as steam.
   */
  coolAbove(limit_K: number): number {
    const { temperature_K: T } = this
    let out_J = 0
    for (let i = 0; i < this.nodes; i++) {
      if (T[i] > limit_K) {
        out_J += this.thawedCapacity_J_per_K[i] * (T[i] - limit_K)
        T[i] = limit_K
      }
    }
    return out_J
  }

  /** Heat that one piece holds over a temperature, J; the latent heat of its ice is negative. */
  heat_J(reference_K: number): number {
    const m = this.freezing
    let sum = 0
    if (!m || !this.icy) {
      for (let i = 0; i < this.nodes; i++) sum += this.thawedCapacity_J_per_K[i] * (this.temperature_K[i] - reference_K)
      return sum
    }
    for (let i = 0; i < this.nodes; i++) sum += this.share[i] * this.enthalpy_J_per_kg[i]
    return this.mass_kg * sum + this.heatCapacity_J_per_K * (m.freezing_K - reference_K)
  }

  mean_K(): number {
    let sum = 0
    for (let i = 0; i < this.nodes; i++) sum += this.share[i] * this.temperature_K[i]
    return sum
  }

  /** Temperature at the very core: a parabola through the two innermost layers. */
  core_K(): number {
    const T = this.temperature_K
    return this.nodes === 1 ? T[0] : T[0] - (T[1] - T[0]) / 8
  }

  /** Temperature of the face, from the heat that crossed it in the last step. */
  surface_K(): number {
    return this.temperature_K[this.nodes - 1] + this.lastHeat_J * this.skinDrop_dK_per_J
  }

  /** Coldest layer: the innermost while it warms, the outermost while it cools. */
  coldest_K(): number {
    const T = this.temperature_K
    let least = T[0]
    for (let i = 1; i < this.nodes; i++) if (T[i] < least) least = T[i]
    return least
  }

  /** True while any of it is still frozen. */
  frozen(): boolean {
    return this.icy
  }
}

export function makePieceSolver(options: PieceOptions): PieceBody {
  return new PieceBody(options)
}
