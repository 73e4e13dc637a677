export { createApp } from './app.js'
export type { Config } from './config.js'
export type { House } from './house.js'
export { open, openHouse, start } from './main.js'
