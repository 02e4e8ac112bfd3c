// What is wrong, in sentences of the page: a summary with links, a sentence beside the field, and what would do on one press.

import { el } from './dom.js';
import { has, say } from './words.js';

/** A fault as a sentence for the person at the page. */
export function faultWords(problem) {
  const known = `ui.fault.${problem.fault}`;
  return say(has(known) ? known : 'ui.fault.other', problem.given);
}

/** The sentence and the suggestions, each a press that puts it in. */
export function faultNodes(problem, put, words) {
  const ready = put ? problem.ready : [];
  return [el('span', {}, faultWords(problem)), ready.length > 0 && el('span', { className: 'choices' }, ready.map(value =>
    el('button', { type: 'button', className: 'quiet', onclick: () => put(value) }, say('ui.fault.use', words ? words(value) : value))))];
}

/** The summary at the top: each fault a link to its field. */
export function summary(entries) {
  return entries.length === 0 ? [] : [el('h3', { tabIndex: -1 }, say('ui.fault.count', entries.length)), el('ul', {}, entries.map(({ label, problem, go }) =>
    el('li', {}, go ? el('a', { href: '#describe', onclick: event => { event.preventDefault(); go(); } }, label) : el('b', {}, label), ': ', faultWords(problem))))];
}
