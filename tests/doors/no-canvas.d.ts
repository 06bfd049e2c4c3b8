// The PDF reader can also draw pages, with a package of binaries that is not installed; its types name it.
declare module '@napi-rs/canvas' {
  export type Canvas = never;
  export type SKRSContext2D = never;
}
