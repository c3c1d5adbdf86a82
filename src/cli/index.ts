/** The command line: parse, call, show. */
export { main } from './main.ts'
