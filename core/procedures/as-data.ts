// Answers are shaped by zod, whose lists can be written to; what the core hands on is readonly. This says
// that a readonly value may stand for one that nobody else holds.

export type Data<T> = T extends object ? { -readonly [K in keyof T]: Data<T[K]> } : T;

export function asData<T>(value: T): Data<T> {
  return value as Data<T>;
}
