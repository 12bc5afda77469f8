// Runs before the first paint, so that a page chosen dark never flashes light. See ../light.ts.
try {
  const chosen = localStorage.getItem('underlid:light')
  if (chosen === 'light' || chosen === 'dark') document.documentElement.dataset.light = chosen
} catch {
  // A browser that refuses storage gets the system's choice.
}
