/** The plan in words, tables and drawings: route card, cut list, heats. */
export { type Ink, plainInk, terminalInk } from './ink.ts'
export { problemText, problemsText } from './problems.ts'
export { blowsOf, countOf, forceLine, ranged } from './force-line.ts'
export { heatHistory } from './heat-history.ts'
export { minutes } from './heat-words.ts'
export { type CardStyle, routeCard } from './route-card.ts'
export { retell } from './retell.ts'
export { type CardUnits, type Say, sayIn } from './say.ts'
export {
  type PlanningStyle,
  cutListText,
  quoteText,
  rangeText,
  remnantText,
  sensitivityText,
  suggestionsText,
  whatIfText,
} from './planning.ts'
