// What people type for a length, brought to one spelling: quotes, primes, dashes and built-up fractions
// come out of word processors, drawings and spreadsheets in many forms that all mean the same.

const fractions: Readonly<Record<string, string>> = {
  '½': '1/2', '⅓': '1/3', '⅔': '2/3', '¼': '1/4', '¾': '3/4', '⅕': '1/5', '⅖': '2/5', '⅗': '3/5',
  '⅘': '4/5', '⅙': '1/6', '⅚': '5/6', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8',
}; // prettier-ignore

/** Lower case, ' for feet, " for inches, - for every dash, / for every fraction bar, single spaces. */
export function normalLengthText(text: string): string {
  return text
    .replaceAll(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${fractions[sign] ?? sign}`)
    .replaceAll(/[\u2010-\u2015\u2212\uFE63\uFF0D]/g, '-')
    .replaceAll(/[\u2044\u2215\uFF0F]/g, '/')
    .replaceAll(/[\u201C\u201D\u201E\u201F\u2033\u02BA\u3003\uFF02]/g, '"')
    .replaceAll(/[\u2018\u2019\u201A\u201B\u2032\u02B9\u00B4`\uFF07]/g, "'")
    .replaceAll("''", '"')
    .replaceAll('""', '"')
    .replaceAll(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}
