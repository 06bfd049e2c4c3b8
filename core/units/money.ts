// Money: whole minor units (cents) inside. Printing never asks the machine's locale, so that a sheet reads the
// same on every machine.
import { groupDigits } from './weight.ts';

const signs: Readonly<Record<string, string>> = { USD: '$', EUR: '€', GBP: '£' };
/** Currencies without minor units (ISO 4217); all others here have two digits. */
const withoutMinor: ReadonlySet<string> = new Set(['JPY', 'KRW', 'ISK', 'CLP', 'VND']);

/** 123456 in USD is "$1,234.56"; a currency without a sign of its own prints its code. Whole minor units in. */
export function formatMoney(minor: number, currency: string): string {
  const exact = BigInt(minor);
  const size = exact < 0n ? -exact : exact;
  const amount = withoutMinor.has(currency)
    ? groupDigits(size.toString())
    : `${groupDigits((size / 100n).toString())}.${(size % 100n).toString().padStart(2, '0')}`;
  return `${exact < 0n ? '-' : ''}${signs[currency] ?? `${currency} `}${amount}`;
}

/** Rounded to whole units: "about $142", "under $1", "saves about $30", "nothing more". Whole minor units in. */
export function roughMoney(minor: number, currency: string): string {
  if (minor === 0) return 'nothing more';
  const parts = withoutMinor.has(currency) ? 1 : 100;
  const units = Math.round(Math.abs(minor) / parts);
  const text = (whole: number): string => formatMoney(whole * parts, currency).replace(/\.00$/u, '');
  const words = units === 0 ? `under ${text(1)}` : `about ${text(units)}`;
  return minor < 0 ? `saves ${words}` : words;
}
