interface ImportMeta {
  readonly env: { readonly PROD: boolean; readonly DEV: boolean }
  /** Files by a pattern, put in by the build. */
  glob<T>(
    pattern: string,
    how: { readonly eager: true; readonly import: string },
  ): Readonly<Record<string, T>>
}

/** A part fetched later brings its own style. */
declare module '*.css'
