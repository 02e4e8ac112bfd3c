// The words of the page in the chosen language, all from one bundle.

let words = {};
export let languages = ['en'];

export function use(bundle) {
  words = bundle.words;
  languages = bundle.languages;
  document.documentElement.lang = bundle.language;
}

/** The words for a key, with {0}, {1} replaced; the key itself shows that a bundle lacks it. */
export function say(key, ...parts) {
  const text = words[key] ?? key;
  return text.replace(/\{(\d)\}/g, (whole, number) => parts[Number(number)] ?? whole);
}

/** A day as the language writes it; in English as the register has it. */
export function dayWords(day) {
  const tag = document.documentElement.lang;
  return tag === 'en' || Number.isNaN(Date.parse(day)) ? day : new Intl.DateTimeFormat(tag, { day: '2-digit', month: '2-digit', year: 'numeric', timeZone: 'UTC' }).format(new Date(day));
}

/** A figure with the decimal sign of the language. */
export const numeral = figure => figure.replace('.', (1.5).toLocaleString(document.documentElement.lang).charAt(1));

export function has(key) {
  return key in words;
}
