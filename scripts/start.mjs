// `npm start`: installs and builds what is missing, then opens the workbench. `npm start -- --help` lists the options.
import './prepare-node.mjs'

import('./prepare.mjs').then(async ({ build, install, root }) => {
  await install()
  await build()
  // In this process: one Ctrl-C, one exit code.
  const { pathToFileURL } = await import('node:url')
  await import(pathToFileURL(`${root}/dist/src/server/main.js`).href)
})
