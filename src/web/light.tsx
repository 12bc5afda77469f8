import { useState } from 'react'

export type Light = 'light' | 'dark' | 'system'

const key = 'underlid:light'
const words: Record<Light, string> = { light: 'light', dark: 'dark', system: 'as the system' }

function chosen(): Light {
  const light = document.documentElement.dataset.light
  return light === 'light' || light === 'dark' ? light : 'system'
}

function choose(light: Light): void {
  const root = document.documentElement
  if (light === 'system') delete root.dataset.light
  else root.dataset.light = light
  try {
    if (light === 'system') localStorage.removeItem(key)
    else localStorage.setItem(key, light)
  } catch {
    // The choice then lasts as long as the page.
  }
}

/** The choice of light, in words; kept on this device and read before the first paint by public/light.js. */
export function LightChoice() {
  const [light, setLight] = useState(chosen)
  return (
    <fieldset className="light">
      <legend className="unseen">Light of the page</legend>
      {(Object.keys(words) as Light[]).map((each) => (
        <label key={each}>
          <input
            type="radio"
            name="light"
            value={each}
            checked={light === each}
            onChange={() => {
              choose(each)
              setLight(each)
            }}
          />
          <span>{words[each]}</span>
        </label>
      ))}
    </fieldset>
  )
}
