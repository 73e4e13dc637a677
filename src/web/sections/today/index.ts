export { TodayPage } from './TodayPage.js'
