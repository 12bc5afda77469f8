// The server of the page: on this machine only, one store, the addresses of the contract.
export { type AppParts, makeApp } from './app.ts'
export { PortError, type ServeOptions, type Serving, serve } from './serve.ts'
export { type Settings, SettingsError, settings, standardPort } from './settings.ts'
