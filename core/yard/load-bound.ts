// How many trucks it takes at the least, however well they are loaded: by weight, and by the room over the decks.
import type { Deck } from './deck.ts';
import type { LoadLayer } from './truck.ts';

export interface AtLeast {
  readonly byWeight: number;
  readonly byDeck: number;
}

export function atLeast(layers: readonly LoadLayer[], trucks: readonly Deck[]): AtLeast {
  const grams = layers.reduce((sum, { weightGrams }) => sum + BigInt(weightGrams), 0n);
  const room = layers.reduce(
    (sum, { lengthNm, widthNm, heightNm }) => sum + volume(lengthNm, widthNm, heightNm),
    0n,
  );
  return {
    byWeight: times(
      grams,
      trucks.map((truck) => BigInt(truck.payloadGrams)),
    ),
    byDeck: times(
      room,
      trucks.map((truck) => volume(truck.deckLengthNm, truck.deckWidthNm, truck.stackHeightNm)),
    ),
  };
}

function volume(lengthNm: number, widthNm: number, heightNm: number): bigint {
  return BigInt(lengthNm) * BigInt(widthNm) * BigInt(heightNm);
}

/** Of the largest, as often as it takes. */
function times(needed: bigint, of: readonly bigint[]): number {
  const most = of.reduce((best, each) => (each > best ? each : best), 0n);
  return needed === 0n || most === 0n ? 0 : Number((needed + most - 1n) / most);
}
