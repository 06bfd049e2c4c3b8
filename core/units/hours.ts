// Hours of work and of the clock, kept as whole minutes where they are added.

/** "7 h", "7 h 30 min", "45 min". Whole minutes in; a negative time keeps its sign in front. */
export function formatMinutes(minutes: number): string {
  const size = Math.abs(minutes);
  const [hours, rest] = [Math.floor(size / 60), size % 60];
  const text = hours === 0 ? `${rest} min` : rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
  return minutes < 0 ? `-${text}` : text;
}

/** Hours, such as 7.5, to the nearest minute: "7 h 30 min". */
export function formatHours(hours: number): string {
  return formatMinutes(Math.round(hours * 60));
}
