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
  const match = /^([+-]?[0-9][0-9.eE+-]*)\s*(\S.*)?$/.exec(value);
  if (!match) return { number: value, unit: units[0].unit };
  const unit = (match[2] ?? '').replace(/[µμ]/, 'u').replace('³', '3');
  return { number: match[1], unit: units.some(u => u.unit === unit) ? unit : (unit || units[0].unit) };
}

export function join(number, unit) {
  return number.trim() === '' ? undefined : `${number.trim()} ${unit}`.trim();
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
