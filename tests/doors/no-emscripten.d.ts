// The types of the reader of QR codes name those of a compiler's package that is not installed: of them only this.
interface EmscriptenModule {
  readonly wasmBinary: ArrayBuffer;
}
type EmscriptenModuleFactory<T> = (overrides?: Partial<T>) => Promise<T>;
