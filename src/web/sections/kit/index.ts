export { KitPage } from './KitPage.js'
export { NewVesselPage } from './NewVesselPage.js'
export { VesselPage } from './VesselPage.js'
