interface ImportMeta {
  readonly env: { readonly PROD: boolean; readonly DEV: boolean }
}

/** A part fetched later brings its own style. */
declare module '*.css'
