import '@fontsource-variable/literata/wght.css'
import '@fontsource-variable/literata/wght-italic.css'
import '@fontsource-variable/source-sans-3/wght.css'
import './styles/tokens.css'
import './styles/page.css'
import './styles/dishes.css'
import './styles/bench.css'
import './styles/sheet.css'
import './styles/strip.css'
import './styles/print.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app.tsx'

createRoot(document.getElementById('page')!).render(
  <StrictMode>
    <App />
  </StrictMode>,
)
