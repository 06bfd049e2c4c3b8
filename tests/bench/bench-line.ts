// What a bench is: a name and lines of results, given one by one as they are found.

export interface BenchLine {
  readonly what: string;
  readonly value: string;
  readonly aim?: string;
}

export interface Bench {
  readonly name: string;
  readonly run: () => AsyncIterable<BenchLine>;
}
