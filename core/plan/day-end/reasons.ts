// Why a step did not happen: a few plain words, in the order of the keys 1 to 8 that choose them.

export const missReasons = [
  'weather',
  'crane',
  'not-ready',
  'pieces',
  'people',
  'inspection',
  'concrete',
  'other',
] as const;
export type MissReason = (typeof missReasons)[number];

export const missWords: Readonly<Record<MissReason, string>> = {
  weather: 'weather',
  crane: 'crane',
  'not-ready': 'steel or others not ready',
  pieces: 'short of pieces',
  people: 'short of people',
  inspection: 'inspection',
  concrete: 'concrete',
  other: 'other',
};
