// What is wrong, in sentences of the page: a summary with links, a sentence beside the field, and what would do on one press.

import { el } from './dom.js';
import { say } from './words.js';

/** What the reader of tasks found, by its words, as the page says it. */
const KNOWN = [
  [/more than one meaning/, 'meanings'], [/cannot be read for certain/, 'number'], [/is a range/, 'range'], [/begins with a point/, 'point'],
  [/sum or a comparison|not written in tens/, 'figure'], [/has no unit/, 'unit.none'], [/has the unit/, 'unit'], [/is negative/, 'negative'],
  [/longer than the shift/, 'shift'], [/longer than a (day|week)|is no time/, 'time'], [/above 100 %/, 'percent'],
  [/colder than|higher than any|more than the air/, 'impossible'], [/parts of gas/, 'gas'], [/below an average/, 'peak'], [/is listed twice|second source|stand beside/, 'twice'],
  [/not in the tables/, 'agent'], [/gives no level/, 'level.none'], [/must be a day|lacks "on"/, 'day'], [/must be (a|an) |must be a number/, 'amount'],
  [/cannot be "/, 'choice'], [/is not a name used here/, 'name'], [/mix units/, 'mixed'], [/no result above zero/, 'zero'], [/is not given|is missing/, 'missing'],
  [/is after the day/, 'after'], [/took longer|waits behind/, 'slow'], [/empty list/, 'missing'],
];

/** A fault as a sentence for the person at the page. */
export function faultWords(problem) {
  const found = KNOWN.find(([pattern]) => pattern.test(problem.message));
  const given = /"([^"]*)"/.exec(problem.message)?.[1] ?? '';
  return say(`ui.fault.${found ? found[1] : 'other'}`, given);
}

/** The words that would do, ready to be put in. A suggestion that is no ready word is left out. */
export function suggested(problem) {
  return [...problem.maybe.matchAll(/"([^"]{1,80})"/g)].map(m => m[1]).filter(words => words !== 'unknown' && !/[:]/.test(words));
}

/** The sentence and the suggestions, each a press that puts it in. */
export function faultNodes(problem, put, words) {
  const ready = put ? suggested(problem) : [];
  return [el('span', {}, faultWords(problem)), ready.length > 0 && el('span', { className: 'choices' }, ready.map(value =>
    el('button', { type: 'button', className: 'quiet', onclick: () => put(value) }, say('ui.fault.use', words ? words(value) : value))))];
}

/** The summary at the top: each fault a link to its field. */
export function summary(entries) {
  return entries.length === 0 ? [] : [el('h3', { tabIndex: -1 }, say('ui.fault.count', entries.length)), el('ul', {}, entries.map(({ label, problem, go }) =>
    el('li', {}, go ? el('a', { href: '#describe', onclick: event => { event.preventDefault(); go(); } }, label) : el('b', {}, label), ': ', faultWords(problem))))];
}
