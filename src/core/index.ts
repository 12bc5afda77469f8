// The library's public face.
export type * from './findings/index.ts'
