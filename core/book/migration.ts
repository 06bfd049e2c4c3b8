// What a migration is: one numbered change of the book's shape. A released one is never edited.

export interface Migration {
  /** 1, 2, 3 ... without gaps; the book's `user_version` after it. */
  readonly number: number;
  readonly name: string;
  /** Any number of statements. They run with foreign keys off, which are checked before the commit. */
  readonly sql: string;
}
