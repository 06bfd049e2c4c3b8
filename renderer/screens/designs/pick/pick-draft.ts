// How a gang is picked while it is being typed: the entries that can be read, and beside them the texts that
// cannot, each with its reason. A text that was not touched leaves what was kept exactly as it is.
import { type Answer, answer, never, refuse } from '../../../../core/answer.ts';
import type { PickSetup } from '../../../../core/pick/setup.ts';
import type { UnitSystem } from '../../../../core/units/length.ts';
import { readRadius, readSpeed, readWeight } from './typed-amounts.ts';

export type PickField =
  | 'angle'
  | 'leg'
  | 'legCapacity'
  | 'slings'
  | 'gearName'
  | 'gearWeight'
  | 'concrete'
  | 'pickUpRadius'
  | 'setRadius'
  | 'wind'
  | 'windSource';

export interface PickDraft {
  readonly setup: PickSetup;
  /** What stands in a field that cannot be read, and why. */
  readonly wrong: Partial<Record<PickField, { readonly text: string; readonly why: string }>>;
}

/** The draft with a field typed anew; an empty field is *not entered* where that may be. */
export function typed(draft: PickDraft, field: PickField, text: string, system: UnitSystem): PickDraft {
  const read = setupWith(draft.setup, field, text.trim(), system);
  const { [field]: _, ...wrong } = draft.wrong;
  if (read.ok) return { setup: read.value, wrong };
  const why = `${read.error.message} ${read.error.hint ?? ''}`.trim();
  return { setup: draft.setup, wrong: { ...wrong, [field]: { text, why } } };
}

function setupWith(setup: PickSetup, field: PickField, text: string, system: UnitSystem): Answer<PickSetup> {
  switch (field) {
    case 'angle':
      return mapped(decimal(text, 90), (angleDeg) => ({ ...setup, rigging: { by: 'angle', angleDeg } }));
    case 'leg':
      return mapped(readRadius(text, system), (legLengthNm) => ({
        ...setup,
        rigging: { by: 'legs', legLengthNm },
      }));
    case 'legCapacity': {
      const { legCapacityGrams: _, ...rest } = setup;
      if (text === '') return answer(rest);
      return mapped(readWeight(text, system, 1), (legCapacityGrams) => ({ ...rest, legCapacityGrams }));
    }
    case 'slings':
      return mapped(text === '' ? answer(0) : readWeight(text, system, 0), (slingsGrams) => ({
        ...setup,
        slingsGrams,
      }));
    case 'gearName':
      if (text === '') return answer({ ...setup, equalisingGear: null });
      return answer({
        ...setup,
        equalisingGear: { name: text, weightGrams: setup.equalisingGear?.weightGrams ?? 0 },
      });
    case 'gearWeight': {
      const { equalisingGear } = setup;
      if (equalisingGear === null)
        return refuse('gear-unnamed', 'Gear whose weight counts has a name first.');
      return mapped(readWeight(text, system, 0), (weightGrams) => ({
        ...setup,
        equalisingGear: { ...equalisingGear, weightGrams },
      }));
    }
    case 'concrete':
      return mapped(text === '' ? answer(0) : decimal(text, 100, 0), (percent) => ({
        ...setup,
        concreteLeftOn: percent / 100,
      }));
    case 'pickUpRadius':
      return mapped(
        orNull(text, () => readRadius(text, system)),
        (pickUpRadiusNm) => ({
          ...setup,
          pickUpRadiusNm,
        }),
      );
    case 'setRadius':
      return mapped(
        orNull(text, () => readRadius(text, system)),
        (setRadiusNm) => ({ ...setup, setRadiusNm }),
      );
    case 'wind':
      return mapped(
        orNull(text, () => readSpeed(text, system)),
        (windMps) => ({ ...setup, windMps }),
      );
    case 'windSource':
      return answer({ ...setup, windSource: text.slice(0, 200) });
    default:
      return never(field);
  }
}

function mapped<T>(read: Answer<T>, to: (value: T) => PickSetup): Answer<PickSetup> {
  return read.ok ? answer(to(read.value)) : read;
}

function orNull<T>(text: string, read: () => Answer<T>): Answer<T | null> {
  return text === '' ? answer(null) : read();
}

function decimal(text: string, most: number, least?: number): Answer<number> {
  const value = /^\d{1,6}(?:[.,]\d{1,4})?\s*[°%]?$/u.test(text)
    ? Number.parseFloat(text.replace(',', '.'))
    : Number.NaN;
  if (value <= most && (least === undefined ? value > 0 : value >= least)) return answer(value);
  return refuse(
    'number-unreadable',
    `"${text}" is no number ${least === undefined ? 'over 0' : `from ${least}`} up to ${most}.`,
  );
}
