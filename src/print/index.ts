export { type TimeCardInput, timeCard } from './card/time-card.js'
