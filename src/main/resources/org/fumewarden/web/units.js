// Numbers with units, as the task file writes them, and what they are in other units.

export const LEVEL_UNITS = [
  { unit: 'mg/m3', factor: '1', kind: 'mass' },
  { unit: 'ug/m3', factor: '0.001', kind: 'mass' },
  { unit: 'ppm', factor: '1', kind: 'volume' },
  { unit: 'ppb', factor: '0.001', kind: 'volume' },
];

/** Splits "0.12 mg/m3" into number and unit; a duration such as PT4H30M becomes minutes or hours. */
export function split(text, units) {
  const value = String(text ?? '').trim();
  const iso = /^PT(?:(\d+)H)?(?:(\d+)M)?$/.exec(value);
  if (iso && (iso[1] || iso[2]) && units.some(u => u.unit === 'min')) {
    const minutes = Number(iso[1] ?? 0) * 60 + Number(iso[2] ?? 0);
    return minutes % 60 === 0 && minutes > 0 ? { number: String(minutes / 60), unit: 'h' } : { number: String(minutes), unit: 'min' };
  }
  const match = /^(<?\s*[+-]?[0-9][0-9.eE+-]*)\s*(\S.*)?$/.exec(value);
  if (!match) return { number: value, unit: units[0].unit };
  const unit = (match[2] ?? '').replace(/[µμ]/, 'u').replace('³', '3');
  return { number: match[1], unit: units.some(u => u.unit === unit) ? unit : (unit || units[0].unit) };
}

/** A decimal comma that cannot part thousands becomes a point; anything else stays for the server to ask about. */
export function point(number) {
  return /^[<\s]*[+-]?\d+,\d+$/.test(number) && !/^[<\s]*[+-]?[1-9]\d{0,2},\d{3}$/.test(number) ? number.replace(',', '.') : number;
}

/** A unit in letters of the keyboard: "\u00B5g/m\u00B3" is ug/m3, "hours" is h. */
function sign(unit) {
  const plain = unit.replace(/[\u00B5\u03BC]/, 'u').replace('\u00B3', '3').replace('\u00B2', '2');
  const word = plain.toLowerCase().replace(/\.$/, '');
  if (['hour', 'hours', 'hrs', 'hr', 'std', 'stunde', 'stunden'].includes(word)) return 'h';
  if (['minute', 'minutes', 'mins', 'minuten'].includes(word)) return 'min';
  return plain;
}

/** What was typed into the box of the number, parted into number and unit when it holds both. */
export function tidy(typed, unit, units) {
  const match = /^([<\s]*[+-]?[0-9][0-9.,]*)\s*(\S.*)?$/.exec(typed.trim());
  if (!match) return { number: typed, unit };
  const own = match[2] ? units.find(u => u.unit.toLowerCase() === sign(match[2]).toLowerCase()) : undefined;
  if (match[2] && !own) return { number: typed, unit };
  return { number: point(match[1].trim()), unit: own ? own.unit : unit };
}

/** The words of the task file for what stands in the two boxes; what was typed with letters of its own is left as it is. */
export function join(number, unit) {
  const typed = number.trim();
  if (typed === '') return undefined;
  return /^[<\s]*[+-]?[0-9.][-0-9.,eE+]*$/.test(typed) || !/\p{L}/u.test(typed) ? `${typed} ${unit}`.trim() : typed;
}

/** A number with at most six figures and no exponent for common sizes. */
export function plain(number) {
  return String(Number(number.toPrecision(6)));
}

/** The same amount in the other units of its kind, such as "= 120 ug/m3"; empty when it is no number. */
export function equivalents(number, unit, units) {
  const value = Number(number);
  const own = units.find(u => u.unit === unit);
  if (number.trim() === '' || !Number.isFinite(value) || !own) return [];
  return units
    .filter(u => u.unit !== unit && u.kind === own.kind)
    .map(u => ({ number: plain((value * Number(own.factor)) / Number(u.factor)), unit: u.unit }));
}
