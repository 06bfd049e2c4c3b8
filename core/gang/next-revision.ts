// What a raised revision is called: the next letter or the next number, whatever stands before it.

/** A to B, Z to AA, 3 to 4, R9 to R10; a text that ends in neither gets " 2". */
export function nextRevision(revision: string): string {
  const text = revision.trim();
  const number = /^(.*?)(\d{1,15})$/u.exec(text);
  if (number !== null) {
    const [, before = '', digits = ''] = number;
    return before + String(Number(digits) + 1).padStart(digits.length, '0');
  }
  const letters = /^(.*?[^A-Z])?([A-Z]{1,3})$/u.exec(text);
  if (letters !== null) return `${letters[1] ?? ''}${nextLetters(letters[2] ?? '')}`;
  return text === '' ? 'A' : `${text} 2`;
}

function nextLetters(letters: string): string {
  const [head, last] = [letters.slice(0, -1), letters.slice(-1)];
  if (last !== 'Z') return head + String.fromCharCode(last.charCodeAt(0) + 1);
  return head === '' ? 'AA' : `${nextLetters(head)}A`;
}
