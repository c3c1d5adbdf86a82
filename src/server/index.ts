/** The loopback server: parse, call, answer. */
export { type ServeOptions, type Serving, openApp, serve } from './main.ts'
